import { sql, type Kysely } from 'kysely';
import type { Column } from '../columns.ts';
import type { Tables } from '../tables.ts';

/** Issued sheets. A row is written once; the database itself refuses to change it or to take it away. */
export async function issued(db: Kysely<Tables>, { kind, text, bytes }: Column): Promise<void> {
  await db.schema
    .createTable('issued_sheet')
    .addColumn('id', text, (c) => c.primaryKey())
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('job_id', text, (c) => c.notNull().references('job.id'))
    .addColumn('check_id', text, (c) => c.notNull().references('job_check.id'))
    .addColumn('number', text, (c) => c.notNull())
    .addColumn('check_number', 'integer', (c) => c.notNull())
    .addColumn('revision_number', 'integer', (c) => c.notNull())
    .addColumn('revision', text, (c) => c.notNull())
    .addColumn('title', text, (c) => c.notNull())
    .addColumn('date', text, (c) => c.notNull())
    .addColumn('verdict', text, (c) => c.notNull())
    .addColumn('paper', text, (c) => c.notNull())
    .addColumn('tool', text, (c) => c.notNull())
    .addColumn('content_digest', text, (c) => c.notNull())
    .addColumn('fingerprint', text, (c) => c.notNull().unique())
    .addColumn('document', text, (c) => c.notNull())
    .addColumn('page', text, (c) => c.notNull())
    .addColumn('pdf', bytes, (c) => c.notNull())
    .addColumn('pdf_digest', text, (c) => c.notNull().unique())
    .addColumn('made_at', text, (c) => c.notNull())
    .addColumn('made_by', text, (c) => c.notNull())
    .addUniqueConstraint('issued_revision_once', ['check_id', 'revision_number'])
    .execute();
  await db.schema
    .createIndex('issued_sheet_by_job')
    .on('issued_sheet')
    .columns(['job_id', 'check_number', 'revision_number'])
    .execute();
  for (const statement of refusals[kind]) await statement.execute(db);
}

const refusals = {
  sqlite: ['update', 'delete'].map((change) =>
    sql.raw(
      `create trigger issued_sheet_no_${change} before ${change} on issued_sheet ` +
        `begin select raise(abort, 'An issued sheet never changes.'); end`,
    ),
  ),
  postgres: [
    sql.raw(
      `create function issued_sheet_refuse() returns trigger language plpgsql as ` +
        `$$ begin raise exception 'An issued sheet never changes.'; end $$`,
    ),
    sql.raw(
      'create trigger issued_sheet_no_change before update or delete on issued_sheet ' +
        'for each row execute function issued_sheet_refuse()',
    ),
    sql.raw(
      'create trigger issued_sheet_no_truncate before truncate on issued_sheet ' +
        'for each statement execute function issued_sheet_refuse()',
    ),
  ],
} as const;

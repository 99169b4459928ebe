import { sql, type Kysely } from 'kysely';
import type { Column } from '../columns.ts';
import type { Tables } from '../tables.ts';

/** Offices, jobs, the checks in them, and every revision of every check. */
export async function jobs(db: Kysely<Tables>, { text }: Column): Promise<void> {
  const never = sql`0`;
  await db.schema
    .createTable('setting')
    .addColumn('name', text, (c) => c.primaryKey())
    .addColumn('value', text, (c) => c.notNull())
    .execute();
  await db.schema
    .createTable('office')
    .addColumn('id', text, (c) => c.primaryKey())
    .addColumn('name', text, (c) => c.notNull())
    .addColumn('last_job_number', 'integer', (c) => c.notNull().defaultTo(never))
    .addColumn('made_at', text, (c) => c.notNull())
    .execute();
  await db.schema
    .createTable('job')
    .addColumn('id', text, (c) => c.primaryKey())
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('number', 'integer', (c) => c.notNull())
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('last_check_number', 'integer', (c) => c.notNull().defaultTo(never))
    .addColumn('name', text, (c) => c.notNull())
    .addColumn('client', text, (c) => c.notNull())
    .addColumn('address', text, (c) => c.notNull())
    .addColumn('reference', text, (c) => c.notNull())
    .addColumn('prepared_by', text, (c) => c.notNull())
    .addColumn('checked_by', text, (c) => c.notNull())
    .addColumn('edition', text, (c) => c.notNull())
    .addColumn('authority', text, (c) => c.notNull())
    .addColumn('notes', text, (c) => c.notNull())
    .addColumn('is_archived', 'integer', (c) => c.notNull())
    .addColumn('is_deleted', 'integer', (c) => c.notNull())
    .addColumn('made_at', text, (c) => c.notNull())
    .addColumn('changed_at', text, (c) => c.notNull())
    .addColumn('name_key', text, (c) => c.notNull())
    .addColumn('client_key', text, (c) => c.notNull())
    .addColumn('search_key', text, (c) => c.notNull())
    .addUniqueConstraint('job_number_once', ['office_id', 'number'])
    .execute();
  for (const key of ['changed_at', 'name_key', 'client_key', 'number']) {
    await db.schema
      .createIndex(`job_by_${key}`)
      .on('job')
      .columns(['office_id', 'is_deleted', 'is_archived', key, 'id'])
      .execute();
  }
  await db.schema
    .createTable('job_check')
    .addColumn('id', text, (c) => c.primaryKey())
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('job_id', text, (c) => c.notNull().references('job.id'))
    .addColumn('number', 'integer', (c) => c.notNull())
    .addColumn('place', 'integer', (c) => c.notNull())
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('form', text, (c) => c.notNull())
    .addColumn('element', text, (c) => c.notNull())
    .addColumn('title', text, (c) => c.notNull())
    .addColumn('standing', text, (c) => c.notNull())
    .addColumn('governs', text, (c) => c.notNull())
    .addColumn('used', 'double precision')
    .addColumn('tool', text, (c) => c.notNull())
    .addColumn('is_deleted', 'integer', (c) => c.notNull())
    .addColumn('last_revision', 'integer', (c) => c.notNull())
    .addColumn('editor', text, (c) => c.notNull())
    .addColumn('turn', 'double precision', (c) => c.notNull())
    .addColumn('made_at', text, (c) => c.notNull())
    .addColumn('changed_at', text, (c) => c.notNull())
    .addColumn('changed_by', text, (c) => c.notNull())
    .addUniqueConstraint('check_number_once', ['job_id', 'number'])
    .execute();
  await db.schema
    .createIndex('check_by_place')
    .on('job_check')
    .columns(['job_id', 'is_deleted', 'place'])
    .execute();
  await db.schema
    .createTable('revision')
    .addColumn('check_id', text, (c) => c.notNull().references('job_check.id'))
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('number', 'integer', (c) => c.notNull())
    .addColumn('version', 'integer', (c) => c.notNull())
    .addColumn('form', text, (c) => c.notNull())
    .addColumn('standing', text, (c) => c.notNull())
    .addColumn('changed', text, (c) => c.notNull())
    .addColumn('reason', text, (c) => c.notNull())
    .addColumn('editor', text, (c) => c.notNull())
    .addColumn('made_at', text, (c) => c.notNull())
    .addColumn('saved_at', text, (c) => c.notNull())
    .addColumn('saved_by', text, (c) => c.notNull())
    .addPrimaryKeyConstraint('revision_once', ['check_id', 'number'])
    .execute();
}

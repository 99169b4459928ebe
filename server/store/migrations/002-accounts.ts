import { sql, type Kysely } from 'kysely';
import type { Column } from '../columns.ts';
import type { Tables } from '../tables.ts';

/** People of offices, their sessions, and links that show a job to whoever has them. */
export async function accounts(db: Kysely<Tables>, { text }: Column): Promise<void> {
  const yes = sql`1`;
  await db.schema
    .createTable('person')
    .addColumn('id', text, (c) => c.primaryKey())
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('name', text, (c) => c.notNull())
    .addColumn('sign_in_name', text, (c) => c.notNull().unique())
    .addColumn('password', text, (c) => c.notNull())
    .addColumn('role', text, (c) => c.notNull())
    .addColumn('is_active', 'integer', (c) => c.notNull().defaultTo(yes))
    .addColumn('made_at', text, (c) => c.notNull())
    .execute();
  await db.schema.createIndex('person_by_office').on('person').columns(['office_id', 'name']).execute();
  await db.schema
    .createTable('session')
    .addColumn('key_hash', text, (c) => c.primaryKey())
    .addColumn('person_id', text, (c) => c.notNull().references('person.id'))
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('made_at', text, (c) => c.notNull())
    .addColumn('seen_at', text, (c) => c.notNull())
    .execute();
  await db.schema.createIndex('session_by_person').on('session').columns(['person_id']).execute();
  await db.schema
    .createTable('share_link')
    .addColumn('id', text, (c) => c.primaryKey())
    .addColumn('key_hash', text, (c) => c.notNull().unique())
    .addColumn('office_id', text, (c) => c.notNull().references('office.id'))
    .addColumn('job_id', text, (c) => c.notNull().references('job.id'))
    .addColumn('label', text, (c) => c.notNull())
    .addColumn('made_at', text, (c) => c.notNull())
    .addColumn('made_by', text, (c) => c.notNull())
    .addColumn('ends_at', text, (c) => c.notNull())
    .addColumn('is_revoked', 'integer', (c) => c.notNull())
    .execute();
  await db.schema.createIndex('share_link_by_job').on('share_link').columns(['job_id', 'made_at']).execute();
}

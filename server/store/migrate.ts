import { sql, type Kysely } from 'kysely';
import { columnsOf, type DatabaseKind } from './columns.ts';
import { migrations } from './migrations/index.ts';
import type { Tables } from './tables.ts';

/** Any number will do, as long as every process that migrates takes the same. */
const lockNumber = 5_318_008;

/**
 * Brings a database to the newest schema, each step whole or not at all. Two processes that start at once wait for one
 * another.
 *
 * @param backUp is called with the version found, before the first step is taken on a database that has data
 * @throws Error where the database was written by a newer version of the program
 */
export async function migrate(
  db: Kysely<Tables>,
  kind: DatabaseKind,
  now: () => Date,
  backUp: (version: number) => Promise<void>,
): Promise<void> {
  await db.schema
    .createTable('schema_version')
    .ifNotExists()
    .addColumn('version', 'integer', (c) => c.primaryKey())
    .addColumn('taken_at', 'text', (c) => c.notNull())
    .execute();
  const found = await versionOf(db);
  if (found > migrations.length) throw new Error(newerWords(found));
  if (found > 0 && found < migrations.length) await backUp(found);
  for (const [index, step] of migrations.entries()) {
    await db.transaction().execute(async (transaction) => {
      if (kind === 'postgres') await sql`select pg_advisory_xact_lock(${lockNumber})`.execute(transaction);
      if ((await versionOf(transaction)) > index) return;
      await step(transaction, columnsOf(kind));
      const taken = { version: index + 1, takenAt: now().toISOString() };
      await transaction.insertInto('schemaVersion').values(taken).execute();
    });
  }
}

async function versionOf(db: Kysely<Tables>): Promise<number> {
  const [row] = await db
    .selectFrom('schemaVersion')
    .select(({ fn }) => fn.max<number | null>('version').as('version'))
    .execute();
  return row?.version ?? 0;
}

function newerWords(found: number): string {
  return (
    `The stored data has schema ${found}, written by a newer version of this program, which knows up to ` +
    `${migrations.length}. Start the newer version, or put back a copy of the data made before it.`
  );
}

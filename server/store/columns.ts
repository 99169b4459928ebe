import { sql, type RawBuilder } from 'kysely';

/** The two databases the store runs on. */
export type DatabaseKind = 'sqlite' | 'postgres';

/** What a migration needs to know of the database it runs on. */
export interface Column {
  readonly kind: DatabaseKind;
  /** Text that sorts by code points on both databases, whatever the server's own order is. */
  readonly text: RawBuilder<unknown>;
  readonly bytes: RawBuilder<unknown>;
}

const columns: Readonly<Record<DatabaseKind, Column>> = {
  sqlite: { kind: 'sqlite', text: sql`text`, bytes: sql`blob` },
  postgres: { kind: 'postgres', text: sql`text collate "C"`, bytes: sql`bytea` },
};

/** The column types of a database. */
export function columnsOf(kind: DatabaseKind): Column {
  return columns[kind];
}

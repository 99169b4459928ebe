import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { CamelCasePlugin, Kysely, sql } from 'kysely';
import type { DatabaseKind } from './columns.ts';
import { migrate } from './migrate.ts';
import { openPostgres } from './postgres.ts';
import { openSqlite } from './sqlite.ts';
import type { Tables } from './tables.ts';

/** Where things are kept, and what time it is. */
export interface Store {
  readonly db: Kysely<Tables>;
  readonly kind: DatabaseKind;
  readonly now: () => Date;
  /** @throws Error where the database does not answer */
  readonly ping: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface StoreSettings {
  /** Folder of the SQLite file and of copies made before a migration. */
  readonly dataFolder: string;
  /** Address of a PostgreSQL database, which then holds everything; empty for none. */
  readonly databaseUrl: string;
}

/**
 * Opens the store and brings it to the newest schema.
 *
 * @throws Error with a sentence for whoever started the program
 */
export async function openStore(
  { dataFolder, databaseUrl }: StoreSettings,
  now = (): Date => new Date(),
): Promise<Store> {
  const file = databaseUrl === '' ? openSqlite(dataFolder) : undefined;
  const kind: DatabaseKind = file === undefined ? 'postgres' : 'sqlite';
  const db = new Kysely<Tables>({
    dialect: file?.dialect ?? openPostgres(databaseUrl),
    plugins: [new CamelCasePlugin()],
  });
  try {
    await migrate(db, kind, now, (version) => {
      file?.copyTo(copyName(dataFolder, version, now()));
      return Promise.resolve();
    });
  } catch (error) {
    await db.destroy();
    throw databaseUrl === '' ? error : new Error(noDatabase(error), { cause: error });
  }
  const ping = async (): Promise<void> => {
    await sql`select 1`.execute(db);
  };
  return { db, kind, now, ping, close: () => db.destroy() };
}

/** A name nothing has yet, since a copy never replaces another. */
function copyName(folder: string, version: number, at: Date): string {
  const copies = join(folder, 'copies');
  mkdirSync(copies, { recursive: true });
  const stem = `schema-${version}-${at.toISOString().replaceAll(':', '-').slice(0, 19)}`;
  for (let count = 1; ; count++) {
    const name = join(copies, `${stem}${count === 1 ? '' : `-${count}`}.sqlite`);
    if (!existsSync(name)) return name;
  }
}

function noDatabase(error: unknown): string {
  const reason = error instanceof Error ? error.message || error.name : String(error);
  return `The database of DATABASE_URL can't be used: ${reason}.`;
}

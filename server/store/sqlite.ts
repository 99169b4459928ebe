import { accessSync, constants, existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'libsql';
import { SqliteDialect, type Dialect, type SqliteDatabase } from 'kysely';

const fileName = 'shelf-check.sqlite';
const patience_ms = 5_000;
const nothingDone = { changes: 0, lastInsertRowid: 0 };

/** An opened file, and how to copy it while it is in use. */
export interface SqliteFile {
  readonly dialect: Dialect;
  readonly copyTo: (file: string) => void;
}

/**
 * Opens the one file of a data folder, and makes both where they are not there yet. Every commit is on the disk before it
 * is acknowledged; readers and a writer don't wait for one another.
 *
 * @throws Error with a sentence for whoever started the program, where the folder can't be written in
 */
export function openSqlite(folder: string): SqliteFile {
  const file = join(folder, fileName);
  try {
    if (!existsSync(folder)) mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK | constants.X_OK);
    if (existsSync(file)) accessSync(file, constants.W_OK | constants.R_OK);
    const connection = new Connection(file);
    return {
      dialect: new SqliteDialect({ database: connection }),
      copyTo: (copy) => connection.copyTo(copy),
    };
  } catch (error) {
    throw new Error(cannotKeep(folder, error), { cause: error });
  }
}

/**
 * A connection whose transactions take the lock as they begin, so that one that must wait has read nothing yet that could
 * be old. The library leaves a statement open that found the file held by another program, and nothing could be committed
 * beside it: the next statement goes over a new connection.
 */
class Connection implements SqliteDatabase {
  private readonly file: string;
  private database: Database.Database;
  private isStuck = false;

  constructor(file: string) {
    this.file = file;
    this.database = connect(file);
  }

  prepare(text: string): ReturnType<SqliteDatabase['prepare']> {
    if (this.isStuck) {
      this.database.close();
      this.database = connect(this.file);
      this.isStuck = false;
    }
    const statement = this.database.prepare(text === 'begin' ? 'begin immediate' : text);
    // A full disk ends the transaction by itself: there is nothing left to take back then.
    const isOver = (): boolean => text === 'rollback' && !this.database.inTransaction;
    return {
      reader: statement.reader,
      all: (values) => this.watch(() => statement.all(...values)),
      run: (values) => this.watch(() => (isOver() ? nothingDone : statement.run(...values))),
      iterate: (values) => statement.iterate(...values),
    };
  }

  copyTo(copy: string): void {
    this.database.prepare('vacuum into ?').run(copy);
  }

  close(): void {
    this.database.close();
  }

  private watch<T>(work: () => T): T {
    try {
      return work();
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : '';
      this.isStuck = code.startsWith('SQLITE_BUSY');
      throw error;
    }
  }
}

function connect(file: string): Database.Database {
  const database = new Database(file);
  database.exec(`pragma busy_timeout = ${patience_ms}`);
  database.exec('pragma journal_mode = wal');
  database.exec('pragma synchronous = full');
  database.exec('pragma foreign_keys = on');
  return database;
}

function cannotKeep(folder: string, error: unknown): string {
  const reason = error instanceof Error ? error.message : String(error);
  return (
    `The jobs can't be kept in the folder "${folder}": ${reason}. ` +
    'Set DATA_DIR to a folder this program may write in.'
  );
}

import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir, userInfo } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import pg from 'pg';
import { findPostgres } from '../../run/postgres.ts';

/** A PostgreSQL server of our own in a folder of its own, which listens on a socket in it and on no port. */
export interface PostgresServer {
  /** Makes an empty database. @returns its address, as for `DATABASE_URL` */
  readonly newDatabase: () => Promise<string>;
  /** Ends every connection and the server at once, as a crash does. */
  readonly crash: () => Promise<void>;
  readonly start: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/** The server does not run as root; this user is on every system and owns nothing. */
const nobody = 65_534;
const programs = findPostgres();

/** Whether a PostgreSQL server can be had here; where not, the tests that need one are skipped and counted. */
export const hasPostgres = programs !== undefined;

if (!hasPostgres) {
  console.warn('There is no PostgreSQL server (package postgresql): the tests that need one are skipped.');
}

export async function startPostgres(): Promise<PostgresServer> {
  if (programs === undefined) throw new Error('There is no PostgreSQL server here.');
  const isRoot = process.getuid?.() === 0;
  const folder = mkdtempSync(join(tmpdir(), 'postgres-'));
  if (isRoot) chownSync(folder, nobody, nobody);
  const as = isRoot ? { uid: nobody, gid: nobody } : {};
  const user = isRoot ? 'nobody' : userInfo().username;
  const data = join(folder, 'data');
  const initialise = ['-D', data, '--auth=trust', '--encoding=UTF8', '--locale=C.UTF-8', '--no-sync'];
  execFileSync(join(programs, 'initdb'), initialise, { ...as, cwd: folder, stdio: 'pipe' });
  const address = (name: string): string => `postgresql://${user}@localhost/${name}?host=${folder}`;
  let server: ChildProcess | undefined;
  let count = 0;
  const start = async (): Promise<void> => {
    const words = ['-D', data, '-k', folder, '-c', 'listen_addresses=', '-c', 'fsync=off'];
    server = spawn(join(programs, 'postgres'), words, { ...as, cwd: folder, stdio: 'ignore' });
    await untilItAnswers(address('postgres'));
  };
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    if (server === undefined) return;
    const ended = once(server, 'exit');
    server.kill(signal);
    await ended;
    server = undefined;
  };
  await start();
  return {
    newDatabase: async () => {
      const name = `store_${++count}`;
      await query(address('postgres'), `create database ${name}`);
      return address(name);
    },
    crash: () => end('SIGQUIT'),
    start,
    close: async () => {
      await end('SIGINT');
      if (existsSync(folder)) rmSync(folder, { recursive: true });
    },
  };
}

async function query(url: string, text: string): Promise<void> {
  const client = new pg.Client(url);
  client.on('error', () => undefined);
  await client.connect();
  try {
    await client.query(text);
  } finally {
    await client.end();
  }
}

async function untilItAnswers(url: string): Promise<void> {
  for (let tries = 0; tries < 200; tries++) {
    try {
      await query(url, 'select 1');
      return;
    } catch {
      await wait(50);
    }
  }
  throw new Error('The PostgreSQL server did not start.');
}

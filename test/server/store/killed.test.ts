import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStore } from '../../../server/store/open-store.ts';
import { hasPostgres, startPostgres, type PostgresServer } from './postgres-server.ts';

type Place = Parameters<typeof openStore>[0];

/** Starts a program that saves, kills it at once after a while. @returns what it had told of each check by then */
async function saveAndKill(place: Place, after_ms: number): Promise<Map<string, number>> {
  const file = join(import.meta.dirname, 'saving-child.ts');
  const words = ['--import', 'ts-blank-space/register', file, place.dataFolder, place.databaseUrl];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] });
  let told = '';
  let complaint = '';
  child.stdout.on('data', (chunk: Buffer) => (told += chunk.toString()));
  child.stderr.on('data', (chunk: Buffer) => (complaint += chunk.toString()));
  const ended = once(child, 'close');
  await Promise.race([once(child.stdout, 'data'), ended]);
  await wait(after_ms);
  child.kill('SIGKILL');
  await ended;
  expect(complaint).toBe('');
  const lines = told.split('\n').slice(0, -1);
  return new Map(
    lines.map((line): [string, number] => [line.split(' ')[0] ?? '', Number(line.split(' ')[1])]),
  );
}

/** Every save that was told of is there, with a whole history up to it and nothing beside it. */
async function expectWhole(place: Place, told: ReadonlyMap<string, number>): Promise<void> {
  const store = await openStore(place);
  try {
    if (store.kind === 'sqlite') {
      const { rows } = await sql<{ integrityCheck: string }>`pragma integrity_check`.execute(store.db);
      expect(rows).toEqual([{ integrityCheck: 'ok' }]);
      expect((await sql`pragma foreign_key_check`.execute(store.db)).rows).toEqual([]);
    }
    for (const [id, turn] of told) {
      const check = await store.db
        .selectFrom('jobCheck')
        .selectAll()
        .where('id', '=', id)
        .executeTakeFirstOrThrow();
      const last = check.version - 1;
      expect(last).toBeGreaterThanOrEqual(turn);
      expect(last).toBeLessThanOrEqual(turn + 1);
      expect(check.form).toBe(`n=${last}&padding=${'x'.repeat(3000)}`);
      const revisions = await store.db
        .selectFrom('revision')
        .select(['number', 'version', 'form'])
        .where('checkId', '=', id)
        .orderBy('number')
        .execute();
      expect(revisions.map(({ number }) => number)).toEqual(revisions.map((_, i) => i + 1));
      expect(revisions).toHaveLength(check.lastRevision);
      expect(revisions.at(-1)).toMatchObject({ version: check.version, form: check.form });
    }
  } finally {
    await store.close();
  }
}

const delays_ms = [0, 3, 11, 20, 37, 50, 64, 90, 120, 150];

describe('a program killed in the middle of saving', () => {
  let folder = '';
  let server: PostgresServer | undefined;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'store-'));
    if (hasPostgres) server = await startPostgres();
  });
  afterAll(async () => {
    await server?.close();
    rmSync(folder, { recursive: true });
  });

  it('has kept every save it told of, in the file', { timeout: 120_000 }, async () => {
    const told = new Map<string, number>();
    for (const delay of delays_ms) {
      for (const [id, turn] of await saveAndKill({ dataFolder: folder, databaseUrl: '' }, delay))
        told.set(id, turn);
      await expectWhole({ dataFolder: folder, databaseUrl: '' }, told);
    }
    expect(told.size).toBe(delays_ms.length);
  });

  it.skipIf(!hasPostgres)('has kept every save it told of, in PostgreSQL', { timeout: 120_000 }, async () => {
    const place = { dataFolder: '', databaseUrl: (await server?.newDatabase()) ?? '' };
    const told = new Map<string, number>();
    for (const delay of delays_ms.slice(0, 4)) {
      for (const [id, turn] of await saveAndKill(place, delay)) told.set(id, turn);
      await wait(100);
      await expectWhole(place, told);
    }
    expect(told.size).toBe(4);
  });
});

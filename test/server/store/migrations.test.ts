import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import pg from 'pg';
import { describe, expect, it } from 'vitest';
import { readCheck, readChecks } from '../../../server/store/checks.ts';
import { insertIssued, listIssued } from '../../../server/store/issued.ts';
import { readJob } from '../../../server/store/jobs.ts';
import { openStore } from '../../../server/store/open-store.ts';
import { listPeople } from '../../../server/store/people.ts';
import { listLinks } from '../../../server/store/share-links.ts';
import { here } from './both.ts';
import { newIssued } from './new-issued.ts';
import { hasPostgres, startPostgres } from './postgres-server.ts';

const old = readFileSync(join(import.meta.dirname, 'schema-2.sql'), 'utf8');

/** Opens an old database with this version: what was in it is there, and sheets can be issued of it. */
async function expectTakenOver(place: Parameters<typeof openStore>[0]): Promise<void> {
  const store = await openStore(place);
  try {
    expect(await readJob(store, here, 'job-7')).toMatchObject({
      number: 7,
      name: 'House by the mill',
      version: 3,
    });
    expect((await readChecks(store, here, 'job-7')).map(({ id }) => id)).toEqual(['check-2']);
    expect(await listPeople(store, here)).toHaveLength(1);
    expect(await listLinks(store, here, 'job-7')).toHaveLength(1);
    expect(await listIssued(store, here, 'job-7')).toEqual([]);
    const check = await readCheck(store, here, 'job-7', 'check-2');
    if (check === undefined) throw new Error('no check');
    expect(await insertIssued(store, here, newIssued(check, 1), { job: 3, check: 4 })).toBe('issued');
  } finally {
    await store.close();
  }
  const again = await openStore(place);
  expect(await listIssued(again, here, 'job-7')).toHaveLength(1);
  await again.close();
}

describe('a database of schema 2', () => {
  it('is taken over with all that is in it, and a copy of it is kept, on SQLite', async () => {
    const dataFolder = mkdtempSync(join(tmpdir(), 'store-'));
    mkdirSync(dataFolder, { recursive: true });
    const file = new Database(join(dataFolder, 'shelf-check.sqlite'));
    file.exec(old);
    file.close();
    await expectTakenOver({ dataFolder, databaseUrl: '' });
    const [copy = '', ...others] = readdirSync(join(dataFolder, 'copies'));
    expect([copy.startsWith('schema-2-'), others]).toEqual([true, []]);
    const kept = new Database(join(dataFolder, 'copies', copy));
    expect(kept.prepare('select max(version) as version from schema_version').all()).toEqual([
      { version: 2 },
    ]);
    expect(kept.prepare("select name from sqlite_master where name = 'issued_sheet'").all()).toEqual([]);
    kept.close();
    rmSync(dataFolder, { recursive: true });
  });

  it.skipIf(!hasPostgres)('is taken over with all that is in it, on PostgreSQL', async () => {
    const server = await startPostgres();
    try {
      const databaseUrl = await server.newDatabase();
      const client = new pg.Client(databaseUrl);
      await client.connect();
      await client.query(old);
      await client.end();
      await expectTakenOver({ dataFolder: '', databaseUrl });
    } finally {
      await server.close();
    }
  });
});

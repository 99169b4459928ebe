import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe } from 'vitest';
import type { Actor } from '../../../server/store/actor.ts';
import { ensureOffice } from '../../../server/store/offices.ts';
import { openStore, type Store } from '../../../server/store/open-store.ts';
import { hasPostgres, startPostgres, type PostgresServer } from './postgres-server.ts';

/** What a test of the store works with. */
export interface Bench {
  /** An empty store with two offices in it. */
  readonly open: () => Promise<Store>;
  /** The clock of every store opened; it stands still until it is moved. */
  readonly clock: { now: Date };
}

export const here: Actor = { officeId: 'here', name: 'A. Nyone' };
export const there: Actor = { officeId: 'there', name: 'S. O. Else' };

/** Runs the same tests on SQLite and on a real PostgreSQL. */
export function onBoth(title: string, tests: (bench: Bench) => void): void {
  describe(`${title}, on SQLite`, () => {
    const folders: string[] = [];
    withStores(tests, () => {
      const dataFolder = mkdtempSync(join(tmpdir(), 'store-'));
      folders.push(dataFolder);
      return Promise.resolve({ dataFolder, databaseUrl: '' });
    });
    afterAll(() => {
      for (const folder of folders) rmSync(folder, { recursive: true });
    });
  });
  describe.skipIf(!hasPostgres)(`${title}, on PostgreSQL`, () => {
    let server: PostgresServer | undefined;
    beforeAll(async () => {
      server = await startPostgres();
    });
    withStores(tests, async () => ({ dataFolder: '', databaseUrl: (await server?.newDatabase()) ?? '' }));
    afterAll(() => server?.close());
  });
}

function withStores(
  tests: (bench: Bench) => void,
  place: () => Promise<Parameters<typeof openStore>[0]>,
): void {
  const clock = { now: new Date('2026-03-14T14:02:00Z') };
  const opened: Store[] = [];
  afterEach(async () => {
    for (const store of opened.splice(0)) await store.close();
    clock.now = new Date('2026-03-14T14:02:00Z');
  });
  tests({
    clock,
    open: async () => {
      const store = await openStore(await place(), () => clock.now);
      opened.push(store);
      await ensureOffice(store, here.officeId, 'Here');
      await ensureOffice(store, there.officeId, 'There');
      return store;
    },
  });
}

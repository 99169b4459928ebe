import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkInPlace } from '../../server/check/in-place.ts';
import { demoCheck } from '../../server/demo.ts';
import { fillForm, queryOf, textsOf } from '../../server/form/index.ts';
import { standingOf } from '../../server/check/standing.ts';
import type { Actor } from '../../server/store/actor.ts';
import { addCheck, insertCheck } from '../../server/store/checks.ts';
import { countJobs, listJobs, type JobQuery } from '../../server/store/job-list.ts';
import { insertJob, makeJob, noWords } from '../../server/store/jobs.ts';
import { ensureOffice } from '../../server/store/offices.ts';
import { openStore, type Store } from '../../server/store/open-store.ts';
import { saveCheck } from '../../server/store/save-check.ts';
import { figures, type Row } from './report.ts';
import { median } from './timing.ts';

const mostForSave_ms = 10;
const mostForList_ms = 50;
const checksEach = 2;
const actor: Actor = { officeId: 'bench', name: 'A. Nyone' };
const form = queryOf(fillForm(demoCheck));

/**
 * Saving a check with its revision, on the disk before it is acknowledged; and the list of an office with many jobs, its counts
 * with it, by each way to look at it.
 */
export async function storeCost({
  saves,
  jobs,
  lists,
}: Record<'saves' | 'jobs' | 'lists', number>): Promise<Row[]> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bench-store-'));
  const store = await openStore({ dataFolder, databaseUrl: '' });
  try {
    await ensureOffice(store, actor.officeId, 'Bench');
    return [await saveRow(store, saves), await listRow(store, jobs, lists)];
  } finally {
    await store.close();
    rmSync(dataFolder, { recursive: true });
  }
}

async function saveRow(store: Store, saves: number): Promise<Row> {
  const standing = standingOf(checkInPlace(textsOf(form)));
  const job = await makeJob(store, actor, { ...noWords, name: 'Saved again and again' });
  const check = await addCheck(store, actor, job.id, { form, standing, reason: '' });
  if (check === undefined) throw new Error('no check was made');
  const spent_ms: number[] = [];
  for (let turn = 1; turn <= saves; turn++) {
    const changed = new URLSearchParams(form);
    changed.set(turn % 2 === 0 ? 'title' : 'board.length', `${60 + (turn % 30)} in`);
    const save = { form: changed.toString(), standing, base: turn, editor: 'page', turn, reason: '' };
    const start = performance.now();
    const saved = await saveCheck(store, actor, job.id, check.id, save);
    spent_ms.push(performance.now() - start);
    if (saved?.kind !== 'saved') throw new Error(`a save came to ${saved?.kind ?? 'nothing'}`);
  }
  const middle = median(spent_ms);
  return {
    what: 'A check saved with its revision, on the disk when it is told, ms',
    measured: figures(middle),
    target: `under ${mostForSave_ms}`,
    met: middle < mostForSave_ms,
    information: `${saves} saves, the slowest twentieth over ${figures(slowest(spent_ms))} ms`,
  };
}

const ways: readonly Pick<JobQuery, 'search' | 'sort'>[] = [
  { search: '', sort: 'changed' },
  { search: '', sort: 'client' },
  { search: 'mill 77', sort: 'name' },
  { search: 'nowhere', sort: 'number' },
];

async function listRow(store: Store, jobs: number, lists: number): Promise<Row> {
  const standing = standingOf(checkInPlace(textsOf(form)));
  await store.db.transaction().execute(async (db) => {
    for (let count = 0; count < jobs; count++) {
      const words = {
        ...noWords,
        name: `House ${count} by the mill`,
        client: `Client ${(count * 7919) % jobs}`,
      };
      const job = await insertJob({ ...store, db }, actor, words);
      for (let each = 0; each < checksEach; each++) {
        await insertCheck({ ...store, db }, actor, job.id, { form, standing, reason: '' });
      }
    }
  });
  const middles: number[] = [];
  for (const way of ways) {
    const spent_ms: number[] = [];
    for (let turn = 0; turn < lists; turn++) {
      const start = performance.now();
      await Promise.all([
        countJobs(store, actor),
        listJobs(store, actor, { ...way, place: 'open', page: turn % 3 === 2 ? 100 : 1 }),
      ]);
      spent_ms.push(performance.now() - start);
    }
    middles.push(median(spent_ms));
  }
  const worst = Math.max(...middles);
  return {
    what: `A page of ${jobs} jobs with ${checksEach} checks each and its counts, the slowest of ${ways.length} ways to look, ms`,
    measured: figures(worst),
    target: `under ${mostForList_ms}`,
    met: worst < mostForList_ms,
    information: `${lists} times each: ${middles.map(figures).join(', ')} ms (last changed, by client, two words, a word that is nowhere)`,
  };
}

function slowest(spent_ms: readonly number[]): number {
  return [...spent_ms].sort((a, b) => a - b)[Math.floor(spent_ms.length * 0.95)] ?? NaN;
}

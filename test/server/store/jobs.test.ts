import { expect, it } from 'vitest';
import { addCheck, readChecks } from '../../../server/store/checks.ts';
import { duplicateJob } from '../../../server/store/copies.ts';
import { countJobs, listJobs, type JobQuery } from '../../../server/store/job-list.ts';
import { changeJob, makeJob, noWords, placeJob, readJob } from '../../../server/store/jobs.ts';
import type { Standing } from '../../../server/store/tables.ts';
import { here, onBoth, there } from './both.ts';

const all: JobQuery = { place: 'open', search: '', sort: 'name', page: 1 };
const holds: Standing = {
  element: 'bracket-shelf',
  title: 'Shelf',
  standing: 'holds',
  governs: 'Bending',
  used: 0.4375,
  tool: '1',
};
const words = (name: string) => ({ ...noWords, name });

onBoth('jobs', ({ open, clock }) => {
  it('are numbered from 1 in each office', async () => {
    const store = await open();
    expect((await makeJob(store, here, words('Kitchen'))).number).toBe(1);
    expect((await makeJob(store, here, words('Larder'))).number).toBe(2);
    expect((await makeJob(store, there, words('Hall'))).number).toBe(1);
  });

  it('never share a number, however many are made at once', async () => {
    const store = await open();
    const made = await Promise.all(Array.from({ length: 20 }, () => makeJob(store, here, words('Kitchen'))));
    expect(made.map(({ number }) => number).sort((a, b) => a - b)).toEqual(made.map((_, i) => i + 1));
  });

  it('belong to one office: another neither sees nor changes them', async () => {
    const store = await open();
    const job = await makeJob(store, here, words('Kitchen'));
    expect(await readJob(store, there, job.id)).toBeUndefined();
    expect(await changeJob(store, there, job.id, 1, words('Mine'))).toBeUndefined();
    expect(await placeJob(store, there, job.id, { isDeleted: 1 })).toBe(false);
    expect(await duplicateJob(store, there, job.id)).toBeUndefined();
    expect(await addCheck(store, there, job.id, { form: '', standing: holds, reason: '' })).toBeUndefined();
    expect((await listJobs(store, there, all)).total).toBe(0);
    expect(await readJob(store, here, job.id)).toEqual(job);
  });

  it('refuse a change that was begun before another, and give back what is there now', async () => {
    const store = await open();
    const job = await makeJob(store, here, words('Kitchen'));
    const first = await changeJob(store, here, job.id, job.version, words('Kitchen, north'));
    expect(first).toMatchObject({ kind: 'changed', job: { name: 'Kitchen, north', version: 2 } });
    const second = await changeJob(store, here, job.id, job.version, words('Kitchen, south'));
    expect(second).toMatchObject({ kind: 'stale', job: { name: 'Kitchen, north', version: 2 } });
    expect(await readJob(store, here, job.id)).toMatchObject({ name: 'Kitchen, north' });
  });

  it.each([
    ['every word, in any field and order', 'oak lane', ['Ash']],
    ['without regard to case and marks', 'CAFE', ['Café']],
    ['taking signs of a pattern as themselves', '50%', ['50% off']],
    ['taking an underline as itself', '_', []],
    ['taking a quotation mark as itself', "o'h", ["O'Hare"]],
    ['by number', 'job 2', ['Café']],
    ['nothing where nothing fits', 'zinc', []],
  ])('are found by %s', async (_how, search, expected) => {
    const store = await open();
    await makeJob(store, here, { ...words('Ash'), client: 'Oakley', address: '3 Long Lane' });
    for (const name of ['Café', '50% off', "O'Hare"]) await makeJob(store, here, words(name));
    const { jobs, total } = await listJobs(store, here, { ...all, search });
    expect(jobs.map(({ name }) => name)).toEqual(expected);
    expect(total).toBe(expected.length);
  });

  it('are sorted by name as people sort, by number and by last change', async () => {
    const store = await open();
    const made = [];
    for (const name of ['beech', 'Ash', 'Élm', 'elder']) {
      clock.now = new Date(clock.now.getTime() + 1000);
      made.push(await makeJob(store, here, words(name)));
    }
    clock.now = new Date(clock.now.getTime() + 1000);
    await changeJob(store, here, made[1]?.id ?? '', 1, words('Ash'));
    const names = async (sort: JobQuery['sort']): Promise<string[]> =>
      (await listJobs(store, here, { ...all, sort })).jobs.map(({ name }) => name);
    expect(await names('name')).toEqual(['Ash', 'beech', 'elder', 'Élm']);
    expect(await names('number')).toEqual(['elder', 'Élm', 'Ash', 'beech']);
    expect(await names('changed')).toEqual(['Ash', 'elder', 'Élm', 'beech']);
  });

  it('come in pages, each job on one of them', async () => {
    const store = await open();
    for (let i = 0; i < 53; i++) await makeJob(store, here, words('Alike'));
    const pages = await Promise.all([1, 2, 3, 99].map((page) => listJobs(store, here, { ...all, page })));
    expect(pages.map(({ jobs }) => jobs.length)).toEqual([25, 25, 3, 3]);
    expect(pages[3]?.page).toBe(3);
    expect(new Set(pages.slice(0, 3).flatMap(({ jobs }) => jobs.map(({ id }) => id))).size).toBe(53);
  });

  it('go away and come back: archived, deleted, and undone', async () => {
    const store = await open();
    const { id } = await makeJob(store, here, words('Kitchen'));
    await placeJob(store, here, id, { isArchived: 1 });
    expect(await countJobs(store, here)).toEqual({ open: 0, archived: 1, deleted: 0 });
    await placeJob(store, here, id, { isDeleted: 1 });
    expect(await countJobs(store, here)).toEqual({ open: 0, archived: 0, deleted: 1 });
    expect((await listJobs(store, here, { ...all, place: 'deleted' })).total).toBe(1);
    await placeJob(store, here, id, { isDeleted: 0 });
    expect((await listJobs(store, here, { ...all, place: 'archived' })).total).toBe(1);
    expect((await listJobs(store, here, all)).total).toBe(0);
  });

  it('show how their checks stand, and are copied with them', async () => {
    const store = await open();
    const job = await makeJob(store, here, words('Kitchen'));
    await addCheck(store, here, job.id, { form: 'title=One', standing: holds, reason: '' });
    await addCheck(store, here, job.id, { form: 'title=Two', standing: holds, reason: '' });
    const copy = await duplicateJob(store, here, job.id);
    expect(copy).toMatchObject({ name: 'Kitchen, copy', number: 2, version: 1 });
    const { jobs } = await listJobs(store, here, all);
    expect(jobs.map(({ checks }) => checks.map(({ used }) => used))).toEqual([
      [0.4375, 0.4375],
      [0.4375, 0.4375],
    ]);
    const forms = (await readChecks(store, here, copy?.id ?? '')).map(({ form }) => form);
    expect(forms).toEqual(['title=One', 'title=Two']);
  });
});

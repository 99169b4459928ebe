import { expect, it } from 'vitest';
import type { Store } from '../../../server/store/open-store.ts';
import {
  addCheck,
  moveCheck,
  placeCheck,
  readCheck,
  readChecks,
  restandCheck,
  type Check,
} from '../../../server/store/checks.ts';
import { duplicateCheck } from '../../../server/store/copies.ts';
import { makeJob, noWords } from '../../../server/store/jobs.ts';
import { listRevisions, readRevision, type CheckSave } from '../../../server/store/revisions.ts';
import { saveCheck } from '../../../server/store/save-check.ts';
import type { Standing } from '../../../server/store/tables.ts';
import { here, onBoth, there } from './both.ts';

const standing: Standing = {
  element: 'bracket-shelf',
  title: 'Shelf',
  standing: 'holds',
  governs: 'Bending',
  used: 0.5,
  tool: '1',
};
const save = (form: string, more: Partial<CheckSave> = {}): CheckSave => ({
  form,
  standing,
  base: 1,
  editor: 'page-a',
  turn: 1,
  reason: '',
  ...more,
});

async function checkIn(store: Store, form = 'length=90&depth=9'): Promise<Check> {
  const job = await makeJob(store, here, { ...noWords, name: 'Kitchen' });
  const check = await addCheck(store, here, job.id, { form, standing, reason: 'begun' });
  if (check === undefined) throw new Error('no check');
  return check;
}

onBoth('checks', ({ open, clock }) => {
  const later = (minutes: number): void => {
    clock.now = new Date(clock.now.getTime() + minutes * 60_000);
  };

  it('are numbered and ordered in their job, and move in it', async () => {
    const store = await open();
    const { jobId } = await checkIn(store, 'a=1');
    for (const form of ['a=2', 'a=3']) await addCheck(store, here, jobId, { form, standing, reason: '' });
    const [first, , third] = await readChecks(store, here, jobId);
    await moveCheck(store, here, jobId, third?.id ?? '', 'up');
    await moveCheck(store, here, jobId, first?.id ?? '', 'up');
    await moveCheck(store, there, jobId, first?.id ?? '', 'down');
    expect((await readChecks(store, here, jobId)).map(({ number }) => number)).toEqual([1, 3, 2]);
  });

  it('are saved with a version that counts', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    const saved = await saveCheck(store, here, jobId, id, save('length=96&depth=9'));
    expect(saved).toMatchObject({ kind: 'saved', check: { version: 2, form: 'length=96&depth=9' } });
    expect(await readCheck(store, here, jobId, id)).toEqual(saved?.check);
  });

  it('are not written where nothing changed', async () => {
    const store = await open();
    const { jobId, id, form } = await checkIn(store);
    expect(await saveCheck(store, here, jobId, id, save(form))).toMatchObject({
      kind: 'unchanged',
      check: { version: 1 },
    });
  });

  it('of two editors, the second to save is refused and sees what the first wrote', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    await saveCheck(store, here, jobId, id, save('length=96'));
    const refused = await saveCheck(store, here, jobId, id, save('length=84', { editor: 'page-b' }));
    expect(refused).toMatchObject({ kind: 'stale', check: { version: 2, form: 'length=96' } });
    expect(await readCheck(store, here, jobId, id)).toMatchObject({ form: 'length=96' });
    const over = save('length=84', { editor: 'page-b', base: 2 });
    expect(await saveCheck(store, here, jobId, id, over)).toMatchObject({ kind: 'saved' });
    const back = save('length=97', { turn: 2, base: 2 });
    expect(await saveCheck(store, here, jobId, id, back)).toMatchObject({
      kind: 'stale',
      check: { version: 3 },
    });
  });

  it('of two editors at the same moment, exactly one saves', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    const both = await Promise.all(
      ['page-a', 'page-b'].map((editor) =>
        saveCheck(store, here, jobId, id, save(`by=${editor}`, { editor })),
      ),
    );
    expect(both.map((each) => each?.kind).sort()).toEqual(['saved', 'stale']);
    const winner = both.find((each) => each?.kind === 'saved');
    expect(await readCheck(store, here, jobId, id)).toMatchObject({ form: winner?.check.form, version: 2 });
  });

  it('take the next save of a page whose last answer was lost, and not one that was overtaken', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    await saveCheck(store, here, jobId, id, save('length=91', { turn: 1 }));
    await saveCheck(store, here, jobId, id, save('length=92', { turn: 3 }));
    const late = await saveCheck(store, here, jobId, id, save('length=9', { turn: 2 }));
    expect(late).toMatchObject({ kind: 'late', check: { form: 'length=92', version: 3 } });
  });

  it('of another office, or deleted, are not there to be saved', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    expect(await saveCheck(store, there, jobId, id, save('length=1'))).toBeUndefined();
    expect(await readCheck(store, there, jobId, id)).toBeUndefined();
    expect(await readChecks(store, there, jobId)).toEqual([]);
    expect(await placeCheck(store, there, id, 1)).toBe(false);
    expect(await duplicateCheck(store, there, jobId, id)).toBeUndefined();
    await placeCheck(store, here, id, 1);
    expect(await saveCheck(store, here, jobId, id, save('length=1'))).toBeUndefined();
    expect(await readChecks(store, here, jobId)).toEqual([]);
    await placeCheck(store, here, id, 0);
    expect(await readChecks(store, here, jobId)).toHaveLength(1);
  });

  it('are copied as they are', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    const copy = await duplicateCheck(store, here, jobId, id);
    expect(copy).toMatchObject({ number: 2, version: 1, form: 'length=90&depth=9', used: 0.5 });
    expect(await readRevision(store, here, copy?.id ?? '', 1)).toMatchObject({
      reason: 'copied from check 1',
    });
  });

  it('can be stood anew without becoming another version', async () => {
    const store = await open();
    const check = await checkIn(store);
    await restandCheck(store, here, check, { ...standing, standing: 'does-not-hold', tool: '2' });
    expect(await readCheck(store, here, check.jobId, check.id)).toEqual({
      ...check,
      standing: 'does-not-hold',
      tool: '2',
    });
  });

  it('have a history: one revision for what goes on in one field, the next for another field, page or day', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store);
    const steps: readonly [string, Partial<CheckSave>, number][] = [
      ['length=9&depth=9', {}, 0],
      ['length=96&depth=9', {}, 1],
      ['length=96&depth=10', {}, 1],
      ['length=96&depth=11', {}, 6],
      ['length=96&depth=12', { editor: 'page-b' }, 0],
      ['length=90&depth=9', { editor: 'page-b', reason: 'put back' }, 0],
    ];
    let base = 1;
    for (const [index, [form, more, minutes]] of steps.entries()) {
      later(minutes);
      const saved = await saveCheck(
        store,
        here,
        jobId,
        id,
        save(form, { turn: index + 1, base: base++, ...more }),
      );
      expect(saved?.kind).toBe('saved');
    }
    const check = await readCheck(store, here, jobId, id);
    if (check === undefined) throw new Error('no check');
    const { revisions } = await listRevisions(store, here, check, 1);
    expect(revisions.map(({ number, form, formBefore }) => [number, form, formBefore])).toEqual([
      [6, 'length=90&depth=9', 'length=96&depth=12'],
      [5, 'length=96&depth=12', 'length=96&depth=11'],
      [4, 'length=96&depth=11', 'length=96&depth=10'],
      [3, 'length=96&depth=10', 'length=96&depth=9'],
      [2, 'length=96&depth=9', 'length=90&depth=9'],
      [1, 'length=90&depth=9', 'length=90&depth=9'],
    ]);
    expect(revisions.map(({ reason }) => reason)).toEqual(['put back', '', '', '', '', 'begun']);
    expect(revisions[4]).toMatchObject({
      version: 3,
      savedBy: 'A. Nyone',
      savedAt: '2026-03-14T14:03:00.000Z',
    });
    expect((await listRevisions(store, there, check, 1)).revisions).toEqual([]);
  });

  it('have a history in pages, each revision with the one before it', async () => {
    const store = await open();
    const { jobId, id } = await checkIn(store, 'a=0');
    for (let i = 1; i <= 40; i++) {
      await saveCheck(store, here, jobId, id, save(`a=${i}`, { base: i, editor: '', turn: 0 }));
    }
    const check = await readCheck(store, here, jobId, id);
    if (check === undefined) throw new Error('no check');
    const pages = await Promise.all([1, 2].map((page) => listRevisions(store, here, check, page)));
    const all = pages.flatMap(({ revisions }) => revisions);
    expect(all.map(({ form }) => form)).toEqual(Array.from({ length: 41 }, (_, i) => `a=${40 - i}`));
    expect(all.slice(0, 40).map(({ formBefore }) => formBefore)).toEqual(
      all.slice(1).map(({ form }) => form),
    );
  });
});

import { sql } from 'kysely';
import { expect, it } from 'vitest';
import { addCheck, placeCheck, type Check } from '../../../server/store/checks.ts';
import {
  findIssued,
  insertIssued,
  listIssued,
  listIssuedOfCheck,
  readFrozenDocument,
  readFrozenPage,
  readFrozenPdf,
  readIssued,
} from '../../../server/store/issued.ts';
import { changeJob, makeJob, noWords, placeJob, type Job } from '../../../server/store/jobs.ts';
import type { Store } from '../../../server/store/open-store.ts';
import { saveCheck } from '../../../server/store/save-check.ts';
import type { Standing } from '../../../server/store/tables.ts';
import { here, onBoth, there } from './both.ts';
import { newIssued } from './new-issued.ts';

const standing: Standing = {
  element: 'bracket-shelf',
  title: 'Shelf',
  standing: 'holds',
  governs: 'Bending',
  used: 0.5,
  tool: '1',
};
const seen = { job: 1, check: 1 };

async function checkIn(store: Store): Promise<{ job: Job; check: Check }> {
  const job = await makeJob(store, here, { ...noWords, name: 'Kitchen' });
  const check = await addCheck(store, here, job.id, { form: 'a=1', standing, reason: '' });
  if (check === undefined) throw new Error('no check');
  return { job, check };
}
const failure = (promise: Promise<unknown>): Promise<string> =>
  promise.then(
    () => 'nothing',
    (error: unknown) => String(error),
  );

onBoth('issued sheets', ({ open, clock }) => {
  it('are kept byte for byte, with who issued them and when', async () => {
    const store = await open();
    const { job, check } = await checkIn(store);
    const sheet = newIssued(check, 1);
    expect(await insertIssued(store, here, sheet, seen)).toBe('issued');
    expect(await readIssued(store, here, sheet.id)).toMatchObject({
      checkId: check.id,
      jobId: job.id,
      number: '1-1',
      revision: 'A',
      fingerprint: sheet.fingerprint,
      verdict: 'holds',
      date: '2026-03-14',
      isSuperseded: false,
      newestRevision: 'A',
      madeAt: clock.now.toISOString(),
      madeBy: here.name,
    });
    expect(await readFrozenDocument(store, here, sheet.id)).toBe(sheet.document);
    expect(await readFrozenPage(store, here, sheet.id)).toBe(sheet.page);
    expect(Buffer.from(sheet.pdf).equals(await readFrozenPdf(store, here, sheet.id))).toBe(true);
  });

  it('are superseded by a later revision of the same check alone', async () => {
    const store = await open();
    const { job, check } = await checkIn(store);
    const other = await addCheck(store, here, job.id, { form: 'a=2', standing, reason: '' });
    for (const [number, of] of [
      [1, check],
      [2, check],
      [1, other ?? check],
      [3, check],
    ] as const) {
      await insertIssued(store, here, newIssued(of, number), seen);
    }
    const rows = (await listIssued(store, here, job.id)).map(
      ({ number, revision, isSuperseded, newestRevision }) =>
        `${number} ${revision} ${isSuperseded ? `by ${newestRevision}` : 'counts'}`,
    );
    expect(rows).toEqual(['1-1 C counts', '1-1 B by C', '1-1 A by C', '1-2 A counts']);
    const ofCheck = await listIssuedOfCheck(store, here, check.id);
    expect(ofCheck.map(({ revision }) => revision)).toEqual(['C', 'B', 'A']);
  });

  it('take each revision once: of two at the same moment one is told that it is taken', async () => {
    const store = await open();
    const { check, job } = await checkIn(store);
    const both = await Promise.all(
      ['one', 'two'].map((id) =>
        insertIssued(
          store,
          here,
          newIssued(check, 1, { id, fingerprint: id, pdfDigest: id, title: id }),
          seen,
        ),
      ),
    );
    expect(both.toSorted()).toEqual(['issued', 'taken']);
    expect(await listIssued(store, here, job.id)).toHaveLength(1);
  });

  it('are not issued of what was changed or deleted since it was seen', async () => {
    const store = await open();
    const { check, job } = await checkIn(store);
    const issue = () => insertIssued(store, here, newIssued(check, 1), seen);
    await placeCheck(store, here, check.id, 1);
    expect(await issue()).toBe('stale');
    await placeCheck(store, here, check.id, 0);
    await placeJob(store, here, job.id, { isDeleted: 1 });
    expect(await issue()).toBe('stale');
    await placeJob(store, here, job.id, { isDeleted: 0 });
    expect(await insertIssued(store, there, newIssued(check, 1), seen)).toBe('stale');
    const save = { form: 'a=2', standing, base: 1, editor: '', turn: 0, reason: '' };
    await saveCheck(store, here, job.id, check.id, save);
    expect(await issue()).toBe('stale');
    await changeJob(store, here, job.id, 1, { ...noWords, name: 'Hall' });
    expect(await insertIssued(store, here, newIssued(check, 1), { job: 1, check: 2 })).toBe('stale');
    expect(await insertIssued(store, here, newIssued(check, 1), { job: 2, check: 2 })).toBe('issued');
  });

  it('never change: the database refuses to write over them and to take them away', async () => {
    const store = await open();
    const { check, job } = await checkIn(store);
    const sheet = newIssued(check, 1);
    await insertIssued(store, here, sheet, seen);
    const before = await store.db.selectFrom('issuedSheet').selectAll().execute();
    const names = Object.keys(before[0] ?? {});
    expect(names.length).toBeGreaterThan(20);
    for (const name of names) {
      const change = store.db
        .updateTable('issuedSheet')
        .set({ [name]: name.endsWith('Number') ? 9 : '9' })
        .execute();
      expect(await failure(change), name).toContain('never changes');
    }
    const parent = store.db.deleteFrom('jobCheck').where('id', '=', check.id).execute();
    expect(await failure(parent)).not.toBe('nothing');
    if (store.kind === 'postgres') {
      expect(await failure(sql`truncate issued_sheet`.execute(store.db))).toContain('never changes');
    }
    expect(await failure(store.db.deleteFrom('issuedSheet').execute())).toContain('never changes');
    expect(await store.db.selectFrom('issuedSheet').selectAll().execute()).toEqual(before);
    await placeCheck(store, here, check.id, 1);
    await placeJob(store, here, job.id, { isDeleted: 1 });
    expect(await readIssued(store, here, sheet.id)).toMatchObject({ revision: 'A' });
    expect(await listIssued(store, here, job.id)).toHaveLength(1);
  });

  it('belong to one office; anybody finds one by what only the sheet itself tells', async () => {
    const store = await open();
    const { check, job } = await checkIn(store);
    const sheet = newIssued(check, 1);
    await insertIssued(store, here, sheet, seen);
    expect(await readIssued(store, there, sheet.id)).toBeUndefined();
    expect(await listIssued(store, there, job.id)).toEqual([]);
    expect(await listIssuedOfCheck(store, there, check.id)).toEqual([]);
    expect(await failure(readFrozenDocument(store, there, sheet.id))).not.toBe('nothing');
    expect(await failure(readFrozenPage(store, there, sheet.id))).not.toBe('nothing');
    expect(await failure(readFrozenPdf(store, there, sheet.id))).not.toBe('nothing');
    for (const by of ['fingerprint', 'pdfDigest', 'id'] as const) {
      expect(await findIssued(store, by, sheet[by])).toMatchObject({ id: sheet.id });
      expect(await findIssued(store, by, sheet[by].slice(1))).toBeUndefined();
    }
  });
});

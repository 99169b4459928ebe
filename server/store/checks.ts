import type { Selectable } from 'kysely';
import type { Actor } from './actor.ts';
import { newId } from './ids.ts';
import type { Store } from './open-store.ts';
import type { Standing, Tables } from './tables.ts';

/** A check of a job: its form, how it stands, and which version of it this is. */
export type Check = Readonly<Selectable<Tables['jobCheck']>>;

/** What a check begins with. */
export interface NewCheck {
  /** The filled-in form, as the query of an address. */
  readonly form: string;
  readonly standing: Standing;
  /** How it came about, in words for the history. */
  readonly reason: string;
}

/** The checks of a job in their order, without the deleted ones. */
export async function readChecks(store: Store, { officeId }: Actor, jobId: string): Promise<Check[]> {
  return store.db
    .selectFrom('jobCheck')
    .selectAll()
    .where('jobId', '=', jobId)
    .where('officeId', '=', officeId)
    .where('isDeleted', '=', 0)
    .orderBy('place')
    .execute();
}

/** One check of a job, deleted or not; undefined: there is none. */
export async function readCheck(
  store: Store,
  { officeId }: Actor,
  jobId: string,
  id: string,
): Promise<Check | undefined> {
  return store.db
    .selectFrom('jobCheck')
    .selectAll()
    .where('id', '=', id)
    .where('jobId', '=', jobId)
    .where('officeId', '=', officeId)
    .executeTakeFirst();
}

/** Adds a check at the end of a job. @returns undefined where the office has no such job */
export async function addCheck(
  store: Store,
  actor: Actor,
  jobId: string,
  check: NewCheck,
): Promise<Check | undefined> {
  return store.db.transaction().execute((db) => insertCheck({ ...store, db }, actor, jobId, check));
}

/** The same, inside a transaction that does more. */
export async function insertCheck(
  store: Store,
  actor: Actor,
  jobId: string,
  { form, standing, reason }: NewCheck,
): Promise<Check | undefined> {
  const at = store.now().toISOString();
  const job = await store.db
    .updateTable('job')
    .set((column) => ({ lastCheckNumber: column('lastCheckNumber', '+', 1), changedAt: at }))
    .where('id', '=', jobId)
    .where('officeId', '=', actor.officeId)
    .returning('lastCheckNumber')
    .executeTakeFirst();
  if (job === undefined) return undefined;
  const number = job.lastCheckNumber;
  const check = await store.db
    .insertInto('jobCheck')
    .values({
      ...standingOnly(standing),
      id: newId(),
      officeId: actor.officeId,
      jobId,
      number,
      place: number,
      version: 1,
      form,
      isDeleted: 0,
      lastRevision: 1,
      editor: '',
      turn: 0,
      madeAt: at,
      changedAt: at,
      changedBy: actor.name,
    })
    .returningAll()
    .executeTakeFirstOrThrow();
  await store.db
    .insertInto('revision')
    .values({
      checkId: check.id,
      officeId: actor.officeId,
      number: 1,
      version: 1,
      form,
      standing: standing.standing,
      changed: '[]',
      reason,
      editor: '',
      madeAt: at,
      savedAt: at,
      savedBy: actor.name,
    })
    .execute();
  return check;
}

/** Deletes a check, or undoes that. @returns whether there is such a check */
export async function placeCheck(
  store: Store,
  { officeId }: Actor,
  id: string,
  isDeleted: 0 | 1,
): Promise<boolean> {
  const { numUpdatedRows } = await store.db
    .updateTable('jobCheck')
    .set({ isDeleted })
    .where('id', '=', id)
    .where('officeId', '=', officeId)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

/** Moves a check one place up or down its job's list; at the end of the list it stays. */
export async function moveCheck(
  store: Store,
  actor: Actor,
  jobId: string,
  id: string,
  way: 'up' | 'down',
): Promise<void> {
  await store.db.transaction().execute(async (db) => {
    const checks = await readChecks({ ...store, db }, actor, jobId);
    const at = checks.findIndex((check) => check.id === id);
    const [moved, other] = [checks[at], checks[way === 'up' ? at - 1 : at + 1]];
    if (moved === undefined || other === undefined) return;
    await db.updateTable('jobCheck').set({ place: other.place }).where('id', '=', moved.id).execute();
    await db.updateTable('jobCheck').set({ place: moved.place }).where('id', '=', other.id).execute();
  });
}

/** Writes down how a check stands, worked out again by another version of the tool. The check itself stays as it is. */
export async function restandCheck(
  store: Store,
  { officeId }: Actor,
  { id, version }: Check,
  standing: Standing,
): Promise<void> {
  await store.db
    .updateTable('jobCheck')
    .set(standingOnly(standing))
    .where('id', '=', id)
    .where('version', '=', version)
    .where('officeId', '=', officeId)
    .execute();
}

/** The standing alone, whatever else the object holds. */
export function standingOnly({ element, title, standing, governs, used, tool }: Standing): Standing {
  return { element, title, standing, governs, used, tool };
}

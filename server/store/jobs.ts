import type { Selectable } from 'kysely';
import type { Actor } from './actor.ts';
import { newId } from './ids.ts';
import type { Store } from './open-store.ts';
import { sortKey } from './sort-key.ts';
import type { JobWords, Tables } from './tables.ts';

/** A job without its checks. */
export type Job = Readonly<Selectable<Tables['job']>>;

/** What came of changing a job: done; or somebody else had changed it since it was read. */
export type JobChange = { readonly kind: 'changed' | 'stale'; readonly job: Job };

/** The words of a job of which nothing is known but its name. */
export const noWords: JobWords = {
  name: '',
  client: '',
  address: '',
  reference: '',
  preparedBy: '',
  checkedBy: '',
  edition: '',
  authority: '',
  notes: '',
};

/** Makes a job under the next number of the office. */
export async function makeJob(store: Store, actor: Actor, words: JobWords): Promise<Job> {
  return store.db.transaction().execute((db) => insertJob({ ...store, db }, actor, words));
}

/** The same, inside a transaction that does more. */
export async function insertJob(store: Store, { officeId }: Actor, words: JobWords): Promise<Job> {
  const { lastJobNumber } = await store.db
    .updateTable('office')
    .set((column) => ({ lastJobNumber: column('lastJobNumber', '+', 1) }))
    .where('id', '=', officeId)
    .returning('lastJobNumber')
    .executeTakeFirstOrThrow();
  const at = store.now().toISOString();
  return store.db
    .insertInto('job')
    .values({
      ...picked(words),
      ...keysOf(words, lastJobNumber),
      id: newId(),
      officeId,
      number: lastJobNumber,
      version: 1,
      isArchived: 0,
      isDeleted: 0,
      madeAt: at,
      changedAt: at,
    })
    .returningAll()
    .executeTakeFirstOrThrow();
}

/** A job of the office, deleted or not; undefined: there is none. */
export async function readJob(store: Store, { officeId }: Actor, id: string): Promise<Job | undefined> {
  return store.db
    .selectFrom('job')
    .selectAll()
    .where('id', '=', id)
    .where('officeId', '=', officeId)
    .executeTakeFirst();
}

/**
 * Changes the words of a job, if nobody has since it was read at a version.
 *
 * @returns the job as it is now; undefined: there is none
 */
export async function changeJob(
  store: Store,
  actor: Actor,
  id: string,
  version: number,
  words: JobWords,
): Promise<JobChange | undefined> {
  return store.db.transaction().execute(async (db) => {
    const inside = { ...store, db };
    const before = await readJob(inside, actor, id);
    if (before === undefined) return undefined;
    const changed = await db
      .updateTable('job')
      .set({
        ...picked(words),
        ...keysOf(words, before.number),
        version: version + 1,
        changedAt: store.now().toISOString(),
      })
      .where('id', '=', id)
      .where('version', '=', version)
      .returningAll()
      .executeTakeFirst();
    if (changed !== undefined) return { kind: 'changed', job: changed };
    return { kind: 'stale', job: (await readJob(inside, actor, id)) ?? before };
  });
}

/** Puts a job away or takes it out again; deletes it or undoes that. @returns whether there is such a job */
export async function placeJob(
  store: Store,
  { officeId }: Actor,
  id: string,
  place: { readonly isArchived: 0 | 1 } | { readonly isDeleted: 0 | 1 },
): Promise<boolean> {
  const { numUpdatedRows } = await store.db
    .updateTable('job')
    .set({ ...place, changedAt: store.now().toISOString() })
    .where('id', '=', id)
    .where('officeId', '=', officeId)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

/** Whether a job has these words already. */
export function hasWords(job: Job, words: JobWords): boolean {
  return JSON.stringify(picked(job)) === JSON.stringify(picked(words));
}

/** The words alone, whatever else the object holds. */
function picked(words: JobWords): JobWords {
  const { name, client, address, reference, preparedBy, checkedBy, edition, authority, notes } = words;
  return { name, client, address, reference, preparedBy, checkedBy, edition, authority, notes };
}

function keysOf({ name, client, address, reference }: JobWords, number: number) {
  return {
    nameKey: sortKey(name),
    clientKey: sortKey(client),
    searchKey: sortKey([name, client, address, reference, `job ${number}`].join(' / ')),
  };
}

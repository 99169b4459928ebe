import type { Selectable } from 'kysely';
import type { Actor } from './actor.ts';
import { newId } from './ids.ts';
import { readJob } from './jobs.ts';
import type { Store } from './open-store.ts';
import { keyHash, newKey } from './secret-keys.ts';
import type { Tables } from './tables.ts';

/** A link that shows a job to whoever has it. */
export type ShareLink = Readonly<Selectable<Tables['shareLink']>>;

const day_ms = 24 * 60 * 60_000;

/** Makes a link to a job. @returns the key in it, which is kept nowhere; undefined: the office has no such job */
export async function makeLink(
  store: Store,
  actor: Actor,
  jobId: string,
  label: string,
  days: number,
): Promise<string | undefined> {
  const job = await readJob(store, actor, jobId);
  if (job === undefined || job.isDeleted === 1) return undefined;
  const key = newKey();
  const at = store.now();
  await store.db
    .insertInto('shareLink')
    .values({
      id: newId(),
      keyHash: keyHash(key),
      officeId: actor.officeId,
      jobId,
      label,
      madeAt: at.toISOString(),
      madeBy: actor.name,
      endsAt: new Date(at.getTime() + days * day_ms).toISOString(),
      isRevoked: 0,
    })
    .execute();
  return key;
}

/** The links to a job that still lead to it, newest first. */
export async function listLinks(store: Store, { officeId }: Actor, jobId: string): Promise<ShareLink[]> {
  return store.db
    .selectFrom('shareLink')
    .selectAll()
    .where('jobId', '=', jobId)
    .where('officeId', '=', officeId)
    .where('isRevoked', '=', 0)
    .where('endsAt', '>', store.now().toISOString())
    .orderBy('madeAt', 'desc')
    .orderBy('id')
    .execute();
}

/** Takes a link back. @returns whether there is such a link */
export async function revokeLink(
  store: Store,
  { officeId }: Actor,
  jobId: string,
  id: string,
): Promise<boolean> {
  const { numUpdatedRows } = await store.db
    .updateTable('shareLink')
    .set({ isRevoked: 1 })
    .where('id', '=', id)
    .where('jobId', '=', jobId)
    .where('officeId', '=', officeId)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

/** The link of a key, for as long as it leads anywhere; `over`: it was taken back or has run out. */
export async function openLink(store: Store, key: string): Promise<ShareLink | 'over' | undefined> {
  const link = await store.db
    .selectFrom('shareLink')
    .selectAll()
    .where('keyHash', '=', keyHash(key))
    .executeTakeFirst();
  if (link === undefined) return undefined;
  return link.isRevoked === 1 || link.endsAt <= store.now().toISOString() ? 'over' : link;
}

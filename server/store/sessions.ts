import type { Store } from './open-store.ts';
import type { Person } from './people.ts';
import { keyHash, newKey } from './secret-keys.ts';

const day_ms = 24 * 60 * 60_000;
/** A session that nobody used for so long has ended. */
const longestIdle_ms = 7 * day_ms;
/** However much it is used, it ends after this. */
export const longestSession_ms = 30 * day_ms;
/** How exactly it is known when a session was last used: writing that down at every request would cost a write each. */
const seenWithin_ms = 60 * 60_000;

/** Whose session it is. */
export interface Session {
  readonly keyHash: string;
  readonly person: Person;
  readonly office: string;
}

/** Begins a session. @returns the key that the browser keeps, and nobody else */
export async function beginSession(store: Store, person: Person): Promise<string> {
  const key = newKey();
  const at = store.now().toISOString();
  await store.db
    .insertInto('session')
    .values({ keyHash: keyHash(key), personId: person.id, officeId: person.officeId, madeAt: at, seenAt: at })
    .execute();
  return key;
}

/** The session of a key, with who may do what by now; undefined: it has ended, or there never was one. */
export async function readSession(store: Store, key: string): Promise<Session | undefined> {
  const now = store.now().getTime();
  const hash = keyHash(key);
  const found = await store.db
    .selectFrom('session')
    .innerJoin('person', 'person.id', 'session.personId')
    .innerJoin('office', 'office.id', 'person.officeId')
    .selectAll('person')
    .select(['session.seenAt', 'session.madeAt as begunAt', 'office.name as office'])
    .where('session.keyHash', '=', hash)
    .where('person.isActive', '=', 1)
    .executeTakeFirst();
  if (found === undefined) return undefined;
  const { seenAt, begunAt, office, ...person } = found;
  const [idle_ms, age_ms] = [now - Date.parse(seenAt), now - Date.parse(begunAt)];
  if (idle_ms > longestIdle_ms || age_ms > longestSession_ms) {
    await endSession(store, hash);
    return undefined;
  }
  if (idle_ms > seenWithin_ms) {
    await store.db
      .updateTable('session')
      .set({ seenAt: store.now().toISOString() })
      .where('keyHash', '=', hash)
      .execute();
  }
  return { keyHash: hash, person, office };
}

/** Ends a session. */
export async function endSession(store: Store, hash: string): Promise<void> {
  await store.db.deleteFrom('session').where('keyHash', '=', hash).execute();
}

/** Throws away the sessions that have ended by themselves. */
export async function clearSessions(store: Store): Promise<void> {
  const before = (ago_ms: number): string => new Date(store.now().getTime() - ago_ms).toISOString();
  await store.db
    .deleteFrom('session')
    .where((is) =>
      is.or([is('seenAt', '<', before(longestIdle_ms)), is('madeAt', '<', before(longestSession_ms))]),
    )
    .execute();
}

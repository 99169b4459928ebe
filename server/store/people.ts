import type { Selectable, Transaction } from 'kysely';
import type { Actor } from './actor.ts';
import { newId } from './ids.ts';
import type { Store } from './open-store.ts';
import type { Role, Tables } from './tables.ts';

/** Somebody who can sign in, or once could. */
export type Person = Readonly<Selectable<Tables['person']>>;

/** What is known of somebody new. */
export interface NewPerson {
  readonly name: string;
  readonly signInName: string;
  /** As `hashPassword` made it. */
  readonly password: string;
  readonly role: Role;
}

/** What came of changing a person; `last-owner`: an office always keeps somebody who can say who may. */
export type PersonChange = 'changed' | 'last-owner' | 'nobody';

/** Adds somebody to the office. @returns undefined where the sign-in name is taken, in whatever office */
export async function addPerson(
  store: Store,
  { officeId }: Actor,
  person: NewPerson,
): Promise<Person | undefined> {
  const { name, signInName, password, role } = person;
  return store.db
    .insertInto('person')
    .values({
      id: newId(),
      officeId,
      name,
      signInName: signInName.toLowerCase(),
      password,
      role,
      isActive: 1,
      madeAt: store.now().toISOString(),
    })
    .onConflict((conflict) => conflict.column('signInName').doNothing())
    .returningAll()
    .executeTakeFirst();
}

/** Whoever signs in by a name, in whatever office; undefined: nobody does. */
export async function personOfName(store: Store, signInName: string): Promise<Person | undefined> {
  return store.db
    .selectFrom('person')
    .selectAll()
    .where('signInName', '=', signInName.toLowerCase())
    .executeTakeFirst();
}

/** The people of the office, by name. */
export async function listPeople(store: Store, { officeId }: Actor): Promise<Person[]> {
  return store.db
    .selectFrom('person')
    .selectAll()
    .where('officeId', '=', officeId)
    .orderBy('name')
    .orderBy('id')
    .execute();
}

/** Whether anybody could sign in and let others in. */
export async function hasOwner(store: Store): Promise<boolean> {
  const owner = await store.db
    .selectFrom('person')
    .select('id')
    .where('role', '=', 'owner')
    .where('isActive', '=', 1)
    .limit(1)
    .executeTakeFirst();
  return owner !== undefined;
}

/** Changes what somebody of the office may do. Who is shut out is signed out everywhere. */
export async function changePerson(
  store: Store,
  { officeId }: Actor,
  id: string,
  change: { readonly role: Role } | { readonly isActive: 0 | 1 },
): Promise<PersonChange> {
  try {
    return await store.db.transaction().execute(async (db) => {
      // The office's row is held, so that two owners can't shut one another out at the same moment.
      await db
        .updateTable('office')
        .set((column) => ({ name: column.ref('name') }))
        .where('id', '=', officeId)
        .execute();
      const { numUpdatedRows } = await db
        .updateTable('person')
        .set(change)
        .where('id', '=', id)
        .where('officeId', '=', officeId)
        .executeTakeFirst();
      if (numUpdatedRows === 0n) return 'nobody';
      if (!(await keepsOwner(db, officeId))) throw new LastOwner();
      if ('isActive' in change && change.isActive === 0) {
        await db.deleteFrom('session').where('personId', '=', id).where('officeId', '=', officeId).execute();
      }
      return 'changed';
    });
  } catch (error) {
    if (error instanceof LastOwner) return 'last-owner';
    throw error;
  }
}

/**
 * Gives somebody of the office another password, and signs them out wherever they are, but for one session.
 *
 * @param kept digest of the session that goes on; empty for none
 * @returns whether there is such a person
 */
export async function changePassword(
  store: Store,
  { officeId }: Actor,
  id: string,
  password: string,
  kept: string,
): Promise<boolean> {
  return store.db.transaction().execute(async (db) => {
    const { numUpdatedRows } = await db
      .updateTable('person')
      .set({ password })
      .where('id', '=', id)
      .where('officeId', '=', officeId)
      .executeTakeFirst();
    await db
      .deleteFrom('session')
      .where('personId', '=', id)
      .where('officeId', '=', officeId)
      .where('keyHash', '!=', kept)
      .execute();
    return numUpdatedRows > 0n;
  });
}

/** Takes a change back. */
class LastOwner extends Error {}

async function keepsOwner(db: Transaction<Tables>, officeId: string): Promise<boolean> {
  const owner = await db
    .selectFrom('person')
    .select('id')
    .where('officeId', '=', officeId)
    .where('role', '=', 'owner')
    .where('isActive', '=', 1)
    .limit(1)
    .executeTakeFirst();
  return owner !== undefined;
}

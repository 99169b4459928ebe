import { ensureOffice, localOffice } from '../store/offices.ts';
import { newId } from '../store/ids.ts';
import type { Store } from '../store/open-store.ts';
import { addPerson } from '../store/people.ts';
import { hashPassword, newPassword } from './password.ts';
import { nameFault, signInNameFault } from './sign-in-name.ts';

/** Who is to own an office. */
export interface OwnerWords {
  readonly office: string;
  readonly name: string;
  readonly signInName: string;
}

export type OwnerMade =
  { readonly ok: true; readonly password: string } | { readonly ok: false; readonly message: string };

/**
 * Makes an owner of an office, and the office where there is none of that name. The first office takes over what was kept on
 * this machine before anybody signed in.
 */
export async function makeOwner(store: Store, { office, name, signInName }: OwnerWords): Promise<OwnerMade> {
  const faults: readonly (readonly [string, string])[] = [
    ['office', nameFault(office)],
    ['name', nameFault(name)],
    ['sign-in', signInNameFault(signInName)],
  ];
  const fault = faults.find(([, message]) => message !== '');
  if (fault !== undefined) return { ok: false, message: `--${fault[0]}: ${fault[1]}` };
  const password = newPassword();
  const kept = await hashPassword(password);
  return store.db.transaction().execute(async (db): Promise<OwnerMade> => {
    const inside = { ...store, db };
    const officeId = await officeOf(inside, office);
    const words = { name, signInName, password: kept, role: 'owner' } as const;
    const person = await addPerson(inside, { officeId, name: '' }, words);
    return person === undefined
      ? { ok: false, message: `--sign-in: "${signInName}" is taken already.` }
      : { ok: true, password };
  });
}

async function officeOf(store: Store, name: string): Promise<string> {
  const known = await store.db
    .selectFrom('person')
    .innerJoin('office', 'office.id', 'person.officeId')
    .select('office.id')
    .where('office.name', '=', name)
    .executeTakeFirst();
  if (known !== undefined) return known.id;
  const anybody = await store.db.selectFrom('person').select('id').limit(1).executeTakeFirst();
  const id = anybody === undefined ? localOffice : newId();
  await ensureOffice(store, id, name);
  await store.db.updateTable('office').set({ name }).where('id', '=', id).execute();
  return id;
}

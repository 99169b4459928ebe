import { hashPassword } from '../../../server/accounts/password.ts';
import { ensureOffice } from '../../../server/store/offices.ts';
import type { Store } from '../../../server/store/open-store.ts';
import { addPerson, type Person } from '../../../server/store/people.ts';
import { beginSession } from '../../../server/store/sessions.ts';
import type { Role } from '../../../server/store/tables.ts';

/** A site as the tests serve it: plain http on this machine, with accounts. */
export const site = { origin: 'http://shelves.test', isSecure: false, proxies: 0 } as const;

export const password = 'four plain words here';
let kept: Promise<string> | undefined;

/** Lets somebody into an office, which is made where there is none yet. */
export async function letIn(store: Store, officeId: string, role: Role, name: string): Promise<Person> {
  await ensureOffice(store, officeId, `Office ${officeId}`);
  kept ??= hashPassword(password);
  const signInName = `${name.replace(/\W/g, '')}@${officeId}.example`;
  const words = { name, signInName, role, password: await kept };
  const person = await addPerson(store, { officeId, name: '' }, words);
  if (person === undefined) throw new Error(`${signInName} is taken`);
  return person;
}

/** The cookie of a new session of somebody. */
export async function cookieOf(store: Store, person: Person): Promise<string> {
  return `session=${await beginSession(store, person)}`;
}

/** Everything offices keep, to see that nothing changed. */
export async function everythingKept(store: Store): Promise<string> {
  const tables = ['job', 'jobCheck', 'revision', 'person', 'shareLink', 'issuedSheet'] as const;
  const rows = await Promise.all(
    tables.map((table) => store.db.selectFrom(table).selectAll().orderBy('madeAt').execute()),
  );
  return JSON.stringify(rows);
}

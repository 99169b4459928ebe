import { ensureOffice, localOffice } from '../store/offices.ts';
import type { Store } from '../store/open-store.ts';
import type { Door } from './door.ts';
import { readSecret, tokenFor } from './token.ts';
import type { Visit } from './visit.ts';

/** Lets whoever uses this machine do everything, without signing in. */
export async function localDoor(store: Store): Promise<Door> {
  await ensureOffice(store, localOffice, 'This machine');
  const visit: Visit = {
    actor: { officeId: localOffice, name: '' },
    role: 'owner',
    token: tokenFor(await readSecret(store), localOffice),
    person: undefined,
  };
  return () => Promise.resolve(visit);
}

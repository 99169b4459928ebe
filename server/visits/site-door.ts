import type { Store } from '../store/open-store.ts';
import { readSession } from '../store/sessions.ts';
import type { Door } from './door.ts';
import { sessionKey, type Site } from './session-cookie.ts';
import { readSecret, tokenFor } from './token.ts';

/**
 * Lets in who has signed in, as what they are by now. The token of the forms is the person's, not the session's: what was
 * written in a page can still be sent after signing in again.
 */
export async function siteDoor(store: Store, site: Site): Promise<Door> {
  const secret = await readSecret(store);
  return async (request) => {
    const key = sessionKey(request, site);
    const session = key === '' ? undefined : await readSession(store, key);
    if (session === undefined) return undefined;
    const { person, office, keyHash } = session;
    return {
      actor: { officeId: person.officeId, name: person.name },
      role: person.role,
      token: tokenFor(secret, person.id),
      person: { id: person.id, signInName: person.signInName, office, keyHash },
    };
  };
}

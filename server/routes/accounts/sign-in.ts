import { Router, type RequestHandler, type Response } from 'express';
import { isPassword } from '../../accounts/password.ts';
import type { Log } from '../../log.ts';
import type { Store } from '../../store/open-store.ts';
import { personOfName } from '../../store/people.ts';
import { beginSession, clearSessions, endSession } from '../../store/sessions.ts';
import { keyHash } from '../../store/secret-keys.ts';
import type { Templates } from '../../templates.ts';
import { pageFrame } from '../../view-models/page.ts';
import type { Limits } from '../../visits/limits.ts';
import { giveKey, sessionKey, type Site } from '../../visits/session-cookie.ts';
import { bytesOf, collectForm, queryOfRequest } from '../page-body.ts';

/** What signing in works with. */
export interface FrontDesk {
  readonly store: Store;
  readonly templates: Templates;
  readonly site: Site;
  readonly limits: Limits;
  readonly log: Log;
}

/** `GET` and `POST /sign-in`: a name and a password, and then on to where somebody was going. */
export function signInRoutes(desk: FrontDesk): Router {
  const router = Router();
  router.get('/sign-in', (request, response) => {
    const next = ownAddress(new URLSearchParams(queryOfRequest(request)).get('next'));
    sendForm(desk, response, 200, { name: '', next, error: '' });
  });
  router.post('/sign-in', collectForm, ...desk.limits.signIn, signIn(desk));
  return router;
}

function signIn(desk: FrontDesk): RequestHandler {
  return async (request, response) => {
    const fields = new URLSearchParams(new TextDecoder().decode(bytesOf(request)));
    const name = (fields.get('name') ?? '').trim().slice(0, 200);
    const next = ownAddress(fields.get('next'));
    const person = await personOfName(desk.store, name);
    const isRight = await isPassword((fields.get('password') ?? '').slice(0, 1000), person?.password);
    desk.log.note('sign-in', { isRight });
    if (person === undefined || !isRight || person.isActive === 0) {
      sendForm(desk, response, 422, { name, next, error: 'Name and password don’t go together.' });
      return;
    }
    const before = sessionKey(request, desk.site);
    if (before !== '') await endSession(desk.store, keyHash(before));
    await clearSessions(desk.store);
    giveKey(response, desk.site, await beginSession(desk.store, person));
    response.set('Cache-Control', 'no-store').redirect(303, next);
  };
}

function sendForm(
  { templates }: FrontDesk,
  response: Response,
  status: number,
  words: { readonly name: string; readonly next: string; readonly error: string },
): void {
  const page = templates.page('sign-in', { ...pageFrame('Sign in'), ...words, hasError: words.error !== '' });
  response.status(status).set('Cache-Control', 'no-store').send(page);
}

/** An address of ours to go on to; the first page where it is none, so that a link can't lead elsewhere. */
function ownAddress(next: string | null): string {
  const base = 'http://own.invalid';
  if (next === null || !next.startsWith('/') || !URL.canParse(next, base)) return '/';
  const { origin, pathname, search } = new URL(next, base);
  return origin === base && !pathname.startsWith('//') ? pathname + search : '/';
}

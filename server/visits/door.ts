import type { Request, RequestHandler, Response } from 'express';
import { isForPrograms } from '../routes/for-programs.ts';
import { sendProblem } from '../routes/api-problem.ts';
import { sendFailure } from '../routes/failures.ts';
import type { Templates } from '../templates.ts';
import type { Visit } from './visit.ts';

/** Tells who asks; undefined: nobody who may come in. */
export type Door = (request: Request) => Promise<Visit | undefined>;

const visits = new WeakMap<Request, Visit>();

/**
 * Lets in whoever the door knows. Everything that is mounted after it is closed to the rest: a page sends them to sign in
 * and back, anything else is refused.
 */
export function guard(templates: Templates, door: Door): RequestHandler {
  return async (request, response, next) => {
    const visit = await door(request);
    if (visit === undefined) {
      turnAway(templates, request, response);
      return;
    }
    visits.set(request, visit);
    next();
  };
}

/**
 * Who asks.
 *
 * @throws Error where no guard stands before the route
 */
export function visitOf(request: Request): Visit {
  const visit = visits.get(request);
  if (visit === undefined) throw new Error('A route is mounted before the guard.');
  return visit;
}

function turnAway(templates: Templates, request: Request, response: Response): void {
  response.set('Cache-Control', 'no-store');
  if (isForPrograms(request)) {
    sendProblem(response, 401, 'Sign in first: this needs the cookie of a session.');
  } else if (request.method === 'GET' && request.get('HX-Request') !== 'true') {
    const next = request.originalUrl === '/' ? '' : `?next=${encodeURIComponent(request.originalUrl)}`;
    response.redirect(303, next.length > longestNext ? '/sign-in' : `/sign-in${next}`);
  } else {
    sendFailure(templates, response, 401, signedOut);
  }
}

/** A check's address may be long, and a header must not be. */
const longestNext = 8000;

const signedOut = {
  heading: 'You are signed out',
  message:
    'Nothing was changed. Sign in in another window, come back to this one, and send it once more: what you wrote is still here.',
};

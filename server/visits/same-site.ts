import type { RequestHandler } from 'express';
import type { Templates } from '../templates.ts';
import { sendFailure } from '../routes/failures.ts';
import type { Site } from './session-cookie.ts';

const reading = new Set(['GET', 'HEAD', 'OPTIONS']);
const forwarded = ['forwarded', 'x-forwarded-for', 'x-forwarded-host', 'via'];
const ownNames = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d+)?$/i;

/**
 * Refuses what another site's page sends: a request that changes something and says it comes from elsewhere, and, where
 * only this machine is served, one that knows this machine by a strange name or was passed on from another machine.
 *
 * @param site where people reach the program; undefined where only this machine is served
 */
export function sameSite(templates: Templates, site: Site | undefined): RequestHandler {
  return (request, response, next) => {
    const host = request.get('host') ?? '';
    const isPassedOn = forwarded.some((name) => request.get(name) !== undefined);
    if (site === undefined && (isPassedOn || !ownNames.test(host))) {
      sendFailure(templates, response, 421, {
        heading: 'That is not the name of this machine',
        message:
          'This program answers this machine alone, at 127.0.0.1 or localhost. For others to reach it, set SITE_ADDRESS and make accounts.',
      });
      return;
    }
    if (
      !reading.has(request.method) &&
      comesFromElsewhere(request.get('sec-fetch-site'), request.get('origin'), site, host)
    ) {
      sendFailure(templates, response, 403, {
        heading: 'That came from another site',
        message: 'A page elsewhere asked for it. Nothing was changed.',
      });
      return;
    }
    next();
  };
}

function comesFromElsewhere(
  from: string | undefined,
  origin: string | undefined,
  site: Site | undefined,
  host: string,
): boolean {
  if (from !== undefined) return from !== 'same-origin' && from !== 'none';
  if (origin === undefined) return false;
  if (site !== undefined) return origin !== site.origin;
  return !URL.canParse(origin) || new URL(origin).host !== host.toLowerCase();
}

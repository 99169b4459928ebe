import type { RequestHandler } from 'express';
import type { Templates } from '../templates.ts';
import { sendFailure } from '../routes/failures.ts';

const reading = new Set(['GET', 'HEAD', 'OPTIONS']);
const ownNames = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d+)?$/i;

/**
 * Refuses what another site's page sends: a request that changes something and says it comes from elsewhere, and, where
 * only this machine is served, one that knows this machine by a strange name.
 */
export function sameSite(templates: Templates, isLocal: boolean): RequestHandler {
  return (request, response, next) => {
    const host = request.get('host') ?? '';
    if (isLocal && !ownNames.test(host)) {
      sendFailure(templates, response, 421, {
        heading: 'That is not the name of this machine',
        message: 'This program answers this machine alone, at 127.0.0.1 or localhost.',
      });
      return;
    }
    if (
      !reading.has(request.method) &&
      comesFromElsewhere(request.get('sec-fetch-site'), request.get('origin'), host)
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

function comesFromElsewhere(site: string | undefined, origin: string | undefined, host: string): boolean {
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return true;
  if (origin === undefined) return false;
  return !URL.canParse(origin) || new URL(origin).host !== host.toLowerCase();
}

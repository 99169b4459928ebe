import { createHash } from 'node:crypto';
import { ipKeyGenerator, rateLimit, type RateLimitRequestHandler } from 'express-rate-limit';
import type { Request } from 'express';
import { sendProblem } from '../routes/api-problem.ts';
import { sendFailure } from '../routes/failures.ts';
import { isForPrograms } from '../routes/for-programs.ts';
import { bytesOf } from '../routes/page-body.ts';
import type { Templates } from '../templates.ts';
import { visitOf } from './door.ts';

const minute_ms = 60_000;

interface Limit {
  readonly most: number;
  readonly in_ms: number;
  readonly by: (request: Request) => string;
  readonly counts?: 'failures';
}

const byAddress = ({ ip = '' }: Request): string => `address ${ipKeyGenerator(ip)}`;
const byPerson = (request: Request): string => visitOf(request).person?.id ?? 'this machine';
const bySignInName = (request: Request): string => {
  const name = new URLSearchParams(new TextDecoder().decode(bytesOf(request))).get('name') ?? '';
  return createHash('sha256').update(name.trim().toLowerCase()).digest('hex');
};

/** How often somebody may ask, before the rest is refused with 429 for a while. */
export interface Limits {
  /** Of the pages that are open to anybody, for one address. */
  readonly open: RateLimitRequestHandler;
  /** Tries to sign in, for one address and for one name. */
  readonly signIn: readonly RateLimitRequestHandler[];
  /** Of somebody who signed in. */
  readonly person: RateLimitRequestHandler;
  /** Of what takes long to work out. */
  readonly search: RateLimitRequestHandler;
}

/** Counters of one process, empty to begin with. */
export function makeLimits(templates: Templates): Limits {
  const limit = ({ most, in_ms, by, counts }: Limit): RateLimitRequestHandler =>
    rateLimit({
      limit: most,
      windowMs: in_ms,
      keyGenerator: by,
      skipSuccessfulRequests: counts === 'failures',
      standardHeaders: 'draft-8',
      legacyHeaders: false,
      handler: (request, response) => {
        const message =
          'That was asked too often in a short time. Wait a while, then try again. Nothing was changed.';
        if (isForPrograms(request)) sendProblem(response, 429, message);
        else sendFailure(templates, response, 429, { heading: 'Too many at once', message });
      },
    });
  return {
    open: limit({ most: 120, in_ms: minute_ms, by: byAddress }),
    signIn: [
      limit({ most: 50, in_ms: 15 * minute_ms, by: byAddress, counts: 'failures' }),
      limit({ most: 10, in_ms: 15 * minute_ms, by: bySignInName, counts: 'failures' }),
    ],
    person: limit({ most: 600, in_ms: minute_ms, by: byPerson }),
    search: limit({ most: 60, in_ms: minute_ms, by: byPerson }),
  };
}

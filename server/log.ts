import { randomBytes } from 'node:crypto';
import type { RequestHandler } from 'express';
import { pino } from 'pino';

/** What is written down of what happens, a line of JSON each, on standard output. */
export interface Log {
  /** Something that happened, by a word of ours. */
  readonly note: (event: string, facts?: Readonly<Record<string, string | number | boolean>>) => void;
  /** A fault, or trouble with the store. */
  readonly report: (error: unknown) => void;
}

/**
 * Opens the log of a program that others use. Nothing of whoever asks is in it: no name, no address of theirs, no address of a
 * page (which may hold a check or a key), no text that was sent.
 */
export function openLog(destination: { readonly write: (line: string) => void } = process.stdout): Log {
  const log = pino({ base: null, timestamp: pino.stdTimeFunctions.isoTime }, destination);
  return {
    note: (event, facts = {}) => {
      log.info({ event, ...facts });
    },
    report: (error) => {
      log.error({ event: 'fault', ...aboutError(error) });
    },
  };
}

/** The log of a program that one person uses: faults alone, in full, on standard error. */
export const quietLog: Log = { note: () => undefined, report: console.error };

/** The kind, code and place of an error; its message may quote what somebody sent. */
function aboutError(error: unknown): Readonly<Record<string, string>> {
  if (!(error instanceof Error)) return { kind: typeof error };
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const places = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  return {
    kind: error.name,
    code,
    at: places
      .slice(0, 8)
      .map((line) => line.trim())
      .join(' | '),
  };
}

/** Writes down each request when it has been answered: what for by its route, what came of it, and how long it took. */
export function logRequests({ note }: Log): RequestHandler {
  return (request, response, next) => {
    const begun = process.hrtime.bigint();
    const id = randomBytes(6).toString('hex');
    response.set('X-Request-Id', id);
    response.once('finish', () => {
      const route: unknown = request.route;
      const path =
        typeof route === 'object' && route !== null && 'path' in route && typeof route.path === 'string'
          ? request.baseUrl + route.path
          : 'none';
      const took_ms = Number((process.hrtime.bigint() - begun) / 1000n) / 1000;
      note('request', { id, method: request.method, route: path, status: response.statusCode, took_ms });
    });
    next();
  };
}

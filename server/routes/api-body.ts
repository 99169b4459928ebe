import { raw, type Request, type RequestHandler } from 'express';
import { readJson, type JsonReading } from '../../shared/check-document/index.ts';
import { sendProblem } from './api-problem.ts';

/** The largest document taken, in bytes. */
const largestBody = 256 * 1024;

const isJson = ['application/json', 'application/*+json'];

/** Turns away what does not say that it is JSON. */
export const requireJson: RequestHandler = (request, response, next) => {
  if (request.get('content-type') !== undefined && request.is(isJson) !== false) {
    next();
    return;
  }
  response.set('Accept-Post', 'application/json');
  sendProblem(response, 415, 'Send the check document as application/json.');
};

/** Collects the bytes of a body up to the largest size. */
export const collectBody: RequestHandler = raw({ type: () => true, limit: largestBody });

/** The JSON of a collected body. */
export function readBody(request: Request): JsonReading {
  const body: unknown = request.body;
  return readJson(body instanceof Uint8Array ? body : new Uint8Array());
}

import type { ErrorRequestHandler, RequestHandler } from 'express';
import { ThreadError } from '../threads/thread-error.ts';
import { sendProblem } from './api-problem.ts';
import { heldUp } from './failures.ts';

/** A method that the resource does not have: names those it has. */
export function otherMethods(...allowed: readonly string[]): RequestHandler {
  return (request, response) => {
    response.set('Allow', allowed.join(', '));
    sendProblem(
      response,
      405,
      `${request.method} is not for this address; it takes ${allowed.join(' or ')}.`,
    );
  };
}

/** An address under the API where nothing is. */
export const nothingHere: RequestHandler = (_request, response) => {
  sendProblem(response, 404, 'There is nothing at this address.');
};

const bodyDetails: Readonly<Record<number, string>> = {
  400: 'The body could not be read.',
  413: 'A check document is at most 256 kB.',
  415: 'The body is packed or lettered in a way that is not taken here: send plain or gzipped UTF-8.',
};

/** Puts what a body reader throws, and a fault of our own, into problem details; a fault is told to `report`. */
export function apiFailures(report: (error: unknown) => void): ErrorRequestHandler {
  return (error: unknown, _request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    const status = statusOf(error);
    const detail = bodyDetails[status];
    if (detail !== undefined) {
      sendProblem(response, status, detail);
      return;
    }
    if (error instanceof ThreadError) {
      if (error.fault === 'ended') report(error);
      response.set('Retry-After', '10');
      sendProblem(response, 503, heldUp[error.fault]);
      return;
    }
    report(error);
    sendProblem(response, 500, 'The fault is on this side; it has been noted.');
  };
}

function statusOf(error: unknown): number {
  return error instanceof Error && 'status' in error && typeof error.status === 'number' ? error.status : 500;
}

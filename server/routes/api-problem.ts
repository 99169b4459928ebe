import { STATUS_CODES } from 'node:http';
import type { Response } from 'express';
import type { FieldError } from '../../shared/check-result.ts';

/** Answers with problem details (RFC 9457). `about:blank` says that the status itself is the kind of problem. */
export function sendProblem(
  response: Response,
  status: number,
  detail: string,
  errors: readonly FieldError[] = [],
): void {
  response
    .status(status)
    .type('application/problem+json')
    .send(
      JSON.stringify({ type: 'about:blank', title: STATUS_CODES[status] ?? 'Error', status, detail, errors }),
    );
}

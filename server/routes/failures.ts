import type { ErrorRequestHandler, RequestHandler } from 'express';
import type { Templates } from '../templates.ts';
import { pageFrame } from '../view-models/page.ts';

/** The page for an address where nothing is. */
export function nothingHere(templates: Templates): RequestHandler {
  return (_request, response) => {
    const words = { heading: 'There is nothing here', message: 'The address may be old, or mistyped.' };
    response.status(404).send(templates.page('failure', { ...pageFrame('Nothing here'), ...words }));
  };
}

const wordsOf: Readonly<Record<number, { readonly heading: string; readonly message: string }>> = {
  400: { heading: 'That could not be read', message: 'What was sent is damaged. Nothing was checked.' },
  413: {
    heading: 'That is too much',
    message: 'A check is at most 256 kB, which none comes near. Nothing was checked.',
  },
};
const ours = {
  heading: 'Something went wrong here',
  message: 'The fault is in this program, and it has been noted. Nothing was checked: there is no answer.',
};

/** The page for a failure; one of our own is told to `report`. */
export function showFailure(templates: Templates, report: (error: unknown) => void): ErrorRequestHandler {
  return (error: unknown, _request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    const status = statusOf(error);
    const words = wordsOf[status];
    if (words === undefined) report(error);
    response
      .status(words === undefined ? 500 : status)
      .send(templates.page('failure', { ...pageFrame('Failure'), ...(words ?? ours) }));
  };
}

function statusOf(error: unknown): number {
  return error instanceof Error && 'status' in error && typeof error.status === 'number' ? error.status : 500;
}

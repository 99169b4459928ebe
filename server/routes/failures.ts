import type { ErrorRequestHandler, RequestHandler, Response } from 'express';
import { sendProblem } from './api-problem.ts';
import { isForPrograms } from './for-programs.ts';
import { troubleOf } from '../store/trouble.ts';
import { ThreadError, type ThreadFault } from '../threads/thread-error.ts';
import type { Templates } from '../templates.ts';
import { pageFrame } from '../view-models/page.ts';

interface Words {
  readonly heading: string;
  readonly message: string;
}

/** Answers with a page that says what went wrong. */
export function sendFailure(templates: Templates, response: Response, status: number, words: Words): void {
  response.status(status).send(templates.page('failure', { ...pageFrame(words.heading), ...words }));
}

/** The page for an address where nothing is. */
export function nothingHere(templates: Templates): RequestHandler {
  return (_request, response) => {
    sendNothing(templates, response);
  };
}

export function sendNothing(templates: Templates, response: Response): void {
  const words = { heading: 'There is nothing here', message: 'The address may be old, or mistyped.' };
  sendFailure(templates, response, 404, words);
}

const wordsOf: Readonly<Record<number, Words>> = {
  400: { heading: 'That could not be read', message: 'What was sent is damaged. Nothing was checked.' },
  413: {
    heading: 'That is too much',
    message: 'A check is at most 256 kB and a job 4 MB, which none comes near. Nothing was read.',
  },
};
const ours = {
  heading: 'Something went wrong here',
  message: 'The fault is in this program, and it has been noted. Nothing was checked: there is no answer.',
};

/** What is said where long work came to nothing. It can be asked for again. */
export const heldUp: Readonly<Record<ThreadFault, string>> = {
  busy: 'Much is being worked out just now, and this would have waited long. Try again in a moment.',
  'too-slow': 'It took too long and was given up. Try again in a moment.',
  ended: 'The part of the program that works it out has stopped; it starts afresh. Try again in a moment.',
  cancelled: 'It was cancelled before it was done.',
};

/** The page for a failure; one of our own is told to `report`, and so is trouble with the store. */
export function showFailure(templates: Templates, report: (error: unknown) => void): ErrorRequestHandler {
  return (error: unknown, request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    const trouble = troubleOf(error);
    if (trouble !== undefined) {
      report(error);
      const heading = 'The jobs can’t be reached just now';
      const message = `${trouble.message} Nothing was changed.`;
      response.set('Retry-After', '30');
      if (isForPrograms(request)) sendProblem(response, 503, message);
      else sendFailure(templates, response, 503, { heading, message });
      return;
    }
    if (error instanceof ThreadError) {
      if (error.fault === 'ended') report(error);
      const message = heldUp[error.fault];
      response.set('Retry-After', '10');
      if (isForPrograms(request)) sendProblem(response, 503, message);
      else
        sendFailure(templates, response, 503, { heading: 'That could not be worked out just now', message });
      return;
    }
    const status = statusOf(error);
    const words = wordsOf[status];
    if (words === undefined) report(error);
    if (isForPrograms(request))
      sendProblem(response, words === undefined ? 500 : status, (words ?? ours).message);
    else sendFailure(templates, response, words === undefined ? 500 : status, words ?? ours);
  };
}

function statusOf(error: unknown): number {
  return error instanceof Error && 'status' in error && typeof error.status === 'number' ? error.status : 500;
}

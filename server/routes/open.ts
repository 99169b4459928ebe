import type { RequestHandler, Response } from 'express';
import { readDocument, readJson } from '../../shared/check-document/index.ts';
import type { FieldError } from '../../shared/check-result.ts';
import { addressOf } from '../check/addresses.ts';
import { longestQuery, sentForm } from '../check/check-state.ts';
import { fillForm } from '../form/index.ts';
import type { CheckDesk } from '../views.ts';
import { pageFrame } from '../view-models/page.ts';
import { sendCheck } from './check.ts';
import { fileOf } from './multipart.ts';
import { bytesOf } from './page-body.ts';

const largestDocument = 256 * 1024;

/** `POST /open`: opens a check document from disk, sent as a file of a form or as it is. */
export function openDocument(desk: CheckDesk): RequestHandler {
  return async (request, response) => {
    const file = fileOf(bytesOf(request), request.get('content-type') ?? '', 'document');
    if (file.length === 0) {
      sendNotOpened(desk, response, 400, 'No file was chosen, or it is empty.');
      return;
    }
    if (file.length > largestDocument) {
      sendNotOpened(desk, response, 413, 'The file is over 256 kB, which no check document comes near.');
      return;
    }
    const json = readJson(file);
    if (!json.ok) {
      sendNotOpened(desk, response, 400, json.message);
      return;
    }
    const reading = readDocument(json.value);
    if (!reading.ok) {
      sendNotOpened(desk, response, 422, 'The file is no check that can be opened.', reading.errors);
      return;
    }
    const address = addressOf(json.value);
    if (address.length <= longestQuery) response.redirect(303, address);
    else await sendCheck(desk, request, response, sentForm(fillForm(json.value)));
  };
}

/** The page that says why a file was not opened. */
export function sendNotOpened(
  { templates }: Pick<CheckDesk, 'templates'>,
  response: Response,
  status: number,
  message: string,
  errors: readonly FieldError[] = [],
): void {
  const shown = errors.map((error) => ({
    place: error.path === '' ? 'the whole file' : error.path,
    message: error.message,
  }));
  response.status(status).send(
    templates.page('not-opened', {
      ...pageFrame('Not opened'),
      message,
      errors: shown,
      hasErrors: shown.length > 0,
    }),
  );
}

import type { RequestHandler, Response } from 'express';
import { sentForm } from '../check/check-state.ts';
import { textsOf, type Texts } from '../form/index.ts';
import { fileName } from '../sheets/file-name.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';

/** `GET /document`: the check as a file to keep, and to open again. */
export const sendDocument: RequestHandler = (request, response) => {
  send(response, textsOf(queryOfRequest(request)));
};

/** `POST /document`: the same for a check that is too long for an address. */
export const sendLongDocument: RequestHandler = (request, response) => {
  send(response, textsOf(new TextDecoder().decode(bytesOf(request))));
};

function send(response: Response, sent: Texts): void {
  const { reading, texts } = sentForm(sent);
  const name = fileName(texts.get('title') ?? '');
  response
    .attachment(`${name}.json`)
    .type('application/json')
    .send(`${JSON.stringify(reading.document, null, 2)}\n`);
}

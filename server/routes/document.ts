import type { RequestHandler } from 'express';
import { checkState, type CheckState } from '../check/check-state.ts';
import { textsOf } from '../form/index.ts';
import { fileName } from '../sheets/file-name.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';

/** `GET /document`: the check as a file to keep, and to open again. */
export const sendDocument: RequestHandler = (request, response) => {
  send(response, checkState(textsOf(queryOfRequest(request)), false));
};

/** `POST /document`: the same for a check that is too long for an address. */
export const sendLongDocument: RequestHandler = (request, response) => {
  send(response, checkState(textsOf(new TextDecoder().decode(bytesOf(request))), false));
};

function send(response: Parameters<RequestHandler>[1], { reading, texts }: CheckState): void {
  const name = fileName(texts.get('title') ?? '');
  response
    .attachment(`${name}.json`)
    .type('application/json')
    .send(`${JSON.stringify(reading.document, null, 2)}\n`);
}

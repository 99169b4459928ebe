import type { RequestHandler } from 'express';
import { sentForm } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import type { CheckDesk } from '../views.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';

/** Names the check, beside the fields of the form. */
const nameOfCheck = 'of';

/**
 * `GET /working`: the lines of working of one check, when it is opened on the page; `POST` for a form that is too long for an
 * address.
 */
export function showWorking({ study }: CheckDesk): RequestHandler {
  return async (request, response) => {
    const isLong = request.method === 'POST';
    const texts = textsOf(isLong ? new TextDecoder().decode(bytesOf(request)) : queryOfRequest(request));
    const check = written(texts, nameOfCheck);
    texts.delete(nameOfCheck);
    const order = { page: 'working', form: sentForm(texts), check } as const;
    const { html, hasAnswer } = await study.page(order, untilGone(response));
    response
      .status(hasAnswer ? 200 : 422)
      .set('Cache-Control', 'no-cache')
      .type('html')
      .send(html);
  };
}

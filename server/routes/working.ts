import type { RequestHandler } from 'express';
import { sentForm } from '../check/check-state.ts';
import { textsOf } from '../form/index.ts';
import type { CheckDesk } from '../views.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';

/**
 * `GET /working/:check`: the lines of working of one check, when it is opened on the page; `POST` for one that is too long for an
 * address.
 */
export function showWorking({ study }: CheckDesk): RequestHandler<{ readonly check: string }> {
  return async (request, response) => {
    const sent =
      request.method === 'POST' ? new TextDecoder().decode(bytesOf(request)) : queryOfRequest(request);
    const order = { page: 'working', form: sentForm(textsOf(sent)), check: request.params.check } as const;
    const { html, hasAnswer } = await study.page(order, untilGone(response));
    response
      .status(hasAnswer ? 200 : 422)
      .set('Cache-Control', 'no-cache')
      .type('html')
      .send(html);
  };
}

import type { RequestHandler } from 'express';
import { DocumentError } from '../../calc/index.ts';
import { documentOf } from '../check/check-state.ts';
import { takesItsTime, type Study } from '../check/study.ts';
import { textsOf } from '../form/index.ts';
import { bytesOf, queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';

/** Works a check that takes its time out in the study, before its page is made from the answer. */
export function thinkAhead(study: Study): RequestHandler {
  return async (request, response, next) => {
    const query =
      request.method === 'POST' ? new TextDecoder().decode(bytesOf(request)) : queryOfRequest(request);
    if (query.includes('counter-')) {
      const document = documentOf(textsOf(query));
      if (takesItsTime(document)) {
        await study.check(document, untilGone(response)).catch((error: unknown) => {
          if (!(error instanceof DocumentError)) throw error;
        });
      }
    }
    next();
  };
}

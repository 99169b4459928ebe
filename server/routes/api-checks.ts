import { Router, type RequestHandler } from 'express';
import { DocumentError } from '../../shared/check-document/index.ts';
import type { Study } from '../check/study.ts';
import { collectBody, readBody, requireJson } from './api-body.ts';
import { sendCatalogue } from './api-catalogue.ts';
import { apiFailures, nothingHere, otherMethods } from './api-failures.ts';
import { sendProblem } from './api-problem.ts';
import { sendSchema } from './api-schema.ts';
import { untilGone } from './until-gone.ts';

type WorkOut = (document: unknown, signal: AbortSignal) => Promise<object>;

/** Answers a document with what is worked out from it. */
function answerWith(workOut: WorkOut): RequestHandler {
  return async (request, response) => {
    const body = readBody(request);
    if (!body.ok) {
      sendProblem(response, 400, body.message);
      return;
    }
    try {
      response.json(await workOut(body.value, untilGone(response)));
    } catch (error) {
      if (!(error instanceof DocumentError)) throw error;
      sendProblem(response, 422, countOf(error.errors.length), error.errors);
    }
  };
}

/**
 * The door for other programs, to be mounted at `/api`.
 *
 * @param study where everything is worked out
 * @param report is told of a fault that is ours, which the caller only sees as a 500
 */
export function apiRoutes(study: Study, report: (error: unknown) => void = console.error): Router {
  const router = Router();
  const answer = (path: string, workOut: WorkOut): void => {
    router.route(path).post(requireJson, collectBody, answerWith(workOut)).all(otherMethods('POST'));
  };
  answer('/checks', (document, signal) => study.check(document, { signal }));
  for (const search of ['layouts', 'props', 'reach'] as const)
    answer(`/${search}`, (document, signal) => study.search(search, document, signal));
  router.route('/schema').get(sendSchema).all(otherMethods('GET', 'HEAD'));
  router.route('/catalogue').get(sendCatalogue).all(otherMethods('GET', 'HEAD'));
  router.use(nothingHere);
  router.use(apiFailures(report));
  return router;
}

function countOf(errors: number): string {
  return `The document can't be checked: it has ${errors === 1 ? 'one error' : `${errors} errors`}.`;
}

import { Router, type RequestHandler } from 'express';
import { check, DocumentError, layouts, reach } from '../../calc/index.ts';
import { takesItsTime, type Study } from '../check/study.ts';
import { collectBody, readBody, requireJson } from './api-body.ts';
import { sendCatalogue } from './api-catalogue.ts';
import { apiFailures, nothingHere, otherMethods } from './api-failures.ts';
import { sendProblem } from './api-problem.ts';
import { sendSchema } from './api-schema.ts';
import { untilGone } from './until-gone.ts';

/** Answers a document with what is worked out from it. */
function answerWith(
  workOut: (document: unknown, signal: AbortSignal) => object | Promise<object>,
): RequestHandler {
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
 * @param study where checks that take their time are worked out
 * @param report is told of a fault that is ours, which the caller only sees as a 500
 */
export function apiRoutes(study: Study, report: (error: unknown) => void = console.error): Router {
  const router = Router();
  const checks = (document: unknown, signal: AbortSignal) =>
    takesItsTime(document) ? study.check(document, signal) : check(document);
  const props = (document: unknown, signal: AbortSignal) => study.props(document, signal);
  for (const [path, workOut] of Object.entries({ checks, layouts, props, reach })) {
    router.route(`/${path}`).post(requireJson, collectBody, answerWith(workOut)).all(otherMethods('POST'));
  }
  router.route('/schema').get(sendSchema).all(otherMethods('GET', 'HEAD'));
  router.route('/catalogue').get(sendCatalogue).all(otherMethods('GET', 'HEAD'));
  router.use(nothingHere);
  router.use(apiFailures(report));
  return router;
}

function countOf(errors: number): string {
  return `The document can't be checked: it has ${errors === 1 ? 'one error' : `${errors} errors`}.`;
}

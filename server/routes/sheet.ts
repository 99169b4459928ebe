import { Router, type RequestHandler } from 'express';
import { checkState } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { paperOf } from '../sheets/paper.ts';
import { runningHead } from '../sheets/running-head.ts';
import type { Templates } from '../templates.ts';
import { createTypesetter } from '../typeset/index.ts';
import { queryOfRequest } from './page-body.ts';
import { sheetModel } from '../view-models/sheet.ts';
import { sheetErrors, sheetPage } from '../view-models/sheet-page.ts';

/**
 * The printed calculation: `/sheet?<the check's query>`, on letter or A4 paper by `paper=`, and the stylesheet that prints its
 * title on every page. A check with errors in it has no sheet: the answer is 422 and the way back.
 */
export function sheetRoutes(templates: Templates): Router {
  const router = Router();
  router.get('/sheet', sheet(templates));
  router.get('/sheet-head.css', sheetHead);
  return router;
}

function sheet(templates: Templates): RequestHandler {
  const typesetter = createTypesetter();
  return (request, response) => {
    const texts = textsOf(queryOfRequest(request));
    const asked = written(texts, 'paper');
    texts.delete('paper');
    if (texts.size === 0) {
      response.redirect(303, '/');
      return;
    }
    const { answer, reading, query } = checkState(texts);
    if (!answer.ok) {
      response.status(422).send(templates.page('sheet-errors', sheetErrors(answer.errors, query)));
      return;
    }
    const { document, result } = answer;
    const model = sheetModel(document, result, typesetter, {
      paper: paperOf(asked, document.units ?? 'inch-pound'),
      fingerprint: fingerprint(reading.document, result.edition.tool),
      query,
    });
    response.send(templates.page('sheet', sheetPage(model)));
  };
}

const sheetHead: RequestHandler = (request, response) => {
  const texts = textsOf(queryOfRequest(request));
  response.type('text/css').send(runningHead(written(texts, 'title'), written(texts, 'mark')));
};

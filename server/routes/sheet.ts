import { Router, type RequestHandler } from 'express';
import { checkState } from '../check/check-state.ts';
import { textsOf, written } from '../form/index.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { paperOf } from '../sheets/paper.ts';
import { runningHead } from '../sheets/running-head.ts';
import type { Templates } from '../templates.ts';
import { createTypesetter } from '../typeset/index.ts';
import { queryOfRequest } from './page-body.ts';
import { sheetModel, type SheetContext } from '../view-models/sheet.ts';
import { installerModel } from '../view-models/installer.ts';
import { installerPage, sheetErrors, sheetPage } from '../view-models/sheet-page.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';

/**
 * The printed calculation, `/sheet?<the check's query>`, and the page that goes to the wall, `/installer?<the same>`, on letter
 * or A4 paper by `paper=`; and the stylesheet that prints a title on every page. A check with errors in it has no sheet: the
 * answer is 422 and the way back.
 */
export function sheetRoutes(templates: Templates): Router {
  const router = Router();
  const typesetter = createTypesetter();
  router.get(
    '/sheet',
    sheet(templates, (document, result, context) =>
      templates.page('sheet', sheetPage(sheetModel(document, result, typesetter, context))),
    ),
  );
  router.get(
    '/installer',
    sheet(templates, (document, result, context) =>
      templates.page('installer', installerPage(installerModel(document, result, context))),
    ),
  );
  router.get('/sheet-head.css', sheetHead);
  return router;
}

type Render = (document: BracketShelfDocument, result: CheckResult, context: SheetContext) => string;

function sheet(templates: Templates, render: Render): RequestHandler {
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
    const page = render(document, result, {
      paper: paperOf(asked, document.units ?? 'inch-pound'),
      fingerprint: fingerprint(reading.document, result.edition.tool),
      query,
    });
    response.send(page);
  };
}

const sheetHead: RequestHandler = (request, response) => {
  const texts = textsOf(queryOfRequest(request));
  response.type('text/css').send(runningHead(written(texts, 'title'), written(texts, 'mark')));
};

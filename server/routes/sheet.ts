import { Router, type RequestHandler } from 'express';
import { written, textsOf } from '../form/index.ts';
import { runningHead } from '../sheets/running-head.ts';
import type { CheckDesk } from '../views.ts';
import { askedSheet } from './asked-sheet.ts';
import { queryOfRequest } from './page-body.ts';
import { untilGone } from './until-gone.ts';
import { sendInstallerPdf, sendSheetPdf, type PdfSender } from './sheet-pdf.ts';

/**
 * The printed calculation, `/sheet?<the check's query>` as a page and `/sheet.pdf?<the same>` as a file, and the page that goes
 * to the wall, `/installer` and `/installer.pdf`, on letter or A4 paper by `paper=`. A check with errors in it has no sheet: the
 * answer is 422 and the way back.
 */
export function sheetRoutes(desk: CheckDesk, sendPdf: PdfSender): Router {
  const router = Router();
  router.get('/sheet', async (request, response) => {
    const asked = await askedSheet(desk, request, response);
    if (asked === undefined) return;
    const { html } = await desk.study.page({ page: 'sheet', asked }, untilGone(response));
    response.type('html').send(html);
  });
  router.get('/sheet.pdf', sendSheetPdf(desk, sendPdf));
  router.get('/installer.pdf', sendInstallerPdf(desk, sendPdf));
  router.get('/installer', async (request, response) => {
    const asked = await askedSheet(desk, request, response);
    if (asked === undefined) return;
    const { checked, context } = asked;
    if (checked.element !== 'bracket-shelf') {
      // How the screws of a fixing are set stands in its calculation.
      response.redirect(303, `/sheet?${context.query}`);
      return;
    }
    const order = { page: 'installer', asked: { checked, context } } as const;
    const { html } = await desk.study.page(order, untilGone(response));
    response.type('html').send(html);
  });
  return router;
}

const mostFootLines = 3;

/** `GET /sheet-head.css`: prints the title, the mark and the foot in its address on every page. */
export const sheetHead: RequestHandler = (request, response) => {
  const texts = textsOf(queryOfRequest(request));
  const foot = new URLSearchParams(queryOfRequest(request)).getAll('foot').slice(0, mostFootLines);
  response.type('text/css').send(runningHead(written(texts, 'title'), written(texts, 'mark'), foot));
};

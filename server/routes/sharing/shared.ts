import { Router, type RequestHandler, type Response } from 'express';
import { textsOf } from '../../form/index.ts';
import { standAnew } from '../../jobs/stand-anew.ts';
import { readCheck, readChecks } from '../../store/checks.ts';
import { listIssued, readIssued, type IssuedSheet } from '../../store/issued.ts';
import { sharedJobPage } from '../../view-models/accounts/shared-job-page.ts';
import { sheetOf, type AskedSheet } from '../../sheets/sheet-of.ts';
import { sentForm } from '../../check/check-state.ts';
import { studiedState } from '../../check/studied-state.ts';
import type { Study } from '../../check/study.ts';
import type { FrontDesk } from '../accounts/sign-in.ts';
import { sendFailure, sendNothing } from '../failures.ts';
import { queryOfRequest } from '../page-body.ts';
import { sendIssuedPage, sendIssuedPdf } from '../issued/sheet.ts';
import type { PdfSender } from '../sheet-pdf.ts';
import { untilGone } from '../until-gone.ts';
import { openShared, partOf, type Shared } from './open-shared.ts';

/** What looking at a job by a link works with. */
interface SharingDesk extends FrontDesk {
  readonly study: Study;
}

/** Sends a sheet whose own addresses all begin with one. */
type Sender = (asked: AskedSheet, below: string, response: Response) => void | Promise<void>;

/**
 * `GET /shared/:key`: a job to be looked at by whoever has the link, and the sheets of its checks below it. A link that was
 * taken back or has run out says so.
 */
export function sharedRoutes(desk: SharingDesk, sendPdf: PdfSender): Router {
  const router = Router();
  router.get('/shared/:key', async (request, response) => {
    const shared = await openShared(desk, request, response);
    if (shared === undefined) return;
    const { job, actor, address } = shared;
    const checks = await standAnew(desk, actor, await readChecks(desk.store, actor, job.id));
    const issued = await listIssued(desk.store, actor, job.id);
    response.send(desk.templates.page('shared-job', sharedJobPage(job, checks, issued, address)));
  });
  router.get(
    '/shared/:key/issued/:sheet',
    issuedSheet(desk, ({ actor, address }, sheet, response) =>
      sendIssuedPage(desk, actor, sheet, response, [], {
        backAddress: address,
        backWords: 'Back to the job',
        pdfAddress: `${address}/issued/${sheet.id}/sheet.pdf`,
        documentAddress: '',
      }),
    ),
  );
  router.get(
    '/shared/:key/issued/:sheet/sheet.pdf',
    issuedSheet(desk, ({ actor }, sheet, response) => sendIssuedPdf(desk, actor, sheet, response)),
  );
  const sheet = (send: Sender) => showSheet(desk, send);
  router.get(
    '/shared/:key/checks/:check',
    sheet(async (asked, below, response) => {
      const { context } = asked;
      const addresses = {
        backAddress: below.replace(/\/checks\/.*$/, ''),
        installerAddress: `${below}/installer`,
        pdfAddress: `${below}/sheet.pdf?paper=${context.paper}`,
        letterAddress: `${below}?paper=letter`,
        a4Address: `${below}?paper=a4`,
      };
      const { html } = await desk.study.page({ page: 'sheet', asked, addresses }, untilGone(response));
      response.type('html').send(html);
    }),
  );
  router.get(
    '/shared/:key/checks/:check/installer',
    sheet(async ({ checked, context }, below, response) => {
      if (checked.element !== 'bracket-shelf') {
        response.redirect(303, below);
        return;
      }
      const addresses = {
        backAddress: below.replace(/\/checks\/.*$/, ''),
        sheetAddress: below,
        pdfAddress: `${below}/installer.pdf?paper=${context.paper}`,
        letterAddress: `${below}/installer?paper=letter`,
        a4Address: `${below}/installer?paper=a4`,
      };
      const order = { page: 'installer', asked: { checked, context }, addresses } as const;
      const { html } = await desk.study.page(order, untilGone(response));
      response.type('html').send(html);
    }),
  );
  router.get(
    '/shared/:key/checks/:check/sheet.pdf',
    sheet((asked, _below, response) => sendPdf.sheet(asked, response)),
  );
  router.get(
    '/shared/:key/checks/:check/installer.pdf',
    sheet((asked, below, response) => sendPdf.installer(asked, response, `${below}/sheet.pdf`)),
  );
  return router;
}

/** An issued sheet of the job of the link. */
function issuedSheet(
  desk: FrontDesk,
  send: (shared: Shared, sheet: IssuedSheet, response: Response) => Promise<void>,
): RequestHandler {
  return async (request, response) => {
    const shared = await openShared(desk, request, response);
    if (shared === undefined) return;
    const sheet = await readIssued(desk.store, shared.actor, partOf(request, 'sheet'));
    if (sheet?.jobId === shared.job.id) await send(shared, sheet, response);
    else sendNothing(desk.templates, response);
  };
}

function showSheet(desk: SharingDesk, send: Sender): RequestHandler {
  return async (request, response) => {
    const shared = await openShared(desk, request, response);
    if (shared === undefined) return;
    const { job, actor, address } = shared;
    const check = await readCheck(desk.store, actor, job.id, partOf(request, 'check'));
    if (check === undefined || check.isDeleted === 1) {
      sendNothing(desk.templates, response);
      return;
    }
    const paper = new URLSearchParams(queryOfRequest(request)).get('paper') ?? '';
    const wish = { waysOut: false, signal: untilGone(response) };
    const asked = sheetOf(await studiedState(desk.study, sentForm(textsOf(check.form)), wish), paper);
    if (asked.ok) await send(asked.sheet, `${address}/checks/${check.id}`, response);
    else sendFailure(desk.templates, response, 422, unfinished);
  };
}

const unfinished = {
  heading: 'This check is not finished',
  message: 'Something in it is still to be put right, so it has no sheet yet.',
};

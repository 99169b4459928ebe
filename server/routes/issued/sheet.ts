import type { Response } from 'express';
import { version } from '../../../calc/version.ts';
import { workedOutToday } from '../../issued/today.ts';
import type { Actor } from '../../store/actor.ts';
import {
  readFrozenDocument,
  readFrozenPage,
  readFrozenPdf,
  readIssued,
  type IssuedSheet,
} from '../../store/issued.ts';
import { issuedPage, type IssuedPlaces } from '../../view-models/issued/issued-page.ts';
import { issuedAddress } from '../../view-models/issued/issued-rows.ts';
import { notAsked, todayView, type TodayView } from '../../view-models/issued/today-view.ts';
import type { Action, Asked } from '../../visits/action.ts';
import { sendNothing } from '../failures.ts';
import type { IssuedDesk } from './issue.ts';

/** What is needed to send what was frozen. */
type Frozen = Pick<IssuedDesk, 'store' | 'templates'>;

/**
 * `GET /issued/:sheet`, `/issued/:sheet/sheet.pdf` and `/issued/:sheet/document`: a sheet's page, its file and its frozen
 * document, as they were issued, whatever became of its check and its job.
 */
export function issuedSheetActions(desk: IssuedDesk): Action[] {
  const action = (path: string, send: (asked: Asked, sheet: IssuedSheet) => Promise<void>): Action => ({
    method: 'get',
    path,
    needs: 'reader',
    act: async (asked) => {
      const sheet = await readIssued(desk.store, asked.visit.actor, asked.part('sheet'));
      if (sheet === undefined) sendNothing(desk.templates, asked.response);
      else await send(asked, sheet);
    },
  });
  return [
    action('/issued/:sheet', async ({ visit, query, response }, sheet) => {
      const address = issuedAddress(sheet);
      const today = await todayOf(desk, visit.actor, sheet, query.has('today'));
      await sendIssuedPage(desk, visit.actor, sheet, response, [today], {
        backAddress: `/jobs/${sheet.jobId}`,
        backWords: 'Back to the job',
        pdfAddress: `${address}/sheet.pdf`,
        documentAddress: `${address}/document`,
      });
    }),
    action('/issued/:sheet/sheet.pdf', ({ visit, response }, sheet) =>
      sendIssuedPdf(desk, visit.actor, sheet, response),
    ),
    action('/issued/:sheet/document', async ({ visit, response }, sheet) => {
      const frozen = await readFrozenDocument(desk.store, visit.actor, sheet.id);
      response
        .attachment(`${nameOf(sheet)}.json`)
        .type('application/json')
        .send(frozen);
    }),
  ];
}

/** Sends the page of a sheet as it was issued. */
export async function sendIssuedPage(
  { store, templates }: Frozen,
  actor: Actor,
  sheet: IssuedSheet,
  response: Response,
  today: readonly TodayView[],
  places: IssuedPlaces,
): Promise<void> {
  const page = await readFrozenPage(store, actor, sheet.id);
  response.send(templates.page('issued', issuedPage(sheet, page, places, today)));
}

/** Sends the file of a sheet as it was issued. */
export async function sendIssuedPdf(
  { store }: Frozen,
  actor: Actor,
  sheet: IssuedSheet,
  response: Response,
): Promise<void> {
  const pdf = await readFrozenPdf(store, actor, sheet.id);
  const end = sheet.isSuperseded ? `-superseded-by-${sheet.newestRevision}` : '';
  response
    .type('application/pdf')
    .set('Content-Disposition', `inline; filename="${nameOf(sheet)}${end}.pdf"`)
    .send(pdf);
}

/** The same version gives the same numbers, so that it is worked out on asking alone. */
async function todayOf(
  { store, study, report }: IssuedDesk,
  actor: Actor,
  sheet: IssuedSheet,
  isAsked: boolean,
): Promise<TodayView> {
  if (sheet.tool === version && !isAsked) return notAsked(sheet.tool, `${issuedAddress(sheet)}?today`);
  const frozen = await readFrozenDocument(store, actor, sheet.id);
  return todayView(await workedOutToday(study, frozen, report), sheet.tool);
}

function nameOf({ number, revision }: IssuedSheet): string {
  return `sheet-${number}-${revision}`;
}

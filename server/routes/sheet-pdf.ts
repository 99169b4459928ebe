import type { RequestHandler, Response } from 'express';
import type { PrintRoom } from '../sheets/pdf/print-room.ts';
import { sheetData } from '../sheets/pdf/sheet-data.ts';
import type { Templates } from '../templates.ts';
import { createTypesetter } from '../typeset/index.ts';
import { sheetModel } from '../view-models/sheet.ts';
import { askedSheet, type AskedSheet } from './asked-sheet.ts';

/**
 * The calculation as a file to keep, `/sheet.pdf?<the check's query>`, on letter or A4 paper by `paper=`. Whoever goes away
 * before their turn is not printed for.
 */
export function sendSheetPdf(templates: Templates, room: PrintRoom): RequestHandler {
  const send = pdfSender(room);
  return async (request, response) => {
    const asked = askedSheet(templates, request, response);
    if (asked !== undefined) await send(asked, response);
  };
}

/** Sends the calculation of a check as a file. */
export function pdfSender(room: PrintRoom): (asked: AskedSheet, response: Response) => Promise<void> {
  const typesetter = createTypesetter((tex) => tex);
  return async ({ checked, context }, response) => {
    const gone = new AbortController();
    response.once('close', () => gone.abort());
    const model = sheetModel(checked, typesetter, context);
    const order = {
      template: 'sheet',
      data: sheetData(model, context.paper),
      madeAt_s: dayOf(model.date),
    } as const;
    const pdf = await room.print(order, gone.signal).catch((error: unknown) => {
      if (gone.signal.aborted) return undefined;
      throw error;
    });
    if (pdf === undefined) return;
    response
      .type('application/pdf')
      .set('Content-Disposition', `inline; filename="${fileName(model.title)}"`);
    response.send(Buffer.from(pdf));
  };
}

/** The day a sheet bears, in seconds since 1970; today's where it bears none. */
function dayOf(date: string): number {
  const day = Date.parse(date === '' ? new Date().toISOString().slice(0, 10) : date);
  return day / 1000;
}

/** A title as a file is named anywhere: `calculation-sheet-display-shelf.pdf`. */
function fileName(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-|-$/g, '');
  return ['calculation-sheet', ...(plain === '' ? [] : [plain])].join('-') + '.pdf';
}

import type { RequestHandler, Response } from 'express';
import { fileName } from '../sheets/file-name.ts';
import { madeAt } from '../sheets/pdf/made-at.ts';
import { paperSheet } from '../sheets/pdf/paper-sheet.ts';
import { createPrintable } from '../sheets/pdf/printable.ts';
import { PdfError, type PdfFault } from '../sheets/pdf/task.ts';
import type { PdfWorkers } from '../sheets/pdf/workers.ts';
import type { Templates } from '../templates.ts';
import { createTypesetter } from '../typeset/index.ts';
import { pageFrame } from '../view-models/page.ts';
import { sheetModel } from '../view-models/sheet.ts';
import { askedSheet, type AskedSheet } from './asked-sheet.ts';

const texAsItIs = (tex: string): string => tex;

/** Sends the calculation of a check as a file. */
export type PdfSender = (asked: AskedSheet, response: Response) => Promise<void>;

/** The calculation as a file to keep, `/sheet.pdf?<the check's query>`, on letter or A4 paper by `paper=`. */
export function sendSheetPdf(templates: Templates, sendPdf: PdfSender): RequestHandler {
  return async (request, response) => {
    const asked = askedSheet(templates, request, response);
    if (asked !== undefined) await sendPdf(asked, response);
  };
}

/** Makes what sends a calculation. It is set in a thread of its own; the work ends where whoever asked has gone. */
export function pdfSender(
  templates: Templates,
  pdfs: PdfWorkers,
  report: (error: unknown) => void,
): PdfSender {
  const typesetter = createTypesetter(texAsItIs);
  const printable = createPrintable();
  return async ({ checked, context }, response) => {
    const model = sheetModel(checked, typesetter, context);
    const gone = new AbortController();
    response.once('close', () => gone.abort());
    try {
      const data = paperSheet(model, printable);
      const pdf = await pdfs.make({ template: 'sheet', data, made_s: madeAt(model.date) }, gone.signal);
      response
        .type('application/pdf')
        .set('Content-Disposition', `inline; filename="calculation-sheet-${fileName(model.title)}.pdf"`)
        .set('Cache-Control', 'no-cache')
        .send(Buffer.from(pdf));
    } catch (error) {
      if (!(error instanceof PdfError)) throw error;
      sendFault(templates, response, error, report);
    }
  };
}

const again = 'The check itself is as it was. Try again in a moment, or print the sheet from its page.';
const waysOut: Readonly<Record<PdfFault, { readonly status: number; readonly message: string }>> = {
  busy: { status: 503, message: `Many sheets are being set just now. ${again}` },
  'too-slow': { status: 503, message: `It took too long and was given up. ${again}` },
  ended: {
    status: 503,
    message: `The part of the program that sets it has stopped; it starts afresh. ${again}`,
  },
  'not-set': {
    status: 500,
    message: 'The fault is in this program, and it has been noted. Print the sheet from its page instead.',
  },
  cancelled: { status: 503, message: again },
};

function sendFault(
  templates: Templates,
  response: Response,
  error: PdfError,
  report: (error: unknown) => void,
): void {
  if (error.fault === 'cancelled' && response.destroyed) return;
  if (error.fault === 'not-set' || error.fault === 'ended') report(error);
  const { status, message } = waysOut[error.fault];
  if (status === 503) response.set('Retry-After', '10');
  const words = { heading: 'There is no PDF of this sheet', message };
  response.status(status).send(templates.page('failure', { ...pageFrame('No PDF'), ...words }));
}

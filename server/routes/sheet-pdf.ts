import type { RequestHandler, Response } from 'express';
import { fileName } from '../sheets/file-name.ts';
import { madeAt } from '../sheets/pdf/made-at.ts';
import { paperInstaller } from '../sheets/pdf/paper-installer.ts';
import { paperSheet } from '../sheets/pdf/paper-sheet.ts';
import { createPrintable } from '../sheets/pdf/printable.ts';
import { PdfError, type PdfFault } from '../sheets/pdf/task.ts';
import type { PdfWorkers } from '../sheets/pdf/workers.ts';
import type { AskedSheet } from '../sheets/sheet-of.ts';
import type { Templates } from '../templates.ts';
import { createTypesetter, texAsItIs } from '../typeset/index.ts';
import { installerModel } from '../view-models/installer.ts';
import { pageFrame } from '../view-models/page.ts';
import { sheetModel } from '../view-models/sheet.ts';
import { askedSheet } from './asked-sheet.ts';
import { untilGone } from './until-gone.ts';

/** Sends the calculation of a check, or the installer's sheet of a shelf, as a file. */
export interface PdfSender {
  readonly sheet: (asked: AskedSheet, response: Response) => Promise<void>;
  /** @param below the address of the calculation's file, for what has no installer's sheet */
  readonly installer: (asked: AskedSheet, response: Response, below: string) => Promise<void>;
}

/** The calculation as a file to keep, `/sheet.pdf?<the check's query>`, on letter or A4 paper by `paper=`. */
export function sendSheetPdf(templates: Templates, send: PdfSender): RequestHandler {
  return async (request, response) => {
    const asked = askedSheet(templates, request, response);
    if (asked !== undefined) await send.sheet(asked, response);
  };
}

/** The page that goes to the wall as a file, `/installer.pdf?<the check's query>`. */
export function sendInstallerPdf(templates: Templates, send: PdfSender): RequestHandler {
  return async (request, response) => {
    const asked = askedSheet(templates, request, response);
    if (asked !== undefined) await send.installer(asked, response, `/sheet.pdf?${asked.context.query}`);
  };
}

/** Makes what sends a file. It is set apart from here; the work ends where whoever asked has gone. */
export function pdfSender(
  templates: Templates,
  pdfs: PdfWorkers,
  report: (error: unknown) => void,
): PdfSender {
  const typesetter = createTypesetter(texAsItIs);
  const printable = createPrintable();
  const send = async (
    template: 'sheet' | 'installer',
    data: object,
    { date, name }: { readonly date: string; readonly name: string },
    response: Response,
  ): Promise<void> => {
    try {
      const task = { template, json: JSON.stringify(data), made_s: madeAt(date) };
      const pdf = await pdfs.make(task, untilGone(response));
      response
        .type('application/pdf')
        .set('Content-Disposition', `inline; filename="${name}.pdf"`)
        .set('Cache-Control', 'no-cache')
        .send(Buffer.from(pdf));
    } catch (error) {
      if (!(error instanceof PdfError)) throw error;
      sendFault(templates, response, error, report);
    }
  };
  return {
    sheet: async ({ checked, context }, response) => {
      const model = sheetModel(checked, typesetter, context);
      const about = { date: model.date, name: `calculation-sheet-${fileName(model.title)}` };
      await send('sheet', paperSheet(model, printable), about, response);
    },
    installer: async ({ checked, context }, response, below) => {
      if (checked.element !== 'bracket-shelf') {
        response.redirect(303, below);
        return;
      }
      const model = installerModel(checked.document, checked.result, context);
      const about = { date: model.date, name: `installers-sheet-${fileName(model.title)}` };
      await send('installer', paperInstaller(model, printable), about, response);
    },
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

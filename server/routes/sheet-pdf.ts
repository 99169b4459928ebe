import type { RequestHandler, Response } from 'express';
import { fileName } from '../sheets/file-name.ts';
import type { PaperSetter } from '../sheets/pdf/set-sheet.ts';
import { PdfError, type PdfFault } from '../sheets/pdf/task.ts';
import type { AskedSheet } from '../sheets/sheet-of.ts';
import type { Templates } from '../templates.ts';
import { pageFrame } from '../view-models/page.ts';
import type { CheckDesk } from '../views.ts';
import { askedSheet } from './asked-sheet.ts';
import { untilGone } from './until-gone.ts';

/** Sends the calculation of a check, or the installer's sheet of a shelf, as a file. */
export interface PdfSender {
  readonly sheet: (asked: AskedSheet, response: Response) => Promise<void>;
  /** @param below the address of the calculation's file, for what has no installer's sheet */
  readonly installer: (asked: AskedSheet, response: Response, below: string) => Promise<void>;
}

/** The calculation as a file to keep, `/sheet.pdf?<the check's query>`, on letter or A4 paper by `paper=`. */
export function sendSheetPdf(desk: CheckDesk, send: PdfSender): RequestHandler {
  return async (request, response) => {
    const asked = await askedSheet(desk, request, response);
    if (asked !== undefined) await send.sheet(asked, response);
  };
}

/** The page that goes to the wall as a file, `/installer.pdf?<the check's query>`. */
export function sendInstallerPdf(desk: CheckDesk, send: PdfSender): RequestHandler {
  return async (request, response) => {
    const asked = await askedSheet(desk, request, response);
    if (asked !== undefined) await send.installer(asked, response, `/sheet.pdf?${asked.context.query}`);
  };
}

/** What setting a PDF for somebody works with. */
export interface PdfDesk {
  readonly templates: Templates;
  readonly setter: PaperSetter;
  /** Is told of a fault that is ours. */
  readonly report: (error: unknown) => void;
}

/** Makes what sends a file. */
export function pdfSender(desk: PdfDesk): PdfSender {
  const send = (
    response: Response,
    name: string,
    make: (signal: AbortSignal) => ReturnType<PaperSetter['sheet']>,
  ) =>
    withPdfFor(desk, response, make, ({ title, pdf }) => {
      response
        .type('application/pdf')
        .set('Content-Disposition', `inline; filename="${name}-${fileName(title)}.pdf"`)
        .set('Cache-Control', 'no-cache')
        .send(pdf);
    });
  return {
    sheet: (asked, response) =>
      send(response, 'calculation-sheet', (signal) => desk.setter.sheet(asked, signal)),
    installer: async ({ checked, context }, response, below) => {
      if (checked.element === 'bracket-shelf')
        await send(response, 'installers-sheet', (signal) =>
          desk.setter.installer({ checked, context }, signal),
        );
      else response.redirect(303, below);
    },
  };
}

/**
 * Does what takes a PDF for whoever waits for a response, and goes on with what was made; where there is no PDF, the response
 * says why. The work ends where whoever asked has gone.
 *
 * @param heading what is said of it where there is none
 */
export async function withPdfFor<Made>(
  desk: Pick<PdfDesk, 'templates' | 'report'>,
  response: Response,
  make: (signal: AbortSignal) => Promise<Made>,
  goOn: (made: Made) => void | Promise<void>,
  heading = 'There is no PDF of this sheet',
): Promise<void> {
  let made: Made;
  try {
    made = await make(untilGone(response));
  } catch (error) {
    if (!(error instanceof PdfError)) throw error;
    sendFault(desk, response, error, heading);
    return;
  }
  await goOn(made);
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
  { templates, report }: Pick<PdfDesk, 'templates' | 'report'>,
  response: Response,
  error: PdfError,
  heading: string,
): void {
  if (error.fault === 'cancelled' && response.destroyed) return;
  if (error.fault === 'not-set' || error.fault === 'ended') report(error);
  const { status, message } = waysOut[error.fault];
  if (status === 503) response.set('Retry-After', '10');
  const words = { heading, message };
  response.status(status).send(templates.page('failure', { ...pageFrame('No PDF'), ...words }));
}

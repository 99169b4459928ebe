import type { ThreadFault } from '../../threads/thread-error.ts';

/** What a setter is asked to set: a template of `views/paper/` and its data. */
export interface PdfTask {
  readonly template: 'sheet' | 'installer' | 'job';
  /** The data as JSON, with formulas in TeX. */
  readonly json: string;
  /** The time of making that is written into the file, seconds since 1970: from the sheet, so that one sheet is one file. */
  readonly made_s: number;
}

/** What a setter says. */
export type PdfReply =
  { readonly ok: true; readonly pdf: Uint8Array } | { readonly ok: false; readonly message: string };

/** Why there is no PDF. */
export type PdfFault = ThreadFault | 'not-set';

export class PdfError extends Error {
  readonly fault: PdfFault;

  constructor(fault: PdfFault, message: string) {
    super(message);
    this.name = 'PdfError';
    this.fault = fault;
  }
}

/** What a worker is asked to set: a template of `views/paper/` and its data. */
export interface PdfTask {
  readonly template: 'sheet' | 'job';
  readonly data: object;
  /** The time of making that is written into the file, seconds since 1970: from the sheet, so that one sheet is one file. */
  readonly made_s: number;
}

/** What a worker says. */
export type PdfReply =
  { readonly ok: true; readonly pdf: Uint8Array } | { readonly ok: false; readonly message: string };

/** Why there is no PDF. */
export type PdfFault = 'busy' | 'too-slow' | 'ended' | 'not-set' | 'cancelled';

export class PdfError extends Error {
  readonly fault: PdfFault;

  constructor(fault: PdfFault, message: string) {
    super(message);
    this.fault = fault;
  }
}

import type { Checked } from '../../check/answer-to.ts';
import { createTypesetter } from '../../typeset/index.ts';
import type { SheetHead } from '../../view-models/sheet-head.ts';
import { sheetModel, type SheetContext } from '../../view-models/sheet.ts';
import { madeAt } from './made-at.ts';
import { paperSheet } from './paper-sheet.ts';
import { createPrintable } from './printable.ts';
import type { PdfWorkers } from './workers.ts';

/** A sheet to be set: the check worked out, and what is printed around it. */
interface SheetToSet {
  readonly checked: Checked;
  readonly context: SheetContext;
  readonly head?: SheetHead;
}

/**
 * Sets a sheet as a PDF, in a thread of its own.
 *
 * @param signal ends the work where nobody waits for it any more
 * @throws PdfError where there is no PDF, with the reason
 */
export type SheetSetter = (
  sheet: SheetToSet,
  signal: AbortSignal,
) => Promise<{ readonly title: string; readonly pdf: Buffer }>;

const texAsItIs = (tex: string): string => tex;

/** Makes what sets sheets. */
export function createSheetSetter(pdfs: PdfWorkers): SheetSetter {
  const typesetter = createTypesetter(texAsItIs);
  const printable = createPrintable();
  return async ({ checked, context, head }, signal) => {
    const model = sheetModel(checked, typesetter, context, head);
    const data = paperSheet(model, printable);
    const pdf = await pdfs.make({ template: 'sheet', data, made_s: madeAt(model.date) }, signal);
    return { title: model.title, pdf: Buffer.from(pdf) };
  };
}

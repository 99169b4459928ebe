import type { Checked } from '../../check/answer-to.ts';
import { createTypesetter, texAsItIs } from '../../typeset/index.ts';
import { installerModel } from '../../view-models/installer.ts';
import type { SheetHead } from '../../view-models/sheet-head.ts';
import { sheetModel, type SheetContext } from '../../view-models/sheet.ts';
import { madeAt } from './made-at.ts';
import { paperInstaller } from './paper-installer.ts';
import { paperSheet } from './paper-sheet.ts';
import { createPrintable } from './printable.ts';
import type { PdfTask } from './task.ts';
import type { PdfWorkers } from './workers.ts';

/** A sheet to be set: the check worked out, and what is printed around it. */
interface SheetToSet {
  readonly checked: Checked;
  readonly context: SheetContext;
  readonly head?: SheetHead;
}

type Shelf = Extract<Checked, { readonly element: 'bracket-shelf' }>;

interface SetPaper {
  readonly title: string;
  readonly pdf: Buffer;
}

/**
 * Sets sheets as PDFs, aside from where requests are answered. A signal ends the work where nobody waits for it any more; a
 * PdfError says why there is none.
 */
export interface PaperSetter {
  readonly sheet: (sheet: SheetToSet, signal: AbortSignal) => Promise<SetPaper>;
  readonly installer: (
    asked: { readonly checked: Shelf; readonly context: SheetContext },
    signal: AbortSignal,
  ) => Promise<SetPaper>;
}

/** Makes what sets sheets. */
export function createPaperSetter(pdfs: PdfWorkers): PaperSetter {
  const typesetter = createTypesetter(texAsItIs);
  const printable = createPrintable();
  const set = async (
    template: PdfTask['template'],
    { title, date }: { readonly title: string; readonly date: string },
    data: object,
    signal: AbortSignal,
  ): Promise<SetPaper> => {
    const pdf = await pdfs.make({ template, json: JSON.stringify(data), made_s: madeAt(date) }, signal);
    return { title, pdf: Buffer.from(pdf) };
  };
  return {
    sheet: ({ checked, context, head }, signal) => {
      const model = sheetModel(checked, typesetter, context, head);
      return set('sheet', model, paperSheet(model, printable), signal);
    },
    installer: ({ checked, context }, signal) => {
      const model = installerModel(checked.document, checked.result, context);
      return set('installer', model, paperInstaller(model, printable), signal);
    },
  };
}

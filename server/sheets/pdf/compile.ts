import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { printable } from './printable.ts';
import { NodeCompiler, PdfStandard } from '@myriaddreamin/typst-ts-node-compiler';

/** What is printed: a template of this folder, its data, and the day the file bears. */
export interface PrintOrder {
  readonly template: 'sheet';
  readonly data: unknown;
  /** Seconds since 1970; the same order makes the same bytes. */
  readonly madeAt_s: number;
}

/**
 * A function that prints as PDF/A-2a: tagged, with bookmarks, its letters embedded. It holds the thread while it prints.
 *
 * @throws Error (with `code`, what the compiler says) where the template can't be set
 */
export function createPrinter(): (order: PrintOrder) => Uint8Array {
  const compiler = NodeCompiler.create({ workspace: import.meta.dirname });
  const templates = { sheet: readFileSync(join(import.meta.dirname, 'sheet.typ'), 'utf8') };
  return ({ template, data, madeAt_s }) => {
    try {
      return compiler.pdf(
        { mainFileContent: templates[template], inputs: { data: JSON.stringify(data, onlyPrintable) } },
        { pdfStandard: PdfStandard.A_2a, pdfTags: true, creationTimestamp: madeAt_s },
      );
    } finally {
      compiler.resetShadow();
      compiler.evictCache(2);
    }
  };
}

const onlyPrintable = (_: string, value: unknown): unknown =>
  typeof value === 'string' ? printable(value) : value;

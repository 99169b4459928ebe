import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const execute = promisify(execFile);

/** What a reader that is not ours (poppler) finds in a PDF. */
export interface ReadPdf {
  /** The text in reading order, runs of white space as one space. */
  readonly text: string;
  readonly info: string;
  readonly metadata: string;
  readonly structure: string;
  /** The bookmarks, as poppler writes them out. */
  readonly outline: string;
  /** A line a font, without the head. */
  readonly fonts: readonly string[];
  readonly pages: number;
}

export async function readPdf(pdf: Uint8Array): Promise<ReadPdf> {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-test-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    const run = async (program: string, ...words: string[]): Promise<string> =>
      (await execute(program, words, { maxBuffer: 1e8 })).stdout;
    const info = await run('pdfinfo', file);
    return {
      text: squeezed(await run('pdftotext', '-raw', file, '-')),
      info,
      metadata: await run('pdfinfo', '-meta', file),
      outline:
        /<outline>.*<\/outline>/s.exec(await run('pdftohtml', '-xml', '-i', '-stdout', file))?.[0] ?? '',
      structure: await run('pdfinfo', '-struct', file),
      fonts: (await run('pdffonts', file)).trim().split('\n').slice(2),
      pages: Number(/Pages: +(\d+)/.exec(info)?.[1]),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Text as it is compared: white space of any kind as one space, and no invisible places to break. */
export function squeezed(text: string): string {
  return text.replaceAll('\u200b', '').replace(/[\s\u00a0]+/g, ' ');
}

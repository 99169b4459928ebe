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

/** All that the reader finds. */
export function readPdf(pdf: Uint8Array): Promise<ReadPdf> {
  return withFile(pdf, async (file) => {
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
  });
}

/** The text alone, which is quicker. */
export function textOf(pdf: Uint8Array): Promise<string> {
  return withFile(pdf, async (file) => squeezed(await run('pdftotext', '-raw', file, '-')));
}

/** The text of each page in reading order. */
export function pagesOf(pdf: Uint8Array): Promise<string[]> {
  return withFile(pdf, async (file) => {
    const pages = (await run('pdftotext', '-raw', file, '-')).split('\f').slice(0, -1);
    return pages.map(squeezed);
  });
}

/** The smallest letters of a page, points, those of drawings too. The reader tells sizes one and a half times as large, as whole numbers. */
export function smallestLetters_pt(pdf: Uint8Array, page = 1): Promise<number> {
  return withFile(pdf, async (file) => {
    const told = await run(
      'pdftohtml',
      '-f',
      String(page),
      '-l',
      String(page),
      '-xml',
      '-i',
      '-stdout',
      file,
    );
    const sizes = [...told.matchAll(/<fontspec [^>]*size="(\d+)"/g)].map(([, size]) => Number(size) / 1.5);
    return Math.min(...sizes);
  });
}

/** Pairs of words printed over one another, by the boxes that the reader gives them (points, y downwards). */
export function wordsOverWords(pdf: Uint8Array): Promise<string[]> {
  return withFile(pdf, async (file) => {
    const pages = (await run('pdftotext', '-bbox', file, '-')).split('<page ').slice(1);
    return pages.flatMap((page) => overlapping([...page.matchAll(wordBox)].map(wordOf)));
  });
}

const wordBox = /<word xMin="(.+?)" yMin="(.+?)" xMax="(.+?)" yMax="(.+?)">(.*?)<\/word>/g;

interface PlacedWord {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly text: string;
}

function wordOf([, left, top, right, bottom, text = '']: RegExpMatchArray): PlacedWord {
  return { left: Number(left), top: Number(top), right: Number(right), bottom: Number(bottom), text };
}

/** Plain words alone: the parts of a formula stand close on purpose. Boxes of neighbouring lines touch, so a third is allowed. */
function overlapping(words: readonly PlacedWord[]): string[] {
  const plain = words.filter(({ text }) => /^[A-Za-z]{3,}[,.:;]?$/.test(text));
  return plain.flatMap((one, index) =>
    plain.slice(index + 1).flatMap((other) => {
      const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      const lowest = Math.min(one.bottom - one.top, other.bottom - other.top);
      return wide > 1 && high > lowest / 3 ? [`${one.text} / ${other.text}`] : [];
    }),
  );
}

async function run(program: string, ...words: string[]): Promise<string> {
  return (await execute(program, words, { maxBuffer: 1e8 })).stdout;
}

async function withFile<Found>(pdf: Uint8Array, find: (file: string) => Promise<Found>): Promise<Found> {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-test-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    return await find(file);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Text as it is compared: white space of any kind as one space, and no invisible places to break. */
export function squeezed(text: string): string {
  return text.replace(/[\u200b\u2060]/g, '').replace(/[\s\u00a0]+/g, ' ');
}

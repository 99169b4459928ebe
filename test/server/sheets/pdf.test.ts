import { execFileSync, type ExecFileSyncOptions } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { addressOf } from '../../../server/check/addresses.ts';
import { demoCheck } from '../../../server/demo.ts';
import { openPrintRoom } from '../../../server/sheets/pdf/print-room.ts';
import { tableValue } from '../../../server/view-models/sheet-prose.ts';
import { showUsed } from '../../../shared/quantity/index.ts';
import { findProgram } from '../../run/programs.ts';
import { serve, type Served } from '../serve.ts';
import { manyShelves } from './many-shelves.ts';

/** Poppler's programs read the file; it has nothing to do with what made it. */
const hasReader = findProgram('pdftotext') !== undefined;

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

async function printed(document: unknown, paper = 'letter'): Promise<Buffer> {
  const response = await fetch(
    `${served.home}${addressOf(document).replace('/check?', '/sheet.pdf?')}&paper=${paper}`,
  );
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toBe('application/pdf');
  return Buffer.from(await response.arrayBuffer());
}

function read(program: string, pdf: Buffer, words: readonly string[]): string {
  return said(program, words, { input: pdf, stdio: ['pipe', 'pipe', 'ignore'] });
}

function said(program: string, words: readonly string[], options: ExecFileSyncOptions): string {
  return execFileSync(program, words, options).toString();
}

const wordsOf = (pdf: Buffer): string => read('pdftotext', pdf, ['-', '-']);

/** Without spaces and hyphens: a line may break at either. */
const squeezed = (text: string): string => text.replace(/[\s-]+/g, '');

/** The bookmarks, as poppler writes them out. */
function outlineOf(pdf: Buffer): string {
  const folder = mkdtempSync(join(tmpdir(), 'outline-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    const text = said('pdftohtml', ['-xml', '-i', '-stdout', file], { stdio: ['ignore', 'pipe', 'ignore'] });
    return /<outline>.*<\/outline>/s.exec(text)?.[0] ?? '';
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Those that a text does not hold. */
function missingIn(text: string, wanted: readonly string[]): string[] {
  const whole = squeezed(text);
  return wanted.filter((each) => !whole.includes(squeezed(each)));
}

describe.skipIf(!hasReader)('the sheet as PDF', () => {
  it.each(manyShelves)('holds every check, line of working and caution: $name', async ({ document }) => {
    const result = check(document);
    const words = wordsOf(await printed(document));
    const numbers = result.checks.flatMap(({ demand, capacity, ratio }) => [
      ...[demand, capacity].flatMap((each) => (each === null ? [] : [tableValue(each.shown)])),
      ...(ratio === null ? [] : [showUsed(ratio)]),
    ]);
    expect(missingIn(words, numbers)).toEqual([]);
    const steps = result.worksheet.sections.flatMap((section) => section.steps);
    expect(
      missingIn(
        words,
        steps.map(({ caption }) => caption.split(' ').slice(0, 4).join(' ')),
      ),
    ).toEqual([]);
    expect(missingIn(words, [...result.assumptions, ...result.warnings])).toEqual([]);
    for (const caution of result.cautions) {
      expect(squeezed(words).split(squeezed(caution)).length - 1).toBe(2);
    }
    expect(/NaN|undefined|\[object/.exec(words)).toBeNull();
  });

  it('is tagged, has bookmarks and the letters it uses, and numbers its pages', async () => {
    const pdf = await printed({ ...demoCheck, date: '2026-03-04' });
    const facts = read('pdfinfo', pdf, ['-']);
    const pages = Number(/Pages:\s+(\d+)/.exec(facts)?.[1]);
    expect(facts).toMatch(/Tagged:\s+yes/);
    expect(facts).toMatch(/CreationDate:\s+Wed Mar {2}4 .* 2026/);
    expect(facts).toContain(`Title:           ${demoCheck.title}: calculation sheet`);
    expect(pages).toBeGreaterThan(5);
    expect(pages).toBeLessThan(16);
    const fonts = read('pdffonts', pdf, ['-']).trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(2);
    for (const font of fonts) expect(font).toMatch(/ yes (?:yes|no) +(?:yes|no) +\d+ +\d+$/);
    expect(outlineOf(pdf)).toMatch(/Given.*Assumptions.*Where the values come from.*Summary/s);
    const words = wordsOf(pdf);
    const numbers = Array.from({ length: pages }, (_, index) => `sheet ${index + 1} of ${pages}`);
    expect(missingIn(words, numbers)).toEqual([]);
    const [mark] = /Fingerprint ((?:[0-9a-f]{3} ){3}[0-9a-f]{3})/.exec(words)?.slice(1) ?? [];
    expect(words.split(`Fingerprint ${mark}`).length - 1).toBeGreaterThanOrEqual(pages);
  });

  it.each([
    ['letter', '612 x 792'],
    ['a4', '595.276 x 841.89'],
  ])('is %s where that is asked for', async (paper, size) => {
    expect(read('pdfinfo', await printed(demoCheck, paper), ['-'])).toContain(size);
  });

  it('takes whatever is typed as text', async () => {
    const typed = '#import "x"; $x^2$ ] \\ <b>bold</b> *a* _b_ `c` // d @e ~f';
    const loads = demoCheck.loads?.map((load) => ({ ...load, name: typed })) ?? [];
    const words = wordsOf(await printed({ ...demoCheck, title: typed, preparedBy: typed, loads }));
    expect(squeezed(words).split(squeezed(typed)).length).toBeGreaterThan(3);
  });
});

describe.skipIf(!hasReader)('a title', () => {
  it('in letters that the sheet has not prints as their numbers, and a word without end is broken', async () => {
    const pdf = await printed({ ...demoCheck, title: `木 ${'W'.repeat(110)}` });
    expect(squeezed(wordsOf(pdf)).replaceAll('\u200b', '')).toContain(`[U+6728]${'W'.repeat(110)}`);
    const fonts = read('pdffonts', pdf, ['-']).trim().split('\n').slice(2);
    for (const font of fonts) expect(font).toMatch(/Libertinus|NewCM/);
  });
});

describe('the file', () => {
  it('is the same, byte for byte, for the same check and day', async () => {
    const dated = { ...demoCheck, date: '2026-03-04' };
    const [first, second] = [await printed(dated), await printed(dated)];
    expect(first.equals(second)).toBe(true);
    expect(first.equals(await printed({ ...dated, date: '2026-03-05' }))).toBe(false);
  });

  it('has a name that any system takes', async () => {
    const asked = addressOf({ ...demoCheck, title: 'Étagère "à/b"\u202e' }).replace('/check?', '/sheet.pdf?');
    const { headers } = await fetch(served.home + asked);
    expect(headers.get('content-disposition')).toBe('inline; filename="calculation-sheet-etagere-a-b.pdf"');
  });

  it('is not made of a check with errors in it', async () => {
    const response = await fetch(`${served.home}/sheet.pdf?board.length=-4+in`);
    expect(response.status).toBe(422);
    expect(response.headers.get('content-type')).toContain('text/html');
  });
});

describe('the print room', () => {
  const nothing = { template: 'sheet', data: {}, madeAt_s: 0 } as const;

  it('says what is wrong with an order, and prints the next', async () => {
    const room = openPrintRoom();
    await expect(room.print(nothing)).rejects.toThrow(/can't be printed/);
    await expect(room.print(nothing)).rejects.toThrow(/can't be printed/);
    await room.close();
  });

  it('stops a thread that takes too long', async () => {
    const room = openPrintRoom(1);
    await expect(room.print(nothing)).rejects.toThrow('too long');
    await room.close();
  });

  it('does not print what was called off before its turn', async () => {
    const room = openPrintRoom();
    const gone = new AbortController();
    const [first, second] = [room.print(nothing), room.print(nothing, gone.signal)];
    gone.abort(new Error('called off'));
    await expect(first).rejects.toThrow(/can't be printed/);
    await expect(second).rejects.toThrow('called off');
    await room.close();
  });
});

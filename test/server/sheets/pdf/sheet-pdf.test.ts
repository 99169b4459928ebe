import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../../calc/index.ts';
import { addressOf } from '../../../../server/check/addresses.ts';
import { demoCheck } from '../../../../server/demo.ts';
import { tableValue } from '../../../../server/view-models/sheet-prose.ts';
import { showUsed } from '../../../../shared/quantity/index.ts';
import { edged } from '../../../command-line/documents.ts';
import { findProgram } from '../../../run/programs.ts';
import { serve, type Served } from '../../serve.ts';
import { manyShelves } from '../many-shelves.ts';
import { pagesOf, readPdf, squeezed, textOf, wordsOverWords, type ReadPdf } from './read-pdf.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

/** One of each element, as it comes from a file. */
const examples = ['display-shelf', 'coat-rail', 'stool-overhang', 'stone-counter'].map((name) => ({
  name,
  document: fromFile(name),
}));

function fromFile(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../../../docs/examples/${name}.json`, import.meta.url), 'utf8'));
}

const dated = { ...demoCheck, date: '2026-03-14', preparedBy: 'A. Nyone', checkedBy: 'S. Omeone' };
const pdfAddress = (document: unknown, more = ''): string =>
  served.home + addressOf(document).replace('/check?', '/sheet.pdf?') + more;

async function fetched(address: string): Promise<Buffer> {
  const response = await fetch(address);
  expect(response.status).toBe(200);
  return Buffer.from(await response.arrayBuffer());
}

const read = async (document: unknown, more = ''): Promise<ReadPdf> =>
  readPdf(await fetched(pdfAddress(document, more)));

/** What stands beside the symbols of a sentence, which are set as symbols: L_b as L with a small b. */
const besideSymbols = (sentence: string): string[] =>
  sentence.split(/\b(?:[A-Za-z]{1,2}|Delta|omega)(?:_[A-Za-z0-9]{1,5})+\b/);
/** Words without their spaces and hyphens: lines may end at either, and the reader drops a hyphen at the end of a line. */
const letters = (text: string): string => squeezed(text).replace(/[ -]/g, '');

describe.skipIf(findProgram('pdftotext') === undefined)('the sheet as a PDF', () => {
  it.each([...manyShelves, ...examples])('says what the result says: $name', async ({ document }) => {
    const result = check(document, { waysOut: false });
    const text = letters(await textOf(await fetched(pdfAddress(document))));
    for (const { title, demand, capacity, ratio, clause } of result.checks) {
      for (const words of [title, demand?.shown ?? '–', capacity?.shown ?? '–', clause]) {
        expect(text).toContain(letters(tableValue(words)));
      }
      if (ratio !== null) expect(text).toContain(letters(showUsed(ratio)));
    }
    for (const words of [...result.cautions, ...result.assumptions, ...result.warnings]) {
      expect(text).toContain(letters(words));
    }
    for (const { steps, tables, statements } of result.worksheet.sections) {
      for (const { caption, source } of steps) {
        for (const words of [...besideSymbols(caption), ...besideSymbols(source)])
          expect(text).toContain(letters(words));
      }
      for (const cell of [
        ...tables.flatMap(({ rows }) => rows.flat()),
        ...statements.map(({ value }) => value),
      ]) {
        expect(text).toContain(letters(tableValue(cell)));
      }
    }
    expect(text).not.toMatch(/NaN|undefined|\[object|\[U\+/);
  });

  it.each(['letter', 'a4'])('is no longer than the demo printed from its page, on %s', async (paper) => {
    const pages = await pagesOf(await fetched(pdfAddress(demoCheck, `&paper=${paper}`)));
    expect(pages.length).toBeLessThanOrEqual(17);
  });

  it.each(examples)('prints no word over another: $name', async ({ document }) => {
    const pdf = await fetched(pdfAddress(document));
    expect(await wordsOverWords(pdf)).toEqual([]);
  });

  it('sets the symbols in its sources and captions as symbols', async () => {
    const text = await textOf(await fetched(pdfAddress(edged)));
    expect(letters(text)).toContain('itsdepthandwidth');
    expect(text).not.toMatch(/[A-Za-z]_[A-Za-z]/);
  });

  it('has every line of working with its result', async () => {
    const steps = check(demoCheck).worksheet.sections.flatMap((section) => section.steps);
    const text = letters(await textOf(await fetched(pdfAddress(demoCheck))));
    for (const { shown } of steps) {
      const [number = '', unit = ''] = shown.split(' ');
      if (!number.includes('e')) expect(text).toContain(`=${number.replace('-', '−')}${unit}`);
    }
  });

  it('carries title, names, date, edition and fingerprint, with sheet x of y on every page', async () => {
    const { text, pages, info } = await read(dated);
    const { edition } = check(dated);
    for (const words of ['A. Nyone', 'S. Omeone', '2026-03-14', edition.code, edition.tool]) {
      expect(text).toContain(words);
    }
    expect(pages).toBeGreaterThan(4);
    for (let page = 1; page <= pages; page++) expect(text).toContain(`Sheet ${page} of ${pages}`);
    expect(text.match(/Fingerprint [0-9a-f]{3} [0-9a-f]{3} [0-9a-f]{3} [0-9a-f]{3} ·/g)).toHaveLength(pages);
    expect(info).toContain(demoCheck.title);
    expect(info).toMatch(/CreationDate: +Sat Mar 14 .*2026/);
  });

  it('has the cautions on its first page', async () => {
    const { text } = await read(dated);
    const first = letters(text).split('Sheet1of')[0] ?? '';
    for (const caution of check(dated).cautions) expect(first).toContain(letters(caution));
  });

  it.each(examples)('has its checks on its first page: $name', async ({ document }) => {
    for (const paper of ['letter', 'a4']) {
      const [first = ''] = await pagesOf(await fetched(pdfAddress(document, `&paper=${paper}`)));
      const text = letters(first);
      for (const { title } of check(document, { waysOut: false }).checks)
        expect(text).toContain(letters(title));
    }
  });

  it('is tagged, has every font inside, and says that it is for archives (PDF/A-2a)', async () => {
    const { info, metadata, structure, fonts } = await read(dated);
    expect(info).toMatch(/Tagged: +yes/);
    expect(metadata).toMatch(/pdfaid:part>2</);
    expect(metadata).toMatch(/pdfaid:conformance>A</);
    for (const tag of ['Document', 'H1', 'H2', 'Table', 'TH', 'TD', 'Figure', 'Formula']) {
      expect(structure).toMatch(new RegExp(`^ *${tag}\\b`, 'm'));
    }
    expect(fonts.length).toBeGreaterThan(2);
    for (const font of fonts) expect(font).toMatch(/ yes (?:yes|no ) yes +\d+ +\d+$/);
  });

  it('has a bookmark for every chapter', async () => {
    const { outline } = await read(dated);
    expect(outline).toMatch(/Given.*Assumptions.*Where the values come from.*Summary/s);
  });

  it('is the same file for the same check', async () => {
    const [one, other] = [await fetched(pdfAddress(dated)), await fetched(pdfAddress(dated))];
    expect(one.equals(other)).toBe(true);
  });

  it('is on the paper of its units, or on the one asked for (ISO 216: 210 × 297 mm; letter: 8-1/2 × 11 in)', async () => {
    const size = async (document: unknown, more = ''): Promise<string> =>
      /Page size: +(.*)/.exec((await read(document, more)).info)?.[1] ?? '';
    const metric = { ...demoCheck, units: 'metric' };
    expect(await size(demoCheck)).toMatch(/^612 x 792/);
    expect(await size(metric)).toMatch(/^595\.\d+ x 841\.\d+/);
    expect(await size(metric, '&paper=letter')).toMatch(/^612 x 792/);
  });

  it.each([
    '#import "x.typ": *',
    '$x^2$ *bold* _slanted_ `raw`',
    '] #panic("x") [',
    '\\ #sys.inputs \\u{41} "quoted"',
    '</text></svg><script>alert(1)</script>',
    '{"tex": "x", "words": "y"}',
    '= Heading @label <label> ~ -- ---',
  ])('leaves what a user writes as it is written: %s', async (hostile) => {
    const loads = [{ name: hostile, kind: 'line' as const, amount: '10 lbf/ft' }];
    const named = { ...demoCheck, title: hostile, preparedBy: hostile, checkedBy: hostile, loads };
    const text = await textOf(await fetched(pdfAddress(named)));
    expect(letters(text).split(letters(hostile)).length).toBeGreaterThan(4);
  });

  it('holds a title without end, and writes out characters that its font lacks', async () => {
    const { text } = await read({ ...demoCheck, title: `木 ${'W'.repeat(110)}` });
    expect(text).toContain('[U+6728]');
    expect(letters(text)).toContain('W'.repeat(110));
  });

  it('has a proper name and kind', async () => {
    const { headers } = await fetch(pdfAddress({ ...demoCheck, title: 'Étagère "über"; x' }));
    expect(headers.get('content-type')).toBe('application/pdf');
    expect(headers.get('content-disposition')).toBe(
      'inline; filename="calculation-sheet-etagere-uber-x.pdf"',
    );
  });

  it('says what is to be put right where there is an error', async () => {
    const response = await fetch(pdfAddress(demoCheck, '&board.length=banana'));
    expect(response.status).toBe(422);
    expect(await response.text()).toContain('board, length');
  });
});

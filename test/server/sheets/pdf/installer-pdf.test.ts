import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addressOf } from '../../../../server/check/addresses.ts';
import { checkInPlace } from '../../../../server/check/in-place.ts';
import { demoCheck } from '../../../../server/demo.ts';
import { textsOf } from '../../../../server/form/index.ts';
import { sheetOf } from '../../../../server/sheets/sheet-of.ts';
import { installerModel, type InstallerModel } from '../../../../server/view-models/installer.ts';
import { startChecks } from '../../../../server/start-checks.ts';
import type { CheckResult } from '../../../../shared/check-result.ts';
import { findProgram } from '../../../run/programs.ts';
import { serve, type Served } from '../../serve.ts';
import { manyShelves, warned } from '../many-shelves.ts';
import { pagesOf, readPdf, smallestLetters_pt, squeezed, wordsOverWords } from './read-pdf.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const addressed = (document: unknown): string => addressOf(document).replace('/check?', '/installer.pdf?');

async function fetched(document: unknown, more = ''): Promise<Buffer> {
  const response = await fetch(served.home + addressed(document) + more);
  expect(response.status).toBe(200);
  return Buffer.from(await response.arrayBuffer());
}

const modelOf = (document: unknown): InstallerModel => checkedInstaller(document).model;

function checkedInstaller(document: unknown): {
  readonly result: CheckResult;
  readonly model: InstallerModel;
} {
  const reading = sheetOf(checkInPlace(textsOf(addressOf(document).replace('/check?', ''))), '');
  if (!reading.ok || reading.sheet.checked.element !== 'bracket-shelf') throw new Error('no shelf');
  const { checked, context } = reading.sheet;
  return { result: checked.result, model: installerModel(checked.document, checked.result, context) };
}

const letters = (text: string): string => squeezed(text).replace(/[ -]/g, '');

describe.skipIf(findProgram('pdftotext') === undefined)('the installer’s sheet as a PDF', () => {
  it.each(manyShelves)(
    'says what its page says, on one sheet, nothing under 14 points: $name',
    async ({ document }) => {
      const pdf = await fetched(document);
      const pages = await pagesOf(pdf);
      expect(pages).toHaveLength(1);
      const text = letters(pages[0] ?? '');
      const { verdict, first, title, fingerprint, go, stop, cautions } = modelOf(document);
      const said = [
        verdict.word,
        first,
        title,
        ...go.flatMap(({ steps, loads, labelLimit }) => [
          ...steps,
          ...loads,
          labelLimit,
          `Sheet ${fingerprint}`,
        ]),
        ...stop.flatMap(({ reasons }) => reasons),
        ...cautions,
      ];
      for (const words of said) expect(text).toContain(letters(words));
      expect(text).not.toMatch(/NaN|undefined|\[object|\[U\+/);
      expect(await smallestLetters_pt(pdf)).toBeGreaterThanOrEqual(14);
    },
  );

  it('gives its warnings, as many as there may be, before its steps and on one sheet', async () => {
    const { result, model } = checkedInstaller(warned);
    expect(result.verdict).toBe('holds');
    expect(result.warnings.length).toBe(5);
    for (const paper of ['letter', 'a4']) {
      const pages = await pagesOf(await fetched(warned, `&paper=${paper}`));
      expect(pages).toHaveLength(1);
      const text = letters(pages[0] ?? '');
      const steps = text.indexOf(letters('Order of work'));
      for (const words of result.warnings) {
        expect(text).toContain(letters(words));
        expect(text.indexOf(letters(words))).toBeLessThan(steps);
      }
      for (const words of [...model.cautions, '5 warnings stand on the installer’s sheet.'])
        expect(text).toContain(letters(words));
    }
  });

  it('fits A4 too, with no word over another', async () => {
    const pdf = await fetched(demoCheck, '&paper=a4');
    const { pages, info, structure, metadata } = await readPdf(pdf);
    expect(pages).toBe(1);
    expect(info).toMatch(/Page size: +595\.\d+ x 841\.\d+/);
    expect(metadata).toMatch(/pdfaid:conformance>A</);
    for (const tag of ['H1', 'L', 'LI', 'Figure']) expect(structure).toMatch(new RegExp(`^ *${tag}\\b`, 'm'));
    expect(await wordsOverWords(pdf)).toEqual([]);
  });

  it('leaves what a user writes as it is written', async () => {
    const hostile = '#panic("x") $x$ *b* ] [ <script>';
    const [page = ''] = await pagesOf(await fetched({ ...demoCheck, title: hostile }));
    expect(letters(page).split(letters(hostile))).toHaveLength(3);
  });

  it('is led to by its page, and what has none is led to its calculation', async () => {
    const page = await (await fetch(served.home + addressed(demoCheck).replace('.pdf', ''))).text();
    expect(page).toContain('/installer.pdf?');
    const fixing = addressed(startChecks['wall-fixing']);
    const response = await fetch(served.home + fixing, { redirect: 'manual' });
    expect([response.status, response.headers.get('location')?.split('?')[0]]).toEqual([303, '/sheet.pdf']);
  });
});

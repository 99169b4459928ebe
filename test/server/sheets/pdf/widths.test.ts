import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { checkInPlace } from '../../../../server/check/in-place.ts';
import { demoCheck } from '../../../../server/demo.ts';
import { fillForm, queryOf, textsOf } from '../../../../server/form/index.ts';
import { roomBetweenMargins_pt } from '../../../../server/sheets/pdf/columns.ts';
import { fontFiles } from '../../../../server/sheets/pdf/font.ts';
import { paperSheet } from '../../../../server/sheets/pdf/paper-sheet.ts';
import { createPrintable } from '../../../../server/sheets/pdf/printable.ts';
import { createTypstFormula, withTypstFormulas } from '../../../../server/sheets/pdf/typst-formula.ts';
import { sheetOf } from '../../../../server/sheets/sheet-of.ts';
import { createTypesetter, texAsItIs } from '../../../../server/typeset/index.ts';
import { sheetModel } from '../../../../server/view-models/sheet.ts';

/* What is reckoned of widths before the paper is set is held to what its setter measures (Typst, `measure`). */

const workspace = join(import.meta.dirname, '..', '..', '..', '..', 'views', 'paper');
const compiler = NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs: fontFiles() }] });
const printable = createPrintable();
const typesetter = createTypesetter(texAsItIs);
const typst = createTypstFormula();

function measured(each: string, data: unknown): number[] {
  const mainFileContent = [
    '#import "/sheet.typ": look',
    '#import "/parts.typ": *',
    '#show: look',
    `#let width(each) = measure(${each}).width.pt()`,
    '#context [#metadata(json(bytes(sys.inputs.data)).map(width))<widths>]',
  ].join('\n');
  const arguments_ = { mainFileContent, inputs: { data: JSON.stringify(data) } };
  const found: unknown = compiler.query(arguments_, { selector: '<widths>', field: 'value' });
  return z.tuple([z.array(z.number())]).parse(found)[0];
}

const file = (name: string): object =>
  z
    .looseObject({})
    .parse(
      JSON.parse(readFileSync(new URL(`../../../../docs/examples/${name}.json`, import.meta.url), 'utf8')),
    );
const documents = [
  demoCheck,
  ...['display-shelf', 'coat-rail', 'stool-overhang', 'stone-counter'].map(file),
].flatMap((document) => ['inch-pound', 'metric'].map((units) => ({ ...document, units })));

const table = z.looseObject({ shares: z.array(z.number()).nullable(), head: z.array(z.unknown()) });
const step = z.looseObject({ isLong: z.boolean(), mayBeWide: z.boolean(), math: z.string() });
const sheet = z.object({ sections: z.array(z.object({ steps: z.array(step), tables: z.array(table) })) });

const sections = documents.flatMap((document) => {
  const reading = sheetOf(checkInPlace(textsOf(queryOf(fillForm(document))), false), 'a4');
  if (!reading.ok) throw new Error('an example has no sheet');
  const { checked, context } = reading.sheet;
  const data = paperSheet(sheetModel(checked, typesetter, context), printable);
  return sheet.parse(withTypstFormulas(JSON.parse(JSON.stringify(data)), typst)).sections;
});

it('knows how wide words are', () => {
  const words = ['Illicit willow', 'MMMM WWWW', '0123456789', '18 lbf/ft × 3/4 in²', 'AVAST: “To Yew” – ½'];
  const widths = measured('text(size: 100pt, each)', words);
  words.forEach((each, index) => {
    const share = (100 * printable.width(each)) / (widths[index] ?? NaN);
    expect(share).toBeGreaterThan(0.99);
    // Pairs such as AV and To stand nearer than their widths say.
    expect(share).toBeLessThan(1.03);
  });
});

it('spreads a table as wide as its words where there is room for that, and only there', () => {
  const tables = sections.flatMap((each) => each.tables);
  const room_pt = roomBetweenMargins_pt(true);
  const widths = measured(
    'plain-table(each.head.map(_ => auto), each.head.map(prose), each.rows, apart: 14pt)',
    tables,
  );
  const spread = tables.map(({ shares }) => shares === null);
  expect(new Set(spread).size).toBe(2);
  spread.forEach((isSpread, index) => {
    const width_pt = widths[index] ?? NaN;
    if (isSpread) expect(width_pt).toBeLessThanOrEqual(room_pt);
    else expect(width_pt).toBeGreaterThan(0.93 * room_pt);
  });
});

/** Columns of `step` in views/paper/parts.typ on A4: the line of working beside its caption, and below it. */
const [beside_mm, below_mm] = [182 - 11 - 43 - 31, 182 - 11 - 31];
const [behindBeside_pt, behindBelow_pt] = [4, 6];

it('lets the setter measure every line of working that is wider than its column', () => {
  const steps = sections.flatMap((each) => each.steps);
  const widths = measured('math.equation(alt: "line", block: true, set-math(each.math))', steps);
  expect(steps.some(({ mayBeWide }) => mayBeWide)).toBe(true);
  steps.forEach(({ isLong, mayBeWide }, index) => {
    const mm = isLong ? below_mm : beside_mm;
    const room_pt = (mm * 72) / 25.4 - (isLong ? behindBelow_pt : behindBeside_pt);
    if (!mayBeWide) expect(widths[index]).toBeLessThanOrEqual(room_pt);
  });
});

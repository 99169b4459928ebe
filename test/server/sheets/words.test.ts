import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { demoCheck } from '../../../server/demo.ts';
import { sheetChecks } from '../../../server/view-models/sheet-checks.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { parseQuantity } from '../../../shared/quantity/index.ts';
import { manyShelves, warned } from './many-shelves.ts';

const offTheirStuds = {
  ...demoCheck,
  brackets: { ...demoCheck.brackets, positions: ['5 in', '38 in', '60 in', '91 in'] },
};
const { nosing: _, ...plainBoard } = demoCheck.board;
/** Wide, thin and without a nosing: a strip of it is bent along the front edge. */
const widePine = {
  ...demoCheck,
  board: { ...plainBoard, material: 'eastern-white-pine', depth: '11-1/4 in' },
};
const documents = [
  ...manyShelves,
  { name: 'a wide board', document: widePine },
  { name: 'many warnings', document: warned },
  { name: 'brackets off their studs', document: offTheirStuds },
  ...Object.entries(startChecks).map(([name, document]) => ({ name, document })),
];

/** A full stop that ends a sentence, and a small letter after it; the stop of a number or of a shortened word ends none. */
const smallAfterStop = /(?<!\b(?:no|ch|Eq|p|ed))\. +[a-zà-ÿ]/g;

describe('the words of a sheet', () => {
  it.each(documents)('begin every sentence with a capital: $name', ({ document }) => {
    const result = check(document, { waysOut: false });
    const checks = sheetChecks(result);
    const said = [
      result.summary,
      ...checks.map(({ note }) => note),
      ...checks.map(({ clauseBegun }) => `Used. ${clauseBegun}`),
      ...result.warnings,
      ...result.assumptions,
      ...result.cautions,
    ];
    expect(said.flatMap((words) => words.match(smallAfterStop) ?? [])).toEqual([]);
  });

  it.each(documents)(
    'set no symbol as it is typed, in what is shown as plain words: $name',
    ({ document }) => {
      const { summary, checks, warnings, assumptions, cautions } = check(document, { waysOut: false });
      const said = [summary, ...checks.map(({ note }) => note), ...warnings, ...assumptions, ...cautions];
      expect(said.flatMap((words) => words.match(/\p{L}_\w+/gu) ?? [])).toEqual([]);
    },
  );

  it('say of an overhang that it is at its end of the board', () => {
    const positions = ['4 in', '36 in', '60 in', '80 in'];
    const { summary } = check({ ...demoCheck, brackets: { ...demoCheck.brackets, positions } });
    expect(summary).toMatch(/ moves as much as [^,]+, at the right end\.$/);
  });

  it.each(documents)('never tell less movement than is checked: $name', ({ document }) => {
    const { summary, checks } = check(document, { waysOut: false });
    const [, told] = /moves as much as (.+?), /.exec(summary) ?? [];
    const moved = checks.find(({ id }) => id === 'deflection-long-term')?.demand?.value;
    if (told === undefined || moved === undefined) return;
    const amount = parseQuantity(told.replace(/^under /, ''), 'length');
    expect(amount.ok && amount.value).toBeGreaterThanOrEqual(moved - 1e-9);
  });

  it('tell a movement a little over 3/32 in as 1/8 in, the next mark of a rule, and not as the nearest', () => {
    const { summary, checks } = check({ ...demoCheck, board: { ...plainBoard, thickness: '27/32 in' } });
    const moved = checks.find(({ id }) => id === 'deflection-long-term')?.demand;
    // Between the two marks, nearer to the lower one: 3/32 = 0.09375, 7/64 = 0.109375, 1/8 = 0.125.
    const inches = (moved?.value ?? 0) / 0.0254;
    expect(inches).toBeGreaterThan(3 / 32);
    expect(inches).toBeLessThan(7 / 64);
    expect(summary).toContain('as much as 1/8 in,');
  });

  it('tell a movement and its limit in inches beside the share, and what the limit of a short end goes by', () => {
    // IBC Table 1604.3, footnote i: an overhang goes by twice its length. By hand: 2 × 4 in / 360 = 0.0222 in.
    const { summary, checks, governing } = check({
      ...demoCheck,
      limits: { live: 'L/360', longTerm: 'none' },
    });
    expect(governing).toBe('deflection-live');
    const live = checks.find(({ id }) => id === governing);
    expect(summary).toMatch(
      / % of what is allowed, [^,]+ in\) where 1\/32 in \(0\.022 in\) may be, at the left end\. /,
    );
    expect(live?.note).toContain('twice its length: L/360 of 2 × 4 in, which is 8 in.');
    expect(summary).toContain(live?.note);
  });

  it('say nothing of twice the length of a bay between brackets, nor where the limit is an amount', () => {
    const onEnds = {
      ...demoCheck,
      brackets: { ...demoCheck.brackets, positions: ['0 in', '36 in', '60 in', '96 in'] },
    };
    const between = check({ ...onEnds, limits: { live: 'L/360', longTerm: 'none' } }, { waysOut: false });
    const amount = check({ ...demoCheck, limits: { live: '1/32 in', longTerm: 'none' } }, { waysOut: false });
    for (const { checks } of [between, amount])
      expect(checks.find(({ id }) => id === 'deflection-live')?.note).toBe('');
  });
});

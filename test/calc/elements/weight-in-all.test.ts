import { describe, expect, it } from 'vitest';
import { check, reach } from '../../../calc/index.ts';
import { demoCheck } from '../../../server/demo.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import type { BracketShelfResult } from '../../../shared/check-result.ts';

const withLine = (load: object): BracketShelfInput => ({
  ...demoCheck,
  loads: [{ name: 'Books', kind: 'line', duration: 'permanent', ...load }],
});
const checked = (load: object): BracketShelfResult => check(withLine(load));
/** To nine figures: 60/8 and 7.5 differ in the last ones. */
const rounded = (value: number | null): number => Number((value ?? NaN).toPrecision(9));
const reactions = ({ analysis }: BracketShelfResult): number[] =>
  analysis.supports.map(({ reaction }) => rounded(reaction.max.value));

describe('a weight in all', () => {
  it('is what the same weight is for each length: 60 lb over 8 ft is 7.5 lb a foot (by hand)', () => {
    const inAll = checked({ total: '60 lb' });
    const each = checked({ amount: '7.5 lb/ft' });
    expect(inAll.checks.map(({ ratio }) => rounded(ratio))).toEqual(
      each.checks.map(({ ratio }) => rounded(ratio)),
    );
    expect(JSON.stringify(inAll.worksheet)).toContain('7.5 lbf/ft (60 lbf in all)');
  });

  it('goes over the stretch of its load alone: 60 lb over 3 ft is 20 lb a foot', () => {
    const ends = { from: '12 in', to: '48 in' };
    expect(reactions(checked({ total: '60 lb', ...ends }))).toEqual(
      reactions(checked({ amount: '20 lb/ft', ...ends })),
    );
  });

  it('rests on the brackets as a whole: with it always there they carry it and the board, by statics', () => {
    const all = checked({ total: '60 lbf', arrangement: 'fixed' }).analysis.supports;
    const sum = (of: 'max' | 'dead'): number =>
      all.reduce((total, { reaction }) => total + reaction[of].value, 0);
    expect((sum('max') - sum('dead')) / 4.4482216152605).toBeCloseTo(60, 6);
  });

  it('is one of three ways, and no two of them go together', () => {
    expect(() => checked({})).toThrow(/an amount, a weight in all \("total"\), or a list/);
    expect(() => checked({ total: '60 lb', amount: '7.5 lb/ft' })).toThrow(/not two of them/);
    expect(() => checked({ total: '7.5 lb/ft' })).toThrow(/loads\/0\/total/);
    expect(() => checked({ amount: '60 lb' })).toThrow(
      /"60 lb" is a weight in all, .* under “Its weight” \(in a document, "total"\)\. It takes a load per length/,
    );
    expect(() => checked({ amount: '60 in' })).toThrow(/"in" is not a unit this field knows/);
  });

  it('keeps its weight for each length where the board is stretched, and is made lighter as a load for each length', () => {
    const { longestBay } = reach(withLine({ total: '60 lb' }));
    const each = reach(withLine({ amount: '7.5 lb/ft' })).longestBay;
    expect(longestBay.value?.value).toBeCloseTo(each.value?.value ?? NaN, 6);
    const heavy = checked({ total: '4000 lb' });
    for (const { document } of heavy.remedies) expect(() => check(document)).not.toThrow();
  });
});

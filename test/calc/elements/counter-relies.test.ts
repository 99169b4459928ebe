import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { counter, mapleWeight_lbf } from './counter-documents.ts';
import { judge } from './documents.ts';

/** A thick top, held along its back by seven screws: by its weight alone it tips, with them it holds with room to spare. */
const screwed = counter({
  top: { length: '60 in', staves: 'across', thickness: '2-1/2 in' },
  base: {
    ...{ to: '60 in', panels: ['0 in', '30 in', '60 in'], weight: '300 lbf' },
    ...{ heldToFloor: true, anchorPull: '1500 lbf', anchorPullFront: '1500 lbf' },
  },
  screws: {
    ...{ fastener: 'wood-screw-10', length: '2 in', through: '3/4 in', cleat: 'sugar-maple' },
    at: [3, 12, 21, 30, 39, 48, 57].map((x): [string, string] => [`${x} in`, '2 in']),
  },
  loads: [
    { kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
    { kind: 'person', amount: '250 lbf', duration: 'seven-days' },
  ],
});
const onLegs = (...places: readonly (readonly [string, string])[]): CounterOverhangInput => ({
  ...screwed,
  props: places.map(([at, to]) => ({ kind: 'leg', at, to, allowable: '2000 lbf' })),
});
const relying = 'The top relies on its screws: with them loose it could tip off its base.';
/* Two people 24 in apart at 10 in, 10 psf on 60 x 12 in and a third of the top at 6 in; two thirds of it behind. lbf and in. */
const weight = mapleWeight_lbf(60, 36, 2.5);
const over = 500 * 10 + (10 / 144) * 60 * 12 * 6 + (weight / 3) * 6;
const keep = 0.6 * ((weight * 2) / 3) * 12;

describe('a top that its weight alone does not keep on its base', () => {
  it('is judged on the screws that hold it, and says that it relies on them', () => {
    expect(over).toBeGreaterThan(5 * keep);
    const { verdict, warnings, analysis } = check(screwed);
    expect(verdict).toBe('holds');
    expect(warnings).toContain(relying);
    expect(analysis.plate.bound).toBe('screws-hold');
    expect(judge(screwed, 'hold-down').note).toContain('The screws are needed.');
  });

  it.each([
    ['at its left end', '1 in', '34 in'],
    ['at its right end', '59 in', '34 in'],
    ['between end and middle', '15 in', '34 in'],
    ['in the middle', '30 in', '34 in'],
    ['close to the base', '1 in', '25 in'],
  ])('holds on one leg more %s, which leaves it relying on its screws', (_, at, to) => {
    const { verdict, warnings } = check(onLegs([at, to]));
    expect(verdict).toBe('holds');
    expect(warnings).toContain(relying);
  });

  it('does not hold without screws, and says that nothing but its weight keeps it', () => {
    const { screws: _, ...loose } = screwed;
    const { verdict, governing, summary, warnings, checks } = check(loose);
    expect(verdict).toBe('does-not-hold');
    expect(governing).toBe('hold-down');
    expect(summary).toMatch(
      /^Does not hold\. The top held to its base: .*tipping about a line along the top/,
    );
    const { ratio, note } = judge(loose, 'hold-down');
    expect((ratio ?? NaN) / (over / keep)).toBeCloseTo(1, 3);
    expect(note).toMatch(/^Nothing holds the top down but its weight: screw it to the base/);
    expect(warnings).not.toContain(relying);
    for (const id of ['bending-along', 'bending-across', 'shear', 'bearing', 'deflection-live']) {
      const found = checks.find((each) => each.id === id);
      expect(found?.outcome, id).toBe('cannot-say');
      expect(found?.note, id).toContain('The top tips off its base before this can be worked out.');
    }
  });
});

describe('a top without screws', () => {
  it('is never said to rely on them, where 0.6 of its weight does not keep it and all of it does', () => {
    // Two people of 30 lbf at 10 in, nothing served.
    const tips = 60 * 10 + (weight / 3) * 6;
    expect(tips).toBeGreaterThan(keep);
    expect(tips).toBeLessThan(keep / 0.6);
    const { screws: _, ...loose } = screwed;
    const light: CounterOverhangInput = { ...loose, loads: [{ kind: 'person', amount: '30 lbf' }] };
    expect(judge(light, 'hold-down').ratio).toBeCloseTo(tips / keep, 3);
    expect(judge(light, 'bending-across').outcome).toBe('holds');
    expect(check(light).warnings).not.toContain(relying);
  });
});

describe('a top that its weight alone keeps on its base', () => {
  it('is judged on loose screws too, and relies on nothing', () => {
    // The middle of whoever leans on the edge is nowhere outside of the two legs and the base.
    const ends = onLegs(['1 in', '34 in'], ['59 in', '34 in']);
    const { warnings, analysis } = check(ends);
    expect(warnings).not.toContain(relying);
    expect(analysis.plate.bound).toBe('screws-loose');
    expect(judge(ends, 'hold-down').note).toContain('Its own weight holds it without screws.');
  });

  it('has nobody outside of the line between its legs by no more than rounding leaves', () => {
    // The legs end 34 in from the back, where the middle of whoever leans on the edge is too.
    const places = ['2 in', '19 in', '36 in', '53 in', '58 in'].map((at) => [at, '34 in'] as const);
    const { worksheet } = check(onLegs(...places));
    const numbers = worksheet.sections.flatMap(({ steps }) => steps.map(({ substituted }) => substituted));
    expect(numbers.filter((line) => /e-1\d/.test(line))).toEqual([]);
  });
});

describe('legs under a screwed top', () => {
  /** Maple 1-1/2 in thick, 8 in out; by its weight alone two people at the edge tip it. */
  const thin = counter({
    top: { depth: '28 in' },
    base: {
      ...{
        back: '2 in',
        front: '20 in',
        foot: '20 in',
        weightAt: '11 in',
        panels: ['0 in', '36 in', '72 in'],
      },
      ...{ heldToFloor: true, anchorPull: '3000 lbf', anchorPullFront: '3000 lbf' },
    },
    screws: {
      ...{ fastener: 'wood-screw-10', length: '2 in', through: '3/4 in', cleat: 'sugar-maple' },
      at: [2, 20, 36, 52, 70].map((x): [string, string] => [`${x} in`, '4 in']),
    },
  });
  const propped: CounterOverhangInput = {
    ...thin,
    props: ['2 in', '70 in'].map((at) => ({ kind: 'leg', at, to: '26 in', allowable: '2000 lbf' })),
  };

  it.each(['deflection-live', 'deflection-serving', 'deflection-long-term'])(
    'let it move no more than it does without them: %s',
    (id) => {
      expect(check(thin).warnings).toContain(relying);
      const [without, with_] = [judge(thin, id), judge(propped, id)];
      expect(without.outcome).toBe('holds');
      expect(with_.outcome).toBe('holds');
      expect(with_.ratio ?? NaN).toBeLessThan(1.02 * (without.ratio ?? NaN));
    },
  );
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { denseBeam } from '../../reference/dense-beam.ts';
import { gravity, inch, poundForce, shelf, type Load } from './documents.ts';

/*
 * A board that only rests on its brackets stands, in each arrangement of its loads, on one set of them only: all of that set
 * push, and it is clear of the others. Moments by hand on that set, lbf and inches.
 */
const lbfIn = poundForce * inch;
// Eastern white pine: specific gravity 0.35 at 12 % (Wood Handbook FPL-GTR-282, Table 5-3b), weight 1.12 G; lbf/in.
const w = (1.12 * 350 * gravity * 8 * 0.75 * inch ** 3) / poundForce;
const limits = { live: 'none', longTerm: 'none' } as const;

function resting(
  positions: readonly number[],
  length: number,
  loads: Load[],
  material?: 'eastern-white-pine',
) {
  return shelf({
    board: { length: `${length} in`, depth: '8 in', thickness: '3/4 in', ...(material && { material }) },
    brackets: { positions: positions.map((x) => `${x} in`), arm: '8 in', hold: 'resting' },
    loads,
    limits,
  });
}

function point(at: number, amount: number, arrangement: 'fixed' | 'free' = 'fixed'): Load {
  return {
    kind: 'point',
    at: `${at} in`,
    amount: `${amount} lbf`,
    eccentricity: '4 in',
    duration: 'permanent',
    arrangement,
  };
}

function hand(amount: number): Load {
  return { kind: 'roaming', amount: `${amount} lbf`, duration: 'permanent' };
}

function bendingOf(document: ReturnType<typeof shelf>) {
  const { checks, analysis, verdict, warnings } = check(document, { waysOut: false });
  const bending = checks.find(({ id }) => id === 'bending');
  return {
    verdict,
    warnings: warnings.join(' '),
    ids: checks.map(({ id }) => id),
    ratio: bending?.ratio ?? NaN,
    outcome: bending?.outcome,
    sagging: analysis.moment.max.value / lbfIn,
    hogging: analysis.moment.min.value / lbfIn,
  };
}

describe('two brackets bare at once, only where a load that may be absent is gone', () => {
  const [P, roaming] = [132.67, 5];
  const [left, right, third, fourth, end] = [1.75, 31.75, 51.25, 57.375, 60.875];
  const [a, b, L] = [24.125 - left, right - 24.125, right - left];
  const c = end - right;

  it('with the free load gone the board is clear of brackets 3 and 4: it turns up over bracket 2 (AISC 3-23, 8, 1, 24)', () => {
    // All times EI. The load, the board in the span; less the board standing out and the piece at the left.
    const turn =
      (P * a * (L ** 2 - a ** 2)) / (6 * L) +
      (w * L ** 3) / 24 -
      ((w * c ** 2) / 2) * (L / 3) -
      ((w * left ** 2) / 2) * (L / 6);
    for (const x of [third - right, fourth - right]) {
      const sag = (w * x ** 2 * (6 * c ** 2 - 4 * c * x + x ** 2)) / 24;
      expect(turn * x).toBeGreaterThan(sag);
    }
  });

  it('so it hangs between brackets 1 and 2 alone, the hand beside the fixed load: P a b / L and the board', () => {
    const weight = (w * end * (right - end / 2) * a) / L - (w * 24.125 ** 2) / 2;
    const expected = ((P + roaming) * a * b) / L + weight;
    const loads = [point(24.125, P), point(58.875, 11.6, 'free'), hand(roaming)];
    const found = bendingOf(resting([left, right, third, fourth], end, loads, 'eastern-white-pine'));
    expect(found.sagging).toBeGreaterThan(expected * 0.999);
    expect(found.sagging).toBeLessThan(expected * 1.001);
    expect([found.outcome, found.verdict]).toEqual(['does-not-hold', 'does-not-hold']);
    expect(found.warnings).toMatch(/lifts off brackets 3 .*, 4 /);
  });
});

describe('twelve brackets, many of them bare at one time or another', () => {
  const length = 140;
  const positions = [2, 10, 18, 26, 34, 42, 50, 58, 66, 90, 100, 138];
  const turned = positions.map((x) => length - x).reverse();
  const amount = 75;
  const here = bendingOf(
    resting(positions, length, [point(119, amount, 'free'), hand(20)], 'eastern-white-pine'),
  );
  const there = bendingOf(
    resting(turned, length, [point(length - 119, amount, 'free'), hand(20)], 'eastern-white-pine'),
  );

  it('the same seen from either side', () => {
    expect(there.verdict).toBe(here.verdict);
    expect(there.ratio).toBeCloseTo(here.ratio, 6);
    expect(there.sagging).toBeCloseTo(here.sagging, 3);
    expect(there.hogging).toBeCloseTo(here.hogging, 3);
  });

  it('no less than with the hand beside the load, on the one set of brackets that will do then', () => {
    const near = positions.slice(0, -2);
    const chosen = near.flatMap((x, i) => [[x], ...near.slice(i + 1).map((y) => [x, y])]);
    const fit = [[], ...chosen].flatMap((some) => {
      const set = [...some, ...positions.slice(-2)].map((x) => x * inch);
      const beam = denseBeam({
        length_m: length * inch,
        EI_Nm2: 1000,
        GA_N: 1e12,
        supports: set.map((at_m) => ({ at_m })),
        breaks_m: [...positions, 119].map((x) => x * inch),
        step_m: 12 * inch,
      });
      const state = beam.solve({
        lines: [{ from_m: 0, to_m: length * inch, load_Npm: (w * poundForce) / inch }],
        points: [{ at_m: 119 * inch, load_N: (amount + 20) * poundForce }],
      });
      const isClear = positions.every((x) => {
        const node = beam.nodes_m.findIndex((at) => Math.abs(at - x * inch) < 1e-9);
        return (state.movement_m[node] ?? NaN) <= 1e-12;
      });
      return isClear && state.reactions_N.every((reaction) => reaction >= -1e-9)
        ? [Math.max(...state.momentLeft_Nm) / lbfIn]
        : [];
    });
    expect(fit).toHaveLength(1);
    // Movement in shear, left out here, turns a little of the moment.
    expect(here.sagging).toBeGreaterThan((fit[0] ?? NaN) * 0.99);
    expect(here.verdict).toBe('does-not-hold');
  });
});

describe('more sets of brackets than are worked out', () => {
  const positions = Array.from({ length: 20 }, (_, i) => 2 + 7 * i);
  const length = 137;
  const loads = [point(5, 60, 'free'), point(70.5, 40, 'free'), hand(30)];
  const turnedLoads = [point(length - 5, 60, 'free'), point(length - 70.5, 40, 'free'), hand(30)];

  it('is never a pass, from either side, and says so', () => {
    const here = bendingOf(resting(positions, length, loads));
    const there = bendingOf(resting(positions.map((x) => length - x).reverse(), length, turnedLoads));
    for (const { verdict, ids, warnings } of [here, there]) {
      expect(verdict).toBe('cannot-say');
      expect(ids).toContain('standing');
      expect(warnings).toMatch(/lifts off many of them/);
    }
    expect(there.ratio).toBeCloseTo(here.ratio, 6);
  });
});

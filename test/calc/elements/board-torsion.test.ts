import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { foot, inch, judge, line, poundForce, psi, shelf } from './documents.ts';
import { maple, mapleBoard } from './maple.ts';

/*
 * A board twisted by loads along its front edge, by hand. It is held from turning at the brackets: a torque m for each length
 * brings m L / 2 to each end of a bay, m a to the root of an overhang. Stress T / (α b t²) with α by Timoshenko's table, and
 * 1.5 V / A with it.
 */
const front = (amount: string, more = {}) => line(amount, { eccentricity: '10 in', ...more });
const at = (document: BracketShelfInput) => judge(document, 'torsion');
const hasTorsion = (document: BracketShelfInput): boolean =>
  check(document).checks.some(({ id }) => id === 'torsion');
/** α of 10 × 1-1/4 in, b/t 8, and of 10 × 1 in, b/t 10. */
const alpha = { 8: 0.307, 10: 0.313 } as const;
const withinHalfAHundredth = (found: number, byHand: number): void => {
  expect(found / byHand).toBeGreaterThan(0.995);
  expect(found / byHand).toBeLessThan(1.005);
};

describe('a plain board twisted by what stands along its front edge', () => {
  const twoBays: BracketShelfInput = shelf({
    board: { length: '58 in', thickness: '1-1/4 in', appearance: 'nearly-clear' },
    brackets: {
      ...{ positions: ['1 in', '29 in', '57 in'], armWidth: '2 in' },
      capacity: { basis: 'rated', allowable: '2500 lbf', at: '10 in' },
    },
    loads: [front('250 lbf/ft', { duration: 'ten-years', arrangement: 'free' })],
  });
  const { A, weight_Npm } = mapleBoard(10, 1.25);
  const w = 250 * (poundForce / foot);
  const L = 28 * inch;

  it('28 in between brackets under 250 lbf/ft at 5 in from mid-depth: w e L / 2 is 1458 lbf·in, and it does not hold', () => {
    const T = (w * 5 * inch * L) / 2;
    expect(T / (poundForce * inch)).toBeCloseTo(1458.3, 1);
    // Over the middle bracket: 5 w L / 8 of two equal spans, a little less for the ends that stand out.
    const V = (5 / 8) * (w + weight_Npm) * L;
    const byHand = T / (alpha[8] * 10 * 1.25 ** 2 * inch ** 3) + (1.5 * V) / A;
    withinHalfAHundredth(at(twoBays).demand, byHand);
    expect(at(twoBays).outcome).toBe('does-not-hold');
    expect(judge(twoBays, 'shear').outcome).toBe('holds');
  });

  it('one that roams along the edge brings all of its torque to the bracket it stands beside: P e', () => {
    const hand = { kind: 'roaming', amount: '200 lbf', duration: 'seven-days' } as const;
    const one = shelf({ board: { thickness: '1 in' }, loads: [hand] });
    const own = (mapleBoard(10, 1).weight_Npm * 32 * inch) / 2;
    const V = 200 * poundForce + own;
    const byHand = (200 * 5) / (alpha[10] * 10) + (1.5 * V) / poundForce / 10;
    withinHalfAHundredth(at(one).demand / psi, byHand);
    expect(at(one).capacity / psi).toBeCloseTo(maple.shear_psi * 1.25, 6);
  });

  it('an overhang brings all of its torque to its root, a load on a bay its share', () => {
    const own_Npm = mapleBoard(10, 1).weight_Npm;
    const tip = { kind: 'point', amount: '100 lbf', at: '46 in', eccentricity: '9 in' } as const;
    const byTip = (100 * 4) / (alpha[10] * 10) + (1.5 * (100 + (own_Npm * 8 * inch) / poundForce)) / 10;
    const fixed = { duration: 'ten-years', arrangement: 'fixed' } as const;
    withinHalfAHundredth(
      at(shelf({ board: { thickness: '1 in' }, loads: [{ ...tip, ...fixed }] })).demand / psi,
      byTip,
    );
    const inBay = { ...tip, ...fixed, at: '16 in' } as const;
    const V = 100 * 0.75 + (own_Npm * 16 * inch) / poundForce;
    withinHalfAHundredth(
      at(shelf({ board: { thickness: '1 in' }, loads: [inBay] })).demand / psi,
      (100 * 4 * 0.75) / (alpha[10] * 10) + (1.5 * V) / 10,
    );
  });

  it('what stands behind mid-depth twists it the other way, and takes nothing from what stands in front', () => {
    const behind = (amount: string, eccentricity = '0 in') => line(amount, { eccentricity });
    const torqueOf = (loads: BracketShelfInput['loads']): number => {
      const step = check(shelf({ loads }))
        .worksheet.sections.flatMap(({ steps }) => steps)
        .find(({ symbol }) => symbol === 'T');
      return step?.result.value ?? NaN;
    };
    const only = torqueOf([behind('30 lbf/ft')]);
    expect(only / (30 * poundForce * (5 / 12) * 16 * inch)).toBeCloseTo(1, 9);
    expect(torqueOf([front('30 lbf/ft'), behind('30 lbf/ft')])).toBeCloseTo(only, 9);
    expect(torqueOf([front('30 lbf/ft'), behind('60 lbf/ft')])).toBeCloseTo(2 * only, 9);
  });

  it('is told of only where something twists it', () => {
    expect(hasTorsion(shelf({ loads: [line('30 lbf/ft')] }))).toBe(false);
    expect(hasTorsion(shelf({ loads: [front('30 lbf/ft')] }))).toBe(true);
  });
});

describe('a board of layers, twisted', () => {
  const hand = { kind: 'roaming', amount: '100 lbf', duration: 'seven-days' } as const;
  const layered = (bond: 'structural' | 'none') =>
    shelf({
      board: { thickness: '1 in', layers: [{ thickness: '1/2 in' }, { thickness: '1/2 in' }], bond },
      loads: [hand],
    });
  /** Of 10 × 1/2 in, b/t 20: 1/3 (1 − 0.63 t/b), to a two-hundredth. */
  const thin = (1 - 0.63 / 20) / 3;
  const V = 100 + (mapleBoard(10, 1).weight_Npm * 16 * inch) / poundForce;

  it('glued, is as one thickness', () => {
    withinHalfAHundredth(at(layered('structural')).demand / psi, 500 / (alpha[10] * 10) + (1.5 * V) / 10);
  });

  it('loose, each of two takes half: T / 2 over a quarter of b t², twice the stress', () => {
    withinHalfAHundredth(at(layered('none')).demand / psi, 250 / (thin * 10 * 0.5 ** 2) + (1.5 * V) / 10);
  });
});

describe('a box, twisted', () => {
  it('bears T / 2 A t in its skins and frame (Bredt), A within the middles of its walls', () => {
    const box = (amount: string) =>
      at(
        shelf({
          board: { thickness: '2 in', box: { skin: '1/4 in', frame: '3/4 in' } },
          loads: [{ kind: 'roaming', amount, duration: 'seven-days' }],
        }),
      ).demand / psi;
    const A = (10 - 0.75) * (2 - 0.25);
    const [skin, frame] = [500 / (2 * A * 0.25), 500 / (2 * A * 0.75)];
    // VQ / I over the frame, 2 × 3/4 in wide: I of a box of 10 × 2 in, hollow 8.5 × 1.5 in; of the skin next to none.
    const I = (10 * 2 ** 3 - 8.5 * 1.5 ** 3) / 12;
    const inFrame = (100 * (10 * 0.25 * 0.875 + (1.5 * 0.75 ** 2) / 2)) / (I * 1.5);
    const byHand = Math.max(frame + inFrame, skin + (100 * 10 * 0.25 * 0.875) / (I * 10));
    const found = box('200 lbf') - box('100 lbf');
    expect(found / byHand).toBeGreaterThan(0.995);
    expect(found / byHand).toBeLessThan(1.02);
  });
});

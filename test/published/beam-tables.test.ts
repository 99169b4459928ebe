import { describe, expect, it } from 'vitest';
import { solved } from '../calc/mechanics/solved-beam.ts';

/*
 * AISC Steel Construction Manual, Tables 3-22c (continuous beams) and 3-23 (shears, moments and deflections); AWC Design
 * Aid No. 6, Beam Formulas. Set down from memory of the printed tables, and each case also follows from equilibrium. The
 * tables print three or four figures: the tolerance is half of the last one. EI = 1, w = 1, L = 1 unless a case says more.
 */
const w = (from_m: number, to_m: number, load_Npm = 1) => ({ lines: [{ from_m, to_m, load_Npm }] });
const P = (at_m: number, load_N = 1) => ({ points: [{ at_m, load_N }] });
const equal = (spans: number) => ({
  length_m: spans,
  supports: Array.from({ length: spans + 1 }, (_, i) => i),
});

function areClose(found: readonly number[], expected: readonly number[], digits: number): void {
  expect(found).toHaveLength(expected.length);
  expected.forEach((each, i) => expect(found[i]).toBeCloseTo(each, digits));
}

describe('AISC Table 3-22c: equal spans under a uniform load', () => {
  it('three spans, all loaded', () => {
    const beam = solved(equal(3), w(0, 3));
    areClose(beam.reactions, [0.4, 1.1, 1.1, 0.4], 10);
    expect(beam.moment(1)).toBeCloseTo(-0.1, 10);
    expect(beam.mostMoment(1, 0, 1)).toBeCloseTo(0.08, 10);
    expect(beam.mostMoment(1, 1, 2)).toBeCloseTo(0.025, 10);
    expect(beam.mostMovement(1)).toBeCloseTo(0.0069, 4);
    expect(Math.abs(beam.shearLeft(1))).toBeCloseTo(0.6, 10);
    expect(Math.abs(beam.shearRight(1))).toBeCloseTo(0.5, 10);
  });

  it('three spans, the outer two loaded', () => {
    const beam = solved(equal(3), { lines: [...w(0, 1).lines, ...w(2, 3).lines] });
    areClose(beam.reactions, [0.45, 0.55, 0.55, 0.45], 10);
    expect(beam.mostMoment(1)).toBeCloseTo(0.1013, 4);
    expect(beam.moment(1)).toBeCloseTo(-0.05, 10);
    expect(beam.mostMovement(1)).toBeCloseTo(0.0099, 4);
  });

  it('three spans, an end span unloaded', () => {
    const beam = solved(equal(3), w(0, 2));
    areClose(beam.reactions, [0.383, 1.2, 0.45, -0.033], 3);
    expect(beam.moment(1)).toBeCloseTo(-0.1167, 4);
    expect(beam.moment(2)).toBeCloseTo(-0.0333, 4);
    expect(beam.mostMoment(1, 0, 1)).toBeCloseTo(0.0735, 4);
    expect(Math.abs(beam.mostMoment(1, 1, 2) - 0.0534)).toBeLessThan(1e-4); // printed cut short: 0.05347
    expect(beam.mostMovement(1)).toBeCloseTo(0.0059, 4);
  });

  it('four spans, all loaded', () => {
    const beam = solved(equal(4), w(0, 4));
    areClose(beam.reactions, [0.393, 1.143, 0.928, 1.143, 0.393], 2.9);
    expect(beam.reactions[0]).toBeCloseTo(11 / 28, 10);
    expect(beam.moment(1)).toBeCloseTo(-0.1071, 4);
    expect(beam.moment(2)).toBeCloseTo(-0.0714, 4);
    expect(beam.mostMoment(1, 0, 1)).toBeCloseTo(0.0772, 4);
    expect(beam.mostMoment(1, 1, 2)).toBeCloseTo(0.0364, 4);
    expect(beam.mostMovement(1)).toBeCloseTo(0.0065, 4);
  });
});

describe('AISC Table 3-23 and DA6', () => {
  it('two spans, both loaded (case 34): R 3/8, 10/8; M −1/8, 9/128; Δ = wL⁴/185', () => {
    const beam = solved(equal(2), w(0, 2));
    areClose(beam.reactions, [3 / 8, 10 / 8, 3 / 8], 10);
    expect(beam.moment(1)).toBeCloseTo(-1 / 8, 10);
    expect(beam.mostMoment(1)).toBeCloseTo(9 / 128, 10);
    expect(1 / beam.mostMovement(1)).toBeCloseTo(185, -0.5);
  });

  it('two spans, one loaded (case 29): R 7/16, 5/8, −1/16; M 49/512, −1/16; Δ 0.0092', () => {
    const beam = solved(equal(2), w(0, 1));
    areClose(beam.reactions, [7 / 16, 5 / 8, -1 / 16], 10);
    expect(beam.mostMoment(1)).toBeCloseTo(49 / 512, 10);
    expect(beam.moment(1)).toBeCloseTo(-1 / 16, 10);
    expect(beam.mostMovement(1)).toBeCloseTo(0.0092, 4);
  });

  it('two spans, a point load in the middle of one (case 30): R 13/32, 11/16, −3/32; M 13/64; Δ 0.015', () => {
    const beam = solved(equal(2), P(0.5));
    areClose(beam.reactions, [13 / 32, 11 / 16, -3 / 32], 10);
    expect(beam.moment(0.5)).toBeCloseTo(13 / 64, 10);
    expect(beam.mostMovement(1)).toBeCloseTo(0.015, 3);
  });

  it('simple span with a point load anywhere (case 8): Δ_max = Pab(a + 2b)√(3a(a + 2b)) / 27 EI L', () => {
    const [a, b, L, EI, load] = [1.3, 0.7, 2, 800, 250];
    const beam = solved({ length_m: L, supports: [0, L], EI_Nm2: EI }, P(a, load));
    const most = (load * a * b * (a + 2 * b) * Math.sqrt(3 * a * (a + 2 * b))) / (27 * EI * L);
    expect(beam.mostMovement(1)).toBeCloseTo(most, 12);
    expect(beam.moment(a)).toBeCloseTo((load * a * b) / L, 9);
  });

  it('simple span, uniform load over part of it (case 4)', () => {
    const [a, b, L] = [0.4, 0.9, 2];
    const c = L - a - b;
    const beam = solved({ length_m: L, supports: [0, L] }, w(a, a + b));
    const R1 = (b / (2 * L)) * (2 * c + b);
    expect(beam.reactions[0]).toBeCloseTo(R1, 12);
    expect(beam.mostMoment(1)).toBeCloseTo(R1 * (a + R1 / 2), 12);
  });

  it('simple span, uniform load over one end (case 5): movement at any place', () => {
    const [a, L] = [0.7, 2];
    const beam = solved({ length_m: L, supports: [0, L] }, w(0, a));
    for (const x of [0.2, 0.5]) {
      const moved = (x / (24 * L)) * (a * a * (2 * L - a) ** 2 - 2 * a * x * x * (2 * L - a) + L * x ** 3);
      expect(beam.movement(x)).toBeCloseTo(moved, 12);
    }
    expect(beam.movement(1.5)).toBeCloseTo(
      ((a * a * (L - 1.5)) / (24 * L)) * (4 * 1.5 * L - 2 * 1.5 ** 2 - a * a),
      12,
    );
  });

  const [L, a] = [1.6, 0.45];
  const overhanging = { length_m: L + a, supports: [0, L], EI_Nm2: 700 };

  it('overhang, load at its tip (case 26): Δ = Pa²(L + a)/3EI, and up between the supports PaL²/9√3EI', () => {
    const beam = solved(overhanging, P(L + a, 90));
    expect(beam.movement(L + a)).toBeCloseTo((90 * a * a * (L + a)) / (3 * 700), 12);
    expect(-beam.mostMovement(-1, 0, L)).toBeCloseTo((90 * a * L * L) / (9 * Math.sqrt(3) * 700), 12);
    areClose(beam.reactions, [(-90 * a) / L, (90 * (L + a)) / L], 9);
  });

  it('overhang, uniform load on it alone (case 25): Δ = wa³(4L + 3a)/24EI', () => {
    const beam = solved(overhanging, w(L, L + a, 120));
    expect(beam.movement(L + a)).toBeCloseTo((120 * a ** 3 * (4 * L + 3 * a)) / (24 * 700), 12);
    expect(beam.moment(L)).toBeCloseTo((-120 * a * a) / 2, 10);
  });

  it('overhang, uniform load between the supports alone (case 27): the tip rises wL³a/24EI', () => {
    expect(solved(overhanging, w(0, L, 120)).movement(L + a)).toBeCloseTo(
      (-120 * L ** 3 * a) / (24 * 700),
      12,
    );
  });

  it('overhang, uniform load all along (case 24)', () => {
    const beam = solved(overhanging, w(0, L + a, 120));
    const tip = ((120 * a) / (24 * 700)) * (4 * a * a * L - L ** 3 + 3 * a ** 3);
    expect(beam.movement(L + a)).toBeCloseTo(tip, 12);
    expect(beam.mostMoment(1, 0, L)).toBeCloseTo((120 / (8 * L * L)) * (L + a) ** 2 * (L - a) ** 2, 9);
    expect(beam.reactions[1]).toBeCloseTo((120 / (2 * L)) * (L + a) ** 2, 9);
  });

  it('the overhang may be on the left: the mirror image', () => {
    const left = solved({ length_m: L + a, supports: [a, L + a], EI_Nm2: 700 }, P(0, 90));
    expect(left.movement(0)).toBeCloseTo((90 * a * a * (L + a)) / (3 * 700), 12);
    expect(left.reactions[1]).toBeCloseTo((-90 * a) / L, 9);
  });
});

describe('two supports under a uniform load: where to put them', () => {
  it('at (√2 − 1)/2 = 0.2071 of the length the moments over them and in the middle are alike', () => {
    const x = (Math.SQRT2 - 1) / 2;
    expect(x).toBeCloseTo(0.2071, 4);
    const beam = solved({ length_m: 1, supports: [x, 1 - x] }, w(0, 1));
    expect(-beam.moment(x)).toBeCloseTo(beam.moment(0.5), 12);
    expect(-beam.moment(x)).toBeCloseTo(0.0214, 4);
  });

  it('at 0.2232 of the length the ends and the middle sag alike', () => {
    const sagging = (x: number): number => {
      const beam = solved({ length_m: 1, supports: [x, 1 - x] }, w(0, 1));
      return beam.movement(0) - beam.movement(0.5);
    };
    expect(sagging(0.2231)).toBeLessThan(0);
    expect(sagging(0.2233)).toBeGreaterThan(0);
  });
});

describe('bending and shear together', () => {
  it('Wood Handbook FPL-GTR-282 ch. 9: simple span, 5wL⁴/384EI + wL²/8κGA; point load in the middle PL³/48EI + PL/4κGA', () => {
    const [span, EI, GA] = [1.1, 1500, 4e4];
    const parts = { length_m: span, supports: [0, span], EI_Nm2: EI, GA_N: GA };
    expect(solved(parts, w(0, span, 400)).movement(span / 2)).toBeCloseTo(
      (5 * 400 * span ** 4) / (384 * EI) + (400 * span ** 2) / (8 * GA),
      14,
    );
    expect(solved(parts, P(span / 2, 300)).movement(span / 2)).toBeCloseTo(
      (300 * span ** 3) / (48 * EI) + (300 * span) / (4 * GA),
      14,
    );
  });

  it('Benoit, Legrand, Tastet, Calcul de structures en bois (2008), example 2.3.1: 7.501 mm and 10.001 mm', () => {
    const [b, h] = [0.075, 0.2];
    const parts = {
      length_m: 4.5,
      supports: [0, 4.5],
      EI_Nm2: (11e9 * b * h ** 3) / 12,
      GA_N: (5 / 6) * 690e6 * b * h,
    };
    expect(solved(parts, w(0, 4.5, 750)).movement(2.25) * 1000).toBeCloseTo(7.501, 3);
    expect(solved(parts, w(0, 4.5, 1000)).movement(2.25) * 1000).toBeCloseTo(10.001, 3);
  });

  it('a propped overhang with shear: the tip moves Pa²(L + a)/3EI + P a (1 + a/L)/κGA (unit-load method)', () => {
    const [L, a, EI, GA] = [0.8, 0.3, 900, 3e4];
    const beam = solved({ length_m: L + a, supports: [0, L], EI_Nm2: EI, GA_N: GA }, P(L + a, 50));
    expect(beam.movement(L + a)).toBeCloseTo(
      (50 * a * a * (L + a)) / (3 * EI) + (50 * a * (1 + a / L)) / GA,
      14,
    );
  });
});

describe('supports that give way', () => {
  it('a middle spring under a point load: R = P k / (k + 48EI/L³)', () => {
    const [L, EI, k] = [2, 600, 5000];
    const supports = [
      { at_m: 0, stiffness_Npm: Infinity },
      { at_m: 1, stiffness_Npm: k },
      { at_m: L, stiffness_Npm: Infinity },
    ];
    const beam = solved({ length_m: L, supports, EI_Nm2: EI }, P(1, 100));
    expect(beam.reactions[1]).toBeCloseTo((100 * k) / (k + (48 * EI) / L ** 3), 9);
    expect(beam.movement(1)).toBeCloseTo((beam.reactions[1] ?? NaN) / k, 12);
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { counter, mapleWeight_lbf } from './counter-documents.ts';
import { inch, judge, psi } from './documents.ts';
import { maple } from './maple.ts';

/*
 * A top of 60 x 30 x 1-1/2 in that stands out 12 in past the right end of its base alone. Staves that run from back to front
 * are bent across there: all that is on the 12 in goes over the panel as rolling shear, 18 % of shear along the grain at least
 * (Wood Handbook, chapter 5; memory).
 */
const pressed_psi = 100 / 144;
const endOut = (staves: 'along' | 'across') =>
  counter({
    top: { appearance: 'small-knots', staves, length: '60 in', depth: '30 in' },
    base: { to: '48 in', front: '30 in', foot: '30 in', heldToFloor: true, anchorPull: '5000 lbf' },
    screws: {
      ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in' },
      at: [6, 15, 24].map((y) => ['2 in', `${y} in`]),
    },
    loads: [{ kind: 'area', amount: '100 psf', duration: 'ten-years' }],
  });
const own_psi = mapleWeight_lbf(60, 30, 1.5) / (60 * 30);
const overPanel_psi = (1.5 * (pressed_psi + own_psi) * 12) / 1.5;

describe('shear of a top that stands out past an end of its base', () => {
  it('rolls the fibres of staves from back to front: no less than q a over the panel, against 0.18 F_v', () => {
    const { demand, capacity } = judge(endOut('across'), 'shear');
    expect(capacity / psi / (0.18 * maple.shear_psi)).toBeCloseTo(1, 3);
    expect(demand / psi).toBeGreaterThan(overPanel_psi);
  });

  it('asks as much of them as of staves along the length that stand out past the face instead', () => {
    const turned = counter({
      top: { appearance: 'small-knots', staves: 'along', length: '30 in', depth: '60 in' },
      base: {
        ...{ to: '30 in', front: '48 in', foot: '48 in', weightAt: '24 in' },
        ...{ heldToFloor: true, anchorPull: '5000 lbf' },
      },
      screws: {
        ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in' },
        at: [6, 15, 24].map((x) => [`${x} in`, '2 in']),
      },
      loads: [{ kind: 'area', amount: '100 psf', duration: 'ten-years' }],
    });
    const [one, other] = [judge(endOut('across'), 'shear'), judge(turned, 'shear')];
    // At a corner a rail takes all that stands there, and a panel its part by length.
    expect(one.capacity / other.capacity).toBeCloseTo(1, 6);
    expect(one.demand / other.demand).toBeGreaterThan(0.6);
    expect(one.demand / other.demand).toBeLessThan(1.01);
  });
});

describe('a short thick end that stands out', () => {
  /** Staves from back to front: each inch of the length is a beam, `front` between the rails, the rest of 36 in out. */
  const thickTop = (front: string, amount: string) =>
    counter({
      top: { appearance: 'small-knots', staves: 'across', length: '96 in', thickness: '3 in' },
      base: { to: '96 in', front, foot: front, panels: ['0 in', '48 in', '96 in'] },
      loads: [{ kind: 'area', amount, duration: 'ten-years', sustained: 0.3 }],
    });

  // Without shear it was told to move a fifth less.
  it('moves as a beam that bends, shears and sinks into its rails (AISC Manual Table 3-23; Timoshenko)', () => {
    // 30 in between the rails, 6 in out, q alike on the 6 in.
    const [L, a, t, q] = [30, 6, 3, 50 / 144];
    const { demand } = judge(thickTop('30 in', '50 psf'), 'deflection-serving');
    const [E, G] = [maple.E_Pa / psi, maple.G_Pa / psi];
    const bent = (q * a ** 3 * (4 * L + 3 * a)) / (24 * ((E * t ** 3) / 12));
    const sheared = ((q * a ** 2) / 2 / ((5 / 6) * G * t)) * (1 + a / L);
    // A rail of 3/4 in is as stiff as the wood over it: E_T = 0.065 E_L for sugar maple (Wood Handbook, Table 5-1).
    const [front, back] = [(q * a * (L + a / 2)) / L, (q * a * (a / 2)) / L];
    const sunk = ((front * (L + a)) / L + (back * a) / L) / ((0.065 * E * 0.75) / t);
    expect(sheared / (bent + sunk + sheared)).toBeGreaterThan(0.1);
    expect(demand / inch / (bent + sunk + sheared)).toBeGreaterThan(0.97);
    expect(demand / inch / (bent + sunk + sheared)).toBeLessThan(1.05);
  });

  it('over the years bends by what stays, with creep, and what comes, and then shears: the lines of working say all of it', () => {
    const { worksheet, checks } = check(thickTop('22 in', '10 psf'));
    const linesOf = (id: string) =>
      worksheet.sections.filter((each) => each.check === id).flatMap(({ steps }) => steps);
    const inputsOf = (id: string, symbol: string) =>
      Object.fromEntries(
        (linesOf(id).find((each) => each.symbol === symbol)?.inputs ?? []).map((each) => [
          each.symbol,
          each.value,
        ]),
      );
    const serving = inputsOf('deflection-serving', 'Delta');
    const parts = inputsOf('deflection-long-term', 'Delta_b');
    const { Delta_b = NaN, r_s = NaN } = inputsOf('deflection-long-term', 'Delta');
    const { K_cr = NaN, Delta_LT = NaN, Delta_ST = NaN } = parts;
    // By superposition: what comes and goes is 0.7 of what is served. Each may be largest at another place of the edge.
    expect(Delta_ST / (0.7 * (serving['Delta_b'] ?? NaN))).toBeCloseTo(1, 2);
    expect((K_cr * Delta_LT + Delta_ST) / Delta_b).toBeCloseTo(1, 9);
    const demand = checks.find(({ id }) => id === 'deflection-long-term')?.demand?.value ?? NaN;
    expect((Delta_b * (1 + r_s)) / demand).toBeCloseTo(1, 9);
  });
});

import {
  impliedStiffness,
  stripMovement,
  wholeLoad,
} from '../../../calc/elements/counter-run/bow-formulas.ts';
import * as hold from '../../../calc/elements/counter-overhang/hold-formulas.ts';
import * as tip from '../../../calc/elements/counter-overhang/tip-over-formulas.ts';
import * as plate from '../../../calc/mechanics/plate-formulas.ts';
import { widthChange } from '../../../calc/standards/wood-handbook-2021/moisture.ts';
import { rollingShear } from '../../../calc/standards/wood-handbook-2021/rolling-shear.ts';
import { stiffnessAcross } from '../../../calc/standards/wood-handbook-2021/stiffness.ts';
import { published, type PublishedValue } from './published-value.ts';
import { inch, poundForce, psi } from './units.ts';

const exact = { tolerance: 1e-9, why: 'exact' };
const byHand = (what: string) => ({ ...exact, source: `worked by hand: ${what}`, memory: false });
const inLbf = poundForce * inch;

const plates: readonly PublishedValue[] = [
  published(plate.stiffnessOfPlate, { E: 30e6 * psi, t: 1 * inch, nu_LT: 0.3, r_A: 1 }, 2.747e6 * inLbf, {
    tolerance: 2e-4,
    source:
      'Timoshenko & Woinowsky-Krieger, Eq. 3: D = E h³ / 12 (1 − ν²), alike both ways; 30 Mpsi, 1 in, ν 0.3',
    why: 'four figures: 30 / (12 × 0.91) = 2.747',
    memory: true,
  }),
  published(plate.stiffnessOfPlate, { E: 12e9, t: 0.04, nu_LT: 0.5, r_A: 0.08 }, (12e9 * 6.4e-5) / 11.76, {
    ...byHand('12 (1 − 0.25 × 0.08) = 11.76'),
  }),
  published(plate.couplingOfPlate, { nu_LT: 0.476, D_A: 1000 }, 476, byHand('0.476 × 1000')),
  published(plate.twistingOfPlate, { G: 6e9, t: 0.02 }, 4000, byHand('6e9 × 8e-6 / 12')),
  published(plate.plateBendingStress, { m: 100 * poundForce, t: 1.5 * inch }, (600 / 2.25) * psi, {
    ...byHand('100 lbf·in for each inch on 1-1/2 in: 600 / 2.25 psi'),
  }),
  published(plate.plateShearStress, { v: (20 * poundForce) / inch, t: 1.5 * inch }, 20 * psi, {
    ...byHand('20 lbf for each inch on 1-1/2 in: 3 × 20 / 3 psi'),
  }),
  published(plate.linePressure, { p: (30 * poundForce) / inch, b_r: 0.75 * inch }, 40 * psi, {
    ...byHand('30 lbf for each inch on 3/4 in'),
  }),
  published(plate.shearStiffnessOfPlate, { r_G: 0.06, E_L: 12e9, t: 0.05 }, 3e7, {
    ...byHand('5/6 × 0.06 × 12e9 × 0.05'),
  }),
  published(plate.shearedMovement, { Delta_b: 0.004, r_s: 0.25 }, 0.005, byHand('0.004 × 1.25')),
  published(plate.clampedOverhang, { w: 100, a: 2, EI: 1000 }, 0.2, {
    ...exact,
    source: 'AISC Manual, 15th ed., Table 3-23, cantilever, uniform load: wl⁴/8EI = 100 × 16 / 8000',
    memory: true,
  }),
  published(wholeLoad, { q: 500, L: 2, d: 0.6 }, 600, {
    source: 'worked by hand: 500 N/m² on 1.2 m²',
    memory: false,
    tolerance: 1e-9,
    why: 'exact',
  }),
  published(stripMovement, { q: 384, L: 2, EI: 1000 }, 0.08, {
    ...exact,
    source:
      'AISC Manual, 15th ed., Table 3-23, simple beam, uniform load: 5wl⁴/384EI = 5 × 384 × 16 / 384 000',
    memory: true,
  }),
  published(impliedStiffness, { K_cr: 1.5, q: 384, L: 2, Delta_m: 0.12 }, 1000, {
    ...exact,
    source:
      'AISC Manual, 15th ed., Table 3-23, simple beam, uniform load, turned round: 1.5 × 0.08 m of creep and movement',
    memory: true,
  }),
  published(plate.freeOverhang, { w: 100, a: 2, L: 3, EI: 1000 }, 0.6, {
    ...exact,
    source:
      'AISC Manual, 15th ed., Table 3-23, uniform load on the overhang: wa³(4l + 3a)/24EI = 100 × 8 × 18 / 24 000',
    memory: true,
  }),
];

const woods: readonly PublishedValue[] = [
  published(stiffnessAcross, { r_A: 0.065, E_L: 2e6 * psi }, 130_000 * psi, {
    ...exact,
    source: 'Wood Handbook FPL-GTR-282, Table 5-1: E_T / E_L of sugar maple 0.065; of 2 Mpsi',
    memory: false,
  }),
  published(widthChange, { W_m: 9.15 * inch, C_T: 0.00245, Delta_M: 3 }, 0.067 * inch, {
    tolerance: 5e-3,
    source: 'Wood Handbook, chapter 13: flat-sawn white fir, 9.15 in wide, 8 % to 11 %, swells 0.067 in',
    why: 'two figures printed',
    memory: true,
  }),
  published(rollingShear, { F_v_prime: 1000 }, 180, {
    ...exact,
    source: 'Wood Handbook, chapter 5: rolling shear strength is 18 % to 28 % of that along the grain',
    memory: true,
  }),
];

const tips: readonly PublishedValue[] = [
  published(tip.overturningMoment, { D_f: 30, e_f: 0.15, S_f: 40, e_S: 0.1, P: 1000, e_P: 0.25 }, 258.5, {
    ...byHand('4.5 + 4 + 250 N·m'),
  }),
  published(tip.restoringMoment, { D_b: 700, e_b: 0.3, D_r: 250, e_r: 0.4 }, 186, {
    ...byHand('0.6 × (210 + 100) N·m'),
  }),
  published(
    tip.anchoredMoment,
    { C_rest: 186, T_a: 500, e_a: 0.6, T_b: 100, e_b: 0.2 },
    506,
    byHand('186 + 300 + 20 N·m'),
  ),
  published(tip.pushMoment, { H: 400, h: 0.9, D_f: 30, e_f: 0.15 }, 364.5, byHand('360 + 4.5 N·m')),
  published(tip.floorPull, { C_over: 258.5, C_rest: 186, e_a: 0.5 }, 145, byHand('72.5 / 0.5 N')),
  published(hold.topHolding, { D_r: 250, e_r: 0.4, Sigma_s: 100 }, 160, byHand('0.6 × 100 + 100 N·m')),
  published(hold.barMoment, { E_s: 200e9, b: 0.05, t_s: 0.01, chi: 0.02 }, 50 / 3, {
    ...byHand('200e9 × 0.05 × 1e-6 / 12 × 0.02'),
  }),
  published(hold.bracketCouple, { P_r: 1000, l_b: 0.25 }, 125, byHand('1000 × 0.125')),
  published(hold.railEndMoment, { R_r: 1000, L_r: 0.4 }, 400, {
    ...exact,
    source: 'AISC Manual, 15th ed., Table 3-23, cantilever, load at the free end: Pl = 1000 × 0.4',
    memory: true,
  }),
  published(hold.railMoment, { R_r: 800, L_r: 0.9 }, 180, {
    ...exact,
    source: 'AISC Manual, 15th ed., Table 3-23, simple beam, load in the middle: Pl/4 = 800 × 0.9 / 4',
    memory: true,
  }),
];

export const counterOverhangValues: readonly PublishedValue[] = [...plates, ...woods, ...tips];

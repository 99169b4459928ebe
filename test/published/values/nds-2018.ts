import * as adjustment from '../../../calc/standards/nds-2018/2.3-adjustment.ts';
import { longTermMovement, notchedDepth } from '../../../calc/standards/nds-2018/3-members.ts';
import { sizeFactor } from '../../../calc/standards/nds-2018/4a-lumber-factors.ts';
import * as withdrawal from '../../../calc/standards/nds-2018/12.2-withdrawal.ts';
import { shearFreeStiffnessOfLumber } from '../../../calc/standards/nds-2018/f-stiffness.ts';
import { published, type PublishedValue } from './published-value.ts';
import { inch, poundForce, psi } from './units.ts';

const ones = { C_D: 1, C_M: 1, C_t: 1 };

/** Screw diameters: NDS 2018 Appendix L, Table L3. Number, D in, G, printed lbf for each inch of thread, whether read. */
const table12_2B: readonly (readonly [string, number, number, number, boolean])[] = [
  ['No. 10', 0.19, 0.5, 135, true],
  ['No. 8', 0.164, 0.5, 117, false],
  ['No. 12', 0.216, 0.5, 154, false],
  ['No. 14', 0.242, 0.5, 172, false],
  ['No. 8', 0.164, 0.42, 82, false],
  ['No. 10', 0.19, 0.42, 96, false],
];

const screws: PublishedValue[] = table12_2B.map(([number, diameter, G, printed, read]) =>
  published(
    withdrawal.woodScrewWithdrawal,
    { k_W: withdrawal.woodScrewConstant_Pa, G, D: diameter * inch },
    (printed * poundForce) / inch,
    {
      tolerance: 0.51 / printed,
      source: `NDS 2018, Table 12.2B, ${number}, G ${G.toFixed(2)}`,
      why: 'printed to whole pounds for each inch',
      memory: !read,
    },
  ),
);

const pullThrough = { k_H: withdrawal.pullThroughConstant_Pa, D_H: 0.281 * inch, G: 0.5 };
/** 1725 π D_H² G² lbf for an 8d common nail's head in wood of G 0.50. */
const thickWood = 1725 * Math.PI * 0.281 ** 2 * 0.5 ** 2 * poundForce;

const fasteners: PublishedValue[] = [
  ...screws,
  published(
    withdrawal.adjustedWithdrawal,
    { W: 3619.31, p_t: 2.395 * inch, ...ones, C_eg: 1, C_tn: 1 },
    49.5 * poundForce,
    {
      tolerance: 1.1e-3,
      source: 'AWC, Structural Wood Design Solved Example Problems, E2.1a: 8d common nail in spruce-pine-fir',
      why: 'printed to 0.1 lbf; all adjustment factors of the example are 1',
      memory: false,
    },
  ),
  published(withdrawal.headPullThrough, { ...pullThrough, t_ns: 1 * inch, ...ones }, thickWood, {
    tolerance: 1e-9,
    source: 'NDS 2018, 12.2.5, Eq. 12.2-6b: 1725 π D_H² G² where the wood is thicker than 2.5 head diameters',
    why: 'the clause gives two equations; the formula here is one with a minimum: exact',
    memory: true,
  }),
  published(
    withdrawal.headPullThrough,
    { ...pullThrough, t_ns: 1.25 * 0.281 * inch, ...ones },
    thickWood / 2,
    {
      tolerance: 1e-9,
      source: 'NDS 2018, 12.2.5, Eq. 12.2-6a: in thinner wood in proportion to its thickness',
      why: '1.25 head diameters is half of the 2.5 at which Eq. 12.2-6b takes over: exact',
      memory: true,
    },
  ),
];

/**
 * Adjusted bending values printed for joists and rafters of Douglas fir-larch No. 2 (F_b 900 psi): nominal width, load
 * duration factor, printed psi. They hold the repetitive member factor 1.15, which a single shelf does not get.
 */
const spanTables: readonly (readonly [number, number, number])[] = [
  [4, 1.0, 1555],
  [6, 1.0, 1345],
  [8, 1.0, 1240],
  [8, 1.25, 1555],
  [10, 1.0, 1140],
  [10, 1.15, 1310],
  [10, 1.25, 1425],
  [12, 1.25, 1295],
];

/** Where a table prints the reference value and each factor, and the clause says that they multiply. */
const byHand = {
  tolerance: 1e-9,
  why: 'product of the printed numbers, worked by hand: exact',
  memory: false,
};

const adjusted: PublishedValue[] = [
  ...spanTables.map(([width, C_D, printed]) =>
    published(
      adjustment.adjustedBending,
      { F_b: 900 * psi, ...ones, C_D, C_F: sizeFactor('4A', 'No.2', width, false), C_fu: 1 },
      (printed / 1.15) * psi,
      {
        tolerance: 2.6 / printed,
        source: `AWC, Span Tables for Joists and Rafters, design values of Douglas fir-larch No. 2, 2x${width}, C_D ${C_D}`,
        why: 'printed to 5 psi, with the repetitive member factor 1.15 taken out again',
        memory: true,
      },
    ),
  ),
  published(adjustment.adjustedShear, { F_v: 180 * psi, ...ones, C_D: 1.15 }, 207 * psi, {
    ...byHand,
    source:
      'NDS Supplement 2018, Table 4A: F_v 180 psi of Douglas fir-larch; NDS 2018 Table 2.3.2: 1.15 for snow',
  }),
  published(adjustment.adjustedShear, { F_v: 180 * psi, C_D: 1, C_M: 0.97, C_t: 0.7 }, 122.22 * psi, {
    ...byHand,
    source: 'the same in wet service, Table 4A: 0.97, from 100 to 125 °F, Table 2.3.3: 0.7',
  }),
  published(adjustment.adjustedBearing, { F_c_perp: 625 * psi, C_M: 0.67, C_t: 0.7 }, 293.125 * psi, {
    ...byHand,
    source:
      'NDS Supplement 2018, Table 4A: F_c⟂ 625 psi, wet 0.67; NDS 2018 Table 2.3.3: wet, from 100 to 125 °F, 0.7',
  }),
  published(adjustment.adjustedStiffness, { E: 1.6e6 * psi, C_M: 0.9, C_t: 0.9 }, 1.296e6 * psi, {
    ...byHand,
    source: 'NDS Supplement 2018, Table 4A: E 1,600,000 psi, wet 0.9; NDS 2018 Table 2.3.3: over 100 °F, 0.9',
  }),
];

/** Grade of Douglas fir-larch, E and E_min in psi: NDS Supplement 2018, Table 4A. */
const stiffness: readonly (readonly [string, number, number])[] = [
  ['Select Structural', 1.9e6, 690_000],
  ['No. 1', 1.7e6, 620_000],
  ['No. 2', 1.6e6, 580_000],
  ['No. 3', 1.4e6, 510_000],
];

const shearFree: PublishedValue[] = stiffness.map(([grade, E, E_min]) =>
  published(shearFreeStiffnessOfLumber, { E_prime: E * psi }, ((E_min * 1.66) / (1 - 1.645 * 0.25)) * psi, {
    tolerance: 5100 / E_min,
    source: `NDS Supplement 2018, Table 4A, Douglas fir-larch ${grade}; NDS 2018 Appendix D, Eq. D-4`,
    why: 'E_min = 1.03 E (1 − 1.645 COV) / 1.66 with COV 0.25, printed to 10,000 psi: 1.03 E is what is left',
    memory: false,
  }),
);

/** Movement of the example's joist under 0.51 kN/m, from its printed 7.501 mm under 0.75 kN/m. */
const quasiPermanent = (7.501e-3 * 0.51) / 0.75;

const creep: PublishedValue[] = [
  published(
    longTermMovement,
    { K_cr: 1.6, Delta_LT: quasiPermanent, Delta_ST: 0 },
    quasiPermanent + 3.06e-3,
    {
      tolerance: 5e-4,
      source:
        'Benoit, Legrand, Tastet, Calcul de structures en bois (2008), example 2.3.1: C24, 75 × 200 mm, 4.5 m',
      why: 'k_def 0.6 on the lasting load adds 3.06 mm to its first movement, printed to 0.01 mm; NDS Eq. 3.5-1 with K_cr = 1 + k_def is the same sum',
      memory: false,
    },
  ),
  published(longTermMovement, { K_cr: 1.5, Delta_LT: 5.1e-3, Delta_ST: 4.9e-3 }, 12.55e-3, {
    tolerance: 1e-9,
    source: 'NDS 2018, 3.5.2: 1.5 for seasoned lumber on the lasting part, the rest as it is',
    why: '5.1 + half of 5.1 + 4.9 mm, summed by hand',
    memory: false,
  }),
];

const notches: readonly PublishedValue[] = [
  published(notchedDepth, { d_n: 6 * inch, d_whole: 8 * inch }, 3.375 * inch, {
    tolerance: 1e-9,
    source: 'NDS 2018, 3.4.3.2(a), Eq. 3.4-3: V_r = (2/3) F_v b d_n (d_n / d)², 6 in left of 8 in',
    why: '6 × 0.75² = 3.375 in',
    memory: true,
  }),
];

export const ndsValues: readonly PublishedValue[] = [
  ...fasteners,
  ...adjusted,
  ...shearFree,
  ...creep,
  ...notches,
];

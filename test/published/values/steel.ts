import * as steel from '../../../calc/standards/aisc-360/steel-arm.ts';
import { dressed, dressedSource, fourFigures } from './dressed-lumber.ts';
import { published, type PublishedValue } from './published-value.ts';
import { inch, ksi } from './units.ts';

const E = 29_000 * ksi;
const buckling = (slenderness: number): number => (Math.PI ** 2 * E) / slenderness ** 2;

/** Table of φ F_cr for F_y 50 ksi: slenderness, printed ksi. φ 0.90 and Ω 1.67 are of the same F_cr. */
const stocky: readonly (readonly [number, number])[] = [
  [50, 37.5],
  [100, 21.7],
];
const slender: readonly (readonly [number, number])[] = [[200, 5.65]];
const criticalStress = (slenderness: number) => ({
  source: `AISC Manual, 14th ed., Table 4-22, available critical stress, F_y 50 ksi, KL/r ${slenderness}`,
  why: 'φ F_cr printed to three figures; divided by 0.90 × 1.67 for F_cr / Ω',
  memory: true,
});

export const steelValues: readonly PublishedValue[] = [
  published(steel.plateStress, { M: 10, b: 0.032, n_h: 1, d_h: 0.008, t: 0.005 }, 100e6, {
    tolerance: 1e-9,
    source:
      'worked by hand: 10 N·m on what is left of 32 mm beside an 8 mm hole, 5 mm thick: 10 / (24 × 25 / 6 mm³)',
    why: 'exact',
    memory: false,
  }),
  published(steel.allowableSteelBending, { F_y: 36 * ksi }, 21.6 * ksi, {
    tolerance: 1e-9,
    source: 'AISC Manual of Steel Construction, 9th ed. (ASD), Numerical Values Table 1: 0.60 F_y of 36 ksi',
    why: 'exact',
    memory: true,
  }),
  published(steel.allowableSteelTension, { F_y: 36 * ksi }, 21.6 * ksi, {
    tolerance: 3e-3,
    source: 'AISC Manual of Steel Construction, 9th ed. (ASD), D1: 0.60 F_y of 36 ksi on the gross area',
    why: '0.60 for 1 / 1.67 = 0.599',
    memory: true,
  }),
  published(steel.pushedArmStress, { N: 1000, M: 10, b: 0.02, t: 0.01, F_e: 40e6 }, 42.5e6, {
    tolerance: 1e-9,
    source:
      'AISC 360-16 Appendix 8, from memory, by hand: 5 MPa of push; 30 MPa of bending / (1 − 1.6 × 5 / 40)',
    why: 'exact',
    memory: true,
  }),
  published(steel.barSlenderness, { L_b: 14 * inch, t: 3.5 * inch, b: inch / 16 }, 12_544, {
    tolerance: 1e-9,
    source: 'worked by hand: 14 × 3.5 × 16²',
    why: 'exact',
    memory: false,
  }),
  published(steel.barOnEdge, { F_y: 36 * ksi, E_s: 29_000 * ksi, lambda_b: 12_544 }, 2.63 * ksi, {
    tolerance: 1e-3,
    source: 'AISC 360-16 F11.2(c), from memory, by hand: 1.9 × 29,000 / 12,544 = 4.392; / 1.67 = 2.630 ksi',
    why: 'worked to four figures',
    memory: true,
  }),
  published(steel.barOnEdge, { F_y: 36 * ksi, E_s: 29_000 * ksi, lambda_b: 1000 }, 21.6 * ksi, {
    tolerance: 1e-9,
    source:
      'AISC 360-16 F11.2(b), from memory, by hand: (1.52 − 0.274 × 1.241) × 36 / 1.67 is over 0.6 × 36 ksi',
    why: 'exact',
    memory: true,
  }),
  published(
    steel.armSpring,
    { E_s: E, b: dressed['2x4'].width_m, t: dressed['2x4'].depth_m, a: 100 * inch },
    (3 * E * dressed['2x4'].strong.I_m4) / (100 * inch) ** 3,
    {
      tolerance: fourFigures,
      source: `AISC Manual, Table 3-23, case 22: Pl³/3EI at the free end; I 5.359 in⁴ of ${dressedSource}, 2x4`,
      why: 'I printed to four figures',
      memory: true,
    },
  ),
  published(
    steel.strutSpring,
    { E_s: E, L_d: Math.SQRT2, A_d: 1e-4, A_a: 1e-4, h: 1, s: 1 },
    (E * 1e-4) / (1 + 2 * Math.SQRT2),
    {
      tolerance: 1e-9,
      source:
        'Gere, Mechanics of Materials, strain energy: level bar and bar at 45° of one section, (1 + 2√2) PL/EA',
      why: 'exact',
      memory: true,
    },
  ),
  published(
    steel.strutSpring,
    { E_s: E, L_d: 5, A_d: 2e-4, A_a: 1e-4, h: 3, s: 4 },
    1 / ((5 / 3) ** 2 * (5 / (E * 2e-4)) + (4 / 3) ** 2 * (4 / (E * 1e-4))),
    {
      tolerance: 1e-9,
      source: 'any text on statics: triangle of forces 3 : 4 : 5 and the unit-load method, Σ N² L / EA',
      why: 'strut 5/3, arm 4/3 of the load: exact',
      memory: true,
    },
  ),
  published(steel.strutForce, { C: 400, L_d: 5, s: 4, h: 3 }, (100 * 5) / 3, {
    tolerance: 1e-9,
    source:
      'any text on statics: triangle of forces 3 : 4 : 5, 100 N where arm and strut meet, 4 m from the wall',
    why: 'exact',
    memory: true,
  }),
  published(steel.elasticBuckling, { E_s: E, L_d: 100 * inch, r_g: 1 * inch }, ((14.93 * 23) / 12) * ksi, {
    tolerance: 4e-4,
    source:
      "AISC Manual of Steel Construction, 9th ed. (ASD), Numerical Values Table 8: F'_e for Kl/r 100, 14.93 ksi",
    why: "F'_e = 12 π² E / 23 (Kl/r)² printed to four figures",
    memory: true,
  }),
  ...stocky.map(([slenderness, printed]) =>
    published(
      steel.inelasticStrut,
      { F_y: 50 * ksi, F_e: buckling(slenderness) },
      (printed / 0.9 / 1.67) * ksi,
      {
        tolerance: 0.06 / printed,
        ...criticalStress(slenderness),
      },
    ),
  ),
  ...slender.map(([slenderness, printed]) =>
    published(steel.elasticStrut, { F_e: buckling(slenderness) }, (printed / 0.9 / 1.67) * ksi, {
      tolerance: 0.006 / printed,
      ...criticalStress(slenderness),
    }),
  ),
];

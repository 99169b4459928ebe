import * as sections from '../../../calc/mechanics/section-formulas.ts';
import { armStress, strutStress } from '../../../calc/standards/aisc-360/steel-arm.ts';
import { handStress, noseStress, skinStress } from '../../../calc/elements/bracket-formulas.ts';
import * as torsion from '../../../calc/mechanics/torsion-formulas.ts';
import * as members from '../../../calc/standards/nds-2018/3-members.ts';
import { dressed, dressedSource, fourFigures } from './dressed-lumber.ts';
import { published, type PublishedValue } from './published-value.ts';
import { inch, poundForce, poundInch, psi } from './units.ts';

const printed = { tolerance: fourFigures, memory: true };
const two10 = dressed['2x10'];

/** Second moment and section modulus, strong axis and weak, as printed. */
const properties: PublishedValue[] = Object.entries(dressed).flatMap(
  ([name, { width_m, depth_m, strong, weak }]) => {
    const source = `${dressedSource}, ${name}`;
    const rest = {
      ...printed,
      source,
      why: 'printed to four figures',
      tolerance: name === '1x10' ? 2e-3 : fourFigures,
    };
    return [
      published(sections.secondMoment, { b: width_m, t: depth_m }, strong.I_m4, rest),
      published(sections.secondMoment, { b: depth_m, t: width_m }, weak.I_m4, rest),
      published(sections.sectionModulus, { b: width_m, t: depth_m }, strong.S_m3, rest),
      published(sections.sectionModulus, { b: depth_m, t: width_m }, weak.S_m3, rest),
    ];
  },
);

/** Stresses of a rectangle from the printed area and section modulus of the same size. */
const stresses: PublishedValue[] = [
  published(
    armStress,
    {
      M: 1000 * poundInch,
      N: 500 * poundForce,
      b: dressed['2x4'].width_m,
      t: dressed['2x4'].depth_m,
    },
    (1000 / 3.063 + 500 / 5.25) * psi,
    {
      ...printed,
      source: `${dressedSource}, 2x4`,
      why: 'M / S + N / A with S 3.063 in³ and A 5.250 in² as printed',
    },
  ),
  published(
    strutStress,
    { N_d: 1500 * poundForce, A_d: dressed['2x4'].width_m * dressed['2x4'].depth_m },
    (1500 / 5.25) * psi,
    { ...printed, source: `${dressedSource}, 2x4`, why: 'N / A with A 5.250 in² as printed' },
  ),
  published(
    noseStress,
    {
      M_P: 346.9 * poundInch,
      M_R: 2 * 346.9 * poundInch,
      ...{ b_a: 1.25 * inch, c_l: 4 * inch, c_r: 4 * inch, b_R: 9.25 * inch, t: 1.5 * inch },
    },
    300 * psi,
    {
      ...printed,
      source: `${dressedSource}, 2x10 flat`,
      why: 'both over 9-1/4 in: M / S with S 3.469 in³ as printed, once and twice',
    },
  ),
  published(
    skinStress,
    {
      ...{ m_s: (246.9 * poundInch) / (9.25 * inch), m_d: (100 * poundInch) / (9.25 * inch) },
      t: 1.5 * inch,
    },
    100 * psi,
    {
      ...printed,
      source: `${dressedSource}, 2x10 flat`,
      why: 'M / S with S 3.469 in³ as printed, over 9-1/4 in',
    },
  ),
  published(
    handStress,
    { M_P: 346.9 * poundInch, b_a: 1.25 * inch, c_l: 4 * inch, c_r: 4 * inch, t: 1.5 * inch },
    100 * psi,
    {
      ...printed,
      source: `${dressedSource}, 2x10 flat`,
      why: 'an arm of 1-1/4 in with 4 in on either side is 9-1/4 in wide: M / S with S 3.469 in³ as printed. The spread of the load itself is common practice without a source.',
    },
  ),
  published(
    members.shearStressOfRectangle,
    { V: 1665 * poundForce, b: two10.width_m, d: two10.depth_m },
    (1.5 * 1665 * psi) / 13.88,
    {
      ...printed,
      source: `${dressedSource}, 2x10, and NDS 2018 Eq. 3.4-2`,
      why: '1.5 V / A with A 13.88 in² as printed',
    },
  ),
  published(
    members.shearStressOfCut,
    { q: (1000 * poundForce * two10.area_m2 * two10.depth_m) / 8 / two10.strong.I_m4, b: two10.width_m },
    (1.5 * 1000 * poundForce) / two10.area_m2,
    {
      ...printed,
      tolerance: 2 * fourFigures,
      source: `${dressedSource}, 2x10, and NDS 2018 Eq. 3.4-1, 3.4-2`,
      why: 'VQ/I at mid-depth, Q = A d / 8, with A and I as printed, gives the same as 1.5 V / A',
    },
  ),
  published(
    members.bearingStress,
    { R: 2500 * poundForce, A_b: 1.5 * 3.5 * inch ** 2 },
    (2500 / 5.25) * psi,
    {
      ...printed,
      source: `${dressedSource}, 2x4`,
      why: 'R / A on the end of a 2x4 post, A 5.250 in² as printed',
    },
  ),
];

/**
 * A 2 × 10 whose load is inclined by 45° to both its axes. What happens follows from the two axes one by one (the moment
 * and the shear in each are 1/√2 of the whole), so nothing here uses the product term that the formulas use.
 */
const E = 1e10;
const { I_m4: I1, S_m3: S1 } = two10.strong;
const { I_m4: I2, S_m3: S2 } = two10.weak;
const inclined = { EI_x: (E * (I1 + I2)) / 2, EI_y: (E * (I1 + I2)) / 2, EI_xy: (E * (I1 - I2)) / 2 };
const skew = {
  memory: true,
  tolerance: 1.5e-3,
  source: `Timoshenko, Strength of Materials, part I, bending in a plane that is no plane of symmetry; ${dressedSource}, 2x10`,
};
const half = Math.SQRT1_2;
/** Corner along the strong axis' depth and across, turned by 45°; the product term is positive as y and z grow together. */
const corner = {
  y_i: half * (two10.depth_m / 2 - two10.width_m / 2),
  z_i: half * (two10.depth_m / 2 + two10.width_m / 2),
};

const inclinedAxes: PublishedValue[] = [
  published(sections.effectiveStiffness, inclined, 2 / (1 / (E * I1) + 1 / (E * I2)), {
    ...skew,
    tolerance: fourFigures,
    why: 'the movement under a load at 45° is the mean of the movements of the two axes: harmonic mean of their EI, four figures',
  }),
  published(
    sections.cornerStress,
    { M: 1000 * poundInch, E_i: E, ...inclined, ...corner },
    (1000 * poundInch * half) / S1 + (1000 * poundInch * half) / S2,
    {
      ...skew,
      why: 'M cos 45° / S of the strong axis + M sin 45° / S of the weak axis; S and I rounded one by one in the print',
    },
  ),
  published(
    sections.shearFlow,
    {
      V: 1000 * poundForce,
      ...inclined,
      EQ_x: (half * E * two10.area_m2 * two10.depth_m) / 8,
      EQ_y: (half * E * two10.area_m2 * two10.depth_m) / 8,
    },
    (1.5 * half * 1000 * poundForce) / two10.depth_m,
    {
      ...skew,
      why: 'a cut at mid-depth carries 1.5 V cos 45° / (b d) over its width b, and nothing of the shear along it (NDS Eq. 3.4-2)',
    },
  ),
];

const layers: PublishedValue[] = [
  published(sections.shearFlow, { V: 500, EI_x: 16.2e-6, EI_y: 1, EI_xy: 0, EQ_x: 120e-6, EQ_y: 0 }, 3704, {
    memory: true,
    tolerance: 2e-4,
    source:
      'Beer & Johnston, Mechanics of Materials, example of three planks 20 × 100 mm nailed to an I (shear on a longitudinal face)',
    why: 'V 500 N, Q 120 × 10⁻⁶ m³, I 16.20 × 10⁻⁶ m⁴: q printed as 3 704 N/m, four figures; E = 1 as it cancels',
  }),
  published(
    sections.layerStress,
    { M: 1000 * poundInch, E_i: E, t_i: 1.5 * inch, EI_eff: 2 * E * I2 },
    (500 * psi) / 3.469,
    {
      ...printed,
      source: `${dressedSource}, 2x10 flat`,
      why: 'two alike, not joined: each has half the moment, M / 2 over S 3.469 in³ as printed',
    },
  ),
  published(
    sections.layerShear,
    { V: 1000 * poundForce, EI_i: E * I1, EI_eff: E * (I1 + dressed['2x12'].strong.I_m4) },
    (1000 * poundForce * 9.25 ** 3) / (9.25 ** 3 + 11.25 ** 3),
    {
      ...printed,
      source: `${dressedSource}, 2x10 beside 2x12`,
      why: 'one width: they share as the cubes of their depths, I as printed',
    },
  ),
];

/** Largest stress of a twisted rectangle T / (α b t²): α for b / t, as printed to three figures. */
const twisted = [
  [1, 0.208],
  [1.5, 0.231],
  [2, 0.246],
  [3, 0.267],
  [4, 0.282],
  [6, 0.299],
  [8, 0.307],
  [10, 0.313],
] as const;
/** Stiffness of a twisted rectangle k b t³: k for b / t, as printed to three figures. */
const stiff = [
  [1, 0.141],
  [2, 0.229],
  [4, 0.281],
  [10, 0.312],
] as const;
const torsionValues: PublishedValue[] = [
  ...stiff.map(([ratio, k]) =>
    published(torsion.twistingStiffness, { G_v: 10, b: ratio * 0.2, t: 0.2 }, 10 * k * ratio * 0.2 ** 4, {
      source: `Timoshenko and Goodier, Theory of Elasticity, torsion of rectangular bars: k₁ b t³ G, b/t ${ratio}`,
      memory: true,
      tolerance: 5e-3,
      why: "three figures, and Roark's formula is within half a hundredth",
    }),
  ),
  published(
    torsion.twistingStiffnessOfBox,
    { b_m: 0.4, h_m: 0.2, G_s: 5, t_s: 0.01, G_f: 5, t_f: 0.01 },
    (5 * 2 * 0.01 * (0.4 * 0.2) ** 2) / (0.4 + 0.2),
    {
      source:
        "Roark's Formulas for Stress and Strain, thin rectangular tube of one thickness: 2 t a² b² / (a + b)",
      memory: true,
      tolerance: 1e-9,
      why: 'exact',
    },
  ),
  published(torsion.twistingStiffnessOfBox, { b_m: 3, h_m: 1, G_s: 2, t_s: 0.5, G_f: 4, t_f: 1 }, 36 / 6.5, {
    source: "Roark's Formulas for Stress and Strain, thin closed section: 4 A² / Σ s / G t",
    memory: true,
    tolerance: 1e-9,
    why: '4 × 9 / (6 / 1 + 2 / 4)',
  }),
  ...twisted.map(([ratio, alpha]) =>
    published(torsion.rectangleFactor, { r_t: 1 / ratio }, 1 / (3 * alpha), {
      source: `Timoshenko, Strength of Materials, part I, torsion of a rectangular shaft, b/t ${ratio}: 1 / 3α`,
      memory: true,
      tolerance: 5e-3,
      why: 'three figures, and a series that is within half a hundredth',
    }),
  ),
  published(
    torsion.twistedRectangle,
    { T: 100, k_T: 1 / (3 * 0.246), b: 0.04, t: 0.02 },
    100 / (0.246 * 0.04 * 0.02 ** 2),
    {
      source: 'Timoshenko, Strength of Materials, part I, torsion of a rectangular shaft: T / α b t², b/t 2',
      memory: true,
      tolerance: 1e-9,
      why: 'the same α in both',
    },
  ),
  published(torsion.twistedBox, { T: 1000, A_m: 0.2 * 0.1, t: 0.005 }, 1000 / (2 * 0.02 * 0.005), {
    source: 'Timoshenko, Strength of Materials, part II, thin tubes: T / 2At (Bredt)',
    memory: true,
    tolerance: 1e-9,
    why: 'exact',
  }),
  published(torsion.torqueShare, { T: 90, GJ_i: 10, GJ: 30 }, 30, {
    source: 'Timoshenko, Strength of Materials, part I, shafts side by side turn alike',
    memory: true,
    tolerance: 1e-9,
    why: 'one of three equal shafts takes a third',
  }),
];

export const sectionValues: readonly PublishedValue[] = [
  ...properties,
  ...stresses,
  ...inclinedAxes,
  ...layers,
  ...torsionValues,
];

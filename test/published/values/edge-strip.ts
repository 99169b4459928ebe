import * as strip from '../../../calc/mechanics/edge-strip-formulas.ts';
import { levyMoments } from '../../reference/levy-plate.ts';
import { published, type PublishedValue } from './published-value.ts';

/*
 * Levy's solution of the orthotropic plate, worked out line by line in test/reference/levy-plate.ts. Stiffnesses are shares of
 * D_x; lengths in half waves or depths.
 */
const levy = 'Timoshenko & Woinowsky-Krieger, 2nd ed., ch. 6 and 11: Levy’s solution';
const worked = { memory: true, source: `${levy}, worked out in test/reference/levy-plate.ts` };
const plate = { D_x: 1, D_y: 0.0625, D_1: 0.03, D_xy: 0.06 };
const plates = [plate, { D_x: 1, D_y: 0.4, D_1: 0.15, D_xy: 0.08 }] as const;

/** Largest moment of a plate under one unit of load. */
function largest(
  { D_x, D_y, D_1, D_xy }: typeof plate,
  [length, depth]: readonly [number, number],
  load: { readonly along: number; readonly from: number; readonly to: number },
  options = {},
): number {
  const stiffness = { Dx: D_x, Dy: D_y, D1: D_1, Dxy: D_xy };
  return Math.max(...levyMoments({ length, depth, ...stiffness }, load, options).m);
}

/** A sine over π wide: 2 / π of the load is its first harmonic, whose moment is 2 / (π b_ef) of it. */
const sine = { harmonics: 1, strips: 40 };
const [wave, wide] = [Math.PI, 12];
const thin = 1e-3;

const halfPlane: PublishedValue[] = plates.flatMap((each) => {
  const p_e = Math.sqrt((2 * (Math.sqrt(each.D_x * each.D_y) + each.D_1 + 2 * each.D_xy)) / each.D_y);
  const edge = largest(each, [wave, wide], { along: thin, from: wide, to: wide }, sine);
  const inside = largest(
    each,
    [wave, wide],
    { along: thin, from: wide / 2, to: wide / 2 },
    { ...sine, strips: 160 },
  );
  return [
    published(strip.edgeWidth, { ...each, p_e }, 2 / Math.PI / edge, {
      ...worked,
      tolerance: 2e-3,
      why: 'a half-plane of nearly four half waves',
    }),
    published(strip.insideWidth, { D_x: each.D_x, D_y: each.D_y, D_1: each.D_1, p_e }, 2 / Math.PI / inside, {
      ...worked,
      tolerance: 2e-3,
      why: 'the middle of a plane of nearly four half waves',
    }),
  ];
});

/** Isotropic: the two rates are both 1, and the edge has (3 + ν) / 2 (1 + ν). */
const nu = 0.3;
const isotropic = { D_x: 1, D_y: 1, D_1: nu, D_xy: (1 - nu) / 2 };
const spread: PublishedValue[] = [
  published(strip.edgeSpread, isotropic, 2, {
    memory: true,
    source: `${levy} of the isotropic plate: (A + B y) exp(−n π y / L)`,
    tolerance: 1e-9,
    why: 'both rates are 1, their sum is 2',
  }),
  published(strip.edgeSpread, { D_x: 4, D_y: 1, D_1: 0.5, D_xy: 1 }, 3, {
    memory: true,
    source: `${levy}: roots of D_y r⁴ − 2 H r² + D_x = 0`,
    tolerance: 1e-9,
    why: 'of r⁴ − 5 r² + 4 = 0: 1 and 2, their sum is 3',
  }),
];

const length: PublishedValue[] = [
  published(strip.stripLength, { L: 9, x: 4.5, b_k: 2, beta: 0.8 }, 10 / Math.PI, {
    memory: true,
    source: 'worked by hand: where log(L) / (π β) − L / (4 b) has its top',
    tolerance: 1e-9,
    why: '4 × 2 / (π × 0.8)',
  }),
  published(strip.stripLength, { L: 3, x: 0.5, b_k: 2, beta: 0.8 }, 1.5, {
    memory: true,
    source: 'worked by hand: Σ sin²(n π x / L) / n is log(2 L / π δ · sin(π x / L)) / 2',
    tolerance: 1e-9,
    why: '3 × sin(π / 6)',
  }),
];

/** A line along the edge of a long narrow board turns each width by q b / (8 D_xy) for each length squared. */
const softInTwist = { D_x: 1, D_y: 0.4, D_1: 0.35, D_xy: 0.08 };
const { D_x, D_y, D_1, D_xy } = softInTwist;
const twisted = (D_x - D_1 ** 2 / D_y) / (16 * D_xy);
const narrow: PublishedValue[] = [
  published(
    strip.workingWidth,
    { ...softInTwist, beta: 1.2, b: 2 },
    (2 * twisted * (Math.PI * 1.2) ** 2) / (4 * (0.5 + Math.log(4 / Math.PI))),
    {
      memory: true,
      source: 'Timoshenko, Strength of Materials: torsion of a thin strip, whose edge bends by D φ″ b / 2',
      tolerance: 0.06,
      why: 'that bending moment, q b D / (16 D_xy), set equal to the excess of the strip; rounded up by 6 %',
    },
  ),
];

/** Four half waves over π wide, a patch of an eighth of the bay. */
const deep = 4;
const beside: PublishedValue[] = plates.map((each) => {
  const p_e = strip.edgeSpread.evaluate(each);
  const beta = strip.edgeWidth.evaluate({ ...each, p_e });
  const c_e = wave / 8;
  const mean = (2 * wave - c_e) / (8 * deep);
  const m = largest(each, [wave, deep], { along: c_e, from: deep, to: deep }, { strips: 30 });
  return published(strip.stripExcess, { k_d: 1, W: 1, L_e: wave, c_e, beta, b_k: deep }, m - mean, {
    ...worked,
    tolerance: 0.012,
    why: 'the sum of the harmonics as a logarithm; a wide plate is nearly a half-plane',
  });
});

const stress: PublishedValue[] = [
  published(strip.stripStress, { M: 12, b: 4, m_r: 2, m_f: 1, t: 0.5 }, 144, {
    memory: true,
    source: 'worked by hand: 3 + 2 + 1 on a width of 1, over 0.5² / 6',
    tolerance: 1e-9,
    why: 'exact',
  }),
];

/** Layers of 1, 2 and 1 thick, of stiffness 4, 1 and 4, on a width of 3. */
const layered: PublishedValue[] = [
  published(
    strip.layersAsOne,
    { EI_b: 3 * ((4 * (4 ** 3 - 2 ** 3)) / 12 + 2 ** 3 / 12), b: 3, t: 4 },
    3.625,
    {
      memory: true,
      source: 'worked by hand: (4 × (64 − 8) + 8) / 64',
      tolerance: 1e-9,
      why: 'exact',
    },
  ),
  published(
    strip.stripStressOfParts,
    { f_M: 5, E_i: 4, c_i: 2, m_r: 2, m_f: 1, E_e: 3.625, t: 4 },
    5 + (3 * 4 * 2) / (232 / 12),
    {
      memory: true,
      source: 'worked by hand: m E c / EI, EI = (4 × 56 + 8) / 12 for each width',
      tolerance: 1e-9,
      why: 'exact',
    },
  ),
  published(strip.plateDistance, { EI_eff: 116, c_i: 2, E_e: 3.625, b: 3, t: 4 }, 4, {
    memory: true,
    source: 'worked by hand: a section twice as stiff as 3 × (4 × 56 + 8) / 12 = 58',
    tolerance: 1e-9,
    why: 'exact',
  }),
  published(strip.lesserDistance, { c_w: 5, c_p: 4 }, 4, {
    memory: true,
    source: 'worked by hand',
    tolerance: 1e-9,
    why: 'exact',
  }),
  published(strip.lesserDistance, { c_w: 3, c_p: 4 }, 3, {
    memory: true,
    source: 'worked by hand',
    tolerance: 1e-9,
    why: 'exact',
  }),
];

export const edgeStripValues: readonly PublishedValue[] = [
  ...halfPlane,
  ...spread,
  ...length,
  ...narrow,
  ...beside,
  ...stress,
  ...layered,
];

import * as clearWood from '../../../calc/standards/astm-d245/clear-wood.ts';
import { shearFreeStiffness, shearModulus } from '../../../calc/standards/wood-handbook-2021/stiffness.ts';
import { published, type PublishedValue } from './published-value.ts';
import { megapascal, psi } from './units.ts';

const { strength, compressionPerp } = clearWood.testToDesign;
const { seasoning, shearStrengthRatio, variation } = clearWood;

/** Species, green shear strength in psi (Wood Handbook Table 5-3b), divisor, and the design value the NDS prints. */
const shear: readonly (readonly [string, number, number, number])[] = [
  ['coast Douglas-fir', 900, strength.softwood, 180],
  ['eastern white pine', 680, strength.softwood, 135],
  ['red maple', 1150, strength.hardwood, 210],
  ['northern red oak', 1210, strength.hardwood, 220],
  ['yellow-poplar', 790, strength.hardwood, 145],
];

const shearValues: PublishedValue[] = shear.flatMap(([species, mean, k_a, printed]) => {
  const source = `NDS Supplement 2018, Table 4A, F_v of ${species} from its green mean in Wood Handbook Table 5-3b`;
  const rest = {
    source,
    tolerance: 2.6 / printed,
    memory: species.includes('oak') || species.includes('poplar'),
  };
  const S_05 = mean * (1 - 1.645 * 0.14);
  return [
    published(
      clearWood.clearWoodShear,
      { S_05: S_05 * psi, k_a, R_v: shearStrengthRatio, k_s: seasoning.shear },
      printed * psi,
      {
        ...rest,
        why: 'printed to 5 psi; the 5 % value is the mean less 1.645 × 14 %',
      },
    ),
    published(
      clearWood.fifthPercentile,
      { S_m: mean * psi, V_c: variation.shear },
      ((printed * k_a) / (0.5 * 1.08)) * psi,
      {
        ...rest,
        why: 'the printed design value taken back to the 5 % value (× 2.1 or 2.3, ÷ 0.50, ÷ 1.08), printed to 5 psi',
      },
    ),
  ];
});

/** 95th percentile of the standard normal distribution. */
const z95 = 1.644854;

const others: PublishedValue[] = [
  published(
    clearWood.fifthPercentile,
    { S_m: 100 * megapascal, V_c: 0.16 },
    100 * megapascal * (1 - z95 * 0.16),
    {
      tolerance: 5e-5,
      source:
        'NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 95th percentile of the normal distribution, 1.644854',
      why: 'the standards round it to 1.645',
      memory: true,
    },
  ),
  published(
    clearWood.clearWoodBearing,
    { S_m: 700 * psi, k_a: compressionPerp, k_s: seasoning.compressionPerp },
    625 * psi,
    {
      tolerance: 1.2e-2,
      source:
        'NDS Supplement 2018, Table 4A, F_c⟂ of Douglas fir-larch; ASTM D2555, coast Douglas-fir, 700 psi at 0.04 in',
      why: 'rounded to 5 psi, and set for two species together. The NDS starts from the stress at 0.04 in of indentation; the check starts from the lower proportional limit',
      memory: true,
    },
  ),
  published(
    shearFreeStiffness,
    { E_12: 10_000 * megapascal, k_q: 1 },
    10_000 * megapascal * (1 + (1.2 * 16) / 14 ** 2),
    {
      tolerance: 3e-3,
      source:
        'Timoshenko, Strength of Materials, part I: movement of a beam with a load in the middle, 1 + 1.2 (E/G) (h/L)² for shear',
      why: 'the tests of Wood Handbook Table 5-3 have h/L = 1/14; with E/G = 16 that is 1.098, which the handbook gives as 10 %',
      memory: true,
    },
  ),
  published(
    shearFreeStiffness,
    { E_12: 10_000 * megapascal, k_q: 0.8 },
    8000 * megapascal * (1 + (1.2 * 16) / 14 ** 2),
    {
      tolerance: 3e-3,
      source: 'the same, with the quality factor 0.8 of ASTM D245 for strength ratios up to 0.44',
      why: 'as above',
      memory: true,
    },
  ),
];

/** Class, mean stiffness and shear modulus in MPa: EN 338:2016, Table 1, which keeps G = E/16. */
const classes: readonly (readonly [string, number, number])[] = [
  ['C16', 8000, 500],
  ['C24', 11_000, 690],
  ['C30', 12_000, 750],
];

const shearModuli: PublishedValue[] = classes.map(([name, E, G]) =>
  published(shearModulus, { r_G: 1 / 16, E_L: E * megapascal }, G * megapascal, {
    tolerance: 5.1 / G,
    source: `EN 338:2016, Table 1, ${name}`,
    why: 'printed to 10 MPa',
    memory: false,
  }),
);

export const clearWoodValues: readonly PublishedValue[] = [...shearValues, ...others, ...shearModuli];

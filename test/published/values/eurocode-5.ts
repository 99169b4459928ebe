import {
  allowableFromCharacteristic,
  characteristicFromMean,
} from '../../../calc/standards/ec5-2004/panels.ts';
import { bendingStress } from '../../../calc/standards/nds-2018/3-members.ts';
import { published, type PublishedValue } from './published-value.ts';
import { megapascal } from './units.ts';

/** Design strengths printed as f_k k_mod / γ_M: grade, f_k MPa, k_mod, γ_M, printed MPa. */
const strengths: readonly (readonly [string, number, number, number, number])[] = [
  ['bending, C24, medium-term, service class 1', 24, 0.8, 1.3, 14.769],
  ['bending, GL28h, long-term, service class 1', 28, 0.7, 1.25, 15.68],
  ['compression across the grain, C18, permanent, service class 3', 2.2, 0.5, 1.3, 0.8462],
];

export const eurocodeValues: readonly PublishedValue[] = [
  ...strengths.map(([what, f_k, k_mod, gamma_M, printed]) =>
    published(
      allowableFromCharacteristic,
      { f_k: f_k * megapascal, k_mod, gamma_M, gamma_Q: 1.5 },
      (printed / 1.5) * megapascal,
      {
        tolerance: 1e-4,
        source: `EN 1995-1-1, Eq. 2.14, worked example in an open structural library: ${what}`,
        why: 'four figures; the load factor 1.5 of EN 1990 is taken to this side, since loads are not factored here',
        memory: false,
      },
    ),
  ),
  published(
    characteristicFromMean,
    { f_m: 20 * megapascal, V_c: 0.2 },
    20 * megapascal * (1 - 1.644854 * 0.2),
    {
      tolerance: 5e-5,
      source:
        'NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 95th percentile of the normal distribution, 1.644854',
      why: 'the standards round it to 1.645. The variation itself is common practice without a source',
      memory: true,
    },
  ),
  published(
    bendingStress,
    { M: ((1.35 * 0.5 + 1.5 * 1.5) * 0.5e3 * 4.5 ** 2) / 8, S: (0.075 * 0.2 ** 2) / 6 },
    0.4557 * 1.1 * 14.769 * megapascal,
    {
      tolerance: 2e-4,
      source:
        'Benoit, Legrand, Tastet, Calcul de structures en bois (2008), example 2.3.1: C24, 75 × 200 mm, 4.5 m',
      why: 'the printed ratio 0.4557 of the printed strength 14.769 MPa × k_sys 1.1, four figures',
      memory: false,
    },
  ),
];

import { formula } from '../../formula/formula.ts';

const source = (clause: string) => ({ document: 'NDS', edition: '2018', clause });

/** The most slender beam that is permitted (NDS 3.3.3.7). */
export const mostSlenderness = 50;

/** Effective length of a short beam, any loading. */
export const effectiveLengthShort = formula({
  symbol: 'l_e',
  caption: 'effective length, l_u / d under 7',
  expression: '2.06 * l_u',
  symbols: { l_u: 'm' },
  unit: 'm',
  source: source('Table 3.3.3, footnote 1'),
});

/** Effective length of a beam of middling length, any loading. */
export const effectiveLength = formula({
  symbol: 'l_e',
  caption: 'effective length, l_u / d from 7 to 14.3',
  expression: '1.63 * l_u + 3 * d',
  symbols: { l_u: 'm', d: 'm' },
  unit: 'm',
  source: source('Table 3.3.3, footnote 1'),
});

/** Effective length of a long beam, any loading. */
export const effectiveLengthLong = formula({
  symbol: 'l_e',
  caption: 'effective length, l_u / d over 14.3',
  expression: '1.84 * l_u',
  symbols: { l_u: 'm' },
  unit: 'm',
  source: source('Table 3.3.3, footnote 1'),
});

/** Slenderness of a beam on edge. */
export const slenderness = formula({
  symbol: 'R_B',
  caption: 'slenderness',
  expression: 'sqrt(l_e * d / b^2)',
  symbols: { l_e: 'm', d: 'm', b: 'm' },
  unit: '1',
  source: source('3.3.3.6, Eq. 3.3-5'),
});

/** Stiffness against buckling, from the mean: the lower twentieth, less shear's share, over a factor of safety. */
export const leastStiffness = formula({
  symbol: 'E_min',
  caption: 'stiffness for stability',
  expression: '1.03 * E * (1 - 1.645 * V_E) / 1.66',
  symbols: { E: 'Pa', V_E: '1' },
  unit: 'Pa',
  source: source('Appendix D, Eq. D-4'),
});

/** Stress at which a beam turns over sideways. */
export const bucklingStress = formula({
  symbol: 'F_bE',
  caption: 'critical buckling stress',
  expression: '1.20 * E_min / R_B^2',
  symbols: { E_min: 'Pa', R_B: '1' },
  unit: 'Pa',
  source: source('3.3.3.8'),
});

/** Beam stability factor. */
export const stabilityFactor = formula({
  symbol: 'C_L',
  caption: 'beam stability factor',
  expression: '(1 + F_bE / F_b_star) / 1.9 - sqrt(((1 + F_bE / F_b_star) / 1.9)^2 - F_bE / F_b_star / 0.95)',
  symbols: { F_bE: 'Pa', F_b_star: 'Pa' },
  unit: '1',
  source: source('3.3.3.8, Eq. 3.3-6'),
});

/** Allowable bending stress of a beam that may turn over sideways. */
export const stableBending = formula({
  symbol: 'F_b_prime',
  caption: 'allowable bending stress, stability counted',
  expression: 'C_L * F_b_star',
  symbols: { C_L: '1', F_b_star: 'Pa' },
  unit: 'Pa',
  source: source('4.3.1 and 3.3.3'),
});

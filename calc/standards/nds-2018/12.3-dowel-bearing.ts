import { inch, psi } from '../../../shared/quantity/index.ts';
import { forcePerLength, formula } from '../../formula/formula.ts';

const source = (clause: string) => ({ document: 'NDS', edition: '2018', clause });

/** 16,600 psi: the constant of dowel bearing for D < 1/4 in. */
export const smallBearingConstant_Pa = 16_600 * psi;
/** 11,200 psi: dowel bearing along the grain, D ≥ 1/4 in. */
export const alongBearingConstant_Pa = 11_200 * psi;
/** 6,100 psi √in: dowel bearing across the grain, D ≥ 1/4 in. */
export const acrossBearingConstant = 6_100 * psi * Math.sqrt(inch);

/** Dowel bearing of a fastener thinner than 1/4 in, any direction. */
export const bearingOfSmall = formula({
  symbol: 'F_em',
  caption: 'dowel bearing strength of the wood',
  expression: 'k_e * G^1.84',
  symbols: { k_e: 'Pa', G: '1' },
  unit: 'Pa',
  source: source('Table 12.3.3, footnote 2; G: specific gravity of the wood'),
  valid: 'D < 1/4 in',
});

/** Dowel bearing along the grain. */
export const bearingAlong = formula({
  symbol: 'F_em',
  caption: 'dowel bearing strength of the wood, along the grain',
  expression: 'k_e * G',
  symbols: { k_e: 'Pa', G: '1' },
  unit: 'Pa',
  source: source('Table 12.3.3, footnote 2; G: specific gravity of the wood'),
  valid: 'D ≥ 1/4 in',
});

/** Dowel bearing across the grain. */
export const bearingAcross = formula({
  symbol: 'F_em',
  caption: 'dowel bearing strength of the wood, across the grain',
  expression: 'k_e * G^1.45 / sqrt(D)',
  symbols: { k_e: forcePerLength(1.5), G: '1', D: 'm' },
  unit: 'Pa',
  source: source('Table 12.3.3, footnote 2; G: specific gravity of the wood'),
  valid: 'D ≥ 1/4 in',
});

/** Dowel bearing of a steel plate, as the tables of NDS chapter 12 have it. */
export function bearingOfSteel_Pa(thickness_m: number): number {
  return (thickness_m >= 0.25 * inch - 1e-6 ? 87_000 : 61_850) * psi;
}

/** K_D of NDS Table 12.3.1B, by the diameter that bends. */
function diameterFactor(diameter_m: number): number {
  const inches = diameter_m / inch;
  return inches <= 0.17 ? 2.2 : 10 * inches + 0.5;
}

/** Yield modes of a connection in single shear. */
export const yieldModes = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'] as const;
export type YieldMode = (typeof yieldModes)[number];

const factorOfMode: Readonly<Record<YieldMode, number>> = {
  Im: 4,
  Is: 4,
  II: 3.6,
  IIIm: 3.2,
  IIIs: 3.2,
  IV: 3.2,
};

/**
 * Reduction term R_d, NDS Table 12.3.1B.
 *
 * @param nominal_m nominal diameter
 * @param bending_m diameter that bends: the root of a thread
 * @param angle_deg largest angle of load to grain
 */
export function reductionTerm(
  mode: YieldMode,
  nominal_m: number,
  bending_m: number,
  angle_deg: number,
): number {
  const quarter = 0.25 * inch - 1e-9;
  const angleFactor = 1 + 0.25 * (angle_deg / 90);
  if (nominal_m < quarter) return diameterFactor(bending_m);
  return (bending_m < quarter ? diameterFactor(bending_m) : factorOfMode[mode]) * angleFactor;
}

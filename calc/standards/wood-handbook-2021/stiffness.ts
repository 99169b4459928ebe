import { formula } from '../../formula/formula.ts';

const source = (clause: string) => ({ document: 'Wood Handbook FPL-GTR-282', edition: '2021', clause });

/** Shear-free stiffness from the printed (apparent) one, with the quality factor of the board's appearance. */
export const shearFreeStiffness = formula({
  symbol: 'E_L',
  caption: 'stiffness along the grain, without shear',
  expression: '1.10 * E_12 * k_q',
  symbols: { E_12: 'Pa', k_q: '1' },
  unit: 'Pa',
  source: source('Table 5-3 footnote; ASTM D245 quality factor'),
});

/** Shear modulus from the ratio to the stiffness along the grain. */
export const shearModulus = formula({
  symbol: 'G_v',
  caption: 'shear modulus',
  expression: 'r_G * E_L',
  symbols: { r_G: '1', E_L: 'Pa' },
  unit: 'Pa',
  source: source('Table 5-1'),
});

/** Where no ratio is printed for a species: E_L / 16, said on the sheet. EN 338 keeps the same ratio. */
export const usualShearRatio = 1 / 16;

/**
 * Where no ratio of the shear that rolls the fibres is printed: the lowest printed of common woods, yellow-poplar among
 * hardwoods and Sitka spruce among softwoods (Table 5-1; memory).
 */
export const usualRollingRatio = { hardwood: 0.011, softwood: 0.003 } as const;

/** Stiffness across the grain from the ratio to that along it. */
export const stiffnessAcross = formula({
  symbol: 'E_A',
  caption: 'stiffness across the grain',
  expression: 'r_A * E_L',
  symbols: { r_A: '1', E_L: 'Pa' },
  unit: 'Pa',
  source: source('Table 5-1'),
});

/** Where no ratios are printed for a species: the lowest printed of the tangential and the highest of the radial ones of common woods. */
export const usualAcross = { tangential: 0.027, radial: 0.197, poisson: 0.4 } as const;

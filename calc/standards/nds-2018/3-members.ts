import { formula } from '../../formula/formula.ts';

const source = (clause: string) => ({ document: 'NDS', edition: '2018', clause });

/** Bending stress of a plain section. */
export const bendingStress = formula({
  symbol: 'f_b',
  caption: 'bending stress',
  expression: 'M / S',
  symbols: { M: 'N.m', S: 'm3' },
  unit: 'Pa',
  source: source('3.3.2'),
});

/** Shear stress of a rectangle. */
export const shearStressOfRectangle = formula({
  symbol: 'f_v',
  caption: 'shear stress',
  expression: '3 * V / (2 * b * d)',
  symbols: { V: 'N', b: 'm', d: 'm' },
  unit: 'Pa',
  source: source('3.4.2, Eq. 3.4-2'),
});

/** Depth of a plain beam that bears as much shear as one notched at its end on the side that is pulled. */
export const notchedDepth = formula({
  symbol: 'd_e',
  caption: 'depth that counts beside the notch',
  expression: 'd_n * (d_n / d_whole)^2',
  symbols: { d_n: 'm', d_whole: 'm' },
  unit: 'm',
  source: source('3.4.3.2(a), Eq. 3.4-3'),
});

/** Shear stress from the shear flow VQ/I over the width of a cut. */
export const shearStressOfCut = formula({
  symbol: 'f_v',
  caption: 'shear stress',
  expression: 'q / b',
  symbols: { q: 'N/m', b: 'm' },
  unit: 'Pa',
  source: source('3.4.2, Eq. 3.4-1'),
});

/** Total movement with creep. */
export const longTermMovement = formula({
  symbol: 'Delta_T',
  caption: 'long-term movement',
  expression: 'K_cr * Delta_LT + Delta_ST',
  symbols: { K_cr: '1', Delta_LT: 'm', Delta_ST: 'm' },
  unit: 'm',
  source: source('3.5.2, Eq. 3.5-1'),
});

/** Bearing stress across the grain. */
export const bearingStress = formula({
  symbol: 'f_c_perp',
  caption: 'bearing stress on the arm',
  expression: 'R / A_b',
  symbols: { R: 'N', A_b: 'm2' },
  unit: 'Pa',
  source: source('3.10.2'),
});

import { formula } from '../../formula/formula.ts';

/** Shear-free stiffness of graded lumber from the tabulated (apparent) value. */
export const shearFreeStiffnessOfLumber = formula({
  symbol: 'E_L',
  caption: 'stiffness along the grain, without shear',
  expression: '1.03 * E_prime',
  symbols: { E_prime: 'Pa' },
  unit: 'Pa',
  source: { document: 'NDS', edition: '2018', clause: 'Appendix F' },
});

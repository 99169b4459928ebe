import { formula } from '../../formula/formula.ts';

/** Shear of wood that bends across its grain: the fibres roll. The low end of the printed range is taken. */
export const rollingShear = formula({
  symbol: 'F_rs_prime',
  caption: 'allowable rolling shear',
  expression: '0.18 * F_v_prime',
  symbols: { F_v_prime: 'Pa' },
  unit: 'Pa',
  source: {
    document: 'Wood Handbook FPL-GTR-282',
    edition: '2021',
    clause: 'chapter 5: rolling shear is 18 % to 28 % of shear along the grain (memory)',
  },
});

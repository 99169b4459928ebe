import { formula } from '../../formula/formula.ts';

/** How much wider or narrower flat-sawn wood gets, across the grain. */
export const widthChange = formula({
  symbol: 'Delta_W',
  caption: 'movement across the grain',
  expression: 'W_m * C_T * Delta_M',
  symbols: { W_m: 'm', C_T: '1', Delta_M: '1' },
  unit: 'm',
  source: { document: 'Wood Handbook FPL-GTR-282', edition: '2021', clause: 'chapter 13, Eq. 13-2' },
  valid: 'moisture from 6 % to 14 %',
});

/** Change of moisture, percent, where nothing is known of the room. Common practice, no source. */
export const usualMoistureChange = 4;

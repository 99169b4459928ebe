import { formula } from '../formula/formula.ts';

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** How far a plate may miss the middle of a stud. */
export const mayMiss = formula({
  symbol: 'c_max',
  caption:
    'how far the plate may miss the centre line: from its outer screws there to the edge of the stud, less what they want',
  expression: 'c_s - c_e',
  symbols: { c_s: 'm', c_e: 'm' },
  unit: 'm',
  source: mechanics('c_s: half the stud less half the way between the outer screws, c_e: edge distance'),
});

/** Pull on one screw of a rigid plate that turns about its lower end. */
export const screwPull = formula({
  symbol: 'T',
  caption: 'pull on the highest screw',
  expression: '(C + N * z_c) * z / (k_n * S_z)',
  symbols: { C: 'N.m', N: 'N', z_c: 'm', z: 'm', k_n: '1', S_z: 'm2' },
  unit: 'N',
  source: mechanics(
    'rigid plate turning about its lower end, pulls in proportion to height; S_z is the sum of z² of the heights, k_n screws at each; N at z_c, their middle',
  ),
});

/** Pull on one screw of a rigid plate that nothing presses on the wall: it hangs on its screws alone. */
export const screwPullOff = formula({
  symbol: 'T',
  caption: 'pull on the highest screw',
  expression: 'N / (k_n * n_h) + C * z_m / (k_n * S_m)',
  symbols: { N: 'N', n_h: '1', C: 'N.m', z_m: 'm', k_n: '1', S_m: 'm2' },
  unit: 'N',
  source: mechanics('rigid plate on screws alone, turning about their middle: z_m from there'),
  valid: 'the pull lifts the plate off the wall',
});

/** What the screws of a plate are pulled with at least, where none can hold the couple: no lever is longer than the plate. */
export const leastPull = formula({
  symbol: 'T_p',
  caption: 'pull on all the screws together, at the very least',
  expression: 'C / h_p + N',
  symbols: { C: 'N.m', h_p: 'm', N: 'N' },
  unit: 'N',
  source: mechanics('couple on a lever as long as the plate is high'),
});

/** Shear on one screw. */
export const screwShear = formula({
  symbol: 'V_s',
  caption: 'shear on one screw',
  expression: 'V / n_s',
  symbols: { V: 'N', n_s: '1' },
  unit: 'N',
  source: mechanics('shared evenly; friction counts for nothing'),
});

/** Load on one screw at an angle to the wall. */
export const screwResultant = formula({
  symbol: 'P_s',
  caption: 'load on the screw, pull and shear together',
  expression: 'sqrt(T^2 + V_s^2)',
  symbols: { T: 'N', V_s: 'N' },
  unit: 'N',
  source: mechanics('resultant'),
});

/** Force at the toe of the plate. */
export const toeForce = formula({
  symbol: 'C_toe',
  caption: 'pressure force at the lower end of the plate',
  expression: '(C + N * z_c) * S_1 / S_z - N',
  symbols: { C: 'N.m', N: 'N', z_c: 'm', S_1: 'm', S_z: 'm2' },
  unit: 'N',
  source: mechanics('sum of the pulls of the screws, less what pulls on the plate'),
});

/** Length of plate that has to bear. */
export const toeLength = formula({
  symbol: 'a_toe',
  caption: 'length of plate that has to bear on the covering',
  expression: 'C_toe / (f_w * b_p)',
  symbols: { C_toe: 'N', f_w: 'Pa', b_p: 'm' },
  unit: 'm',
  source: mechanics('even pressure'),
});

/** Height of a plate's screws above the middle of a toe that crushes: what turns about it. */
export function heightsAbove(heights_m: readonly number[], pivot_m: number): number[] {
  return heights_m.map((height) => Math.max(0, height - pivot_m));
}

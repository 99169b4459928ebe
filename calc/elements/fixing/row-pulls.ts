import { heightsAbove, screwPull } from '../../mechanics/plate-group.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import { toeOf } from './toe.ts';
import { turningOf } from './turning.ts';

/** The screws at one height. */
export interface RowPull {
  /** From the end about which the plate turns. */
  readonly z: number;
  /** What the pull of all of them is worked out from: a row counts as one screw. */
  readonly symbols: Record<'C' | 'z' | 'k_n' | 'S_z' | 'N' | 'n_s', number>;
  readonly pull_N: number;
}

/** Pull of all screws at each height. Where no screw can hold the couple, which its own check tells, the couple is left out. */
export function rowPulls(fixing: Fixing, load: FixingLoad): RowPull[] {
  const { heights_m } = turningOf(fixing, load);
  const arms = heightsAbove(heights_m, toeOf(fixing, load).pivot_m);
  const S_z = arms.reduce((sum, z) => sum + z * z, 0);
  return heights_m.map((z, row) => {
    const symbols = {
      C: S_z > 0 ? load.couple_Nm : 0,
      z: arms[row] ?? 0,
      k_n: 1,
      S_z: S_z > 0 ? S_z : 1,
      N: Math.max(0, load.pull_N),
      n_s: heights_m.length,
    };
    return { z, symbols, pull_N: screwPull.evaluate(symbols) };
  });
}

import type { Fixing, FixingLoad } from './fixing.ts';
import { pullOf, sharesOf, type Share } from './sharing.ts';
import { toeOf } from './toe.ts';
import { turningOf } from './turning.ts';

/** The screws at one height. */
export interface RowPull {
  /** From the end about which the plate turns. */
  readonly z: number;
  /** What the pull of all of them is worked out from: a row counts as one screw. */
  readonly share: Share;
  readonly pull_N: number;
}

/** Pull of all screws at each height. Where no screw can hold the couple, which its own check tells, the couple is left out. */
export function rowPulls(fixing: Fixing, load: FixingLoad): RowPull[] {
  const { heights_m } = turningOf(fixing, load);
  const shares = sharesOf(heights_m, toeOf(fixing, load).pivot_m, load, 1);
  return shares.map((share, row) => ({ z: heights_m[row] ?? 0, share, pull_N: pullOf(share) }));
}

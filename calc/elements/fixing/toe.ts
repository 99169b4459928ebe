import type { Step } from '../../../shared/check-result.ts';
import { work } from '../../formula/step.ts';
import { heightsAbove, toeForce, toeLength } from '../../mechanics/plate-group.ts';
import { backingOf } from './backing.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import { turningOf } from './turning.ts';

/** The end of a plate that is pressed on the wall: the lower one, or of a lifted bracket the upper. */
export interface Toe {
  /** How far from that end the wall behind it begins to be solid. */
  readonly from_m: number;
  /** How far from that end the plate turns: the middle of what bears. */
  readonly pivot_m: number;
  /** Length of plate that has to bear on a covering that crushes; Infinity where no length is enough. */
  readonly length_m: number;
  readonly steps: readonly Step[];
}

/** What makes a plate turn. */
type TurningLoad = Pick<FixingLoad, 'couple_Nm' | 'isLifted'> & Partial<Pick<FixingLoad, 'pull_N'>>;

/** The search for the length that bears settles in a few rounds, but for a couple within 1 % of what crushes the covering. */
const mostRounds = 200;

/** Turns about its very end where the backing is solid; about the middle of a crushed toe where its strength is given. */
export function toeOf(fixing: Fixing, load: TurningLoad): Toe {
  const { couple_Nm: C, pull_N: N = 0 } = load;
  const f_w = fixing.coveringBearing_Pa;
  const { from_m, steps } = backingOf(fixing, turningOf(fixing, load));
  const stiff: Toe = { from_m, pivot_m: from_m, length_m: 0, steps };
  if (f_w === null || C <= 0) return stiff;
  const { heights_m, aside } = turningOf(fixing, load);
  const farthest = Math.max(...heights_m);
  const forcesOver = (pivot_m: number) => ({
    C,
    N,
    z_c: middleOf(heights_m, pivot_m),
    ...sumsAbove(heights_m, pivot_m),
  });
  let length_m = 0;
  for (let round = 0; ; round++) {
    const forces = forcesOver(from_m + length_m / 2);
    const C_toe = forces.S_z > 0 ? toeForce.evaluate(forces) : Infinity;
    if (C_toe <= 0) return stiff;
    const next = C_toe / (f_w * fixing.plate.width_m);
    if (!(next < 2 * (farthest - from_m)) || round === mostRounds)
      return { from_m, pivot_m: from_m, length_m: Infinity, steps };
    const settled = Math.abs(next - length_m) < 1e-9;
    length_m = next;
    if (settled) break;
  }
  const { system, plate } = fixing;
  const pivot_m = from_m + length_m / 2;
  const isUpper = aside !== '';
  const force = work(
    toeForce,
    forcesOver(pivot_m),
    system,
    isUpper ? `pressure force at the upper end of the plate${aside}` : toeForce.caption,
  );
  const length = work(
    toeLength,
    { C_toe: force.value, f_w, b_p: plate.width_m },
    system,
    `${toeLength.caption}${aside}`,
  );
  return { from_m, pivot_m, length_m, steps: [...steps, force.step, length.step] };
}

/** Sums of the heights of the screws over a pivot, and of their squares. */
export function sumsAbove(heights_m: readonly number[], pivot_m: number): { S_1: number; S_z: number } {
  const arms = heightsAbove(heights_m, pivot_m);
  return {
    S_1: arms.reduce((sum, z) => sum + z, 0),
    S_z: arms.reduce((sum, z) => sum + z * z, 0),
  };
}

/** How high the middle of the screws, where a pull acts, stands over a pivot. */
export function middleOf(heights_m: readonly number[], pivot_m: number): number {
  return Math.max(0, heights_m.reduce((sum, z) => sum + z, 0) / heights_m.length - pivot_m);
}

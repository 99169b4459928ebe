import type { Step } from '../../../shared/check-result.ts';
import { work } from '../../formula/step.ts';
import { heightsAbove, toeForce, toeLength } from '../../mechanics/plate-group.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import { turningOf } from './turning.ts';

/** The end of a plate that is pressed on a covering that crushes: the lower one, or of a lifted bracket the upper. */
export interface Toe {
  /** How far from that end the plate turns: the middle of what bears. */
  readonly pivot_m: number;
  /** Length of plate that has to bear; Infinity where no length is enough. */
  readonly length_m: number;
  readonly steps: readonly Step[];
}

const stiffToe: Toe = { pivot_m: 0, length_m: 0, steps: [] };

/** The search for the length that bears settles in a few rounds, but for a couple within 1 % of what crushes the covering. */
const mostRounds = 200;

/** Turns about its very end where the backing is solid; about the middle of a crushed toe where its strength is given. */
export function toeOf(fixing: Fixing, load: Pick<FixingLoad, 'couple_Nm' | 'isLifted'>): Toe {
  const { couple_Nm } = load;
  const f_w = fixing.coveringBearing_Pa;
  if (f_w === null || couple_Nm <= 0) return stiffToe;
  const { heights_m, aside } = turningOf(fixing, load);
  const farthest = Math.max(...heights_m);
  const crushed: Toe = { pivot_m: 0, length_m: Infinity, steps: [] };
  let length_m = 0;
  for (let round = 0; ; round++) {
    const sums = sumsAbove(heights_m, length_m / 2);
    const C_toe = sums.S_z > 0 ? toeForce.evaluate({ C: couple_Nm, ...sums }) : Infinity;
    const next = C_toe / (f_w * fixing.plate.width_m);
    if (!(next < 2 * farthest) || round === mostRounds) return crushed;
    const settled = Math.abs(next - length_m) < 1e-9;
    length_m = next;
    if (settled) break;
  }
  const { system, plate } = fixing;
  const sums = { C: couple_Nm, ...sumsAbove(heights_m, length_m / 2) };
  const isUpper = aside !== '';
  const force = work(
    toeForce,
    sums,
    system,
    isUpper ? `pressure force at the upper end of the plate${aside}` : toeForce.caption,
  );
  const length = work(
    toeLength,
    { C_toe: force.value, f_w, b_p: plate.width_m },
    system,
    `${toeLength.caption}${aside}`,
  );
  return { pivot_m: length_m / 2, length_m, steps: [force.step, length.step] };
}

/** Sums of the heights of the screws over a pivot, and of their squares. */
function sumsAbove(heights_m: readonly number[], pivot_m: number): { S_1: number; S_z: number } {
  const arms = heightsAbove(heights_m, pivot_m);
  return {
    S_1: arms.reduce((sum, z) => sum + z, 0),
    S_z: arms.reduce((sum, z) => sum + z * z, 0),
  };
}

import type { Step } from '../../../shared/check-result.ts';
import { work } from '../../formula/step.ts';
import { heightsAbove, toeForce, toeLength } from '../../mechanics/plate-group.ts';
import type { Fixing } from './fixing.ts';

/** The lower end of a plate on a covering that crushes. */
export interface Toe {
  /** Height about which the plate turns: the middle of what bears. */
  readonly pivot_m: number;
  /** Length of plate that has to bear; Infinity where no length is enough. */
  readonly length_m: number;
  readonly steps: readonly Step[];
}

const stiffToe: Toe = { pivot_m: 0, length_m: 0, steps: [] };

/** Turns about its very end where the backing is solid; about the middle of a crushed toe where its strength is given. */
export function toeOf(fixing: Fixing, couple_Nm: number): Toe {
  const f_w = fixing.coveringBearing_Pa;
  if (f_w === null || couple_Nm <= 0) return stiffToe;
  const highest = Math.max(...fixing.heights_m);
  let length_m = 0;
  for (let round = 0; round < 60; round++) {
    const sums = sumsAbove(fixing, length_m / 2);
    const C_toe = sums.S_z > 0 ? toeForce.evaluate({ C: couple_Nm, ...sums }) : Infinity;
    const next = C_toe / (f_w * fixing.plate.width_m);
    if (!(next < 2 * highest)) return { pivot_m: 0, length_m: Infinity, steps: [] };
    const settled = Math.abs(next - length_m) < 1e-9;
    length_m = next;
    if (settled) break;
  }
  const { system, plate } = fixing;
  const force = work(toeForce, { C: couple_Nm, ...sumsAbove(fixing, length_m / 2) }, system);
  const length = work(toeLength, { C_toe: force.value, f_w, b_p: plate.width_m }, system);
  return { pivot_m: length_m / 2, length_m, steps: [force.step, length.step] };
}

/** Sums of the heights of the screws over a pivot, and of their squares. */
function sumsAbove({ heights_m }: Fixing, pivot_m: number): { S_1: number; S_z: number } {
  const arms = heightsAbove(heights_m, pivot_m);
  return {
    S_1: arms.reduce((sum, z) => sum + z, 0),
    S_z: arms.reduce((sum, z) => sum + z * z, 0),
  };
}

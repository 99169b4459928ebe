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
    const next = bearing(fixing, couple_Nm, f_w, length_m / 2)?.length.value ?? Infinity;
    if (!(next < 2 * highest)) return { pivot_m: 0, length_m: Infinity, steps: [] };
    const settled = Math.abs(next - length_m) < 1e-9;
    length_m = next;
    if (settled) break;
  }
  const last = bearing(fixing, couple_Nm, f_w, length_m / 2);
  return { pivot_m: length_m / 2, length_m, steps: last === null ? [] : [last.force.step, last.length.step] };
}

function bearing({ heights_m, plate, system }: Fixing, couple_Nm: number, f_w: number, pivot_m: number) {
  const arms = heightsAbove(heights_m, pivot_m);
  const S_z = arms.reduce((sum, z) => sum + z * z, 0);
  const S_1 = arms.reduce((sum, z) => sum + z, 0);
  if (S_z <= 0) return null;
  const force = work(toeForce, { C: couple_Nm, S_1, S_z }, system);
  return { force, length: work(toeLength, { C_toe: force.value, f_w, b_p: plate.width_m }, system) };
}

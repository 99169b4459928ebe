import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import type { Step } from '../../../shared/check-result.ts';
import * as steel from '../../standards/aisc-360/steel-arm.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing } from './fixing.ts';
import type { Place } from './fixing-checks.ts';
import { holeOf } from '../hole.ts';
import { plateCheck } from './plate-metal.ts';

/** A moment in the plate, and how it came about. */
export interface PlateMoment {
  readonly value_Nm: number;
  readonly steps: readonly Step[];
}

/** Width of a plate that an arm at its upper end bends down to the highest screws. */
export const bentWidth = formula({
  symbol: 'b',
  caption:
    'width of the plate that counts: the arm, and what spreads at 45° from it down to the highest screws',
  expression: 'min(b_p, b_a + 2 * l_s)',
  symbols: { b_p: 'm', b_a: 'm', l_s: 'm' },
  unit: 'm',
  source: { document: 'common practice, no source', edition: '', clause: 'spread of a load in a plate' },
});

/**
 * The metal of a plate, bent from where the couple comes in down to the highest screws and their holes.
 *
 * @param armWidth_m the arm at the upper end of the plate; null where there is none and the whole width counts
 */
export function plateBending(
  fixing: Fixing,
  metal: string,
  moment: PlateMoment,
  armWidth_m: number | null,
  place: Place,
): Judged {
  const { system, plate, perHeight, fastener } = fixing;
  const parts = plateCheck(metal, 'Bending of the plate on the wall', place);
  if (parts.F_y === null) return { check: makeCheck(parts.unknown, system), steps: moment.steps };
  const { base } = parts;
  const d_h = holeOf(fixing.fastener?.diameter_m ?? null);
  const allowed = work(steel.allowableSteelBending, { F_y: parts.F_y }, system);
  const width = widthOf(fixing, armWidth_m);
  const b = width?.value ?? plate.width_m;
  const steps = [...moment.steps, ...(width === null ? [] : [width.step])];
  if (b <= perHeight * d_h) {
    const note = 'The holes of the screws leave nothing of the plate.';
    return { check: makeCheck({ ...base, demand: allowed.value, capacity: 0, note }, system), steps };
  }
  const M = moment.value_Nm;
  const stress = work(steel.plateStress, { M, b, n_h: perHeight, d_h, t: plate.thickness_m }, system);
  const hole = fastener === null ? 'holes of 5/16 in' : 'holes 1/16 in wider than the screws';
  const note = `The width left beside the screws counts, with ${hole} (common practice, no source).`;
  const check = makeCheck({ ...base, demand: stress.value, capacity: allowed.value, note }, system);
  return { check, steps: [...steps, stress.step, allowed.step] };
}

/** The width that counts under an arm; null where it is all of it. */
function widthOf({ plate, heights_m, system }: Fixing, armWidth_m: number | null) {
  const l_s = Math.max(0, plate.height_m - Math.max(...heights_m));
  if (armWidth_m === null || armWidth_m + 2 * l_s >= plate.width_m) return null;
  return work(bentWidth, { b_p: plate.width_m, b_a: armWidth_m, l_s }, system);
}

import { inch } from '../../../shared/quantity/index.ts';
import { findMetal } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import type { Step } from '../../../shared/check-result.ts';
import * as steel from '../../standards/aisc-360/steel-arm.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing } from './fixing.ts';
import type { Place } from './fixing-checks.ts';

/** Hole for a fastener whose size is not known. */
const usualHole_m = (5 / 16) * inch;
/** Holes are bored 1/16 in wider than the fastener. */
const clearance_m = inch / 16;

/** A moment in the plate, and how it came about. */
export interface PlateMoment {
  readonly value_Nm: number;
  readonly steps: readonly Step[];
}

/** The metal of a plate, bent from where the couple comes in down to the highest screws and their holes. */
export function plateBending(fixing: Fixing, metal: string, moment: PlateMoment, place: Place): Judged {
  const { system, plate, perHeight, fastener } = fixing;
  const found = findMetal(metal);
  const F_y = found.ok && found.row.kind === 'steel' ? found.row.yield_Pa : null;
  const base = {
    id: 'plate',
    title: 'Bending of the plate on the wall',
    unit: 'Pa',
    clause: 'AISC 360 F11',
    ...place,
  } as const;
  if (F_y === null) {
    const note = `Cannot say: ${metal} is brittle or has no yield point in the tables.`;
    return { check: makeCheck({ ...base, demand: null, capacity: null, note }, system), steps: moment.steps };
  }
  const d_h = fastener === null ? usualHole_m : fastener.diameter_m + clearance_m;
  const allowed = work(steel.allowableSteelBending, { F_y }, system);
  const { width_m: b, thickness_m: t } = plate;
  if (b <= perHeight * d_h) {
    const note = 'The holes of the screws leave nothing of the plate.';
    const parts = { ...base, demand: allowed.value, capacity: 0, note };
    return { check: makeCheck(parts, system), steps: moment.steps };
  }
  const stress = work(steel.plateStress, { M: moment.value_Nm, b, n_h: perHeight, d_h, t }, system);
  const hole = fastener === null ? 'holes of 5/16 in' : 'holes 1/16 in wider than the screws';
  const note = `The width left beside the screws counts, with ${hole} (common practice, no source).`;
  const parts = { ...base, demand: stress.value, capacity: allowed.value, note };
  return { check: makeCheck(parts, system), steps: [...moment.steps, stress.step, allowed.step] };
}

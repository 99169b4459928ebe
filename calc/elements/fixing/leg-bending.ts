import { show } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { heightsAbove } from '../../mechanics/plate-group.ts';
import { armPull, legMoment } from '../bracket-formulas.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import type { PlateMoment } from './plate-bending.ts';
import { toeOf } from './toe.ts';
import { turningOf } from './turning.ts';

/** A place on the leg: what bends it there is the pull on the leg less that of the screws beyond. */
interface LegPlace {
  /** From the end about which the plate turns. */
  readonly z_j: number;
  /** Pulls of the screws beyond it, each times its distance. */
  readonly S_T: number;
}

/**
 * The largest moment in the leg of a bracket with a strut, at one of its screws or at the foot of the strut. The arm pulls
 * it off the wall at its upper end; a lifted arm presses there, and the strut pulls at its foot.
 */
export function legBending(fixing: Fixing, load: FixingLoad, drop_m: number): PlateMoment {
  const { system, plate } = fixing;
  const { end, aside } = turningOf(fixing, load);
  const isLifted = end === 'upper';
  const along = isLifted ? `pull at the foot of the strut${aside}` : armPull.caption;
  const pull = work(armPull, { C: load.couple_Nm, h: drop_m }, system, along);
  const z_N = isLifted ? drop_m : plate.height_m;
  const foot_m = isLifted ? drop_m : plate.height_m - drop_m;
  const momentAt = (place: LegPlace): number => legMoment.evaluate({ N: pull.value, z_N, ...place });
  // Between the pull and the foot of the strut; past either the moment only falls.
  const [lowest, highest] = isLifted ? [0, z_N] : [foot_m, z_N];
  const [first, ...rest] = placesOf(fixing, load, foot_m).filter(
    ({ z_j }) => z_j >= lowest - 1e-12 && z_j <= highest + 1e-12,
  );
  if (first === undefined) return { value_Nm: 0, steps: [pull.step] };
  const worst = rest.reduce((most, each) => (momentAt(each) > momentAt(most) ? each : most), first);
  const at = `${show(worst.z_j, 'm', system)} from its ${end} end`;
  const caption = `moment in the leg ${at}; S_T: pulls of the screws beyond, each times its distance`;
  const leg = work(legMoment, { N: pull.value, z_N, ...worst }, system, caption);
  return { value_Nm: leg.value, steps: [pull.step, leg.step] };
}

/** The screws, and the foot of the strut where it stands on the plate. */
function placesOf(fixing: Fixing, load: FixingLoad, foot_m: number): LegPlace[] {
  const { plate } = fixing;
  const rows = rowPulls(fixing, load);
  const isOnPlate = foot_m > 0 && foot_m <= plate.height_m;
  return [...rows.map(({ z }) => Math.min(z, plate.height_m)), ...(isOnPlate ? [foot_m] : [])].map((z_j) => ({
    z_j,
    S_T: rows.reduce((sum, { z, pull_N }) => sum + pull_N * Math.max(0, z - z_j), 0),
  }));
}

/** Pull of all screws at each height over the end about which the plate turns. */
function rowPulls(fixing: Fixing, load: FixingLoad): { readonly z: number; readonly pull_N: number }[] {
  const { heights_m } = turningOf(fixing, load);
  const arms = heightsAbove(heights_m, toeOf(fixing, load).pivot_m);
  const S_z = arms.reduce((sum, z) => sum + z * z, 0);
  return heights_m.map((z, row) => ({ z, pull_N: S_z > 0 ? (load.couple_Nm * (arms[row] ?? 0)) / S_z : 0 }));
}

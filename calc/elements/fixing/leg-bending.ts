import { show } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { armPull, legMoment, legPressure, legTurn } from '../bracket-formulas.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import type { PlateMoment } from './plate-bending.ts';
import { rowPulls } from './row-pulls.ts';
import { toeOf, type Toe } from './toe.ts';
import { turningOf } from './turning.ts';

/** A place on the leg: what bends it there is what acts beyond it, seen from the end about which the plate turns. */
interface LegPlace {
  /** From the end about which the plate turns. */
  readonly z_j: number;
  /** Pressure beyond it of a wall that is crushed, times its distance. */
  readonly S_w: number;
  /** Pulls of the screws beyond it, each times its distance. */
  readonly S_T: number;
}

/**
 * The largest moment in the leg of a bracket with a strut: at one of its screws, at the foot of the strut (at the pressed end
 * where it stands below the plate), or where the pressure of a wall that is crushed has come up to the force of the arm.
 * The arm pulls it off the wall at its upper end; a lifted arm presses there, and the strut pulls at its foot.
 */
export function legBending(fixing: Fixing, load: FixingLoad, drop_m: number): PlateMoment {
  const { system, plate } = fixing;
  const { end, aside } = turningOf(fixing, load);
  const toe = toeOf(fixing, load);
  const { from_m } = toe;
  const wall = pressureOf(fixing, toe);
  const isLifted = end === 'upper';
  const along = isLifted ? `pull at the foot of the strut${aside}` : armPull.caption;
  const pull = work(armPull, { C: load.couple_Nm, h: drop_m }, system, along);
  const N = pull.value;
  const z_N = isLifted ? drop_m : plate.height_m;
  const foot_m = isLifted ? drop_m : plate.height_m - drop_m;
  const momentAt = (place: LegPlace): number => legMoment.evaluate({ N, z_N, ...place });
  // Screws do not stand where the wall is pressed, or the bearing of that end does not hold.
  const turn = wall === null ? null : work(legTurn, { z_w: from_m, N, f_w: wall.f_w, b_p: wall.b_p }, system);
  const turns = turn === null ? [] : [turn];
  // Between the pull and the foot of the strut, or the wall; past either the moment only falls.
  const [lowest, highest] = [isLifted ? from_m : Math.max(foot_m, from_m), z_N];
  const others_m = [from_m, foot_m, ...turns.map(({ value }) => value)];
  const [first, ...rest] = placesOf(fixing, load, others_m, wall).filter(
    ({ z_j }) => z_j >= lowest - 1e-12 && z_j <= highest + 1e-12,
  );
  if (first === undefined) return { value_Nm: 0, steps: [pull.step] };
  const worst = rest.reduce((most, each) => (momentAt(each) > momentAt(most) ? each : most), first);
  const at = `${show(worst.z_j, 'm', system)} from its ${end} end`;
  const caption = `moment in the leg ${at}; S_T: pulls of the screws beyond, each times its distance`;
  const leg = work(legMoment, { N, z_N, ...worst }, system, caption);
  const turned = turns.filter(({ value }) => value === worst.z_j).map(({ step }) => step);
  const pressed =
    wall === null || worst.S_w === 0 ? [] : [work(legPressure, { ...wall, z_j: worst.z_j }, system).step];
  return { value_Nm: leg.value, steps: [pull.step, ...turned, ...pressed, leg.step] };
}

/** The pressure of a wall that is crushed: how hard, how wide and how far up; null where the backing is solid, or nothing holds. */
type Pressure = Readonly<Record<'f_w' | 'b_p' | 'a_toe', number>>;
function pressureOf(fixing: Fixing, { from_m, length_m }: Toe): Pressure | null {
  const f_w = fixing.coveringBearing_Pa;
  if (f_w === null || length_m === 0 || !Number.isFinite(length_m)) return null;
  return { f_w, b_p: fixing.plate.width_m, a_toe: from_m + length_m };
}

/** The screws, the pressed end, and what else is on the plate of other places. */
function placesOf(
  fixing: Fixing,
  load: FixingLoad,
  others_m: readonly number[],
  wall: Pressure | null,
): LegPlace[] {
  const { plate } = fixing;
  const rows = rowPulls(fixing, load);
  const onPlate = others_m.filter((each) => each >= 0 && each <= plate.height_m);
  return [...rows.map(({ z }) => Math.min(z, plate.height_m)), ...onPlate].map((z_j) => ({
    z_j,
    S_w: wall === null || z_j >= wall.a_toe ? 0 : legPressure.evaluate({ ...wall, z_j }),
    S_T: rows.reduce((sum, { z, pull_N }) => sum + pull_N * Math.max(0, z - z_j), 0),
  }));
}

import { inch } from '../../../shared/quantity/index.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { Step } from '../../../shared/check-result.ts';
import { findGradedLumber } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import { sectionModulus } from '../../mechanics/section-formulas.ts';
import { studMoment, studPullMoment, studTotalMoment } from '../../standards/nds-2018/11.2-metal.ts';
import {
  adjustedBending,
  durationFactor,
  temperatureFactor,
} from '../../standards/nds-2018/2.3-adjustment.ts';
import { bendingStress } from '../../standards/nds-2018/3-members.ts';
import { sizeFactor, wetService } from '../../standards/nds-2018/4a-lumber-factors.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import type { Place } from './fixing-checks.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

/** The lowest stud values of NDS Supplement Table 4A. */
const weakest = 'Spruce-Pine-Fir (South)';
const usualHeight_m = 96 * inch;

/** Whether a plate bends a stud: not blocking, not sheathing, and not where the screws go into an end. */
export function bendsStud({ ground }: Fixing, wall: Wall): boolean {
  return ground.kind === 'wood' && ground.grain === 'side' && (wall.framing ?? 'wood-stud') === 'wood-stud';
}

/** Where a plate stands on its stud; the middle of an 8 ft stud is the worst for a pull where nobody says. */
function placeOn({ height, bracketHeight }: Wall): { h_b: number; H_w: number; isGiven: boolean } {
  return height !== undefined && bracketHeight !== undefined && bracketHeight <= height
    ? { h_b: bracketHeight, H_w: height, isGiven: true }
    : { h_b: usualHeight_m / 2, H_w: usualHeight_m, isGiven: false };
}

/** Moment in the stud from the couple and the pull on one plate. */
export function studMoment_Nm(wall: Wall, { couple_Nm, pull_N }: FixingLoad): number {
  const { h_b, H_w, isGiven } = placeOn(wall);
  const fromCouple = isGiven ? studMoment.evaluate({ C: couple_Nm, h_b, H_w }) : couple_Nm;
  return fromCouple + studPullMoment.evaluate({ N: pull_N, h_b, H_w });
}

/** Nominal width of a stud by its depth, inches; from 8 in on the grade Stud has the values of No. 3 (NDS Supplement, Table 4A). */
function nominalOf(depth_m: number): number {
  const dressed = [3.5, 4.5, 5.5, 7.25, 9.25, 11.25].findIndex((most) => depth_m / inch <= most + 1e-6);
  return [4, 5, 6, 8, 10, 12][dressed] ?? 14;
}

/** The stud bent by the couple and the pull of one plate, alone; null where nothing is known of its wood. */
export function studBending(
  fixing: Fixing,
  wall: Wall,
  load: FixingLoad,
  place: Place,
): { readonly judged: Judged; readonly assumptions: readonly string[] } | null {
  const { ground, system, moisture, temperature } = fixing;
  if (ground.kind !== 'wood') return null;
  const nominal = nominalOf(ground.depth_m);
  const usual = nominal > 6 ? 'No.3' : 'Stud';
  const grade = wall.grade === undefined || (wall.grade === 'Stud' && nominal > 6) ? usual : wall.grade;
  const named = findGradedLumber(wall.species ?? weakest, grade, nominal);
  const found = named.ok ? named : findGradedLumber(weakest, usual, nominal);
  if (!found.ok) return null;
  const lumber = found.row;
  const moment = workedMoment(fixing, wall, load);
  const S = work(
    sectionModulus,
    { b: ground.width_m, t: ground.depth_m },
    system,
    'section modulus of the stud',
  );
  const stress = work(bendingStress, { M: moment.value, S: S.value }, system, 'bending stress in the stud');
  const size = sizeFactor(lumber.table, lumber.grade, nominal, false);
  const allowed = work(
    adjustedBending,
    {
      F_b: lumber.bending_Pa,
      C_D: durationFactor[load.duration],
      C_M: moisture === 'wet' ? wetService.bending(lumber.bending_Pa * size) : 1,
      C_t: temperatureFactor[moisture][temperature],
      C_F: size,
      C_fu: 1,
    },
    system,
  );
  const what = load.pull_N > 0 ? 'couple and the pull' : 'couple';
  const check = makeCheck(
    {
      id: 'stud',
      title: `Bending of the stud by the ${what} on a plate`,
      unit: 'Pa',
      demand: stress.value,
      capacity: allowed.value,
      clause: 'NDS 3.3.1',
      note: `The ${what} alone. A stud that is notched, bored or carries much from above needs a look of its own (NDS 3.9).`,
      ...place,
    },
    system,
  );
  const isPlaced = placeOn(wall).isGiven;
  return {
    judged: { check, steps: [...moment.steps, S.step, stress.step, allowed.step] },
    assumptions: [
      ...(named.ok && wall.grade !== undefined && wall.species !== undefined
        ? []
        : [`Studs are taken as ${lumber.combination}, grade ${lumber.grade}.`]),
      ...(isPlaced ? [] : ['The whole couple is taken to bend the stud on one side of the plate.']),
      ...(isPlaced || load.pull_N === 0
        ? []
        : ['The pull is taken at the middle of a stud 8 ft long (common practice, no source).']),
    ],
  };
}

function workedMoment({ system }: Fixing, wall: Wall, { couple_Nm, pull_N }: FixingLoad) {
  const { h_b, H_w, isGiven } = placeOn(wall);
  const steps: Step[] = [];
  let value = couple_Nm;
  if (isGiven) {
    const moment = work(studMoment, { C: couple_Nm, h_b, H_w }, system);
    steps.push(moment.step);
    value = moment.value;
  }
  if (pull_N > 0) {
    const M_N = work(studPullMoment, { N: pull_N, h_b, H_w }, system);
    const total = work(studTotalMoment, { M_C: value, M_N: M_N.value }, system);
    steps.push(M_N.step, total.step);
    value = total.value;
  }
  return { value, steps };
}

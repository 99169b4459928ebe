import { inch } from '../../../shared/quantity/index.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { Step } from '../../../shared/check-result.ts';
import type { GradedLumber } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import { sectionModulus } from '../../mechanics/section-formulas.ts';
import {
  studCouple,
  studMoment,
  studPullMoment,
  studTotalMoment,
} from '../../standards/nds-2018/11.2-metal.ts';
import {
  adjustedBending,
  durationFactor,
  temperatureFactor,
} from '../../standards/nds-2018/2.3-adjustment.ts';
import { bendingStress } from '../../standards/nds-2018/3-members.ts';
import { sizeFactor, wetService } from '../../standards/nds-2018/4a-lumber-factors.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing, FixingLoad, Ground } from './fixing.ts';
import type { Place } from './fixing-checks.ts';
import { nominalOf, studLumber } from './stud-lumber.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;
type Wood = Extract<Ground, { kind: 'wood' }>;

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

/** What makes up the couple about the middle of a stud. */
function coupleParts({ gap_m }: Fixing, { depth_m }: Wood, { couple_Nm, shear_N }: FixingLoad) {
  return { C: couple_Nm, V: Math.abs(shear_N), g: gap_m, d_s: depth_m };
}

/** Moment in the stud from the couple, the shear and the pull on one plate; 0 where the screws go into no wood. */
export function studMoment_Nm(fixing: Fixing, wall: Wall, load: FixingLoad): number {
  const { ground } = fixing;
  if (ground.kind !== 'wood') return 0;
  const { pull_N } = load;
  const { h_b, H_w, isGiven } = placeOn(wall);
  const C_st = studCouple.evaluate(coupleParts(fixing, ground, load));
  const fromCouple = isGiven ? studMoment.evaluate({ C_st, h_b, H_w }) : C_st;
  return fromCouple + studPullMoment.evaluate({ N: pull_N, h_b, H_w });
}

/** The stud bent by the couple and the pull of one plate, alone; null where the screws go into no wood. */
export function studBending(
  fixing: Fixing,
  wall: Wall,
  load: FixingLoad,
  place: Place,
): { readonly judged: Judged; readonly assumptions: readonly string[] } | null {
  const { ground, system } = fixing;
  if (ground.kind !== 'wood') return null;
  const moment = workedMoment(fixing, ground, wall, load);
  const S = work(
    sectionModulus,
    { b: ground.width_m, t: ground.depth_m },
    system,
    'section modulus of the stud',
  );
  const stress = work(bendingStress, { M: moment.value, S: S.value }, system, 'bending stress in the stud');
  const what = load.pull_N > 0 ? 'couple and the pull' : 'couple';
  const parts = {
    id: 'stud',
    title: `Bending of the stud by the ${what} on a plate`,
    unit: 'Pa',
    demand: stress.value,
    clause: 'NDS 3.3.1',
    ...place,
  } as const;
  const steps = [...moment.steps, S.step, stress.step];
  const nominal_in = nominalOf(ground.depth_m);
  const lumber = studLumber(wall, nominal_in);
  const placed = placeAssumptions(wall, load);
  if ('why' in lumber) {
    return {
      judged: { check: makeCheck({ ...parts, capacity: null, note: lumber.why }, system), steps },
      assumptions: placed,
    };
  }
  const strengthOf = (row: GradedLumber): number =>
    adjustedBending.evaluate(adjustmentsOf(fixing, load, nominal_in, row));
  const [first, ...rest] = lumber.rows;
  const weakest = rest.reduce((least, each) => (strengthOf(each) < strengthOf(least) ? each : least), first);
  const allowed = work(
    adjustedBending,
    adjustmentsOf(fixing, load, nominal_in, weakest),
    system,
    `${adjustedBending.caption} of ${weakest.combination}, grade ${weakest.grade}; F_b and C_F: NDS Supplement`,
  );
  const note = `The ${what} alone. A stud that is notched, bored or carries much from above needs a look of its own (NDS 3.9).`;
  const { combination, grade } = weakest;
  return {
    judged: {
      check: makeCheck({ ...parts, capacity: allowed.value, note }, system),
      steps: [...steps, allowed.step],
    },
    assumptions: [
      ...(lumber.isNamed
        ? wall.grade === undefined
          ? [`Studs are taken as ${combination}, grade ${grade}.`]
          : []
        : [
            `The wood of the studs is not named: they are taken as ${combination}, grade ${grade}, the lowest of the woods in the tables here. There are weaker ones, such as northern white cedar: name the wood where it may be one.`,
          ]),
      ...placed,
    ],
  };
}

/** The values a stud's bending strength comes from. */
function adjustmentsOf(
  { moisture, temperature }: Fixing,
  { duration }: FixingLoad,
  nominal_in: number,
  row: GradedLumber,
) {
  const C_F = sizeFactor(row.table, row.grade, nominal_in, false);
  return {
    F_b: row.bending_Pa,
    C_D: durationFactor[duration],
    C_M: moisture === 'wet' ? wetService.bending(row.bending_Pa * C_F) : 1,
    C_t: temperatureFactor[moisture][temperature],
    C_F,
    C_fu: 1,
  };
}

/** What is taken of where the plate stands on its stud, where nobody says. */
function placeAssumptions(wall: Wall, { pull_N }: FixingLoad): string[] {
  if (placeOn(wall).isGiven) return [];
  return [
    'The whole couple is taken to bend the stud on one side of the plate.',
    ...(pull_N === 0
      ? []
      : ['The pull is taken at the middle of a stud 8 ft long (common practice, no source).']),
  ];
}

function workedMoment(fixing: Fixing, wood: Wood, wall: Wall, load: FixingLoad) {
  const { system } = fixing;
  const { pull_N } = load;
  const { h_b, H_w, isGiven } = placeOn(wall);
  const couple = work(studCouple, coupleParts(fixing, wood, load), system);
  const steps: Step[] = [couple.step];
  let { value } = couple;
  if (isGiven) {
    const moment = work(studMoment, { C_st: value, h_b, H_w }, system);
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

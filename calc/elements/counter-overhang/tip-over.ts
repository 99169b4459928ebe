import type { Step } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import type { Judged } from '../judged.ts';
import { isWorse, makeCheck } from '../make-check.ts';
import type { Point } from '../../mechanics/hull.ts';
import { peopleLever } from './leg-help.ts';
import type { Overhang } from './overhang.ts';
import {
  anchoredMoment,
  floorPull,
  overturningMoment,
  pushMoment,
  restoringMoment,
} from './tip-over-formulas.ts';
import { leverAbout, peopleOutside, topParts, type Lever, type TopPart } from './tipping-line.ts';

/** How the base stands on the floor. */
export interface TipOver {
  readonly overturning_Nm: number;
  readonly restoring_Nm: number;
  /** Pull along the back of the base that would hold it, for people and for a push; 0 where it stands by itself. */
  readonly floorPull_N: number | null;
  readonly judged: readonly Judged[];
}

interface Case {
  readonly id: string;
  readonly title: string;
  readonly where: string;
  readonly combination: string;
  readonly over: { readonly value: number; readonly step: Step };
  readonly rest: { readonly value: number; readonly step: Step };
  /** From the pivot to the far side of the base. */
  readonly lever_m: number;
  /** Lever of all the fasteners along the back of the base; 0 where they do not hold that side. */
  readonly backLever_m: number;
  /** The same along its outer foot on the stool side. */
  readonly footLever_m: number;
  /** Whether the base tips along its fasteners, so that the nearer ones pull less. */
  readonly isAlongFasteners: boolean;
}

const clause = 'ASCE 7 2.4.1 by analogy';

/**
 * Whether a base that stands on the floor tips about a side of its own feet: people where they turn it most, and a push
 * at the top. Legs stand under the top and nothing ties them to the base, so they are no feet of it.
 */
export function tipOverOf(overhang: Overhang): TipOver {
  const sides = sidesOf(overhang);
  const people = sides.map((side) => judge(overhang, peopleCase(overhang, side)));
  const pushed = sides.map((side) => judge(overhang, pushCase(overhang, side)));
  const [worstPeople, worstPush] = [worstOf(people), worstOf(pushed)];
  return {
    overturning_Nm: worstPeople.over.value,
    restoring_Nm: worstPeople.rest.value,
    floorPull_N:
      overhang.base.weight_N === null
        ? null
        : Math.max(...[...people, ...pushed].map(({ pull_N }) => pull_N)),
    judged: [worstPeople.judged, worstPush.judged],
  };
}

/** The side that is judged worst, its fasteners into the floor counted; of sides alike, the first. */
function worstOf(answers: readonly Answer[]): Answer {
  return answers.reduce((a, b) => (isWorse(b.judged.check, a.judged.check) ? b : a));
}

interface Answer {
  readonly judged: Judged;
  readonly over: Case['over'];
  readonly rest: Case['rest'];
  /** Pull along the far side of the base that would hold it; 0 where it stands by its own weight. */
  readonly pull_N: number;
}

/** A line the counter could tip over, with all that turns it and holds it. */
interface Side {
  readonly name: string;
  readonly lever: Lever;
  readonly outside: TopPart;
  readonly inside: TopPart;
  readonly baseLever_m: number;
  /** From the line to the far side of the base. */
  readonly far_m: number;
  /** Lever of all the fasteners along the back of the base, and along its outer foot on the stool side. */
  readonly back_m: number;
  readonly foot_m: number;
  readonly isAlongFasteners: boolean;
}

/**
 * Of the distance from a line to the farthest fastener, the lever of a whole row that runs away from the line: each pulls
 * by how far it is from the line, the farthest as hard as its share, and evenly spaced ones make ∫ x (x / L) dx / L = L / 3.
 */
const rowLever = 1 / 3;

/** The feet go round with the inside on their left: the back first, then the right. */
const sideNames = ['back', 'right', 'stool', 'left'] as const;

function sidesOf({ top, base }: Overhang): Side[] {
  const feet: Point[] = [
    [base.from_m, base.back_m],
    [base.to_m, base.back_m],
    [base.to_m, base.foot_m],
    [base.from_m, base.foot_m],
  ];
  const weightAt: Point = [(base.from_m + base.to_m) / 2, base.weightAt_m];
  return feet.map((from, index): Side => {
    const lever = leverAbout(from, feet[(index + 1) % feet.length] ?? from);
    const far_m = Math.max(...feet.map((foot) => -lever(foot)));
    const isAlongFasteners = index % 2 === 1;
    const rowAt = (y_m: number): number =>
      isAlongFasteners ? rowLever * far_m : Math.max(0, -lever([base.from_m, y_m]));
    return {
      name: sideNames[index] ?? '',
      lever,
      ...topParts(top, lever),
      baseLever_m: -lever(weightAt),
      far_m,
      back_m: rowAt(base.back_m),
      foot_m: rowAt(base.foot_m),
      isAlongFasteners,
    };
  });
}

function restOf({ base, system }: Overhang, { inside, baseLever_m }: Side) {
  return work(
    restoringMoment,
    { D_b: base.weight_N ?? 0, e_b: baseLever_m, D_r: inside.weight_N, e_r: inside.lever_m },
    system,
  );
}

function peopleCase(overhang: Overhang, side: Side): Case {
  const { serving, person, system } = overhang;
  const { outside } = side;
  const people = peopleOutside(overhang, peopleLever(overhang, side.lever));
  return {
    id: 'tip-over',
    title: 'Tipping of the base',
    where: `about its ${side.name} side, people where they turn it most`,
    combination: '0.6 D holding, D + serving + people turning',
    over: work(
      overturningMoment,
      {
        D_f: outside.weight_N,
        e_f: outside.lever_m,
        S_f: (serving?.pressure_Npm2 ?? 0) * outside.area_m2,
        e_S: outside.lever_m,
        P: (person?.load_N ?? 0) * people.count,
        e_P: people.lever_m,
      },
      system,
    ),
    rest: restOf(overhang, side),
    lever_m: side.far_m,
    backLever_m: side.back_m,
    footLever_m: side.foot_m,
    isAlongFasteners: side.isAlongFasteners,
  };
}

function pushCase(overhang: Overhang, side: Side): Case {
  const { top, base, system } = overhang;
  return {
    id: 'tip-over-push',
    title: 'Tipping under a push',
    where: `pushed over its ${side.name} side`,
    combination: '0.6 D holding, a push at the top turning',
    over: work(
      pushMoment,
      {
        H: base.push_N,
        h: base.height_m + top.thickness_m,
        D_f: side.outside.weight_N,
        e_f: side.outside.lever_m,
      },
      system,
    ),
    rest: restOf(overhang, side),
    lever_m: side.far_m,
    backLever_m: side.back_m,
    footLever_m: side.foot_m,
    isAlongFasteners: side.isAlongFasteners,
  };
}

function judge(overhang: Overhang, each: Case): Answer {
  const { base, system } = overhang;
  const { over, rest, lever_m, backLever_m, footLever_m } = each;
  const needs = over.value > rest.value;
  const lever = Math.max(lever_m, 1e-3);
  const pull = needs ? work(floorPull, { C_over: over.value, C_rest: rest.value, e_a: lever }, system) : null;
  const shown = pull === null ? '' : show(pull.value, 'N', system);
  const steps = [over.step, rest.step, ...(pull === null ? [] : [pull.step])];
  const parts = {
    id: each.id,
    title: each.title,
    unit: 'N.m',
    clause,
    where: each.where,
    combination: each.combination,
  } as const;
  const answer = (capacity: number | null, note: string, more: readonly Step[] = []) => ({
    judged: {
      check: makeCheck({ ...parts, demand: over.value, capacity, note }, system),
      steps: [...steps, ...more],
    },
    ...{ over, rest, pull_N: pull?.value ?? 0 },
  });
  const hold = `hold the base to the floor with at least ${shown} along the side away from it`;
  if (base.isHeld && base.anchorPull_N !== null) {
    const held = work(
      anchoredMoment,
      {
        C_rest: rest.value,
        T_a: base.anchorPull_N,
        e_a: backLever_m,
        T_b: base.anchorPullFront_N,
        e_b: footLever_m,
      },
      system,
    );
    return answer(Math.max(held.value, 0), anchoredNote(each, needs, held.value > rest.value, hold), [
      held.step,
    ]);
  }
  if (!needs) return answer(rest.value, 'It stands by its own weight.');
  if (base.isHeld)
    return answer(
      null,
      `By its weight alone it tips; ${hold}, and give what the fasteners there are allowed, "anchorPull".`,
    );
  if (base.weight_N === null)
    return answer(null, `The weight of the base is not given. With none at all, ${hold}.`);
  return answer(Math.max(rest.value, 0), `By its weight alone it tips: ${hold}.`);
}

function anchoredNote({ isAlongFasteners }: Case, needs: boolean, helps: boolean, hold: string): string {
  if (!needs) return 'It stands by its own weight; fasteners into the floor come on top.';
  if (!helps) return `The fasteners into the floor do not hold it on this side: ${hold}.`;
  return isAlongFasteners
    ? 'It needs its fasteners into the floor: evenly spaced along the back and along the foot, they pull the less the nearer they are to the side it tips about, so that all of them count at a third of its length.'
    : 'It needs its fasteners into the floor, all pulling at once.';
}

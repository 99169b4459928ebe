import type { Step } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import { stoolSpacing_m, type Overhang } from './overhang.ts';
import {
  anchoredMoment,
  floorPull,
  overturningMoment,
  pushMoment,
  restoringMoment,
} from './tip-over-formulas.ts';

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
}

const clause = 'ASCE 7 2.4.1 by analogy';

/**
 * Whether a base that stands on the floor tips about any of its four sides: people on the edge there, and a push at the
 * top. Two legs or more under the overhang that stand on the floor move the pivot out to the nearest of them.
 */
export function tipOverOf(overhang: Overhang): TipOver {
  const sides = sidesOf(overhang);
  const people = worst(sides.map((side) => peopleCase(overhang, side)));
  const pushed = worst(sides.map((side) => pushCase(overhang, side)));
  const answers = [people, pushed].map((each) => judge(overhang, each));
  return {
    overturning_Nm: people.over.value,
    restoring_Nm: people.rest.value,
    floorPull_N: overhang.base.weight_N === null ? null : Math.max(...answers.map(({ pull_N }) => pull_N)),
    judged: answers.map(({ judged }) => judged),
  };
}

function worst(cases: readonly Case[]): Case {
  const used = ({ over, rest }: Case): number => (rest.value > 0 ? over.value / rest.value : Infinity);
  return cases.reduce((a, b) => (used(b) > used(a) ? b : a));
}

interface Side {
  readonly name: 'stool' | 'back' | 'left' | 'right';
  /** Length of the edge of the top there. */
  readonly edge_m: number;
  /** How far the top stands out past the pivot, and how far it reaches behind it. */
  readonly past_m: number;
  readonly behind_m: number;
  readonly baseLever_m: number;
  /** From the pivot to the far side of the base. */
  readonly far_m: number;
}

function sidesOf({ top, base, props }: Overhang): Side[] {
  const legs = props.flatMap((prop) => (prop.kind === 'leg' ? [prop.to] : []));
  const foot = legs.length >= 2 ? Math.max(base.foot_m, Math.min(...legs)) : base.foot_m;
  const middle = (base.from_m + base.to_m) / 2;
  const side = (
    name: Side['name'],
    edge_m: number,
    whole_m: number,
    past_m: number,
    baseLever_m: number,
    far_m: number,
  ) => ({
    name,
    edge_m,
    past_m: Math.max(0, past_m),
    behind_m: whole_m - Math.max(0, past_m),
    baseLever_m,
    far_m,
  });
  const { length_m, depth_m } = top;
  const width = base.to_m - base.from_m;
  return [
    side('stool', length_m, depth_m, depth_m - foot, foot - base.weightAt_m, foot - base.back_m),
    side('back', length_m, depth_m, base.back_m, base.weightAt_m - base.back_m, base.foot_m - base.back_m),
    side('left', depth_m, length_m, base.from_m, middle - base.from_m, width),
    side('right', depth_m, length_m, length_m - base.to_m, base.to_m - middle, width),
  ];
}

function restOf({ top, base, system }: Overhang, { past_m, behind_m, baseLever_m }: Side) {
  const D_r = (top.weight_N * behind_m) / (past_m + behind_m);
  return work(restoringMoment, { D_b: base.weight_N ?? 0, e_b: baseLever_m, D_r, e_r: behind_m / 2 }, system);
}

/** Weight of the part of the top past the pivot. */
function frontOf({ top }: Overhang, { past_m, behind_m }: Side): number {
  return (top.weight_N * past_m) / (past_m + behind_m);
}

function peopleCase(overhang: Overhang, side: Side): Case {
  const { serving, person, system } = overhang;
  const { past_m, edge_m } = side;
  const isPinned = person?.at_m !== null && person?.at_m !== undefined;
  const isThere = person !== null && (!isPinned || side.name === 'stool');
  const count = person !== null && !isPinned && edge_m >= 2 * stoolSpacing_m ? 2 : 1;
  const e_P = Math.max(0, past_m - (person?.patch_m ?? 0) / 2);
  return {
    id: 'tip-over',
    title: 'Tipping of the base',
    where: `about its ${side.name} side, people on the edge there`,
    combination: '0.6 D holding, D + serving + people turning',
    over: work(
      overturningMoment,
      {
        D_f: frontOf(overhang, side),
        e_f: past_m / 2,
        S_f: (serving?.pressure_Npm2 ?? 0) * edge_m * past_m,
        e_S: past_m / 2,
        P: isThere ? person.load_N * count : 0,
        e_P,
      },
      system,
    ),
    rest: restOf(overhang, side),
    lever_m: side.far_m,
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
        D_f: frontOf(overhang, side),
        e_f: side.past_m / 2,
      },
      system,
    ),
    rest: restOf(overhang, side),
    lever_m: side.far_m,
  };
}

function judge(overhang: Overhang, each: Case): { readonly judged: Judged; readonly pull_N: number } {
  const { base, system } = overhang;
  const { over, rest, lever_m } = each;
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
    pull_N: pull?.value ?? 0,
  });
  if (!needs) return answer(rest.value, 'It stands by its own weight.');
  if (base.isHeld && base.anchorPull_N !== null) {
    const held = work(anchoredMoment, { C_rest: rest.value, T_a: base.anchorPull_N, e_a: lever }, system);
    return answer(held.value, `The fasteners into the floor take ${shown} along the far side of the base.`, [
      held.step,
    ]);
  }
  const hold = `hold the base to the floor with at least ${shown} along the side away from it`;
  if (base.isHeld)
    return answer(
      null,
      `By its weight alone it tips; ${hold}, and give what the fasteners there are allowed, "anchorPull".`,
    );
  if (base.weight_N === null)
    return answer(null, `The weight of the base is not given. With none at all, ${hold}.`);
  return answer(Math.max(rest.value, 0), `By its weight alone it tips: ${hold}.`);
}

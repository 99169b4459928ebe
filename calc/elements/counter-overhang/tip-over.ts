import type { Step } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import { clipped, hullOf, measured, type Point } from './hull.ts';
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
 * Whether a base that stands on the floor tips about any line between two of the outermost feet, legs that stand on the
 * floor among them: people where they turn it most, and a push at the top.
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

/** A line the counter could tip over, with all that turns it and holds it. */
interface Side {
  readonly name: string;
  /** How far outside the line a place is; inside it is less than nothing. */
  readonly lever: (place: Point) => number;
  readonly outside: Part;
  readonly inside: Part;
  readonly baseLever_m: number;
  /** From the line to the far side of the base. */
  readonly far_m: number;
}

/** A part of the top: its share of the whole, its area, and how far its middle is from the line. */
interface Part {
  readonly share: number;
  readonly area_m2: number;
  readonly lever_m: number;
}

function sidesOf({ top, base, props }: Overhang): Side[] {
  const { length_m, depth_m } = top;
  const whole: Point[] = [
    [0, 0],
    [length_m, 0],
    [length_m, depth_m],
    [0, depth_m],
  ];
  const corners: Point[] = [
    [base.from_m, base.back_m],
    [base.to_m, base.back_m],
    [base.to_m, base.foot_m],
    [base.from_m, base.foot_m],
  ];
  const legs = props.flatMap((prop): Point[] => (prop.kind === 'leg' ? [[prop.at, prop.to]] : []));
  const feet = hullOf([...corners, ...legs]);
  const weightAt: Point = [(base.from_m + base.to_m) / 2, base.weightAt_m];
  return feet.map((from, index): Side => {
    const to = feet[(index + 1) % feet.length] ?? from;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const normal: Point = [(to[1] - from[1]) / length, (from[0] - to[0]) / length];
    const lever = ([x, y]: Point): number => (x - from[0]) * normal[0] + (y - from[1]) * normal[1];
    const part = (sign: 1 | -1): Part => {
      const { area_m2, lever_m } = measured(
        clipped(whole, (place) => sign * lever(place)),
        (place) => sign * lever(place),
      );
      return { area_m2, lever_m, share: area_m2 / (length_m * depth_m) };
    };
    return {
      name: sideName(normal),
      lever,
      outside: part(1),
      inside: part(-1),
      baseLever_m: -lever(weightAt),
      far_m: Math.max(...corners.map((corner) => -lever(corner))),
    };
  });
}

/** Which way a line faces; one between a leg and a corner of the base faces two ways. */
function sideName([x, y]: Point): string {
  const names = [y > 0.1 ? 'stool' : y < -0.1 ? 'back' : '', x > 0.1 ? 'right' : x < -0.1 ? 'left' : ''];
  return names.filter((name) => name !== '').join(' and ');
}

function restOf({ top, base, system }: Overhang, { inside, baseLever_m }: Side) {
  const D_r = top.weight_N * inside.share;
  return work(
    restoringMoment,
    { D_b: base.weight_N ?? 0, e_b: baseLever_m, D_r, e_r: inside.lever_m },
    system,
  );
}

/** People where they turn the counter most over a line: how many, and how far outside it each is in the middle. */
function peopleOver({ top, person }: Overhang, lever: Side['lever']): { count: number; lever_m: number } {
  if (person === null) return { count: 0, lever_m: 0 };
  const half = person.patch_m / 2;
  const { length_m, depth_m } = top;
  if (person.at_m !== null) return { count: 1, lever_m: Math.max(0, lever([person.at_m, depth_m - half])) };
  const [near, farX, farY] = [half, length_m - half, depth_m - half];
  const edges: readonly (readonly [Point, Point])[] = [
    [
      [near, farY],
      [farX, farY],
    ],
    [
      [near, near],
      [farX, near],
    ],
    [
      [near, near],
      [near, farY],
    ],
    [
      [farX, near],
      [farX, farY],
    ],
  ];
  const stands = edges.flatMap(([a, b]) =>
    [
      [a, b],
      [b, a],
    ].map(([end = a, other = b]) => {
      const span = Math.hypot(other[0] - end[0], other[1] - end[1]);
      const isPair = span + person.patch_m >= 2 * stoolSpacing_m;
      const step = stoolSpacing_m / Math.max(span, 1e-9);
      const second: Point = [end[0] + step * (other[0] - end[0]), end[1] + step * (other[1] - end[1])];
      const levers = [lever(end), ...(isPair ? [lever(second)] : [])].filter((each) => each > 0);
      const sum = levers.reduce((total, each) => total + each, 0);
      return { count: levers.length, lever_m: levers.length === 0 ? 0 : sum / levers.length };
    }),
  );
  return stands.reduce((a, b) => (b.count * b.lever_m > a.count * a.lever_m ? b : a), {
    count: 0,
    lever_m: 0,
  });
}

function peopleCase(overhang: Overhang, side: Side): Case {
  const { top, serving, person, system } = overhang;
  const { outside } = side;
  const people = peopleOver(overhang, side.lever);
  return {
    id: 'tip-over',
    title: 'Tipping of the base',
    where: `about its ${side.name} side, people where they turn it most`,
    combination: '0.6 D holding, D + serving + people turning',
    over: work(
      overturningMoment,
      {
        D_f: top.weight_N * outside.share,
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
        D_f: top.weight_N * side.outside.share,
        e_f: side.outside.lever_m,
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

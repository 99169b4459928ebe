import type { FixingResult, Table } from '../../../../shared/check-result.ts';
import { quantity, show, showUsed, type Unit } from '../../../../shared/quantity/index.ts';
import { fixingCheckOf, ratioOf, screwMetalCheck, toeBearingCheck } from '../../fixing/fixing-checks.ts';
import type { Fixing, FixingAnswer, FixingLoad } from '../../fixing/fixing.ts';
import { readFixing } from '../../fixing/read-fixing.ts';
import { capacityOf, solveFixing, type Capacity } from '../../fixing/solve.ts';
import { studBending } from '../../fixing/stud-bending.ts';
import { needsStuds, nearestStud, studLines, type StudMiss } from '../../fixing/studs.ts';
import { toeOf, type Toe } from '../../fixing/toe.ts';
import type { Judged } from '../../judged.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Context } from '../context.ts';
import { atBracket, largestCouple, largestReaction, leverFromWall } from './reactions.ts';

/** One bracket on the wall, worked out for the combination that asks most of it. */
interface Held {
  readonly index: number;
  readonly load: FixingLoad;
  readonly combination: string;
  readonly toe: Toe;
  readonly answer: FixingAnswer;
  readonly stud: StudMiss;
}

/** Everything the wall has to say: checks, a row for each bracket, and what was assumed. */
export interface WallAnswer {
  readonly judged: readonly Judged[];
  readonly fixings: readonly FixingResult[];
  readonly tables: readonly Table[];
  readonly assumptions: readonly string[];
}

/** The fixing of every bracket into the wall. */
export function wallAnswer(context: Context): WallAnswer {
  const { shelf } = context;
  const { brackets, wall, conditions } = shelf.document;
  const { fixing, assumptions } = readFixing(brackets, wall, conditions, shelf.system);
  if (fixing === null) return { judged: [notGiven(context)], fixings: [], tables: [], assumptions: [] };
  const held = holdAll(context, fixing);
  const [first, ...rest] = held.map((each) => ({
    each,
    ...fixingCheckOf(fixing, each.answer, placeOf(context, each)),
  }));
  if (first === undefined) return { judged: [notGiven(context)], fixings: [], tables: [], assumptions };
  const worst = worstCheck([first, ...rest]);
  const place = placeOf(context, worst.each);
  const stud = studBending(fixing, wall, worst.each.load, place);
  return {
    judged: [
      ...onStud(context, held),
      { check: worst.check, steps: worst.steps },
      ...screwMetalCheck(fixing, worst.each.answer, place),
      ...toeBearingCheck(fixing, worst.each.toe, place),
      ...(stud === null ? [] : [stud.judged]),
    ],
    fixings: held.map((each) => resultOf(each, shelf.system)),
    tables: [tableOf(held, shelf.system)],
    assumptions: [...assumptions, ...(stud === null ? [] : stud.assumptions)],
  };
}

function placeOf({ shelf }: Context, { index, combination }: Held) {
  return { where: atBracket(shelf, index), combination };
}

/** Each bracket in the combination that asks most: all capacities grow with C_D, so loads are compared over it. */
function holdAll(context: Context, fixing: Fixing): Held[] {
  const { shelf, situations } = context;
  const { wall, brackets } = shelf.document;
  const lines = studLines(wall, shelf.length_m);
  const lever = leverFromWall(shelf);
  const across_m = fixing.perHeight > 1 ? (brackets.screws?.across ?? fixing.plate.width_m / 2) : 0;
  const capacities = new Map<number, Capacity>();
  const capacityFor = (C_D: number): Capacity => {
    const known = capacities.get(C_D) ?? capacityOf(fixing, C_D);
    capacities.set(C_D, known);
    return known;
  };
  return shelf.positions_m.map((at_m, index) => {
    const loads = situations.map(({ solved, factor, forces, combination }) => ({
      combination: combination.name,
      load: {
        shear_N: Math.max(forces.reactionMax_N[index] ?? 0, -(forces.reactionMin_N[index] ?? 0)),
        pull_N: 0,
        couple_Nm: Math.max(0, largestCouple(solved.model, solved.lines, factor, index, lever)),
        duration: combination.duration,
        C_D: shelf.code.connectionDuration(combination.duration),
      },
    }));
    const asked = loads.filter(
      ({ load }) => !loads.some((other) => other.load !== load && dominates(other.load, load)),
    );
    const answers = (asked.length > 0 ? asked : loads).map(({ load, combination }): Held => {
      const toe = toeOf(fixing, load.couple_Nm);
      const answer = solveFixing(fixing, load, capacityFor(load.C_D), toe);
      return { index, load, combination, toe, answer, stud: nearestStud(wall, lines, at_m, across_m) };
    });
    return answers.reduce((worst, each) =>
      (ratioOf(each.answer) ?? Infinity) > (ratioOf(worst.answer) ?? Infinity) ? each : worst,
    );
  });
}

/** Whether one load asks at least as much as another of every capacity, and more of one. */
function dominates(a: FixingLoad, b: FixingLoad): boolean {
  const [shear, couple] = [a.shear_N / a.C_D - b.shear_N / b.C_D, a.couple_Nm / a.C_D - b.couple_Nm / b.C_D];
  return shear >= 0 && couple >= 0 && shear + couple > 0;
}

/** Each bracket must meet a stud with its screws in the middle half of it. */
function onStud({ shelf }: Context, held: readonly Held[]): Judged[] {
  const { wall } = shelf.document;
  if (!needsStuds(wall)) return [];
  const judged = held.map(({ index, stud, combination }): Judged => {
    const { stud_m, miss_m, allowed_m } = stud;
    const nearest = stud_m === null ? '' : `The nearest stud is at ${show(stud_m, 'm', shelf.system)}.`;
    const parts = {
      id: 'bracket-on-stud',
      title: 'Bracket on a stud: distance from its centre line',
      unit: 'm',
      demand: miss_m,
      capacity: miss_m === null ? null : allowed_m,
      clause: 'edge distance, NDS 12.5.1; the middle half of the stud (common practice, no source)',
      where: atBracket(shelf, index),
      combination,
      note: miss_m === null ? 'Cannot say: the places of the studs are not given.' : nearest,
    } as const;
    return { check: makeCheck(parts, shelf.system), steps: [] };
  });
  const [first, ...rest] = judged;
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

function notGiven({ shelf, service }: Context): Judged {
  const { wall, brackets } = shelf.document;
  const heaviest = largestReaction(service);
  const missing = [
    ...(wall === undefined ? ['what the wall is made of'] : []),
    ...(brackets.plate === undefined ? ['the size of the bracket plate'] : []),
    ...(brackets.screws === undefined ? ['the screws'] : []),
  ];
  const parts = {
    id: 'fixing',
    title: 'Screws into the wall',
    unit: 'N',
    demand: heaviest.weighted,
    capacity: null,
    clause: 'NDS chapter 12',
    where: atBracket(shelf, heaviest.index),
    combination: heaviest.situation.combination.name,
    note: `Not given: ${missing.join(', ')}. The fixing into the wall is not checked.`,
  } as const;
  return { check: makeCheck(parts, shelf.system), steps: [] };
}

function resultOf({ index, stud, answer, load }: Held, system: Context['shelf']['system']): FixingResult {
  const q = (value: number, unit: Unit) => quantity(value, unit, system);
  const maybe = (value: number | null, unit: Unit) => (value === null ? null : q(value, unit));
  return {
    bracket: index + 1,
    stud: maybe(stud.stud_m, 'm'),
    miss: maybe(stud.miss_m, 'm'),
    tension: q(answer.tension_N, 'N'),
    shear: q(answer.shear_N, 'N'),
    couple: q(load.couple_Nm, 'N.m'),
    penetration: q(answer.penetration_m, 'm'),
    withdrawalCapacity: maybe(answer.withdrawal_N, 'N'),
    lateralCapacity: maybe(answer.lateral_N, 'N'),
    mode: answer.mode,
    ...answer.ratios,
    ratio: ratioOf(answer),
  };
}

function tableOf(held: readonly Held[], system: Context['shelf']['system']): Table {
  return {
    title: 'Fixing of every bracket; pull and shear are those of its highest screw',
    head: [
      'Bracket',
      'Stud',
      'Misses by',
      'Couple',
      'Pull',
      'Shear',
      'Withdrawal',
      'Lateral',
      'Mode',
      'Used',
    ],
    rows: held.map((each) => {
      const row = resultOf(each, system);
      return [
        String(row.bracket),
        row.stud?.shown ?? '–',
        row.miss?.shown ?? '–',
        row.couple.shown,
        row.tension.shown,
        row.shear.shown,
        row.withdrawalCapacity?.shown ?? '–',
        row.lateralCapacity?.shown ?? '–',
        row.mode ?? '–',
        row.ratio === null ? '–' : showUsed(row.ratio),
      ];
    }),
  };
}

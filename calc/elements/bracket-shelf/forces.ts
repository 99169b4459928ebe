import type { Combination } from '../../codes/design-code.ts';
import { span } from '../../mechanics/beam-model.ts';
import { largestSum } from '../../mechanics/envelope.ts';
import { momentUnderLoad, shearAtEnds, type BayInfluence } from '../../mechanics/influence.ts';
import {
  addScaled,
  boundsOf,
  largest,
  scaled,
  shifted,
  type Polynomial,
} from '../../mechanics/polynomial.ts';
import type { Model, UnitCase } from './model.ts';
import type { Action } from './shelf.ts';

/** A largest value and where along the board it is. */
export interface Peak {
  readonly value: number;
  readonly at_m: number;
}

/** What one combination does to the board and its brackets. Reactions are up on the board, moments sag positive. */
export interface Forces {
  readonly reactionMax_N: readonly number[];
  readonly reactionMin_N: readonly number[];
  readonly sagging: Peak;
  readonly hogging: Peak;
  readonly shear: Peak;
}

/** A share of each action: 0 where a combination leaves it out. */
export type FactorOf = (action: Action | null) => number;

/** The factors of a combination. */
export function factorsOf(combination: Combination): FactorOf {
  return (action) => (action === null ? combination.selfWeight : combination.factor(action.duration));
}

/**
 * The extremes of one effect that is a single number in each case.
 *
 * @param ofCase its value in a unit case
 * @param roamingValue its largest value (or smallest, for sense −1) under a unit roaming load of each action; 0 or worse
 */
export function extremeOf(
  model: Model,
  factor: FactorOf,
  sense: 1 | -1,
  ofCase: (unit: UnitCase) => number,
  roamingValue: (action: Action) => number,
): number {
  let total = 0;
  for (const unit of model.cases) {
    const value = factor(unit.action) * ofCase(unit);
    if (unit.always || value * sense > 0) total += value;
  }
  let worst = 0;
  for (const { action, load_N } of model.roaming) {
    const value = factor(action) * load_N * roamingValue(action);
    if (value * sense > worst * sense) worst = value;
  }
  return total + worst;
}

/** Largest (sense 1) or smallest value of an influence line over the whole board; absent counts as 0. */
function influenceExtreme(
  influence: readonly BayInfluence[],
  line: (bay: BayInfluence) => Polynomial,
  sense: 1 | -1,
): number {
  let worst = 0;
  for (const bay of influence) {
    const length = bay.bay.to_m - bay.bay.from_m;
    const polynomial = line(bay);
    const { least, most } = boundsOf(polynomial, 0, length);
    if ((sense === 1 ? most : -least) <= worst) continue;
    const turned = sense === 1 ? polynomial : scaled(polynomial, -1);
    worst = Math.max(worst, largest(turned, 0, length).value);
  }
  return worst * sense;
}

/** Extremes of the influence lines of a model, which are the same for every combination. */
export interface Lines {
  readonly reactionMax: readonly number[];
  readonly reactionMin: readonly number[];
  readonly momentMin: readonly number[];
  readonly momentMax: readonly number[];
  /** Left and right of each support. */
  readonly shear: readonly {
    readonly left: readonly [number, number];
    readonly right: readonly [number, number];
  }[];
}

/** Works out the influence extremes once for all combinations. */
export function linesOf(model: Model): Lines {
  const { influence, prepared } = model;
  const supports = prepared.beam.supports.map((_, index) => index);
  const last = supports.length - 1;
  const both = (line: (bay: BayInfluence) => Polynomial): [number, number] => [
    influenceExtreme(influence, line, 1),
    influenceExtreme(influence, line, -1),
  ];
  const overhangs = (kind: 'left-overhang' | 'right-overhang'): boolean =>
    influence.some(({ bay }) => bay.kind === kind);
  return {
    reactionMax: supports.map((i) => influenceExtreme(influence, (bay) => bay.reactions[i] ?? [0], 1)),
    reactionMin: supports.map((i) => influenceExtreme(influence, (bay) => bay.reactions[i] ?? [0], -1)),
    momentMax: supports.map((i) => influenceExtreme(influence, (bay) => bay.moments[i] ?? [0], 1)),
    momentMin: supports.map((i) => influenceExtreme(influence, (bay) => bay.moments[i] ?? [0], -1)),
    shear: supports.map((i) => ({
      left:
        i === 0
          ? [0, overhangs('left-overhang') ? -1 : 0]
          : both((bay) => shearAtEnds(bay, i - 1, span(prepared.beam, i - 1)).right),
      right:
        i === last
          ? [overhangs('right-overhang') ? 1 : 0, 0]
          : both((bay) => shearAtEnds(bay, i, span(prepared.beam, i)).left),
    })),
  };
}

/** Forces of one combination. */
export function forcesOf(model: Model, lines: Lines, factor: FactorOf): Forces {
  const { supports } = model.prepared.beam;
  const reaction = (i: number, sense: 1 | -1): number =>
    extremeOf(
      model,
      factor,
      sense,
      ({ field }) => field.reactions_N[i] ?? 0,
      () => (sense === 1 ? lines.reactionMax : lines.reactionMin)[i] ?? 0,
    );
  let shear: Peak = { value: 0, at_m: 0 };
  supports.forEach(({ at_m }, i) => {
    for (const side of ['left', 'right'] as const) {
      const value = shearBeside(model, lines, factor, i, side);
      if (value > shear.value) shear = { value, at_m };
    }
  });
  return {
    reactionMax_N: supports.map((_, i) => reaction(i, 1)),
    reactionMin_N: supports.map((_, i) => reaction(i, -1)),
    sagging: largestSagging(model, lines, factor),
    hogging: largestHogging(model, lines, factor),
    shear,
  };
}

/** The largest hogging moment over any support. */
export function largestHogging(model: Model, lines: Lines, factor: FactorOf): Peak {
  const { supports } = model.prepared.beam;
  let hogging: Peak = { value: 0, at_m: supports[0]?.at_m ?? 0 };
  supports.forEach(({ at_m }, i) => {
    const moment = hoggingOver(model, lines, factor, i);
    if (moment < hogging.value) hogging = { value: moment, at_m };
  });
  return hogging;
}

/** The least moment over a support: hogging is negative. */
export function hoggingOver(model: Model, lines: Lines, factor: FactorOf, support: number): number {
  return extremeOf(
    model,
    factor,
    -1,
    ({ field }) => field.moments_Nm[support] ?? 0,
    () => lines.momentMin[support] ?? 0,
  );
}

/** The largest shear beside a support, on one side of it, up or down. */
export function shearBeside(
  model: Model,
  lines: Lines,
  factor: FactorOf,
  support: number,
  side: 'left' | 'right',
): number {
  const [most, least] = lines.shear[support]?.[side] ?? [0, 0];
  const extreme = (sense: 1 | -1): number =>
    extremeOf(
      model,
      factor,
      sense,
      (unit) => (side === 'left' ? unit.shearLeft : unit.shearRight)[support] ?? 0,
      () => (sense === 1 ? most : least),
    );
  return Math.max(Math.abs(extreme(1)), Math.abs(extreme(-1)));
}

/**
 * The largest sagging moment in any bay, or in those of one length, with the roaming load standing over it or, where that
 * is worse, in another bay.
 */
export function largestSagging(model: Model, lines: Lines, factor: FactorOf, length_m?: number): Peak {
  const { bays, cases, influence, prepared } = model;
  const shares = cases.map(({ action }) => factor(action));
  const roaming_N = Math.max(0, ...model.roaming.map(({ action, load_N }) => load_N * factor(action)));
  let worst: Peak = { value: 0, at_m: prepared.beam.supports[0]?.at_m ?? 0 };
  bays.forEach((bay, index) => {
    if (bay.kind !== 'span') return;
    if (length_m !== undefined && Math.abs(bay.to_m - bay.from_m - length_m) > sameLength_m) return;
    const line = influence[index];
    const moving = line === undefined || roaming_N === 0 ? [] : movingMoments(line, lines);
    for (let i = bay.first; i < bay.end; i++) {
      const from = prepared.grid_m[i] ?? 0;
      const width = (prepared.grid_m[i + 1] ?? 0) - from;
      const always = [0, 0, 0];
      const free: Polynomial[] = [];
      cases.forEach((unit, k) => {
        const share = shares[k] ?? 0;
        const moment = unit.moment[i];
        if (share === 0 || moment === undefined) return;
        if (unit.always) addScaled(always, moment, share);
        else free.push(share === 1 ? moment : scaled(moment, share));
      });
      const extra = moving.map((moment) => scaled(shifted(moment, from - bay.from_m), roaming_N));
      for (const each of extra.length === 0 ? [[0]] : extra) {
        const peak = largestSum(always, [...free, each], 0, width, worst.value);
        if (peak.value > worst.value) worst = { value: peak.value, at_m: from + peak.at };
      }
    }
  });
  return worst;
}

/** Bays that differ by less are of one length. */
export const sameLength_m = 1e-9;

/** Moment in a bay from a unit load standing over the place, and the most it could be from a load in another bay. */
export function movingMoments(line: BayInfluence, lines: Lines): Polynomial[] {
  const { bay } = line;
  const left = lines.momentMax[bay.leftSupport] ?? 0;
  const right = lines.momentMax[bay.leftSupport + 1] ?? 0;
  const under = momentUnderLoad(line);
  return left === 0 && right === 0 ? [under] : [under, [left, (right - left) / (bay.to_m - bay.from_m)]];
}

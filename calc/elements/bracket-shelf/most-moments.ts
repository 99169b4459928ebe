import { momentUnderLoad } from '../../mechanics/influence.ts';
import { boundsOf } from '../../mechanics/polynomial.ts';
import type { Solved } from './context.ts';
import type { FactorOf } from './forces.ts';
import type { UnitCase } from './model.ts';
import type { Action } from './shelf.ts';

/** A moment that is surely not exceeded, over the brackets or between them, N·m for factors of no unit. */
export type MostOf = (factor: FactorOf, isOverBracket: boolean) => number;

/** Bounds of the moments: the most of every load, as if all met at one place and nothing relieved another. */
export function mostMoments({ model, lines }: Solved): MostOf {
  const { cases, influence, prepared, roaming } = model;
  const { grid_m, beam } = prepared;
  const over = largestOf(
    beam.supports.map((_, i) => sumsOf(cases, ({ field }) => -(field.moments_Nm[i] ?? 0))),
  );
  const between = largestOf(
    Array.from(grid_m.slice(1), (right, i) => {
      const width = right - (grid_m[i] ?? 0);
      return sumsOf(cases, ({ moment }) => boundsOf(moment[i] ?? [0], 0, width).most);
    }),
  );
  const roamingOver = Math.max(0, ...lines.momentMin.map((moment) => -moment));
  const roamingBetween = Math.max(
    0,
    ...lines.momentMax,
    ...influence.map((line) => boundsOf(momentUnderLoad(line), 0, line.bay.to_m - line.bay.from_m).most),
  );
  return (factor, isOverBracket) => {
    let most = 0;
    for (const [action, moment] of isOverBracket ? over : between) most += factor(action) * moment;
    const unit = isOverBracket ? roamingOver : roamingBetween;
    return most + unit * Math.max(0, ...roaming.map(({ action, load_N }) => load_N * factor(action)));
  };
}

type Moments = ReadonlyMap<Action | null, number>;

/** What each action does at one place, its parts that help alone. */
function sumsOf(cases: readonly UnitCase[], at: (unit: UnitCase) => number): Moments {
  const sums = new Map<Action | null, number>();
  for (const unit of cases) sums.set(unit.action, (sums.get(unit.action) ?? 0) + Math.max(0, at(unit)));
  return sums;
}

/** Of each action the most of several places. */
function largestOf(places: readonly Moments[]): Moments {
  const largest = new Map<Action | null, number>();
  for (const place of places) {
    for (const [action, moment] of place) largest.set(action, Math.max(largest.get(action) ?? 0, moment));
  }
  return largest;
}

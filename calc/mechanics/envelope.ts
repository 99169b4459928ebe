import {
  addScaled,
  boundsOf,
  largest,
  rootsBetween,
  valueAt,
  type Extreme,
  type Polynomial,
} from './polynomial.ts';

/** A sum of things that may each be there or not, sorted out for one stretch: what surely helps is already added. */
export interface Sorted {
  readonly base: Polynomial;
  /** Those that help in one place and not in another. */
  readonly turning: readonly Polynomial[];
  /** No more than this can come of those. */
  readonly most: number;
}

/** Sorts out what is always there, what surely helps on `[from, to]`, what surely doesn't, and what changes. */
export function sortedSum(always: Polynomial, free: readonly Polynomial[], from: number, to: number): Sorted {
  const base = always.slice();
  const turning: Polynomial[] = [];
  let most = 0;
  for (const polynomial of free) {
    const bounds = boundsOf(polynomial, from, to);
    if (bounds.least >= 0) addScaled(base, polynomial, 1);
    else if (bounds.most > 0) {
      turning.push(polynomial);
      most += bounds.most;
    }
  }
  return { base, turning, most };
}

/**
 * The largest value on `[from, to]` of something that is always there plus things that may each be there or not.
 * Wherever one of them helps it is left out; between the places where that changes, the sum is one polynomial and its
 * turning points are found exactly.
 *
 * @param floor a value that must be beaten: where the sum certainly can't, the answer is some value that does not either
 */
export function largestSum(
  always: Polynomial,
  free: readonly Polynomial[],
  from: number,
  to: number,
  floor = -Infinity,
): Extreme {
  const { base, turning, most } = sortedSum(always, free, from, to);
  if (floor > -Infinity && most + boundsOf(base, from, to).most <= floor)
    return { at: from, value: -Infinity };
  if (turning.length === 0) return largest(base, from, to, floor);
  const cuts: number[] = [];
  for (const polynomial of turning) cuts.push(...rootsBetween(polynomial, from, to));
  cuts.sort((a, b) => a - b).push(to);
  let best: Extreme = { at: from, value: -Infinity };
  let left = from;
  for (const right of cuts) {
    const middle = (left + right) / 2;
    const sum = base.slice();
    for (const polynomial of turning) if (valueAt(polynomial, middle) > 0) addScaled(sum, polynomial, 1);
    const peak = largest(sum, left, right, Math.max(best.value, floor));
    if (peak.value > best.value) best = peak;
    left = right;
  }
  return best;
}

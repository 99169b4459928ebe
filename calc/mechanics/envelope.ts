import { addScaled, derivative, rootsBetween, valueAt, type Extreme, type Polynomial } from './polynomial.ts';

/**
 * The largest value on `[from, to]` of something that is always there plus things that may each be there or not.
 * Wherever one of them helps it is left out; between the places where that changes, the sum is one polynomial and its
 * turning points are found exactly.
 */
export function largestSum(
  always: Polynomial,
  free: readonly Polynomial[],
  from: number,
  to: number,
): Extreme {
  const cuts: number[] = [];
  const constant: Polynomial[] = [];
  const turning: Polynomial[] = [];
  for (const polynomial of free) {
    const roots = rootsBetween(polynomial, from, to);
    if (roots.length > 0) {
      cuts.push(...roots);
      turning.push(polynomial);
    } else if (valueAt(polynomial, (from + to) / 2) > 0) {
      constant.push(polynomial);
    }
  }
  const base = Array.from(always);
  for (const polynomial of constant) addScaled(base, polynomial, 1);
  cuts.sort((a, b) => a - b);
  let best: Extreme = { at: from, value: -Infinity };
  let left = from;
  for (const right of [...cuts, to]) {
    const middle = (left + right) / 2;
    const sum = turning.length === 0 ? base : base.slice();
    for (const polynomial of turning) if (valueAt(polynomial, middle) > 0) addScaled(sum, polynomial, 1);
    for (const at of [left, ...rootsBetween(derivative(sum), left, right), right]) {
      const value = valueAt(sum, at);
      if (value > best.value) best = { at, value };
    }
    left = right;
  }
  return best;
}

/** A polynomial of s written in t, where s = t + offset. */
export function shifted(polynomial: Polynomial, offset: number): number[] {
  const result: number[] = [];
  for (let power = polynomial.length - 1; power >= 0; power--) {
    for (let k = result.length - 1; k >= 0; k--) {
      result[k + 1] = (result[k + 1] ?? 0) + (result[k] ?? 0);
      result[k] = (result[k] ?? 0) * offset;
    }
    result[0] = (result[0] ?? 0) + (polynomial[power] ?? 0);
  }
  return result;
}

import { together, type SymmetricBand } from './band.ts';

/** Solves in place for one right-hand side. */
export function solveBand(factor: SymmetricBand, right: Float64Array): Float64Array {
  solveBandForAll(factor, [right]);
  return right;
}

/** Solves in place for many right-hand sides, four at a time. */
export function solveBandForAll(factor: SymmetricBand, rights: Float64Array[]): Float64Array[] {
  const { size } = factor;
  const sides = new Float64Array(together * size);
  for (let k = 0; k < rights.length; k += together) {
    const some = rights.slice(k, k + together);
    sides.fill(0);
    some.forEach((right, side) => {
      for (let i = 0; i < size; i++) sides[together * i + side] = right[i] ?? 0;
    });
    solveTogether(factor, sides);
    some.forEach((right, side) => {
      for (let i = 0; i < size; i++) right[i] = sides[together * i + side] ?? 0;
    });
  }
  return rights;
}

/** Solves in place for four right-hand sides whose numbers lie side by side, row by row. */
export function solveTogether(factor: SymmetricBand, sides: Float64Array): Float64Array {
  const { size } = factor;
  let first = 0;
  while (first < sides.length && sides[first] === 0) first++;
  first = Math.floor(first / together);
  solveForward(factor, sides.subarray(together * first), first, size);
  solveBackward(factor, sides);
  return sides;
}

/**
 * Solves some rows of the lower triangle for four right-hand sides, two rows at a time: each number on the right is
 * fetched once for the two.
 *
 * @param sides in place: the four numbers of row `from`, then those of the next row, and so on; zero lies above them
 * @param from the first row
 * @param to the row after the last
 */
export function solveForward(factor: SymmetricBand, sides: Float64Array, from: number, to: number): void {
  const isOdd = (to - from) % 2 === 1;
  if (isOdd) divideRow(factor, sides, from, 0);
  for (let i = isOdd ? from + 1 : from; i < to; i += 2) forwardTwo(factor, sides, i, from);
}

/** Solves the upper triangle, from the last row up. */
function solveBackward(factor: SymmetricBand, sides: Float64Array): void {
  const { size } = factor;
  for (let i = size - 1; i > 0; i -= 2) backwardTwo(factor, sides, i);
  if (size % 2 === 1) divideRow(factor, sides, 0, 0);
}

function divideRow({ halfWidth, rows }: SymmetricBand, sides: Float64Array, i: number, at: number): void {
  const pivot = rows[i * (halfWidth + 1) + halfWidth] ?? 1;
  for (let side = 0; side < together; side++) sides[at + side] = (sides[at + side] ?? 0) / pivot;
}

/** Row i and the next, from what was found above them. */
function forwardTwo({ halfWidth, rows }: SymmetricBand, sides: Float64Array, i: number, from: number): void {
  const here = together * (i - from);
  let p = sides[here] ?? 0;
  let q = sides[here + 1] ?? 0;
  let r = sides[here + 2] ?? 0;
  let s = sides[here + 3] ?? 0;
  let t = sides[here + 4] ?? 0;
  let u = sides[here + 5] ?? 0;
  let v = sides[here + 6] ?? 0;
  let w = sides[here + 7] ?? 0;
  const left = Math.max(from, i - halfWidth);
  let upper = i * (halfWidth + 1) + halfWidth - i + left;
  let at = together * (left - from);
  if (left === i - halfWidth) {
    // The row below does not reach so far.
    const entry = rows[upper] ?? 0;
    p -= entry * (sides[at] ?? 0);
    q -= entry * (sides[at + 1] ?? 0);
    r -= entry * (sides[at + 2] ?? 0);
    s -= entry * (sides[at + 3] ?? 0);
    upper++;
    at += together;
  }
  for (; at < here; at += together, upper++) {
    const one = rows[upper] ?? 0;
    const two = rows[upper + halfWidth] ?? 0;
    const a = sides[at] ?? 0;
    const b = sides[at + 1] ?? 0;
    const c = sides[at + 2] ?? 0;
    const d = sides[at + 3] ?? 0;
    p -= one * a;
    q -= one * b;
    r -= one * c;
    s -= one * d;
    t -= two * a;
    u -= two * b;
    v -= two * c;
    w -= two * d;
  }
  const pivot = rows[upper] ?? 1;
  const link = rows[upper + halfWidth] ?? 0;
  const next = rows[upper + halfWidth + 1] ?? 1;
  p /= pivot;
  q /= pivot;
  r /= pivot;
  s /= pivot;
  sides[here] = p;
  sides[here + 1] = q;
  sides[here + 2] = r;
  sides[here + 3] = s;
  sides[here + 4] = (t - link * p) / next;
  sides[here + 5] = (u - link * q) / next;
  sides[here + 6] = (v - link * r) / next;
  sides[here + 7] = (w - link * s) / next;
}

/** Row i and the one above it, and what they leave of those above both. */
function backwardTwo({ halfWidth, rows }: SymmetricBand, sides: Float64Array, i: number): void {
  const here = together * (i - 1);
  const pivot = i * (halfWidth + 1) - 1;
  const next = rows[pivot + halfWidth + 1] ?? 1;
  const link = rows[pivot + halfWidth] ?? 0;
  const t = (sides[here + 4] ?? 0) / next;
  const u = (sides[here + 5] ?? 0) / next;
  const v = (sides[here + 6] ?? 0) / next;
  const w = (sides[here + 7] ?? 0) / next;
  const above = rows[pivot] ?? 1;
  const p = ((sides[here] ?? 0) - link * t) / above;
  const q = ((sides[here + 1] ?? 0) - link * u) / above;
  const r = ((sides[here + 2] ?? 0) - link * v) / above;
  const s = ((sides[here + 3] ?? 0) - link * w) / above;
  sides[here] = p;
  sides[here + 1] = q;
  sides[here + 2] = r;
  sides[here + 3] = s;
  sides[here + 4] = t;
  sides[here + 5] = u;
  sides[here + 6] = v;
  sides[here + 7] = w;
  const left = Math.max(0, i - 1 - halfWidth);
  let upper = pivot - (i - 1 - left);
  let at = together * left;
  if (left === i - 1 - halfWidth) {
    const entry = rows[upper] ?? 0;
    sides[at] = (sides[at] ?? 0) - entry * p;
    sides[at + 1] = (sides[at + 1] ?? 0) - entry * q;
    sides[at + 2] = (sides[at + 2] ?? 0) - entry * r;
    sides[at + 3] = (sides[at + 3] ?? 0) - entry * s;
    upper++;
    at += together;
  }
  for (; at < here; at += together, upper++) {
    const one = rows[upper] ?? 0;
    const two = rows[upper + halfWidth] ?? 0;
    sides[at] = (sides[at] ?? 0) - (one * p + two * t);
    sides[at + 1] = (sides[at + 1] ?? 0) - (one * q + two * u);
    sides[at + 2] = (sides[at + 2] ?? 0) - (one * r + two * v);
    sides[at + 3] = (sides[at + 3] ?? 0) - (one * s + two * w);
  }
}

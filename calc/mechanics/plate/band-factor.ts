import { together, type SymmetricBand } from './band.ts';
import { solveForward } from './band-solve.ts';

/**
 * Cholesky factor in place, LLᵀ, four rows at a time: left of their own square, rows of the factor are what solves the rows
 * above for the rows of the matrix.
 *
 * @throws RangeError where a pivot is not positive: the matrix is singular
 */
export function factorBand(band: SymmetricBand): SymmetricBand {
  const { size, halfWidth } = band;
  const sides = new Float64Array(together * (halfWidth + together));
  for (let i = 0; i < size; i += together) {
    const from = Math.max(0, i - halfWidth);
    const count = Math.min(together, size - i);
    fetchRows(band, i, count, from, sides);
    solveForward(band, sides, from, i);
    putRows(band, i, count, from, sides);
    factorSquare(band, i, count, productsOf(sides, together * (i - from)));
  }
  return band;
}

/** Copies some rows, as far as row i is left of the diagonal, side by side; zero where a row does not reach. */
function fetchRows(
  { halfWidth, rows }: SymmetricBand,
  i: number,
  count: number,
  from: number,
  sides: Float64Array,
): void {
  sides.fill(0, 0, together * (i - from));
  for (let k = 0; k < count; k++) {
    const shift = (i + k) * halfWidth + halfWidth;
    for (let j = Math.max(from, i + k - halfWidth); j < i; j++)
      sides[together * (j - from) + k] = rows[shift + j] ?? 0;
  }
}

/** The way back of `fetchRows`. */
function putRows(
  { halfWidth, rows }: SymmetricBand,
  i: number,
  count: number,
  from: number,
  sides: Float64Array,
): void {
  for (let k = 0; k < count; k++) {
    const shift = (i + k) * halfWidth + halfWidth;
    for (let j = Math.max(from, i + k - halfWidth); j < i; j++)
      rows[shift + j] = sides[together * (j - from) + k] ?? 0;
  }
}

/** Inner products of four rows side by side, each with itself and those before it: lower triangle, row by row. */
function productsOf(sides: Float64Array, end: number): Float64Array {
  let aa = 0;
  let ba = 0;
  let bb = 0;
  let ca = 0;
  let cb = 0;
  let cc = 0;
  let da = 0;
  let db = 0;
  let dc = 0;
  let dd = 0;
  for (let at = 0; at < end; at += together) {
    const a = sides[at] ?? 0;
    const b = sides[at + 1] ?? 0;
    const c = sides[at + 2] ?? 0;
    const d = sides[at + 3] ?? 0;
    aa += a * a;
    ba += b * a;
    bb += b * b;
    ca += c * a;
    cb += c * b;
    cc += c * c;
    da += d * a;
    db += d * b;
    dc += d * c;
    dd += d * d;
  }
  return Float64Array.of(aa, ba, bb, ca, cb, cc, da, db, dc, dd);
}

/** Factors the square of some rows on the diagonal, once what lies left of it is taken off. */
function factorSquare(
  { halfWidth, rows }: SymmetricBand,
  i: number,
  count: number,
  products: Float64Array,
): void {
  let taken = 0;
  for (let row = i; row < i + count; row++) {
    const shift = row * halfWidth + halfWidth;
    const whole = rows[shift + row] ?? 0;
    for (let j = i; j <= row; j++, taken++) {
      const other = j * halfWidth + halfWidth;
      let sum = (rows[shift + j] ?? 0) - (products[taken] ?? 0);
      for (let k = i; k < j; k++) sum -= (rows[shift + k] ?? 0) * (rows[other + k] ?? 0);
      if (j < row) rows[shift + j] = sum / (rows[other + j] ?? 1);
      else if (sum > 1e-14 * whole) rows[shift + j] = Math.sqrt(sum);
      else throw new RangeError(`row ${row} of the plate's matrix is singular`);
    }
  }
}

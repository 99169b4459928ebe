/** A symmetric positive definite matrix by its band: row i holds columns i − halfWidth … i. */
export interface SymmetricBand {
  readonly size: number;
  readonly halfWidth: number;
  /** Row by row, `halfWidth + 1` numbers each, the diagonal last. */
  readonly rows: Float64Array;
}

export function emptyBand(size: number, halfWidth: number): SymmetricBand {
  return { size, halfWidth, rows: new Float64Array(size * (halfWidth + 1)) };
}

/** Adds to the entry in row i, column j; each pair is stored once, so give it with j ≤ i or j > i but not both. */
export function addToBand({ halfWidth, rows }: SymmetricBand, i: number, j: number, value: number): void {
  const [row, column] = i >= j ? [i, j] : [j, i];
  const at = row * (halfWidth + 1) + halfWidth + column - row;
  rows[at] = (rows[at] ?? 0) + value;
}

/**
 * Cholesky factor in place, LLᵀ, by rows: inner products of stretches that lie side by side in memory. What lies left
 * of the first entry of a row stays zero and is skipped.
 *
 * @throws RangeError where a pivot is not positive: the matrix is singular
 */
export function factorBand(band: SymmetricBand): SymmetricBand {
  const { size, halfWidth, rows } = band;
  const width = halfWidth + 1;
  const first = firstColumns(band);
  for (let i = 0; i < size; i++) {
    const start = first[i] ?? 0;
    const shift = i * width + halfWidth - i;
    const whole = rows[shift + i] ?? 0;
    let pivot = whole;
    for (let j = start; j < i; j++) {
      const other = j * width + halfWidth - j;
      const from = Math.max(start, first[j] ?? 0);
      const value =
        ((rows[shift + j] ?? 0) - product(rows, shift + from, other + from, j - from)) /
        (rows[other + j] ?? 1);
      rows[shift + j] = value;
      pivot -= value * value;
    }
    if (!(pivot > 1e-14 * whole)) throw new RangeError(`row ${i} of the plate's matrix is singular`);
    rows[shift + i] = Math.sqrt(pivot);
  }
  return band;
}

/** Solves in place for one right-hand side. */
export function solveBand({ size, halfWidth, rows }: SymmetricBand, right: Float64Array): Float64Array {
  const width = halfWidth + 1;
  let first = 0;
  while (first < size && right[first] === 0) first++;
  for (let i = first; i < size; i++) {
    const shift = i * width + halfWidth - i;
    const from = Math.max(first, i - halfWidth);
    right[i] =
      ((right[i] ?? 0) - product2(rows, shift + from, right, from, i - from)) / (rows[shift + i] ?? 1);
  }
  for (let i = size - 1; i >= 0; i--) {
    const shift = i * width + halfWidth - i;
    const value = (right[i] ?? 0) / (rows[shift + i] ?? 1);
    right[i] = value;
    for (let j = Math.max(0, i - halfWidth); j < i; j++)
      right[j] = (right[j] ?? 0) - (rows[shift + j] ?? 0) * value;
  }
  return right;
}

function firstColumns({ size, halfWidth, rows }: SymmetricBand): Int32Array {
  const first = new Int32Array(size);
  for (let i = 0; i < size; i++) {
    const shift = i * (halfWidth + 1) + halfWidth - i;
    let j = Math.max(0, i - halfWidth);
    while (j < i && rows[shift + j] === 0) j++;
    first[i] = j;
  }
  return first;
}

function product(rows: Float64Array, a: number, b: number, count: number): number {
  return product2(rows, a, rows, b, count);
}

/** Four sums side by side: the processor need not wait for one addition to begin the next. */
function product2(left: Float64Array, a: number, right: Float64Array, b: number, count: number): number {
  let [p, q, r, s] = [0, 0, 0, 0];
  let k = 0;
  for (; k + 3 < count; k += 4) {
    p += (left[a + k] ?? 0) * (right[b + k] ?? 0);
    q += (left[a + k + 1] ?? 0) * (right[b + k + 1] ?? 0);
    r += (left[a + k + 2] ?? 0) * (right[b + k + 2] ?? 0);
    s += (left[a + k + 3] ?? 0) * (right[b + k + 3] ?? 0);
  }
  for (; k < count; k++) p += (left[a + k] ?? 0) * (right[b + k] ?? 0);
  return p + q + (r + s);
}

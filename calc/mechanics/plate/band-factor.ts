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
 * Cholesky factor in place, LLᵀ, by rows: inner products of stretches that lie side by side in memory, with two rows above
 * at a time. What lies left of the first entry of a row stays zero and is skipped.
 *
 * @throws RangeError where a pivot is not positive: the matrix is singular
 */
export function factorBand(band: SymmetricBand): SymmetricBand {
  const { size, halfWidth, rows } = band;
  const width = halfWidth + 1;
  const first = firstColumns(band);
  const sums = new Float64Array(2);
  for (let i = 0; i < size; i++) {
    const start = first[i] ?? 0;
    const shift = i * width + halfWidth - i;
    const whole = rows[shift + i] ?? 0;
    let pivot = whole;
    for (let j = start; j < i; j += 2) {
      const one = j * width + halfWidth - j;
      const two = one + width - 1;
      const from = Math.max(start, Math.min(first[j] ?? 0, first[j + 1] ?? 0));
      twoProducts(rows, shift + from, one + from, two + from, j - from, sums);
      const value = ((rows[shift + j] ?? 0) - (sums[0] ?? 0)) / (rows[one + j] ?? 1);
      rows[shift + j] = value;
      pivot -= value * value;
      if (j + 1 === i) continue;
      const left = (rows[shift + j + 1] ?? 0) - (sums[1] ?? 0) - value * (rows[two + j] ?? 0);
      const next = left / (rows[two + j + 1] ?? 1);
      rows[shift + j + 1] = next;
      pivot -= next * next;
    }
    if (!(pivot > 1e-14 * whole)) throw new RangeError(`row ${i} of the plate's matrix is singular`);
    rows[shift + i] = Math.sqrt(pivot);
  }
  return band;
}

/** Inner products of one stretch with two others. */
function twoProducts(
  rows: Float64Array,
  a: number,
  b: number,
  c: number,
  count: number,
  sums: Float64Array,
): void {
  let [p, q, r, s] = [0, 0, 0, 0];
  let k = 0;
  for (; k + 1 < count; k += 2) {
    const [even, odd] = [rows[a + k] ?? 0, rows[a + k + 1] ?? 0];
    p += even * (rows[b + k] ?? 0);
    q += odd * (rows[b + k + 1] ?? 0);
    r += even * (rows[c + k] ?? 0);
    s += odd * (rows[c + k + 1] ?? 0);
  }
  if (k < count) {
    const last = rows[a + k] ?? 0;
    p += last * (rows[b + k] ?? 0);
    r += last * (rows[c + k] ?? 0);
  }
  sums[0] = p + q;
  sums[1] = r + s;
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
      ((right[i] ?? 0) - product(rows, shift + from, right, from, i - from)) / (rows[shift + i] ?? 1);
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

/** Solves in place for many right-hand sides, four at a time: each number of the factor is fetched once for the four. */
export function solveBandForAll(factor: SymmetricBand, rights: Float64Array[]): Float64Array[] {
  let k = 0;
  for (; k + 3 < rights.length; k += 4) {
    const [a, b, c, d] = rights.slice(k, k + 4);
    if (a !== undefined && b !== undefined && c !== undefined && d !== undefined)
      solveFour(factor, [a, b, c, d]);
  }
  for (const right of rights.slice(k)) solveBand(factor, right);
  return rights;
}

function solveFour(
  { size, halfWidth, rows }: SymmetricBand,
  [a, b, c, d]: readonly [Float64Array, Float64Array, Float64Array, Float64Array],
): void {
  const width = halfWidth + 1;
  let first = 0;
  while (first < size && a[first] === 0 && b[first] === 0 && c[first] === 0 && d[first] === 0) first++;
  for (let i = first; i < size; i++) {
    const shift = i * width + halfWidth - i;
    let [p, q, r, s] = [a[i] ?? 0, b[i] ?? 0, c[i] ?? 0, d[i] ?? 0];
    for (let j = Math.max(first, i - halfWidth); j < i; j++) {
      const entry = rows[shift + j] ?? 0;
      p -= entry * (a[j] ?? 0);
      q -= entry * (b[j] ?? 0);
      r -= entry * (c[j] ?? 0);
      s -= entry * (d[j] ?? 0);
    }
    const pivot = rows[shift + i] ?? 1;
    a[i] = p / pivot;
    b[i] = q / pivot;
    c[i] = r / pivot;
    d[i] = s / pivot;
  }
  for (let i = size - 1; i >= 0; i--) {
    const shift = i * width + halfWidth - i;
    const pivot = rows[shift + i] ?? 1;
    const [p, q, r, s] = [(a[i] ?? 0) / pivot, (b[i] ?? 0) / pivot, (c[i] ?? 0) / pivot, (d[i] ?? 0) / pivot];
    a[i] = p;
    b[i] = q;
    c[i] = r;
    d[i] = s;
    for (let j = Math.max(0, i - halfWidth); j < i; j++) {
      const entry = rows[shift + j] ?? 0;
      a[j] = (a[j] ?? 0) - entry * p;
      b[j] = (b[j] ?? 0) - entry * q;
      c[j] = (c[j] ?? 0) - entry * r;
      d[j] = (d[j] ?? 0) - entry * s;
    }
  }
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

/** Four sums side by side: the processor need not wait for one addition to begin the next. */
function product(left: Float64Array, a: number, right: Float64Array, b: number, count: number): number {
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

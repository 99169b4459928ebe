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

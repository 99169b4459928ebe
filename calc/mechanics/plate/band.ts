/** Rows, or right-hand sides, that are worked on together: each number of the others is fetched once for all of them. */
export const together = 4;

/** A symmetric positive definite matrix by its band: row i holds columns i − halfWidth … i. */
export interface SymmetricBand {
  readonly size: number;
  /** Three or more: the rows that are factored together are coupled. */
  readonly halfWidth: number;
  /** Row by row, `halfWidth + 1` numbers each, the diagonal last. */
  readonly rows: Float64Array;
}

export function emptyBand(size: number, coupled: number): SymmetricBand {
  const halfWidth = Math.max(together - 1, coupled);
  return { size, halfWidth, rows: new Float64Array(size * (halfWidth + 1)) };
}

/** Adds to the entry in row i, column j; each pair is stored once, so give it with j ≤ i or j > i but not both. */
export function addToBand({ halfWidth, rows }: SymmetricBand, i: number, j: number, value: number): void {
  const at = (i >= j ? i * halfWidth + j : j * halfWidth + i) + halfWidth;
  rows[at] = (rows[at] ?? 0) + value;
}

/** A factored symmetric banded matrix. */
export interface BandedFactor {
  /** Solves for one right-hand side; the right-hand side is left as it was. */
  solve(right: Float64Array): Float64Array;
}

/**
 * Factors a symmetric positive definite banded matrix, LDLᵀ without pivoting.
 *
 * @param size number of rows
 * @param halfWidth number of diagonals below the main one
 * @param entry the value in row i, column j ≤ i
 * @throws RangeError where a pivot is not positive: the matrix is singular or not positive definite
 */
export function bandedFactor(
  size: number,
  halfWidth: number,
  entry: (i: number, j: number) => number,
): BandedFactor {
  const width = halfWidth + 1;
  const lower = new Float64Array(size * width);
  const at = (i: number, j: number): number => lower[i * width + (i - j)] ?? 0;
  for (let i = 0; i < size; i++) {
    const start = Math.max(0, i - halfWidth);
    let pivot = entry(i, i);
    for (let j = start; j < i; j++) {
      let value = entry(i, j);
      for (let k = Math.max(start, j - halfWidth); k < j; k++) value -= at(i, k) * at(j, k) * at(k, k);
      const ratio = value / at(j, j);
      lower[i * width + (i - j)] = ratio;
      pivot -= ratio * value;
    }
    if (!(pivot > 0)) throw new RangeError(`row ${i} of the matrix is singular`);
    lower[i * width] = pivot;
  }
  return {
    solve(right) {
      const x = Float64Array.from(right);
      for (let i = 0; i < size; i++) {
        for (let j = Math.max(0, i - halfWidth); j < i; j++) x[i] = (x[i] ?? 0) - at(i, j) * (x[j] ?? 0);
      }
      for (let i = 0; i < size; i++) x[i] = (x[i] ?? 0) / at(i, i);
      for (let i = size - 1; i >= 0; i--) {
        for (let j = Math.max(0, i - halfWidth); j < i; j++) x[j] = (x[j] ?? 0) - at(i, j) * (x[i] ?? 0);
      }
      return x;
    },
  };
}

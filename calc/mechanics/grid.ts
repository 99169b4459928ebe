/** First grid place at or right of `x`. */
export function lowerBound(grid: Float64Array, x: number): number {
  let [low, high] = [0, grid.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((grid[middle] ?? 0) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

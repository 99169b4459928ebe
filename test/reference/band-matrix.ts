/** A symmetric matrix whose rows reach so far back, factored in place. */
export class BandMatrix {
  readonly #rows: Float64Array[];
  readonly #reach: number;
  constructor(size: number, reach: number) {
    this.#reach = reach;
    this.#rows = Array.from({ length: size }, () => new Float64Array(reach + 1));
  }
  add(i: number, j: number, value: number): void {
    const row = this.#rows[Math.max(i, j)];
    if (row !== undefined && j <= i) row[j - i + this.#reach] = (row[j - i + this.#reach] ?? 0) + value;
  }
  factor(): this {
    const w = this.#reach;
    this.#rows.forEach((row, i) => {
      for (let j = Math.max(0, i - w); j <= i; j++) {
        const other = this.#rows[j] ?? row;
        let sum = row[j - i + w] ?? 0;
        for (let k = Math.max(0, i - w); k < j; k++) sum -= (row[k - i + w] ?? 0) * (other[k - j + w] ?? 0);
        row[j - i + w] = j === i ? Math.sqrt(sum) : sum / (other[w] ?? NaN);
      }
    });
    return this;
  }
  solve(F: Float64Array): Float64Array {
    const w = this.#reach;
    const X = F.slice();
    this.#rows.forEach((row, i) => {
      for (let k = Math.max(0, i - w); k < i; k++) X[i] = (X[i] ?? 0) - (row[k - i + w] ?? 0) * (X[k] ?? 0);
      X[i] = (X[i] ?? 0) / (row[w] ?? NaN);
    });
    for (let i = X.length - 1; i >= 0; i--) {
      const row = this.#rows[i] ?? X;
      X[i] = (X[i] ?? 0) / (row[w] ?? NaN);
      for (let k = Math.max(0, i - w); k < i; k++) X[k] = (X[k] ?? 0) - (row[k - i + w] ?? 0) * (X[i] ?? 0);
    }
    return X;
  }
}

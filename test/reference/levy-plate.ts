/*
 * A second opinion on boards loaded beside an edge: an orthotropic plate (Kirchhoff) on two simple supports, its other edges
 * free, by Levy's method: sines along the bay, and across it cubics between many lines instead of the four closed functions,
 * so that a load may stand anywhere (Timoshenko & Woinowsky-Krieger, ch. 6 and 11). Any consistent units.
 */
export interface LevyPlate {
  readonly length: number;
  readonly depth: number;
  readonly Dx: number;
  readonly Dy: number;
  readonly D1: number;
  readonly Dxy: number;
}

/** One unit of load on a patch in the middle of the bay, from y to y; a line where both are one. */
export interface LevyLoad {
  readonly along: number;
  readonly from: number;
  readonly to: number;
}

const gauss = [
  [-0.861136311594, 0.347854845137],
  [-0.339981043585, 0.652145154863],
  [0.339981043585, 0.652145154863],
  [0.861136311594, 0.347854845137],
] as const;

/** Cubics of a strip of width h at x from 0 to 1: values, slopes, curvatures. */
function cubics(x: number, h: number): readonly [number[], number[], number[]] {
  return [
    [
      1 - 3 * x ** 2 + 2 * x ** 3,
      h * (x - 2 * x ** 2 + x ** 3),
      3 * x ** 2 - 2 * x ** 3,
      h * (x ** 3 - x ** 2),
    ],
    [(6 * x ** 2 - 6 * x) / h, 1 - 4 * x + 3 * x ** 2, (6 * x - 6 * x ** 2) / h, 3 * x ** 2 - 2 * x],
    [(12 * x - 6) / h ** 2, (6 * x - 4) / h, (6 - 12 * x) / h ** 2, (6 * x - 2) / h],
  ];
}

/**
 * Moment along the bay for each width, in the middle of it.
 *
 * @returns lines from back to front, the moment at each
 */
export function levyMoments(
  { length, depth, Dx, Dy, D1, Dxy }: LevyPlate,
  { along, from, to }: LevyLoad,
  { strips = 18, harmonics = 121 } = {},
): { readonly y: readonly number[]; readonly m: readonly number[] } {
  const even = Array.from(
    { length: strips + 1 },
    (_, i) => (depth * (1 - Math.cos((Math.PI * i) / strips))) / 2,
  );
  const y = [...even, from, to]
    .sort((a, b) => a - b)
    .filter((at, i, all) => i === 0 || at - (all[i - 1] ?? 0) > 1e-6 * depth);
  const size = 2 * y.length;
  const m = y.map(() => 0);
  for (let n = 1; n <= harmonics; n += 2) {
    const a = (n * Math.PI) / length;
    const K = Array.from({ length: size }, () => new Float64Array(size));
    const F = new Float64Array(size);
    y.slice(1).forEach((end, strip) => {
      const start = y[strip] ?? 0;
      const h = end - start;
      const isLoaded = to > from && start >= from - 1e-9 && end <= to + 1e-9;
      for (const [g, w] of gauss) {
        const [N, , N2] = cubics((g + 1) / 2, h);
        const [, N1] = cubics((g + 1) / 2, h);
        const weight = (w * h) / 2;
        for (let i = 0; i < 4; i++) {
          const [row, Ni = 0, N1i = 0, N2i = 0] = [K[2 * strip + i], N[i], N1[i], N2[i]];
          for (let j = 0; j < 4; j++) {
            const [Nj = 0, N1j = 0, N2j = 0] = [N[j], N1[j], N2[j]];
            const energy =
              Dx * a ** 4 * Ni * Nj -
              D1 * a ** 2 * (Ni * N2j + N2i * Nj) +
              Dy * N2i * N2j +
              4 * Dxy * a ** 2 * N1i * N1j;
            if (row !== undefined) row[2 * strip + j] = (row[2 * strip + j] ?? 0) + weight * energy;
          }
          if (isLoaded) F[2 * strip + i] = (F[2 * strip + i] ?? 0) + (weight * Ni) / (to - from);
        }
      }
    });
    if (to === from) F[2 * y.findIndex((at) => Math.abs(at - from) < 1e-6 * depth)] = 1;
    const spread = Math.sin((a * along) / 2) / ((a * along) / 2);
    const Y = solve(K, F);
    y.forEach((_, line) => {
      const strip = Math.min(line, y.length - 2);
      const h = (y[strip + 1] ?? 0) - (y[strip] ?? 0);
      const bent = cubics(line - strip, h)[2].reduce(
        (sum, each, i) => sum + each * (Y[2 * strip + i] ?? 0),
        0,
      );
      // The load's own sine stands in the middle with the sine of the moment: their signs cancel.
      m[line] = (m[line] ?? 0) + (2 / length) * spread * (Dx * a ** 2 * (Y[2 * line] ?? 0) - D1 * bent);
    });
  }
  return { y, m };
}

/** Elimination of a definite system. */
function solve(K: readonly Float64Array[], F: Float64Array): Float64Array {
  const X = F.slice();
  const n = X.length;
  for (let i = 0; i < n; i++) {
    const pivot = K[i] ?? X;
    // Two lines of two unknowns each: nothing reaches further than three.
    for (let j = i + 1; j < Math.min(n, i + 4); j++) {
      const row = K[j] ?? X;
      const ratio = (row[i] ?? 0) / (pivot[i] ?? NaN);
      if (ratio === 0) continue;
      for (let q = i; q < Math.min(n, i + 4); q++) row[q] = (row[q] ?? 0) - ratio * (pivot[q] ?? 0);
      X[j] = (X[j] ?? 0) - ratio * (X[i] ?? 0);
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = K[i] ?? X;
    let sum = X[i] ?? 0;
    for (let q = i + 1; q < Math.min(n, i + 4); q++) sum -= (row[q] ?? 0) * (X[q] ?? 0);
    X[i] = sum / (row[i] ?? NaN);
  }
  return X;
}

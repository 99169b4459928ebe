/*
 * The non-conforming rectangle of a thin plate with twelve unknowns (Adini and Clough; Melosh): at each corner its movement and its
 * slopes along x and along y. Corners go along x first.
 */
type Term = readonly [number, number];
const terms: readonly Term[] = [
  ...[0, 1, 2, 3].flatMap((n) => Array.from({ length: n + 1 }, (_, k): Term => [n - k, k])),
  [3, 1],
  [1, 3],
];
/** All terms at a place, differentiated so many times along x and along y. */
function termsAt(x: number, y: number, dx = 0, dy = 0): number[] {
  const power = (at: number, n: number, d: number): number =>
    d > n ? 0 : (d > 0 ? n : 1) * (d > 1 ? n - 1 : 1) * at ** (n - d);
  return terms.map(([a, b]) => power(x, a, dx) * power(y, b, dy));
}
export const times = (rows: readonly (readonly number[])[], v: readonly number[]): number[] =>
  rows.map((row) => row.reduce((sum, each, i) => sum + each * (v[i] ?? 0), 0));
export const transposed = (rows: readonly (readonly number[])[]): number[][] =>
  (rows[0] ?? []).map((_, j) => rows.map((row) => row[j] ?? 0));

export function inverse(rows: readonly (readonly number[])[]): number[][] {
  const n = rows.length;
  const A = rows.map((row, i) => [...row, ...rows.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < n; i++) {
    let p = i;
    for (let j = i; j < n; j++) if (Math.abs(A[j]?.[i] ?? 0) > Math.abs(A[p]?.[i] ?? 0)) p = j;
    [A[i], A[p]] = [A[p] ?? [], A[i] ?? []];
    const pivot = A[i] ?? [];
    const by = pivot[i] ?? NaN;
    pivot.forEach((each, k) => (pivot[k] = each / by));
    A.forEach((row, j) => {
      const f = row[i] ?? 0;
      if (j !== i && f !== 0) row.forEach((each, k) => (row[k] = each - f * (pivot[k] ?? 0)));
    });
  }
  return A.map((row) => row.slice(n));
}

export interface Rectangle {
  readonly stiffness: readonly Float64Array[];
  /** Share of each unknown in the movement at a place. */
  readonly shapesAt: (x: number, y: number) => number[];
  /** The same in its curvatures, the mixed one twice. */
  readonly bentAt: (x: number, y: number) => number[][];
}

export const corners = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
] as const;
const third = [
  [0.112701665379, 5 / 18],
  [0.5, 8 / 18],
  [0.887298334621, 5 / 18],
] as const;

/** @param elastic moments from curvatures */
export function rectangleOf(
  [hx, hy]: readonly [number, number],
  elastic: readonly (readonly number[])[],
): Rectangle {
  const coefficients = inverse(
    corners.flatMap(([i, j]) =>
      [
        [0, 0],
        [1, 0],
        [0, 1],
      ].map(([dx = 0, dy = 0]) => termsAt(i * hx, j * hy, dx, dy)),
    ),
  );
  const shape = transposed(coefficients);
  const shapesAt = (x: number, y: number, dx = 0, dy = 0): number[] => times(shape, termsAt(x, y, dx, dy));
  const bentAt = (x: number, y: number): number[][] => [
    shapesAt(x, y, 2, 0),
    shapesAt(x, y, 0, 2),
    shapesAt(x, y, 1, 1).map((each) => 2 * each),
  ];
  const K = Array.from({ length: 12 }, () => new Float64Array(12));
  for (const [u, wu] of third)
    for (const [v, wv] of third) {
      const B = bentAt(u * hx, v * hy);
      const DB = elastic.map((row) => times(transposed(B), row));
      K.forEach((row, p) =>
        row.forEach((_, q) => {
          for (let k = 0; k < 3; k++)
            row[q] = (row[q] ?? 0) + wu * wv * hx * hy * (B[k]?.[p] ?? 0) * (DB[k]?.[q] ?? 0);
        }),
      );
    }

  return { stiffness: K, shapesAt, bentAt };
}

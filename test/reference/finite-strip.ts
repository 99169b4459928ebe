/*
 * A second opinion on boards with strips along their edges: the finite strip method (Cheung, Finite Strip Method in
 * Structural Analysis). Thin orthotropic plates meet along lines; each strip has a cubic across it for bending, a straight
 * line for what it does in its own plane, and sines along the bay, whose ends are held upright and sideways and free to
 * warp. Nothing is assumed of twist axis, warping or of sections that keep their shape. Any consistent units.
 */
export interface Plate {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly thickness: number;
  readonly strips: number;
}
/** A load down on a line of nodes at y: each unit of length along the bay, or in its middle on a patch. */
export interface StripLoad {
  readonly at: readonly [number, number];
  readonly perLength?: number;
  readonly point?: number;
  readonly patch?: number;
}
interface Wood {
  readonly along: number;
  readonly across: number;
  readonly shear: number;
  /** Strain across for each strain along, by a stress along. */
  readonly poisson?: number;
}
/** In the middle of the bay: how far a place goes down, and stress in the middle of each plate's thickness. */
export interface Middle {
  readonly movement: (y: number, z: number) => number;
  readonly stress: (y: number, z: number) => number;
  /** Largest stress along at either face of the flat plates, at that line of theirs. */
  readonly face: (y: number, z: number) => number;
}

const gauss = [
  [-0.861136311594, 0.347854845137],
  [-0.339981043585, 0.652145154863],
  [0.339981043585, 0.652145154863],
  [0.861136311594, 0.347854845137],
] as const;

export function finiteStrip(
  plates: readonly Plate[],
  length: number,
  loads: readonly StripLoad[],
  wood: Wood,
  harmonics = 41,
): Middle {
  const nodes: (readonly [number, number])[] = [];
  const node = (y: number, z: number): number => {
    const found = nodes.findIndex(([v, w]) => Math.abs(v - y) + Math.abs(w - z) < 1e-6);
    return found >= 0 ? found : nodes.push([y, z]) - 1;
  };
  const strips = plates.flatMap(({ from, to, thickness, strips: n }) =>
    Array.from({ length: n }, (_, i) => {
      const place = (k: number) =>
        node(from[0] + ((to[0] - from[0]) * k) / n, from[1] + ((to[1] - from[1]) * k) / n);
      return { ends: [place(i), place(i + 1)] as const, thickness, isFlat: from[1] === to[1] };
    }),
  );
  const size = 4 * nodes.length;
  const down = nodes.map(() => 0);
  const stretch = nodes.map(() => 0);
  const bent = nodes.map(() => 0);
  const { along, across, poisson = 0.02 } = wood;
  for (let m = 1; m <= harmonics; m += 2) {
    const k = (m * Math.PI) / length;
    const K = Array.from({ length: size }, () => new Float64Array(size));
    for (const { ends, thickness } of strips) addStrip(K, nodes, ends, thickness, k, length, wood);
    const F = new Float64Array(size);
    for (const { at, perLength, point, patch = 0 } of loads) {
      const row = 4 * node(at[0], at[1]) + 2;
      const spread = patch === 0 ? 1 : Math.sin((k * patch) / 2) / ((k * patch) / 2);
      F[row] =
        (F[row] ?? 0) + ((perLength ?? 0) * 2) / k + (point ?? 0) * Math.sin((k * length) / 2) * spread;
    }
    const U = solve(K, F);
    const sine = Math.sin((k * length) / 2);
    nodes.forEach((_, i) => {
      down[i] = (down[i] ?? 0) + (U[4 * i + 2] ?? 0) * sine;
      stretch[i] = (stretch[i] ?? 0) - k * (U[4 * i] ?? 0) * sine;
    });
    for (const { ends, thickness: t, isFlat } of strips) {
      const [a, b] = ends;
      const h = (nodes[b]?.[0] ?? 0) - (nodes[a]?.[0] ?? 0);
      const [w1 = 0, r1 = 0, w2 = 0, r2 = 0] = [a, b].flatMap((i) => [U[4 * i + 2], U[4 * i + 3]]);
      const curved = [
        (6 * (w2 - w1)) / h ** 2 - (4 * r1 + 2 * r2) / h,
        (-6 * (w2 - w1)) / h ** 2 + (2 * r1 + 4 * r2) / h,
      ];
      // The far end of a strip has the word: lines run from back to front, and the last is an edge.
      ends.forEach((i, end) => {
        if (!isFlat || (end === 0 && strips.some((each) => each.isFlat && each.ends[1] === i))) return;
        const share = along * k ** 2 * (U[4 * i + 2] ?? 0) - poisson * across * (curved[end] ?? 0);
        bent[i] = (bent[i] ?? 0) + ((share * sine) / (1 - (poisson ** 2 * across) / along)) * (t / 2);
      });
    }
  }
  return {
    movement: (y, z) => down[node(y, z)] ?? NaN,
    stress: (y, z) => along * (stretch[node(y, z)] ?? NaN),
    face: (y, z) => Math.abs(along * (stretch[node(y, z)] ?? NaN)) + Math.abs(bent[node(y, z)] ?? NaN),
  };
}

/** Adds one strip: lengthwise u, sideways, down, and turn at both of its lines. */
function addStrip(
  K: readonly Float64Array[],
  nodes: readonly (readonly [number, number])[],
  [first, second]: readonly [number, number],
  t: number,
  k: number,
  length: number,
  { along, across, shear, poisson = 0.02 }: Wood,
): void {
  const [[y1, z1], [y2, z2]] = [nodes[first] ?? [0, 0], nodes[second] ?? [0, 0]];
  const h = Math.hypot(y2 - y1, z2 - z1);
  const [c, s] = [(y2 - y1) / h, (z2 - z1) / h];
  const whole = 12 * (1 - (poisson ** 2 * across) / along);
  const [Dx, Dy, Dk] = [(along * t ** 3) / whole, (across * t ** 3) / whole, (shear * t ** 3) / 12];
  /** Rows of strains by the eight movements of the strip, each with its stiffness and the pairs that couple. */
  const add = (a: readonly number[], b: readonly number[], weight: number): void => {
    const [A, B] = [turned(a, c, s), turned(b, c, s)];
    const at = (i: number): number => 4 * (i < 4 ? first : second) + (i % 4);
    for (let i = 0; i < 8; i++) {
      for (let j = 0; j < 8; j++) {
        const row = K[at(i)];
        if (row !== undefined)
          row[at(j)] = (row[at(j)] ?? 0) + (weight * (A[i] ?? 0) * (B[j] ?? 0) * length) / 2;
      }
    }
  };
  for (const [g, w] of gauss) {
    const x = (g + 1) / 2;
    const d = (w * h) / 2;
    const bent = (a: number, b: number, e: number, f: number) => [0, 0, a, b, 0, 0, e, f];
    const N = bent(
      1 - 3 * x ** 2 + 2 * x ** 3,
      h * (x - 2 * x ** 2 + x ** 3),
      3 * x ** 2 - 2 * x ** 3,
      h * (x ** 3 - x ** 2),
    );
    const N1 = bent(
      (6 * x ** 2 - 6 * x) / h,
      1 - 4 * x + 3 * x ** 2,
      (6 * x - 6 * x ** 2) / h,
      3 * x ** 2 - 2 * x,
    );
    const N2 = bent((12 * x - 6) / h ** 2, (6 * x - 4) / h, (6 - 12 * x) / h ** 2, (6 * x - 2) / h);
    add(N, N, d * Dx * k ** 4);
    add(N, N2, -d * poisson * Dy * k ** 2);
    add(N2, N, -d * poisson * Dy * k ** 2);
    add(N2, N2, d * Dy);
    add(N1, N1, 4 * d * Dk * k ** 2);
    const [a, b] = [1 - x, x];
    const lengthwise = [-k * a, 0, 0, 0, -k * b, 0, 0, 0];
    const sideways = [0, -1 / h, 0, 0, 0, 1 / h, 0, 0];
    const sheared = [-1 / h, k * a, 0, 0, 1 / h, k * b, 0, 0];
    add(lengthwise, lengthwise, d * t * along);
    add(sideways, sideways, d * t * across);
    add(lengthwise, sideways, d * t * poisson * across);
    add(sideways, lengthwise, d * t * poisson * across);
    add(sheared, sheared, d * t * shear);
  }
}

/** A row by the strip's own directions as one by y and z. */
function turned(row: readonly number[], c: number, s: number): number[] {
  return [0, 4].flatMap((at) => {
    const [u = 0, v = 0, w = 0, turn = 0] = row.slice(at, at + 4);
    return [u, c * v - s * w, s * v + c * w, turn];
  });
}

/** Elimination of a definite system. */
function solve(K: readonly Float64Array[], F: Float64Array): Float64Array {
  const n = F.length;
  const X = F.slice();
  for (let i = 0; i < n; i++) {
    const pivot = K[i] ?? X;
    for (let j = i + 1; j < n; j++) {
      const row = K[j] ?? X;
      const ratio = (row[i] ?? 0) / (pivot[i] ?? NaN);
      if (ratio === 0) continue;
      for (let q = i; q < n; q++) row[q] = (row[q] ?? 0) - ratio * (pivot[q] ?? 0);
      X[j] = (X[j] ?? 0) - ratio * (X[i] ?? 0);
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = K[i] ?? X;
    let sum = X[i] ?? 0;
    for (let q = i + 1; q < n; q++) sum -= (row[q] ?? 0) * (X[q] ?? 0);
    X[i] = sum / (row[i] ?? NaN);
  }
  return X;
}

import type { FreePlate } from './free-plate.ts';
import { cellAt, nodeCount, nodeOf, type PlateMesh } from './mesh.ts';
import { lineSumsOf, perLine, type LineSums } from './line-sums.ts';
import { perNode } from './stiffness.ts';

/** Bending moments for each length of plate at every node, N·m/m, sagging positive. */
export interface PlateMoments {
  readonly mesh: PlateMesh;
  /** Bends the strips that run along x. */
  readonly x_Nmpm: Float64Array;
  readonly y_Nmpm: Float64Array;
  /** Twists both: −2 D_xy times the mixed derivative of the movement. */
  readonly xy_Nmpm: Float64Array;
}

export type MomentWay = 'x' | 'y' | 'xy';

/**
 * Moments from the movements of a plate. Inside a cell the curvatures of a cubic are most exact at Gauss's places
 * (Barlow); from there they are continued straight to the corners, and each node takes the mean of its cells. Cubics,
 * Gauss's places and cells are products of those along x and along y, and so is all of this: it is summed along x first.
 */
export function momentsOf({ mesh, stiffness }: FreePlate, field: Float64Array): PlateMoments {
  const { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm } = stiffness;
  const [alongX, alongY] = sumsOf(mesh);
  const count = nodeCount(mesh);
  const x_Nmpm = new Float64Array(count);
  const y_Nmpm = new Float64Array(count);
  const xy_Nmpm = new Float64Array(count);
  const summed = new Float64Array(summedPerNode * mesh.y_m.length);
  mesh.x_m.forEach((_, i) => {
    sumAlongX(mesh, field, alongX, i, summed);
    mesh.y_m.forEach((__, j) => {
      const node = nodeOf(mesh, i, j);
      const from = summedPerNode * (alongY.first[j] ?? 0);
      const xx = sumAlongY(summed, from + 4, alongY.plain, j);
      const yy = sumAlongY(summed, from, alongY.bent, j);
      x_Nmpm[node] = -(Dx_Nm * xx + D1_Nm * yy);
      y_Nmpm[node] = -(Dy_Nm * yy + D1_Nm * xx);
      xy_Nmpm[node] = -2 * Dxy_Nm * sumAlongY(summed, from + 2, alongY.sloped, j);
    });
  });
  return { mesh, x_Nmpm, y_Nmpm, xy_Nmpm };
}

/** Along a line of x, at each line of y: value and slope along y of the plain, the sloped and the bent sums along x. */
const summedPerNode = 6;

/** Sums the unknowns about one line of x, at every line of y. */
function sumAlongX(
  mesh: PlateMesh,
  field: Float64Array,
  { first, plain, sloped, bent }: LineSums,
  i: number,
  summed: Float64Array,
): void {
  const start = first[i] ?? 0;
  const step = perNode * (nodeOf(mesh, 1, 0) - nodeOf(mesh, 0, 0));
  const k = perLine * i;
  for (let j = 0; j < mesh.y_m.length; j++) {
    for (let kind = 0; kind < 2; kind++) {
      const one = perNode * nodeOf(mesh, start, j) + 2 * kind;
      const a = field[one] ?? 0;
      const b = field[one + 1] ?? 0;
      const c = field[one + step] ?? 0;
      const d = field[one + step + 1] ?? 0;
      const e = field[one + 2 * step] ?? 0;
      const f = field[one + 2 * step + 1] ?? 0;
      const into = summedPerNode * j + kind;
      summed[into] = sixTerms(plain, k, a, b, c, d, e, f);
      summed[into + 2] = sixTerms(sloped, k, a, b, c, d, e, f);
      summed[into + 4] = sixTerms(bent, k, a, b, c, d, e, f);
    }
  }
}

function sumAlongY(summed: Float64Array, from: number, shares: Float64Array, j: number): number {
  return sixTerms(
    shares,
    perLine * j,
    summed[from] ?? 0,
    summed[from + 1] ?? 0,
    summed[from + summedPerNode] ?? 0,
    summed[from + summedPerNode + 1] ?? 0,
    summed[from + 2 * summedPerNode] ?? 0,
    summed[from + 2 * summedPerNode + 1] ?? 0,
  );
}

function sixTerms(
  shares: Float64Array,
  k: number,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
): number {
  return (
    a * (shares[k] ?? 0) +
    b * (shares[k + 1] ?? 0) +
    c * (shares[k + 2] ?? 0) +
    (d * (shares[k + 3] ?? 0) + e * (shares[k + 4] ?? 0) + f * (shares[k + 5] ?? 0))
  );
}

/** Sums along x and along y of a mesh, worked out once for every field. */
const known = new WeakMap<PlateMesh, readonly [LineSums, LineSums]>();

function sumsOf(mesh: PlateMesh): readonly [LineSums, LineSums] {
  const held = known.get(mesh);
  if (held !== undefined) return held;
  const made = [lineSumsOf(mesh.x_m), lineSumsOf(mesh.y_m)] as const;
  known.set(mesh, made);
  return made;
}

/** A moment at any place, straight between the nodes, N·m/m. */
export function momentAt(moments: PlateMoments, way: MomentWay, x_m: number, y_m: number): number {
  const { mesh } = moments;
  const values = valuesOf(moments, way);
  const { i, j, s, t } = cellAt(mesh, x_m, y_m);
  const [left, right] = [nodeOf(mesh, i, j), nodeOf(mesh, i + 1, j)];
  const above = nodeOf(mesh, i, j + 1) - left;
  return (
    (1 - s) * ((1 - t) * (values[left] ?? 0) + t * (values[left + above] ?? 0)) +
    s * ((1 - t) * (values[right] ?? 0) + t * (values[right + above] ?? 0))
  );
}

/**
 * A moment at a node averaged across its own strips over a window: the one along x along y, and the other way round. A peak
 * at the end of a line of supports is no higher than what a piece as wide as the plate is thick takes; there the average
 * settles as the mesh gets finer, which the peak does not.
 *
 * @param way which moment
 * @param width_m the window; where it would reach past the plate it is moved back inside
 */
export function averagedMoment(
  moments: PlateMoments,
  way: 'x' | 'y',
  [i, j]: readonly [number, number],
  width_m: number,
): number {
  const { mesh } = moments;
  const values = valuesOf(moments, way);
  const isAlongX = way === 'x';
  const lines = isAlongX ? mesh.y_m : mesh.x_m;
  const here = isAlongX ? j : i;
  const first = isAlongX ? nodeOf(mesh, i, 0) : nodeOf(mesh, 0, j);
  const step = (isAlongX ? nodeOf(mesh, i, 1) : nodeOf(mesh, 1, j)) - first;
  const end = lines[lines.length - 1] ?? 0;
  const width = Math.min(width_m, end);
  const from = Math.min(Math.max(0, (lines[here] ?? 0) - width / 2), end - width);
  const to = from + width;
  let k = here;
  while (k > 0 && (lines[k] ?? 0) > from) k--;
  let sum = 0;
  for (; k + 1 < lines.length && (lines[k] ?? Infinity) < to; k++) {
    const start = lines[k] ?? 0;
    const stop = lines[k + 1] ?? 0;
    const low = values[first + k * step] ?? 0;
    const high = values[first + (k + 1) * step] ?? 0;
    const a = Math.max(start, from);
    const b = Math.min(stop, to);
    // Straight between the nodes: the mean of a stretch is the value in its middle.
    sum += (b - a) * (low + ((high - low) * ((a + b) / 2 - start)) / (stop - start));
  }
  return sum / width;
}

function valuesOf({ x_Nmpm, y_Nmpm, xy_Nmpm }: PlateMoments, way: MomentWay): Float64Array {
  if (way === 'xy') return xy_Nmpm;
  return way === 'x' ? x_Nmpm : y_Nmpm;
}

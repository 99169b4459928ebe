import { gauss, hermite } from './hermite.ts';
import { cellAt, nodeCount, type PlateMesh } from './mesh.ts';
import { cellDofs, perNode } from './stiffness.ts';

/** A load on a plate, down positive. */
export type PlateLoad =
  | { readonly kind: 'point'; readonly x_m: number; readonly y_m: number; readonly load_N: number }
  | {
      /** Evenly spread over a rectangle, in all `load_N`. */
      readonly kind: 'patch';
      readonly fromX_m: number;
      readonly toX_m: number;
      readonly fromY_m: number;
      readonly toY_m: number;
      readonly load_N: number;
    };

/** Total of a load and its moments about the corner (0, 0): force, force × x, force × y. */
export type Resultant = readonly [number, number, number];

/** The sixteen cubics of the cell at a place, and the unknowns they belong to. */
export interface PlaceShape {
  readonly dofs: Int32Array;
  readonly values: Float64Array;
}

/** What each unknown of a cell adds to the movement at a place. */
export function shapeAt(mesh: PlateMesh, x_m: number, y_m: number): PlaceShape {
  const { i, j, s, t, hx, hy } = cellAt(mesh, x_m, y_m);
  const [x, y] = [hermite(s, hx, 0), hermite(t, hy, 0)];
  const values = new Float64Array(16);
  for (let k = 0; k < 16; k++) values[k] = (x[k >> 2] ?? 0) * (y[k & 3] ?? 0);
  return { dofs: cellDofs(mesh, i, j), values };
}

/** Movement at a place, m. */
export function movementAt(mesh: PlateMesh, field: Float64Array, x_m: number, y_m: number): number {
  return movementAtShape(field, shapeAt(mesh, x_m, y_m));
}

/** Movement at a place whose shape is known, m. */
export function movementAtShape(field: Float64Array, { dofs, values }: PlaceShape): number {
  let sum = 0;
  for (let k = 0; k < 16; k++) sum += (field[dofs[k] ?? 0] ?? 0) * (values[k] ?? 0);
  return sum;
}

/** Right-hand side of some loads: what does the same work on every cubic (exact for points and even patches). */
export function loadVector(mesh: PlateMesh, loads: readonly PlateLoad[]): Float64Array {
  const vector = new Float64Array(perNode * nodeCount(mesh));
  for (const load of loads) {
    if (load.kind === 'point') addPoint(vector, mesh, load.x_m, load.y_m, load.load_N);
    else addPatch(vector, mesh, load);
  }
  return vector;
}

function addPoint(vector: Float64Array, mesh: PlateMesh, x_m: number, y_m: number, load_N: number): void {
  const { dofs, values } = shapeAt(mesh, x_m, y_m);
  for (let k = 0; k < 16; k++) {
    const dof = dofs[k] ?? 0;
    vector[dof] = (vector[dof] ?? 0) + load_N * (values[k] ?? 0);
  }
}

/** A patch is the product of its stretches along x and y, and so is what it does to every cubic. */
function addPatch(vector: Float64Array, mesh: PlateMesh, load: Extract<PlateLoad, { kind: 'patch' }>): void {
  const { fromX_m, toX_m, fromY_m, toY_m, load_N } = load;
  const share = load_N / ((toX_m - fromX_m) * (toY_m - fromY_m));
  const [alongX, alongY] = [stretches(mesh.x_m, fromX_m, toX_m), stretches(mesh.y_m, fromY_m, toY_m)];
  for (const { cell: i, sums: x } of alongX) {
    for (const { cell: j, sums: y } of alongY) {
      const dofs = cellDofs(mesh, i, j);
      for (let k = 0; k < 16; k++) {
        const dof = dofs[k] ?? 0;
        vector[dof] = (vector[dof] ?? 0) + share * (x[k >> 2] ?? 0) * (y[k & 3] ?? 0);
      }
    }
  }
}

/** The four cubics of a side summed over the part of a stretch that lies on it. */
interface Stretch {
  readonly cell: number;
  readonly sums: readonly number[];
}

function stretches(lines: readonly number[], from: number, to: number): Stretch[] {
  const found: Stretch[] = [];
  for (let cell = 0; cell + 1 < lines.length; cell++) {
    const [start, end] = [lines[cell] ?? 0, lines[cell + 1] ?? 0];
    const [first, last] = [Math.max(from, start), Math.min(to, end)];
    if (last <= first) continue;
    const h = end - start;
    const [near, far] = gauss.map((g) => hermite((first + g * (last - first) - start) / h, h, 0));
    if (near === undefined || far === undefined) continue;
    found.push({ cell, sums: near.map((value, k) => ((last - first) / 2) * (value + (far[k] ?? 0))) });
  }
  return found;
}

export function resultantOf(loads: readonly PlateLoad[]): Resultant {
  let [force, x, y] = [0, 0, 0];
  for (const load of loads) {
    force += load.load_N;
    x += load.load_N * (load.kind === 'point' ? load.x_m : (load.fromX_m + load.toX_m) / 2);
    y += load.load_N * (load.kind === 'point' ? load.y_m : (load.fromY_m + load.toY_m) / 2);
  }
  return [force, x, y];
}

import type { FreePlate } from './free-plate.ts';
import { hermite } from './hermite.ts';
import { cellAt, nodeCount, nodeOf, type PlateMesh } from './mesh.ts';
import { cellDofs } from './stiffness.ts';

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

const gauss = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6] as const;
/** Share of the moment at the nearer and the farther of Gauss's places in its straight continuation to a corner. */
const [near, far] = [(1 + Math.sqrt(3)) / 2, (1 - Math.sqrt(3)) / 2];

/**
 * Moments from the movements of a plate. Inside a cell the curvatures of a cubic are most exact at Gauss's places
 * (Barlow); from there they are continued straight to the corners, and each node takes the mean of its cells.
 */
export function momentsOf(plate: FreePlate, field: Float64Array): PlateMoments {
  const { mesh } = plate;
  const count = nodeCount(mesh);
  const [x_Nmpm, y_Nmpm, xy_Nmpm] = [
    new Float64Array(count),
    new Float64Array(count),
    new Float64Array(count),
  ];
  const cells = new Uint8Array(count);
  const [ofX, ofY, ofTwist] = [new Float64Array(4), new Float64Array(4), new Float64Array(4)];
  momentsInCells(plate, field, (i, j, atGauss) => {
    continueToCorners(atGauss, 0, ofX);
    continueToCorners(atGauss, 4, ofY);
    continueToCorners(atGauss, 8, ofTwist);
    for (let corner = 0; corner < 4; corner++) {
      const node = nodeOf(mesh, i + (corner >> 1), j + (corner & 1));
      x_Nmpm[node] = (x_Nmpm[node] ?? 0) + (ofX[corner] ?? 0);
      y_Nmpm[node] = (y_Nmpm[node] ?? 0) + (ofY[corner] ?? 0);
      xy_Nmpm[node] = (xy_Nmpm[node] ?? 0) + (ofTwist[corner] ?? 0);
      cells[node] = (cells[node] ?? 0) + 1;
    }
  });
  for (const values of [x_Nmpm, y_Nmpm, xy_Nmpm]) {
    for (let node = 0; node < count; node++) values[node] = (values[node] ?? 0) / (cells[node] ?? 1);
  }
  return { mesh, x_Nmpm, y_Nmpm, xy_Nmpm };
}

/** Visits every cell with its moments at Gauss's four places: four of x, four of y, four of the twist. */
export function momentsInCells(
  { mesh, stiffness }: FreePlate,
  field: Float64Array,
  visit: (i: number, j: number, atGauss: Float64Array) => void,
): void {
  const { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm } = stiffness;
  const { shapesX, shapesY, dofs } = cellsOf(mesh);
  const atGauss = new Float64Array(12);
  const summed = new Float64Array(3 * alongX);
  let cell = 0;
  for (let i = 0; i < shapesX.length; i++) {
    const sx = shapesX[i];
    for (let j = 0; j < shapesY.length; j++, cell += 16) {
      const sy = shapesY[j];
      if (sx === undefined || sy === undefined) continue;
      sumAlongX(field, dofs, cell, sx, summed);
      for (let g = 0; g < 4; g++) {
        const [s, t] = [4 * (g >> 1), 4 * (g & 1)];
        let [xx, yy, xy] = [0, 0, 0];
        for (let k = 0; k < 4; k++) {
          xx += (summed[2 * alongX + s + k] ?? 0) * (sy.plain[t + k] ?? 0);
          yy += (summed[s + k] ?? 0) * (sy.bent[t + k] ?? 0);
          xy += (summed[alongX + s + k] ?? 0) * (sy.sloped[t + k] ?? 0);
        }
        atGauss[g] = -(Dx_Nm * xx + D1_Nm * yy);
        atGauss[4 + g] = -(Dy_Nm * yy + D1_Nm * xx);
        atGauss[8 + g] = -2 * Dxy_Nm * xy;
      }
      visit(i, j, atGauss);
    }
  }
}

/** Gauss's two places along x times the four functions along y that are left. */
const alongX = 8;

/** Sums the unknowns of a cell over its functions along x: plain, sloped and bent, at both of Gauss's places. */
function sumAlongX(
  field: Float64Array,
  dofs: Int32Array,
  cell: number,
  { plain, sloped, bent }: SideShapes,
  summed: Float64Array,
): void {
  for (let b = 0; b < 4; b++) {
    const p = field[dofs[cell + b] ?? 0] ?? 0;
    const q = field[dofs[cell + 4 + b] ?? 0] ?? 0;
    const r = field[dofs[cell + 8 + b] ?? 0] ?? 0;
    const v = field[dofs[cell + 12 + b] ?? 0] ?? 0;
    for (let s = 0; s < alongX; s += 4) {
      summed[s + b] = fourTerms(plain, s, p, q, r, v);
      summed[alongX + s + b] = fourTerms(sloped, s, p, q, r, v);
      summed[2 * alongX + s + b] = fourTerms(bent, s, p, q, r, v);
    }
  }
}

function fourTerms(shape: Float64Array, s: number, p: number, q: number, r: number, v: number): number {
  return p * (shape[s] ?? 0) + q * (shape[s + 1] ?? 0) + r * (shape[s + 2] ?? 0) + v * (shape[s + 3] ?? 0);
}

/** What the cells of a mesh need for every field, worked out once. */
interface Cells {
  readonly shapesX: readonly SideShapes[];
  readonly shapesY: readonly SideShapes[];
  /** Sixteen unknowns of each cell, x by x. */
  readonly dofs: Int32Array;
}

const known = new WeakMap<PlateMesh, Cells>();

function cellsOf(mesh: PlateMesh): Cells {
  const held = known.get(mesh);
  if (held !== undefined) return held;
  const [shapesX, shapesY] = [shapesOf(mesh.x_m), shapesOf(mesh.y_m)];
  const dofs = new Int32Array(16 * shapesX.length * shapesY.length);
  shapesX.forEach((_, i) => {
    shapesY.forEach((__, j) => dofs.set(cellDofs(mesh, i, j), 16 * (i * shapesY.length + j)));
  });
  const made = { shapesX, shapesY, dofs };
  known.set(mesh, made);
  return made;
}

interface SideShapes {
  readonly plain: Float64Array;
  readonly sloped: Float64Array;
  readonly bent: Float64Array;
}

function shapesOf(lines: readonly number[]): SideShapes[] {
  return lines.slice(1).map((to, k) => {
    const h = to - (lines[k] ?? 0);
    return {
      plain: Float64Array.from(gauss.flatMap((s) => hermite(s, h, 0))),
      sloped: Float64Array.from(gauss.flatMap((s) => hermite(s, h, 1))),
      bent: Float64Array.from(gauss.flatMap((s) => hermite(s, h, 2))),
    };
  });
}

/** Continues values at Gauss's four places straight to the four corners. */
function continueToCorners(atGauss: Float64Array, from: number, corners: Float64Array): void {
  const [a, b] = [atGauss[from] ?? 0, atGauss[from + 1] ?? 0];
  const [c, d] = [atGauss[from + 2] ?? 0, atGauss[from + 3] ?? 0];
  const [ab, ba] = [near * a + far * b, far * a + near * b];
  const [cd, dc] = [near * c + far * d, far * c + near * d];
  corners[0] = near * ab + far * cd;
  corners[1] = near * ba + far * dc;
  corners[2] = far * ab + near * cd;
  corners[3] = far * ba + near * dc;
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
  const [lines, here] = way === 'x' ? [mesh.y_m, j] : [mesh.x_m, i];
  const first = way === 'x' ? nodeOf(mesh, i, 0) : nodeOf(mesh, 0, j);
  const step = (way === 'x' ? nodeOf(mesh, i, 1) : nodeOf(mesh, 1, j)) - first;
  const end = lines[lines.length - 1] ?? 0;
  const width = Math.min(width_m, end);
  const from = Math.min(Math.max(0, (lines[here] ?? 0) - width / 2), end - width);
  const to = from + width;
  let k = here;
  while (k > 0 && (lines[k] ?? 0) > from) k--;
  let sum = 0;
  for (; k + 1 < lines.length && (lines[k] ?? Infinity) < to; k++) {
    const [start, stop] = [lines[k] ?? 0, lines[k + 1] ?? 0];
    const [low, high] = [values[first + k * step] ?? 0, values[first + (k + 1) * step] ?? 0];
    const [a, b] = [Math.max(start, from), Math.min(stop, to)];
    // Straight between the nodes: the mean of a stretch is the value in its middle.
    sum += (b - a) * (low + ((high - low) * ((a + b) / 2 - start)) / (stop - start));
  }
  return sum / width;
}

function valuesOf({ x_Nmpm, y_Nmpm, xy_Nmpm }: PlateMoments, way: MomentWay): Float64Array {
  if (way === 'xy') return xy_Nmpm;
  return way === 'x' ? x_Nmpm : y_Nmpm;
}

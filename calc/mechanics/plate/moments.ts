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
  momentsInCells(plate, field, (i, j, atGauss) => {
    for (let corner = 0; corner < 4; corner++) {
      const node = nodeOf(mesh, i + (corner >> 1), j + (corner & 1));
      x_Nmpm[node] = (x_Nmpm[node] ?? 0) + continued(atGauss, 0, corner);
      y_Nmpm[node] = (y_Nmpm[node] ?? 0) + continued(atGauss, 4, corner);
      xy_Nmpm[node] = (xy_Nmpm[node] ?? 0) + continued(atGauss, 8, corner);
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
  const { x_m, y_m } = mesh;
  const { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm } = stiffness;
  const [shapesX, shapesY] = [shapesOf(x_m), shapesOf(y_m)];
  const atGauss = new Float64Array(12);
  const summed = new Float64Array(3 * alongX);
  shapesX.forEach((sx, i) => {
    shapesY.forEach((sy, j) => {
      sumAlongX(field, cellDofs(mesh, i, j), sx, summed);
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
    });
  });
}

/** Gauss's two places along x times the four functions along y that are left. */
const alongX = 8;

/** Sums the unknowns of a cell over its functions along x: plain, sloped and bent, at both of Gauss's places. */
function sumAlongX(field: Float64Array, dofs: Int32Array, sx: SideShapes, summed: Float64Array): void {
  for (let k = 0; k < alongX; k++) {
    const s = k & 4;
    let [plain, sloped, bent] = [0, 0, 0];
    for (let a = 0; a < 4; a++) {
      const value = field[dofs[4 * a + (k & 3)] ?? 0] ?? 0;
      plain += value * (sx.plain[s + a] ?? 0);
      sloped += value * (sx.sloped[s + a] ?? 0);
      bent += value * (sx.bent[s + a] ?? 0);
    }
    summed[k] = plain;
    summed[alongX + k] = sloped;
    summed[2 * alongX + k] = bent;
  }
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

function continued(atGauss: Float64Array, from: number, corner: number): number {
  let sum = 0;
  for (let g = 0; g < 4; g++) {
    const share = (g >> 1 === corner >> 1 ? near : far) * ((g & 1) === (corner & 1) ? near : far);
    sum += share * (atGauss[from + g] ?? 0);
  }
  return sum;
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
 * A moment averaged across its own strips over a window: the one along x along y, and the other way round. A peak at
 * the end of a line of supports is no higher than what a piece as wide as the plate is thick takes; there the average
 * settles as the mesh gets finer, which the peak does not.
 *
 * @param way which moment
 * @param width_m the window; where it would reach past the plate it is moved back inside
 */
export function averagedMomentAt(
  moments: PlateMoments,
  way: 'x' | 'y',
  x_m: number,
  y_m: number,
  width_m: number,
): number {
  const { mesh } = moments;
  const [lines, middle] = way === 'x' ? [mesh.y_m, y_m] : [mesh.x_m, x_m];
  const at = (place: number): number =>
    way === 'x' ? momentAt(moments, way, x_m, place) : momentAt(moments, way, place, y_m);
  const end = lines[lines.length - 1] ?? 0;
  const width = Math.min(width_m, end);
  const from = Math.min(Math.max(0, middle - width / 2), end - width);
  const cuts = [from, ...lines.filter((line) => line > from && line < from + width), from + width];
  return cuts.slice(1).reduce((sum, to, k) => {
    const start = cuts[k] ?? from;
    return sum + ((to - start) * (at(start) + at(to))) / 2 / width;
  }, 0);
}

/** The same at a node, by its lines. */
export function averagedMoment(
  moments: PlateMoments,
  way: 'x' | 'y',
  [i, j]: readonly [number, number],
  width_m: number,
): number {
  const { x_m, y_m } = moments.mesh;
  return averagedMomentAt(moments, way, x_m[i] ?? NaN, y_m[j] ?? NaN, width_m);
}

function valuesOf({ x_Nmpm, y_Nmpm, xy_Nmpm }: PlateMoments, way: MomentWay): Float64Array {
  if (way === 'xy') return xy_Nmpm;
  return way === 'x' ? x_Nmpm : y_Nmpm;
}

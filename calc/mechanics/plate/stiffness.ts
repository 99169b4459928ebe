import { addToBand, emptyBand, type SymmetricBand } from './band.ts';
import { curvatureOfSide, massOfSide, slopeOfSide, valueTimesCurvature, type SideMatrix } from './hermite.ts';
import { nodeCount, nodeOf, sideAt, type PlateMesh } from './mesh.ts';

/** Stiffnesses of a thin orthotropic plate, N·m (Timoshenko and Woinowsky-Krieger, ch. 11): x along the length. */
export interface PlateStiffness {
  readonly Dx_Nm: number;
  readonly Dy_Nm: number;
  /** ν times the stiffness of the other way: what curvature one way asks of the other. */
  readonly D1_Nm: number;
  /** G t³/12. */
  readonly Dxy_Nm: number;
}

/** A beam fixed under the plate along a mesh line; it bends with the plate and turns freely about its own length. */
export interface PlateBeam {
  readonly along: 'x' | 'y';
  /** Where it lies: y of a beam along x, x of a beam along y; on a mesh line. */
  readonly at_m: number;
  readonly from_m: number;
  readonly to_m: number;
  readonly EI_Nm2: number;
}

/** Degrees of freedom of a node: movement, its slopes along x and y, and its twist. */
export const perNode = 4;

/** The stiffness matrix of a plate with its beams and no supports: conforming rectangles of 16 degrees of freedom. */
export function plateMatrix(
  mesh: PlateMesh,
  stiffness: PlateStiffness,
  beams: readonly PlateBeam[],
): SymmetricBand {
  const { x_m, y_m } = mesh;
  const short = Math.min(x_m.length, y_m.length);
  const band = emptyBand(perNode * nodeCount(mesh), perNode * (short + 1) + perNode - 1);
  const along = sidesOf(y_m);
  sidesOf(x_m).forEach((across, i) => {
    along.forEach((side, j) => addCell(band, cellDofs(mesh, i, j), cellMatrix(across, side, stiffness)));
  });
  for (const beam of beams) addBeam(band, mesh, beam);
  return band;
}

/** The sixteen unknowns of a cell, x-function by y-function (four by four). */
export function cellDofs(mesh: PlateMesh, i: number, j: number): Int32Array {
  const dofs = new Int32Array(16);
  for (let a = 0; a < 4; a++) {
    for (let b = 0; b < 4; b++) {
      const node = nodeOf(mesh, i + (a >> 1), j + (b >> 1));
      dofs[4 * a + b] = perNode * node + (a & 1) + 2 * (b & 1);
    }
  }
  return dofs;
}

/** The integrals over one side of a row of cells. */
interface Side {
  readonly mass: SideMatrix;
  readonly slope: SideMatrix;
  readonly curvature: SideMatrix;
  readonly valueTimesCurvature: SideMatrix;
}

function sidesOf(lines: readonly number[]): Side[] {
  return lines.slice(1).map((to, k) => {
    const h = to - (lines[k] ?? 0);
    return {
      mass: massOfSide(h),
      slope: slopeOfSide(h),
      curvature: curvatureOfSide(h),
      valueTimesCurvature: valueTimesCurvature(h),
    };
  });
}

/** Every integral is a product of one over x and one over y, so the matrix is exact. */
function cellMatrix(
  { mass: x0, slope: x1, curvature: x2, valueTimesCurvature: x02 }: Side,
  { mass: y0, slope: y1, curvature: y2, valueTimesCurvature: y02 }: Side,
  { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm }: PlateStiffness,
): Float64Array {
  const matrix = new Float64Array(256);
  for (let row = 0; row < 16; row++) {
    for (let column = 0; column <= row; column++) {
      const x = 4 * (row >> 2) + (column >> 2);
      const y = 4 * (row & 3) + (column & 3);
      const xTurned = 4 * (column >> 2) + (row >> 2);
      const yTurned = 4 * (column & 3) + (row & 3);
      matrix[16 * row + column] =
        Dx_Nm * (x2[x] ?? 0) * (y0[y] ?? 0) +
        Dy_Nm * (x0[x] ?? 0) * (y2[y] ?? 0) +
        D1_Nm * ((x02[xTurned] ?? 0) * (y02[y] ?? 0) + (x02[x] ?? 0) * (y02[yTurned] ?? 0)) +
        4 * Dxy_Nm * (x1[x] ?? 0) * (y1[y] ?? 0);
    }
  }
  return matrix;
}

function addCell(band: SymmetricBand, dofs: Int32Array, cell: Float64Array): void {
  for (let row = 0; row < 16; row++) {
    for (let column = 0; column <= row; column++) {
      addToBand(band, dofs[row] ?? 0, dofs[column] ?? 0, cell[16 * row + column] ?? 0);
    }
  }
}

function addBeam(
  band: SymmetricBand,
  mesh: PlateMesh,
  { along, at_m, from_m, to_m, EI_Nm2 }: PlateBeam,
): void {
  const [lines, across] = along === 'x' ? [mesh.x_m, mesh.y_m] : [mesh.y_m, mesh.x_m];
  const [side, share] = sideAt(across, at_m);
  const line = share > 0.5 ? side + 1 : side;
  for (let k = 0; k + 1 < lines.length; k++) {
    const from = lines[k] ?? 0;
    const to = lines[k + 1] ?? 0;
    const middle = (from + to) / 2;
    if (middle < from_m || middle > to_m) continue;
    const matrix = curvatureOfSide(to - from);
    const dofs = [k, k, k + 1, k + 1].map((at, d) => {
      const node = along === 'x' ? nodeOf(mesh, at, line) : nodeOf(mesh, line, at);
      return perNode * node + (d % 2) * (along === 'x' ? 1 : 2);
    });
    for (let row = 0; row < 4; row++) {
      for (let column = 0; column <= row; column++) {
        addToBand(band, dofs[row] ?? 0, dofs[column] ?? 0, EI_Nm2 * (matrix[4 * row + column] ?? 0));
      }
    }
  }
}

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
    along.forEach((side, j) => addCell(band, cellDofs(mesh, i, j), across, side, stiffness));
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

/** Adds a cell. Every integral is a product of one over x and one over y, so the matrix is exact. */
function addCell(
  { halfWidth, rows }: SymmetricBand,
  dofs: Int32Array,
  x: Side,
  y: Side,
  { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm }: PlateStiffness,
): void {
  for (let a = 0; a < 4; a++) {
    for (let c = 0; c <= a; c++) {
      const ac = 4 * a + c;
      const bentX = Dx_Nm * (x.curvature[ac] ?? 0);
      const bentY = Dy_Nm * (x.mass[ac] ?? 0);
      const both = D1_Nm * (x.valueTimesCurvature[4 * c + a] ?? 0);
      const bothTurned = D1_Nm * (x.valueTimesCurvature[ac] ?? 0);
      const twisted = 4 * Dxy_Nm * (x.slope[ac] ?? 0);
      for (let b = 0; b < 4; b++) {
        const last = c === a ? b : 3;
        for (let d = 0; d <= last; d++) {
          const bd = 4 * b + d;
          const i = Math.max(dofs[4 * a + b] ?? 0, dofs[4 * c + d] ?? 0);
          const j = Math.min(dofs[4 * a + b] ?? 0, dofs[4 * c + d] ?? 0);
          const at = i * halfWidth + halfWidth + j;
          const value =
            bentX * (y.mass[bd] ?? 0) +
            bentY * (y.curvature[bd] ?? 0) +
            (both * (y.valueTimesCurvature[bd] ?? 0) + bothTurned * (y.valueTimesCurvature[4 * d + b] ?? 0)) +
            twisted * (y.slope[bd] ?? 0);
          rows[at] = (rows[at] ?? 0) + value;
        }
      }
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

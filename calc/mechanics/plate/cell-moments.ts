import type { FreePlate } from './free-plate.ts';
import { gauss, hermite } from './hermite.ts';
import type { PlateMesh } from './mesh.ts';
import { cellDofs } from './stiffness.ts';

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

import { addToBand, emptyBand, type SymmetricBand } from './band.ts';
import { factorBand } from './band-factor.ts';
import { solveBand } from './band-solve.ts';
import { cellAt, nodeCount, nodeOf, type PlateMesh } from './mesh.ts';
import type { PlateLoad } from './plate-load.ts';
import { signOf, type PlateSupport } from './supports.ts';

/** A plate as it moves by shear alone, factored: a membrane, held at one corner. */
export interface ShearMembrane {
  readonly mesh: PlateMesh;
  readonly factor: SymmetricBand;
}

/** Shear stiffness of a plate for each width, κ G t, N/m, of strips along x and along y. */
export interface ShearStiffness {
  readonly x_Npm: number;
  readonly y_Npm: number;
}

/** The membrane of a plate by rectangles of four corners. Loads and supports balance, so that what holds it carries nothing. */
export function shearMembrane(mesh: PlateMesh, { x_Npm, y_Npm }: ShearStiffness): ShearMembrane {
  const { x_m, y_m } = mesh;
  const band = emptyBand(nodeCount(mesh), Math.min(x_m.length, y_m.length) + 1);
  for (let i = 0; i + 1 < x_m.length; i++) {
    const a = (x_m[i + 1] ?? 0) - (x_m[i] ?? 0);
    for (let j = 0; j + 1 < y_m.length; j++) {
      const b = (y_m[j + 1] ?? 0) - (y_m[j] ?? 0);
      const [x, y] = [(x_Npm * b) / a / 6, (y_Npm * a) / b / 6];
      for (let p = 0; p < 4; p++) {
        for (let q = 0; q <= p; q++) {
          const [isAlongX, isAlongY] = [p >> 1 === q >> 1, (p & 1) === (q & 1)];
          const value = (isAlongX ? x : -x) * (isAlongY ? 2 : 1) + (isAlongY ? y : -y) * (isAlongX ? 2 : 1);
          addToBand(band, cornerOf(mesh, i, j, p), cornerOf(mesh, i, j, q), value);
        }
      }
    }
  }
  addToBand(band, 0, 0, x_Npm + y_Npm);
  return { mesh, factor: factorBand(band) };
}

function cornerOf(mesh: PlateMesh, i: number, j: number, corner: number): number {
  return nodeOf(mesh, i + (corner >> 1), j + (corner & 1));
}

/**
 * How much softer shear makes a plate, to first order: the work of its loads and supports on the membrane, over the work of its
 * loads on the plate that only bends. Least work (Castigliano): of all shear forces in balance with the loads those of the
 * membrane do least, so that a little is left out.
 *
 * @param loads what is put on the plate
 * @param supports with what each of them takes on for it, in its own sense, N
 * @param downOf how far a node goes down for it as the plate bends, m
 * @returns share of the movement; 0 where the loads go nowhere
 */
export function shareOfShear(
  { mesh, factor }: ShearMembrane,
  loads: readonly PlateLoad[],
  supports: readonly { readonly support: PlateSupport; readonly force_N: number }[],
  downOf: (node: number) => number,
): number {
  const forces = new Float64Array(nodeCount(mesh));
  for (const load of loads) addLoad(forces, mesh, load);
  const bent_Nm = forces.reduce((sum, force, node) => sum + force * downOf(node), 0);
  for (const { support, force_N } of supports)
    addPoint(forces, mesh, support.x_m, support.y_m, signOf(support) * force_N);
  const sheared = solveBand(factor, Float64Array.from(forces));
  const sheared_Nm = forces.reduce((sum, force, node) => sum + force * (sheared[node] ?? 0), 0);
  return bent_Nm > 0 ? Math.max(0, sheared_Nm) / bent_Nm : 0;
}

function addPoint(forces: Float64Array, mesh: PlateMesh, x_m: number, y_m: number, load_N: number): void {
  const { i, j, s, t } = cellAt(mesh, x_m, y_m);
  for (let corner = 0; corner < 4; corner++) {
    const node = cornerOf(mesh, i, j, corner);
    const share = (corner >> 1 === 1 ? s : 1 - s) * ((corner & 1) === 1 ? t : 1 - t);
    forces[node] = (forces[node] ?? 0) + share * load_N;
  }
}

/** A patch as what does the same work on corners that move straight between them. */
function addLoad(forces: Float64Array, mesh: PlateMesh, load: PlateLoad): void {
  if (load.kind === 'point') {
    addPoint(forces, mesh, load.x_m, load.y_m, load.load_N);
    return;
  }
  const { fromX_m, toX_m, fromY_m, toY_m, load_N } = load;
  const [x, y] = [sharesOf(mesh.x_m, fromX_m, toX_m), sharesOf(mesh.y_m, fromY_m, toY_m)];
  x.forEach((alongX, i) => {
    if (alongX === 0) return;
    y.forEach((alongY, j) => {
      const node = nodeOf(mesh, i, j);
      forces[node] = (forces[node] ?? 0) + alongX * alongY * load_N;
    });
  });
}

/** Which share of an even load from one place to another each line takes. */
function sharesOf(lines: readonly number[], from: number, to: number): Float64Array {
  const shares = new Float64Array(lines.length);
  for (let k = 0; k + 1 < lines.length; k++) {
    const [start, end] = [lines[k] ?? 0, lines[k + 1] ?? 0];
    const length = Math.min(to, end) - Math.max(from, start);
    if (length <= 0) continue;
    const part = length / (to - from);
    const far = ((Math.max(from, start) + Math.min(to, end)) / 2 - start) / (end - start);
    shares[k] = (shares[k] ?? 0) + part * (1 - far);
    shares[k + 1] = (shares[k + 1] ?? 0) + part * far;
  }
  return shares;
}

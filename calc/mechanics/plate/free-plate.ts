import { addToBand, together, type SymmetricBand } from './band.ts';
import { factorBand } from './band-factor.ts';
import { solveBand, solveBandForAll, solveTogether } from './band-solve.ts';
import { loadVector, type PlaceShape, type PlateLoad } from './plate-load.ts';
import { nodeCount, nodeOf, type PlateMesh } from './mesh.ts';
import { perNode, plateMatrix, type PlateBeam, type PlateStiffness } from './stiffness.ts';

/** A plate with its beams, factored once; no support holds it yet. */
export interface FreePlate {
  readonly mesh: PlateMesh;
  readonly stiffness: PlateStiffness;
  readonly factor: SymmetricBand;
}

/**
 * Factors a plate that floats, on three springs.
 *
 * @throws RangeError where the plate's own stiffness is not positive
 */
export function freePlate(
  mesh: PlateMesh,
  stiffness: PlateStiffness,
  beams: readonly PlateBeam[] = [],
): FreePlate {
  return { mesh, stiffness, factor: factorBand(freeMatrix(mesh, stiffness, beams)) };
}

/**
 * The matrix of a plate that floats. Three springs in three corners stop it from drifting while it is solved: they are
 * statically determinate, so whenever loads and support forces balance they carry nothing, and their stiffness does
 * not matter.
 */
export function freeMatrix(
  mesh: PlateMesh,
  stiffness: PlateStiffness,
  beams: readonly PlateBeam[],
): SymmetricBand {
  const band = plateMatrix(mesh, stiffness, beams);
  const [lastX, lastY] = [mesh.x_m.length - 1, mesh.y_m.length - 1];
  const spring = Math.max(stiffness.Dx_Nm, stiffness.Dy_Nm) / Math.max(...mesh.x_m, ...mesh.y_m) ** 2;
  for (const [i, j] of [
    [0, 0],
    [lastX, 0],
    [0, lastY],
  ] as const) {
    const dof = perNode * nodeOf(mesh, i, j);
    addToBand(band, dof, dof, 10 * spring);
  }
  return band;
}

/** Movements under some loads, on the three springs. */
export function fieldUnder({ mesh, factor }: FreePlate, loads: readonly PlateLoad[]): Float64Array {
  return solveBand(factor, loadVector(mesh, loads));
}

/** Movements under each of several loads, solved together. */
export function fieldsUnder(
  { mesh, factor }: FreePlate,
  each: readonly (readonly PlateLoad[])[],
): Float64Array[] {
  return solveBandForAll(
    factor,
    each.map((loads) => loadVector(mesh, loads)),
  );
}

/** Movements under one newton at each of some places, four places side by side at every unknown. */
export function fieldsUnderUnits({ mesh, factor }: FreePlate, places: readonly PlaceShape[]): Float64Array[] {
  const fours: Float64Array[] = [];
  for (let k = 0; k < places.length; k += together) {
    const sides = new Float64Array(together * perNode * nodeCount(mesh));
    places.slice(k, k + together).forEach(({ dofs, values }, side) => {
      dofs.forEach((dof, at) => (sides[together * dof + side] = values[at] ?? 0));
    });
    fours.push(solveTogether(factor, sides));
  }
  return fours;
}

/** Adds a movement of the plate as a whole: down, and its slopes along x and y. */
export function addRigid(
  field: Float64Array,
  mesh: PlateMesh,
  [down_m, slopeX, slopeY]: readonly [number, number, number],
): void {
  mesh.x_m.forEach((x, i) => {
    mesh.y_m.forEach((y, j) => {
      const dof = perNode * nodeOf(mesh, i, j);
      field[dof] = (field[dof] ?? 0) + down_m + slopeX * x + slopeY * y;
      field[dof + 1] = (field[dof + 1] ?? 0) + slopeX;
      field[dof + 2] = (field[dof + 2] ?? 0) + slopeY;
    });
  });
}

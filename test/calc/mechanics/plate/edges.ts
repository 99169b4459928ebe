import { gradedLines } from '../../../../calc/mechanics/plate/mesh.ts';
import { addToBand } from '../../../../calc/mechanics/plate/band.ts';
import { factorBand } from '../../../../calc/mechanics/plate/band-factor.ts';
import { plateMatrix } from '../../../../calc/mechanics/plate/stiffness.ts';
import {
  freePlate,
  heldPlate,
  nodeOf,
  preparedLoad,
  type FreePlate,
  type HeldPlate,
  type PlateLoad,
  type PlateMesh,
  type PlateStiffness,
  type PlateSupport,
  type SolvedPlate,
} from '../../../../calc/mechanics/plate/index.ts';

/** Stiffness of an isotropic plate with D = 1 N·m. */
export function isotropic(nu: number): PlateStiffness {
  return { Dx_Nm: 1, Dy_Nm: 1, D1_Nm: nu, Dxy_Nm: (1 - nu) / 2 };
}

export function evenMesh(length_m: number, depth_m: number, cellsX: number, cellsY: number): PlateMesh {
  const lines = (whole: number, cells: number) =>
    Array.from({ length: cells + 1 }, (_, k) => (whole * k) / cells);
  return { x_m: lines(length_m, cellsX), y_m: lines(depth_m, cellsY) };
}

/** A place that holds both ways, next to rigid. */
export function pinned(x_m: number, y_m: number, give_mpN = 1e-6): PlateSupport[] {
  return (['push', 'pull'] as const).map((sense) => ({ x_m, y_m, sense, give_mpN, most_N: Infinity }));
}

/** All four edges held at every node. */
export function simplySupported(mesh: PlateMesh, stiffness: PlateStiffness): HeldPlate {
  const [length = 0, depth = 0] = [mesh.x_m.at(-1), mesh.y_m.at(-1)];
  const supports = mesh.x_m.flatMap((x) =>
    mesh.y_m.flatMap((y) => (x === 0 || y === 0 || x === length || y === depth ? pinned(x, y) : [])),
  );
  return heldPlate(freePlate(mesh, stiffness), supports);
}

/** An overhang of 1 m, clamped along y = 0: its movements under some loads. */
export function cantilever(
  halfLength_m: number,
  stiffness: PlateStiffness,
  loads: readonly PlateLoad[],
): { readonly plate: FreePlate; readonly field: Float64Array } {
  const mesh = {
    x_m: gradedLines(2 * halfLength_m, [halfLength_m], {
      largest_m: 0.25,
      near: [{ at_m: halfLength_m, size_m: 0.05 }],
    }),
    y_m: gradedLines(1, [], { largest_m: 0.08, near: [{ at_m: 0, size_m: 0.04 }] }),
  };
  const band = plateMatrix(mesh, stiffness, []);
  mesh.x_m.forEach((_, i) => {
    for (let dof = 0; dof < 4; dof++)
      addToBand(band, 4 * nodeOf(mesh, i, 0) + dof, 4 * nodeOf(mesh, i, 0) + dof, 1e10);
  });
  const plate = { mesh, stiffness, factor: factorBand(band) };
  return { plate, field: preparedLoad(plate, loads).field };
}

export function standing(solved: SolvedPlate): Extract<SolvedPlate, { stands: true }> {
  if (!solved.stands) throw new Error(solved.why);
  return solved;
}

import { plateMesh, type PlateMesh, type PlateStiffness } from '../../calc/mechanics/plate/index.ts';

/** A top of 1.8 × 0.9 m on two rails, and the square under a person. */
export const topSize_m = { length_m: 1.8, depth_m: 0.9, thickness_m: 0.038, front_m: 0.6, patch_m: 0.1 };

export const stiffnessOfTop: PlateStiffness = { Dx_Nm: 59e3, Dy_Nm: 3.9e3, D1_Nm: 1.8e3, Dxy_Nm: 3.6e3 };

/** @param finer how much finer than usual, each way */
export function meshOfTop(finer: number): PlateMesh {
  const { length_m, depth_m, thickness_m, front_m } = topSize_m;
  const x = { stops_m: [0.05, 1.75], near_m: [] };
  const y = { stops_m: [front_m], near_m: [front_m] };
  return plateMesh({ length_m, depth_m, thickness_m, x, y }, finer);
}

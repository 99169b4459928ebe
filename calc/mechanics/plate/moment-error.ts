import type { FreePlate } from './free-plate.ts';
import { momentsInCells } from './cell-moments.ts';
import { momentsOf } from './moments.ts';
import { nodeOf } from './mesh.ts';

/**
 * By how much the mesh may be off: the energy of the difference between the moments in the cells and the smoothed
 * ones, as a share of the whole energy, and its root (Zienkiewicz and Zhu, 1987). It falls as the mesh gets finer; the
 * ends of lines of supports keep it larger.
 *
 * @returns share of the moments, 0 … 1; 0 for a plate without moments
 */
export function estimatedError(plate: FreePlate, field: Float64Array): number {
  const { mesh, stiffness } = plate;
  const moments = momentsOf(plate, field);
  const smooth = [moments.x_Nmpm, moments.y_Nmpm, moments.xy_Nmpm];
  const { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm } = stiffness;
  const whole = Dx_Nm * Dy_Nm - D1_Nm ** 2;
  const energy = (x: number, y: number, xy: number): number =>
    (Dy_Nm * x * x - 2 * D1_Nm * x * y + Dx_Nm * y * y) / whole + (xy * xy) / Dxy_Nm;
  let [off, all] = [0, 0];
  momentsInCells(plate, field, (i, j, atGauss) => {
    const area =
      ((mesh.x_m[i + 1] ?? 0) - (mesh.x_m[i] ?? 0)) * ((mesh.y_m[j + 1] ?? 0) - (mesh.y_m[j] ?? 0));
    for (let g = 0; g < 4; g++) {
      const raw = [0, 1, 2].map((kind) => atGauss[4 * kind + g] ?? 0);
      const apart = smooth.map((values, kind) => {
        let sum = 0;
        for (let corner = 0; corner < 4; corner++) {
          const share = (corner >> 1 === g >> 1 ? near : far) * ((corner & 1) === (g & 1) ? near : far);
          sum += share * (values[nodeOf(mesh, i + (corner >> 1), j + (corner & 1))] ?? 0);
        }
        return sum - (raw[kind] ?? 0);
      });
      off += area * energy(apart[0] ?? 0, apart[1] ?? 0, apart[2] ?? 0);
      all += area * energy(raw[0] ?? 0, raw[1] ?? 0, raw[2] ?? 0);
    }
  });
  return all > 0 ? Math.sqrt(off / (all + off)) : 0;
}

/** Share of the nearer and the farther corner at one of Gauss's places. */
const [near, far] = [0.5 + Math.sqrt(3) / 6, 0.5 - Math.sqrt(3) / 6];

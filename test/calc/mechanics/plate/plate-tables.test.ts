import { describe, expect, it } from 'vitest';
import {
  estimatedError,
  momentAt,
  momentsOf,
  preparedLoad,
  solvePlate,
  type PlateStiffness,
} from '../../../../calc/mechanics/plate/index.ts';
import { cantilever, evenMesh, isotropic, simplySupported, standing } from './edges.ts';

/*
 * Clear plates with printed answers. Values of Roark's Formulas for Stress and Strain (cantilever plate of great length,
 * load on the free edge) and of Timoshenko & Woinowsky-Krieger, Table 8, as quoted in the method of this project (memory).
 */
describe('cantilever plate of great length (Roark, ν = 0.3)', () => {
  const half = 5;
  const rootMoments = (at_m: number) => {
    const { plate, field } = cantilever(half, isotropic(0.3), [
      { kind: 'point', x_m: half, y_m: at_m, load_N: 1 },
    ]);
    const moments = momentsOf(plate, field);
    return (along_m: number) => -momentAt(moments, 'y', half + along_m, 0);
  };

  it.each([
    [0, 0.509],
    [0.25, 0.474],
    [0.5, 0.39],
    [1, 0.205],
  ])('load on the free edge: moment at %f overhangs along the root', (along, printed) => {
    expect(Math.abs(rootMoments(1)(along) / printed - 1)).toBeLessThan(0.015);
  });

  it('load at three quarters of the overhang', () => {
    expect(Math.abs(rootMoments(0.75)(0) / 0.428 - 1)).toBeLessThan(0.015);
  });
});

describe('simply supported plates under an even load', () => {
  const evenLoad = (length_m: number, depth_m: number) =>
    ({
      kind: 'patch',
      fromX_m: 0,
      toX_m: length_m,
      fromY_m: 0,
      toY_m: depth_m,
      load_N: length_m * depth_m,
    }) as const;
  const middleOf = (length_m: number, depth_m: number, stiffness: PlateStiffness, cells: number) => {
    const held = simplySupported(evenMesh(length_m, depth_m, cells, cells), stiffness);
    const solved = standing(solvePlate(held, preparedLoad(held.plate, [evenLoad(length_m, depth_m)])));
    const at = [length_m / 2, depth_m / 2] as const;
    const moments = solved.moments();
    return {
      w: solved.movement_m(...at),
      mx: momentAt(moments, 'x', ...at),
      my: momentAt(moments, 'y', ...at),
      error: estimatedError(held.plate, solved.field),
    };
  };

  it('the square: w = 0.00406 qa⁴/D, M = 0.0479 qa² (Timoshenko & Woinowsky-Krieger, Table 8, ν = 0.3)', () => {
    const { w, mx, my } = middleOf(1, 1, isotropic(0.3), 16);
    expect(Math.abs(w - 0.00406)).toBeLessThan(0.00001);
    expect(Math.abs(mx - 0.0479)).toBeLessThan(0.0002);
    expect(Math.abs(my - 0.0479)).toBeLessThan(0.0002);
  });

  it('orthotropic 1.6 × 1: Navier’s series, and the estimate of the error is no smaller than the error', () => {
    const stiffness = { Dx_Nm: 1, Dy_Nm: 8, D1_Nm: 0.35, Dxy_Nm: 0.6 };
    const [a, b] = [1.6, 1];
    const printed = navier(a, b, stiffness);
    const errors = [6, 12].map((cells) => {
      const found = middleOf(a, b, stiffness, cells);
      const off = Math.max(Math.abs(found.mx / printed.mx - 1), Math.abs(found.my / printed.my - 1));
      expect(found.error).toBeLessThan(0.2);
      expect(off).toBeLessThan(found.error);
      if (cells === 12) expect(Math.abs(found.w / printed.w - 1)).toBeLessThan(0.002);
      return found.error;
    });
    expect(errors[1]).toBeLessThan(0.5 * (errors[0] ?? 0));
  });
});

/** Middle of a simply supported orthotropic plate under 1 N/m² (Timoshenko & Woinowsky-Krieger, ch. 11). */
function navier(a: number, b: number, { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm }: PlateStiffness) {
  const H = D1_Nm + 2 * Dxy_Nm;
  let [w, mx, my] = [0, 0, 0];
  for (let m = 1; m < 120; m += 2) {
    for (let n = 1; n < 120; n += 2) {
      const [p, q] = [(m * Math.PI) / a, (n * Math.PI) / b];
      const sign = (m + n) % 4 === 2 ? 1 : -1;
      const term =
        (sign * 16) / (Math.PI ** 2 * m * n * (Dx_Nm * p ** 4 + 2 * H * p * p * q * q + Dy_Nm * q ** 4));
      w += term;
      mx += term * (Dx_Nm * p * p + D1_Nm * q * q);
      my += term * (Dy_Nm * q * q + D1_Nm * p * p);
    }
  }
  return { w, mx, my };
}

import { describe, expect, it } from 'vitest';
import {
  freePlate,
  heldPlate,
  preparedLoad,
  shareOfShear,
  shearMembrane,
  solvePlate,
  type PlateLoad,
} from '../../../../calc/mechanics/plate/index.ts';
import { evenMesh, pinned, standing } from './edges.ts';

/* Strips (no Poisson ratio, alike all across) against beams that bend and shear (Timoshenko): EI 3 N·m² and κGA 40 N for each m. */
const [D, S] = [3, 40];
const mesh = evenMesh(2, 0.5, 40, 4);
const membrane = shearMembrane(mesh, { x_Npm: S, y_Npm: 7 });

/** Of a strip held at some places of its length, by both edges and between. */
function shareUnder(places: readonly number[], load: PlateLoad): number {
  const plate = freePlate(mesh, { Dx_Nm: D, Dy_Nm: 1, D1_Nm: 0, Dxy_Nm: 1 });
  const held = heldPlate(
    plate,
    places.flatMap((x) => mesh.y_m.flatMap((y) => pinned(x, y, 1e-7))),
  );
  const { field, forces_N } = standing(solvePlate(held, preparedLoad(plate, [load])));
  const supports = held.supports.map((support, k) => ({ support, force_N: forces_N[k] ?? 0 }));
  return shareOfShear(membrane, [load], supports, (node) => field[4 * node] ?? 0);
}
const across = (fromX_m: number, toX_m: number): PlateLoad => ({
  ...{ kind: 'patch', fromX_m, toX_m, fromY_m: 0, toY_m: 0.5, load_N: 1 },
});

describe('what shear adds to the movement of a plate that only bends', () => {
  it('of a simple span loaded in the middle: (P L / 4 κGA) / (P L³ / 48 EI)', () => {
    expect(Math.abs(shareUnder([0, 2], across(0.999, 1.001)) / ((12 * D) / (S * 2 ** 2)) - 1)).toBeLessThan(
      0.02,
    );
  });

  it('of an end that hangs out: P a (1 + a/L) / κGA over P a² (L + a) / 3 EI', () => {
    const [a, L] = [0.5, 1.5];
    const [sheared, bent] = [(a * (1 + a / L)) / S, (a ** 2 * (L + a)) / (3 * D)];
    expect(Math.abs(shareUnder([0, 1.5], across(1.999, 2)) / (sheared / bent) - 1)).toBeLessThan(0.02);
  });

  it('of a span under an even load, by the work it does: (∫ V² / κGA) / (∫ M² / EI) is 10 EI / κGA L²', () => {
    expect(Math.abs(shareUnder([0, 2], across(0, 2)) / ((10 * D) / (S * 2 ** 2)) - 1)).toBeLessThan(0.02);
  });

  it('is nothing where nothing moves', () => {
    expect(shareOfShear(membrane, [], [], () => 0)).toBe(0);
  });
});

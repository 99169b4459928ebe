import { describe, expect, it } from 'vitest';
import { factorBand } from '../../../../calc/mechanics/plate/band-factor.ts';
import { plateMatrix } from '../../../../calc/mechanics/plate/stiffness.ts';
import {
  averagedMoment,
  freePlate,
  heldPlate,
  lineSupports,
  momentAt,
  momentsOf,
  movementAt,
  nodeOf,
  plateMesh,
  preparedLoad,
  solvePlate,
} from '../../../../calc/mechanics/plate/index.ts';
import { cantilever, evenMesh, pinned, standing } from './edges.ts';

const stiffness = { Dx_Nm: 3, Dy_Nm: 0.4, D1_Nm: 0.15, Dxy_Nm: 0.3 };
const uneven = { x_m: [0, 0.1, 0.35, 0.5, 0.9, 1.2], y_m: [0, 0.3, 0.38, 0.7, 0.8] };

/** Movement, its slopes and its twist at every node. */
function fieldOf(w: (x: number, y: number) => readonly [number, number, number, number]): Float64Array {
  const field = new Float64Array(4 * uneven.x_m.length * uneven.y_m.length);
  uneven.x_m.forEach((x, i) => {
    uneven.y_m.forEach((y, j) => {
      field.set(w(x, y), 4 * nodeOf(uneven, i, j));
    });
  });
  return field;
}

const at = (x_m: number, y_m: number) => [x_m, y_m] as const;

describe('patch test on an uneven mesh', () => {
  const [kx, ky, kxy] = [0.7, -1.3, 0.4];
  const field = fieldOf((x, y) => [
    (kx * x * x + ky * y * y) / 2 + kxy * x * y,
    kx * x + kxy * y,
    ky * y + kxy * x,
    kxy,
  ]);

  it('constant curvature and twist give constant moments', () => {
    const moments = momentsOf(freePlate(uneven, stiffness), field);
    const { Dx_Nm, Dy_Nm, D1_Nm, Dxy_Nm } = stiffness;
    for (const place of [at(0, 0), at(0.47, 0.33), at(1.2, 0.8)]) {
      expect(momentAt(moments, 'x', ...place)).toBeCloseTo(-(Dx_Nm * kx + D1_Nm * ky), 9);
      expect(momentAt(moments, 'y', ...place)).toBeCloseTo(-(Dy_Nm * ky + D1_Nm * kx), 9);
      expect(momentAt(moments, 'xy', ...place)).toBeCloseTo(-2 * Dxy_Nm * kxy, 9);
    }
  });

  it('curvatures that are straight along a cell, or across it, give their moments at every node', () => {
    // w = a x³ + b y³ + c x³y + d xy³: w_xx = 6 (a x + c xy), w_yy = 6 (b y + d xy).
    const [a, b, c, d] = [0.6, -0.9, 1.1, 0.8];
    const cubic = fieldOf((x, y) => [
      a * x ** 3 + b * y ** 3 + c * x ** 3 * y + d * x * y ** 3,
      3 * a * x * x + 3 * c * x * x * y + d * y ** 3,
      3 * b * y * y + c * x ** 3 + 3 * d * x * y * y,
      3 * c * x * x + 3 * d * y * y,
    ]);
    const moments = momentsOf(freePlate(uneven, stiffness), cubic);
    const { Dx_Nm, Dy_Nm, D1_Nm } = stiffness;
    uneven.x_m.forEach((x, i) => {
      uneven.y_m.forEach((y, j) => {
        const [xx, yy] = [6 * (a * x + c * x * y), 6 * (b * y + d * x * y)];
        const node = nodeOf(uneven, i, j);
        expect(moments.x_Nmpm[node]).toBeCloseTo(-(Dx_Nm * xx + D1_Nm * yy), 9);
        expect(moments.y_Nmpm[node]).toBeCloseTo(-(Dy_Nm * yy + D1_Nm * xx), 9);
      });
    });
  });

  it('needs no force inside the plate', () => {
    const { size, halfWidth, rows } = plateMatrix(uneven, stiffness, []);
    const force = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      for (let j = Math.max(0, i - halfWidth); j <= i; j++) {
        const entry = rows[i * (halfWidth + 1) + halfWidth + j - i] ?? 0;
        force[i] = (force[i] ?? 0) + entry * (field[j] ?? 0);
        if (j < i) force[j] = (force[j] ?? 0) + entry * (field[i] ?? 0);
      }
    }
    for (let i = 1; i + 1 < uneven.x_m.length; i++) {
      for (let j = 1; j + 1 < uneven.y_m.length; j++) {
        for (let d = 0; d < 4; d++) expect(force[4 * nodeOf(uneven, i, j) + d]).toBeCloseTo(0, 9);
      }
    }
  });

  it('a plate pulled at its corners twists evenly: m_xy = P/2 (Timoshenko & Woinowsky-Krieger, art. 11)', () => {
    const plate = freePlate(uneven, stiffness);
    const { field: twisted } = preparedLoad(
      plate,
      [
        [0, 0, 2],
        [1.2, 0, -2],
        [0, 0.8, -2],
        [1.2, 0.8, 2],
      ].map(([x_m = 0, y_m = 0, load_N = 0]) => ({ kind: 'point', x_m, y_m, load_N })),
    );
    const moments = momentsOf(plate, twisted);
    for (const place of [at(0.05, 0.02), at(0.6, 0.4), at(1.1, 0.75)]) {
      expect(momentAt(moments, 'xy', ...place)).toBeCloseTo(-1, 8);
      expect(momentAt(moments, 'x', ...place)).toBeCloseTo(0, 8);
    }
  });

  it('a matrix without a positive pivot is refused', () => {
    expect(() => factorBand(plateMatrix(uneven, stiffness, []))).toThrow('singular');
    expect(() => freePlate(uneven, { ...stiffness, Dy_Nm: -1 })).toThrow('singular');
  });
});

describe('strips and beams', () => {
  it('a strip (ν = 0) loaded along its whole edge is a cantilever beam: PL³/3EI and PL at the root', () => {
    const edge = { kind: 'patch', fromX_m: 0, toX_m: 4, fromY_m: 1 - 1e-6, toY_m: 1, load_N: 4 } as const;
    const { plate, field } = cantilever(2, { ...stiffness, D1_Nm: 0 }, [edge]);
    expect(movementAt(plate.mesh, field, 1.3, 1) * 3 * stiffness.Dy_Nm).toBeCloseTo(1, 4);
    expect(-momentAt(momentsOf(plate, field), 'y', 1.3, 0)).toBeCloseTo(1, 4);
  });

  it('a bar under a strip adds its EI: PL³/48(EI + D b)', () => {
    const mesh = evenMesh(1, 0.02, 8, 2);
    const EI_Nm2 = 0.5;
    const D = { Dx_Nm: 3, Dy_Nm: 3, D1_Nm: 0, Dxy_Nm: 1.5 };
    const plate = freePlate(mesh, D, [{ along: 'x', at_m: 0.01, from_m: 0, to_m: 1, EI_Nm2 }]);
    const held = heldPlate(
      plate,
      [0, 1].flatMap((x) => [0, 0.01, 0.02].flatMap((y) => pinned(x, y))),
    );
    const solved = standing(
      solvePlate(
        held,
        preparedLoad(plate, [
          { kind: 'patch', fromX_m: 0.4999, toX_m: 0.5001, fromY_m: 0, toY_m: 0.02, load_N: 1 },
        ]),
      ),
    );
    const beam = 1 / 48 / (EI_Nm2 + 0.02 * D.Dx_Nm);
    expect(Math.abs(solved.movement_m(0.5, 0.01) / beam - 1)).toBeLessThan(0.003);
  });
});

describe('a top on its rails', () => {
  const outline = {
    length_m: 1.8,
    depth_m: 0.9,
    thickness_m: 0.038,
    x: { stops_m: [0.3, 1.5], near_m: [0.3, 1.5] },
    y: { stops_m: [0, 0.6], near_m: [0.6] },
  };
  const wood = { Dx_Nm: 57e3, Dy_Nm: 4.2e3, D1_Nm: 1.5e3, Dxy_Nm: 3.7e3 };
  const topAt = (finer: number) => {
    const mesh = plateMesh(outline, finer);
    const plate = freePlate(mesh, wood);
    const rail = (at_m: number) =>
      lineSupports(mesh, { along: 'x', at_m, from_m: 0.3, to_m: 1.5, stiffness_Npm2: 5e8 });
    return { plate, held: heldPlate(plate, [...rail(0), ...rail(0.6)]) };
  };
  const weight = { kind: 'patch', fromX_m: 0, toX_m: 1.8, fromY_m: 0, toY_m: 0.9, load_N: 900 } as const;
  const { plate, held } = topAt(1);
  const under = (x_m: number, y_m: number, load_N = 150) =>
    standing(solvePlate(held, preparedLoad(plate, [weight, { kind: 'point', x_m, y_m, load_N }])));

  it('is as much its own mirror image as its mesh is', () => {
    const [left, right] = [under(0.31, 0.85), under(1.49, 0.85)];
    for (const [x, y] of [at(0.2, 0.9), at(0.9, 0.3), at(1.7, 0.8)]) {
      const mirrored = right.movement_m(1.8 - x, y);
      expect(Math.abs(left.movement_m(x, y) - mirrored)).toBeLessThan(
        1e-8 * Math.abs(left.movement_m(0.31, 0.85)),
      );
    }
  });

  it('moves at B under a load at A as at A under a load at B, where nothing lifts', () => {
    const pins = heldPlate(
      plate,
      [
        [0.3, 0],
        [1.5, 0],
        [0.3, 0.6],
        [1.5, 0.6],
      ].flatMap(([x = 0, y = 0]) => pinned(x, y, 1e-6)),
    );
    const from = (x_m: number, y_m: number) =>
      standing(solvePlate(pins, preparedLoad(plate, [{ kind: 'point', x_m, y_m, load_N: 1000 }])));
    const [ab, ba] = [from(0.11, 0.87).movement_m(1.33, 0.21), from(1.33, 0.21).movement_m(0.11, 0.87)];
    expect(Math.abs(ab - ba)).toBeLessThan(1e-8 * Math.abs(ab));
  });

  it('a peak averaged over one thickness at the end of the rail settles as the mesh gets finer', () => {
    const peaks = [1, 2, 2.5].map((finer) => {
      const each = topAt(finer);
      const patch = { kind: 'patch', fromX_m: 0, toX_m: 0.1, fromY_m: 0.5, toY_m: 0.6, load_N: 300 } as const;
      const solved = standing(solvePlate(each.held, preparedLoad(each.plate, [weight, patch])));
      const { x_m, y_m } = each.plate.mesh;
      return averagedMoment(solved.moments(), 'x', [x_m.indexOf(0.3), y_m.indexOf(0.6)], 0.038);
    });
    const [one = 0, two = 0, three = 0] = peaks;
    expect(Math.abs(two / three - 1)).toBeLessThan(0.03);
    expect(Math.abs(one / three - 1)).toBeLessThan(0.1);
  });
});

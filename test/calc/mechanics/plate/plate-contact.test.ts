import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  freePlate,
  heldPlate,
  preparedLoad,
  solvePlate,
  standerOf,
  withSupports,
  type PlateLoad,
  type PlateSupport,
} from '../../../../calc/mechanics/plate/index.ts';
import { evenMesh, standing } from './edges.ts';

const [length_m, depth_m] = [1.8, 0.9];
const plate = freePlate(evenMesh(length_m, depth_m, 10, 6), {
  Dx_Nm: 57e3,
  Dy_Nm: 4.2e3,
  D1_Nm: 1.5e3,
  Dxy_Nm: 3.7e3,
});
const share = fc.integer({ min: 0, max: 1000 }).map((k) => k / 1000);
const place = fc.tuple(share, share).map(([s, t]) => ({ x_m: length_m * s, y_m: depth_m * t }));
const push = place.map((at): PlateSupport => ({ ...at, sense: 'push', give_mpN: 2e-7, most_N: Infinity }));
const screw = fc
  .tuple(place, fc.integer({ min: 50, max: 2000 }))
  .map(([at, most_N]): PlateSupport => ({ ...at, sense: 'pull', give_mpN: 1e-6, most_N }));
const load = fc
  .tuple(place, fc.integer({ min: 100, max: 1500 }))
  .map(([at, load_N]): PlateLoad => ({ kind: 'point', ...at, load_N }));
const supportsIn = fc
  .tuple(fc.array(push, { minLength: 3, maxLength: 14 }), fc.array(screw, { maxLength: 5 }))
  .map(([pushes, screws]) => [...pushes, ...screws]);
const loadsIn = fc.array(load, { minLength: 1, maxLength: 3 });
const runs = { numRuns: 250 };

describe('contact', () => {
  it('every state that is found is the one there is: no force against its sense or above its most, no overlap, balance to 1e-8 (the conditions of Karush, Kuhn and Tucker, which a strictly convex energy meets once)', () => {
    let stood = 0;
    fc.assert(
      fc.property(supportsIn, loadsIn, (supports, loads) => {
        const held = heldPlate(plate, supports);
        const solved = solvePlate(held, preparedLoad(plate, loads));
        if (!solved.stands) return;
        stood++;
        const whole = loads.reduce((sum, { load_N }) => sum + load_N, 0);
        const sums = [0, 0, 0];
        const add = (x_m: number, y_m: number, down_N: number) =>
          [1, x_m, y_m].forEach((lever, k) => (sums[k] = (sums[k] ?? 0) + lever * down_N));
        for (const each of loads) if (each.kind === 'point') add(each.x_m, each.y_m, each.load_N);
        const tolerance_m = 1e-7 * whole * 1e-5 + 1e-8 * Math.abs(solved.movement_m(0, 0));
        held.supports.forEach(({ x_m, y_m, sense, give_mpN, most_N }, index) => {
          const force = solved.forces_N[index] ?? NaN;
          const sign = sense === 'push' ? 1 : -1;
          add(x_m, y_m, -sign * force);
          const pressed_m = sign * solved.movement_m(x_m, y_m) - give_mpN * force;
          expect(force).toBeGreaterThanOrEqual(0);
          expect(force).toBeLessThanOrEqual(most_N * (1 + 1e-9));
          if (force < most_N * (1 - 1e-9)) expect(pressed_m).toBeLessThan(tolerance_m);
          if (force > 1e-7 * whole) expect(pressed_m).toBeGreaterThan(-tolerance_m);
          expect(solved.lifted[index]).toBe(force === 0);
        });
        for (const sum of sums) expect(Math.abs(sum)).toBeLessThan(1e-8 * whole * 2);
      }),
      runs,
    );
    expect(stood).toBeGreaterThan(40);
  });

  it('a top that is only pushed stands where the middle of its load lies between its supports, and nowhere else', () => {
    const seen = { stands: 0, tips: 0 };
    fc.assert(
      fc.property(fc.array(push, { minLength: 3, maxLength: 9 }), load, (supports, each) => {
        if (each.kind !== 'point') return;
        const inside = distanceInside(supports, each);
        if (Math.abs(inside) < 0.01) return;
        const solved = solvePlate(heldPlate(plate, supports), preparedLoad(plate, [each]));
        expect(solved.stands).toBe(inside > 0);
        seen[solved.stands ? 'stands' : 'tips']++;
      }),
      runs,
    );
    expect(Math.min(seen.stands, seen.tips)).toBeGreaterThan(8);
  });

  it.each([
    [0, 0.3096, 1.4364, 0.2205, 0.2916, 0.2925, 0.9108, 0.4248, 0.396, 0.5238],
    [0.0972, 0.3276, 0, 0.4356, 0.7614, 0.1539],
  ])('a corner that no support stands under tips the top', (...places) => {
    // Cases in which rounding, taken for what is left of a stiffness, once held the top.
    const supports = places.flatMap((x_m, k): PlateSupport[] =>
      k % 2 === 0 ? [{ x_m, y_m: places[k + 1] ?? 0, sense: 'push', give_mpN: 2e-7, most_N: Infinity }] : [],
    );
    const corner = preparedLoad(plate, [{ kind: 'point', x_m: 0, y_m: 0, load_N: 100 }]);
    expect(standerOf(heldPlate(plate, supports)).stand(corner)).toStrictEqual({ stands: false });
  });

  it('nearer and nearer to the brink a top turns further, without jumps, until it does not stand', () => {
    const place = (x_m: number, y_m: number): PlateSupport => ({
      x_m,
      y_m,
      sense: 'push',
      give_mpN: 1e-6,
      most_N: Infinity,
    });
    const held = heldPlate(plate, [place(0.4, 0.4), place(1.4, 0.4), place(0.9, 0.1), place(0.9, 0.401)]);
    const turnAt = (beyond_m: number) => {
      const load: PlateLoad = { kind: 'point', x_m: 0.9, y_m: 0.401 + beyond_m, load_N: 1000 };
      const found = standerOf(held).stand(preparedLoad(plate, [load]));
      return found.stands ? Math.abs(found.rigid[2]) : Infinity;
    };
    const turns = [-1e-3, -1e-4, -1e-5, -1e-7, 1e-7, 1e-5, 1e-3].map(turnAt);
    expect(turns.slice(0, 2).every(Number.isFinite)).toBe(true);
    expect(turns.slice(4)).toStrictEqual([Infinity, Infinity, Infinity]);
    expect(turns.every((turn) => turn === Infinity || turn < 1)).toBe(true);
  });

  it('load after load on one stander is what each is alone, in any order', () => {
    fc.assert(
      fc.property(supportsIn, fc.array(loadsIn, { minLength: 2, maxLength: 8 }), (supports, many) => {
        const held = heldPlate(plate, supports);
        const stander = standerOf(held);
        for (const loads of many) {
          const prepared = preparedLoad(plate, loads);
          const [warm, cold] = [stander.stand(prepared), standerOf(held).stand(prepared)];
          expect(warm.stands).toBe(cold.stands);
          if (!warm.stands || !cold.stands) continue;
          const most = Math.max(...cold.forces_N);
          cold.forces_N.forEach((force, k) => {
            expect(Math.abs((warm.forces_N[k] ?? NaN) - force)).toBeLessThan(1e-6 * most);
          });
        }
      }),
      { numRuns: 60 },
    );
  });

  const corners = [
    [0.1, 0.1],
    [1.7, 0.1],
    [0.1, 0.5],
    [1.7, 0.5],
  ].map(([x_m = 0, y_m = 0]): PlateSupport => ({
    x_m,
    y_m,
    sense: 'push',
    give_mpN: 1e-6,
    most_N: Infinity,
  }));
  const atEdge = preparedLoad(plate, [{ kind: 'point', x_m: 0.9, y_m: 0.8, load_N: 500 }]);

  it('adds up where nothing lifts', () => {
    const held = heldPlate(plate, corners);
    const [a, b] = [0.3, 1.2].map((x_m): PlateLoad => ({ kind: 'point', x_m, y_m: 0.3, load_N: 700 }));
    if (a === undefined || b === undefined) throw new Error('two loads');
    const even: PlateLoad = { kind: 'patch', fromX_m: 0, toX_m: 1.8, fromY_m: 0, toY_m: 0.6, load_N: 4000 };
    const at = (...loads: PlateLoad[]) =>
      standing(solvePlate(held, preparedLoad(plate, [even, ...loads]))).movement_m(1.1, 0.7);
    expect(Math.abs(at(a, b) - (at(a) + at(b) - at()))).toBeLessThan(1e-9 * Math.abs(at()));
  });

  it('screws hold a top that tips without them, until they bear no more; words say what is missing', () => {
    const screwed = (most_N: number) =>
      heldPlate(plate, [
        ...corners,
        ...[0.1, 1.7].map((x_m): PlateSupport => ({ x_m, y_m: 0.1, sense: 'pull', give_mpN: 1e-6, most_N })),
      ]);
    // By hand: 500 N · 0.3 m over 0.4 m is 375 N, half of it on each screw.
    const held = screwed(200);
    const solved = standing(solvePlate(held, atEdge));
    expect(solved.forces_N[4]).toBeCloseTo(187.5, 6);
    expect(solved.forces_N[5]).toBeCloseTo(187.5, 6);
    expect(solvePlate(screwed(180), atEdge)).toStrictEqual({
      stands: false,
      why: 'the screws bear no more: nothing stops the top from tipping',
    });
    const loose = withSupports(held, ({ sense }) => sense === 'push');
    expect(solvePlate(loose, atEdge)).toMatchObject({
      why: expect.stringContaining('beyond all that holds') as unknown,
    });
    const inLine = withSupports(held, ({ y_m, sense }) => y_m === 0.5 && sense === 'push');
    expect(solvePlate(inLine, atEdge)).toMatchObject({
      why: expect.stringContaining('on one line') as unknown,
    });
    expect(solvePlate(heldPlate(plate, []), atEdge)).toMatchObject({ why: 'nothing holds the top up' });
    const screwAtEdge = (y_m: number, most_N: number): PlateSupport => ({
      x_m: 0.9,
      y_m,
      sense: 'pull',
      give_mpN: 1e-6,
      most_N,
    });
    const screwedAt = (y_m: number, most_N = 1e6) => heldPlate(plate, [...corners, screwAtEdge(y_m, most_N)]);
    expect(solvePlate(screwedAt(0.7), atEdge)).toMatchObject({
      why: expect.stringContaining('no screw lies where it would help') as unknown,
    });
    const lifted = preparedLoad(plate, [{ kind: 'point', x_m: 0.9, y_m: 0.3, load_N: -500 }]);
    expect(solvePlate(loose, lifted)).toMatchObject({ why: 'nothing holds the top down' });
    expect(solvePlate(screwedAt(0.7), lifted)).toMatchObject({
      why: expect.stringContaining('no screw lies where it would help') as unknown,
    });
  });

  it('a support with next to no give is refused, not lost in rounding', () => {
    const stiff = corners.map((each) => ({ ...each, give_mpN: 1e-15 }));
    expect(() => heldPlate(plate, stiff)).toThrow('every support gives a little');
  });
});

/** How far a place lies inside the hull of some others, m; less than zero outside. */
function distanceInside(
  hull: readonly { x_m: number; y_m: number }[],
  { x_m, y_m }: { x_m: number; y_m: number },
): number {
  // The hull's support function against the place, in many directions.
  let least = Infinity;
  for (let k = 0; k < 3600; k++) {
    const [c, s] = [Math.cos((k * Math.PI) / 1800), Math.sin((k * Math.PI) / 1800)];
    const far = Math.max(...hull.map((each) => c * each.x_m + s * each.y_m));
    least = Math.min(least, far - (c * x_m + s * y_m));
  }
  return least;
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baysOf } from '../../calc/mechanics/bays.ts';
import { prepareBeam, solveSupports } from '../../calc/mechanics/beam.ts';
import { influenceOf } from '../../calc/mechanics/influence.ts';
import { valueAt } from '../../calc/mechanics/polynomial.ts';
import { beamOf, solved } from '../calc/mechanics/solved-beam.ts';

/* What must hold for every beam, whatever it carries (engineering mechanics). Lengths come on a grid of centimetres. */
const centimetres = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => n / 100);

const anyBeam = fc
  .record({
    left: fc.oneof(fc.constant(0), centimetres(2, 40)),
    spans: fc.array(centimetres(15, 120), { minLength: 1, maxLength: 5 }),
    right: fc.oneof(fc.constant(0), centimetres(2, 40)),
    springs: fc.array(fc.oneof(fc.constant(Infinity), fc.integer({ min: 2000, max: 200_000 })), {
      minLength: 6,
      maxLength: 6,
    }),
    EI_Nm2: fc.integer({ min: 200, max: 9000 }),
    GA_N: fc.oneof(fc.constant(Infinity), fc.integer({ min: 20_000, max: 4_000_000 })),
    places: fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 4, maxLength: 4 }),
    amounts: fc.array(fc.integer({ min: -200, max: 400 }), { minLength: 2, maxLength: 2 }),
  })
  .map(({ left, spans, right, springs, places, amounts, ...stiffness }) => {
    let x = left;
    const at = [left, ...spans.map((span) => (x = Math.round((x + span) * 100) / 100))];
    const length_m = Math.round((x + right) * 100) / 100;
    const supports = at.map((at_m, i) => ({ at_m, stiffness_Npm: springs[i] ?? Infinity }));
    const [p = 0, q = 0, r = 0, s = 0] = places.map((share) => (share / 1000) * length_m);
    const lines =
      p === q ? [] : [{ from_m: Math.min(p, q), to_m: Math.max(p, q), load_Npm: amounts[0] ?? 0 }];
    const points = [{ at_m: r, load_N: amounts[1] ?? 0 }];
    return { beam: { ...stiffness, length_m, supports }, load: { lines, points }, probe: s };
  });
const runs = { numRuns: 60 };
const close = (a: number, b: number, scale: number): void => {
  if (!(Math.abs(a - b) <= 1e-8 * Math.max(1, scale))) throw new Error(`${a} is not ${b} beside ${scale}`);
};

describe('every beam', () => {
  it('is in equilibrium: forces, and moments about its left end', () => {
    fc.assert(
      fc.property(anyBeam, ({ beam, load }) => {
        const { reactions } = solved(beam, load);
        const all = [
          ...load.lines.map(({ from_m, to_m, load_Npm }) => ({
            force: load_Npm * (to_m - from_m),
            at: (from_m + to_m) / 2,
          })),
          ...load.points.map(({ at_m, load_N }) => ({ force: load_N, at: at_m })),
        ];
        const size = all.reduce((sum, { force }) => sum + Math.abs(force), 0) * 10;
        close(
          reactions.reduce((a, b) => a + b, 0),
          all.reduce((sum, { force }) => sum + force, 0),
          size,
        );
        close(
          reactions.reduce((sum, R, i) => sum + R * (beam.supports[i]?.at_m ?? NaN), 0),
          all.reduce((sum, { force, at }) => sum + force * at, 0),
          size * beam.length_m,
        );
      }),
      runs,
    );
  });

  it('superposes: two loads do what each does, added; twice the load does twice as much', () => {
    fc.assert(
      fc.property(anyBeam, ({ beam, load, probe }) => {
        const both = solved(beam, load);
        const apart = [solved(beam, { lines: load.lines }), solved(beam, { points: load.points })];
        const twice = solved(beam, {
          points: load.points.map(({ at_m, load_N }) => ({ at_m, load_N: 2 * load_N })),
        });
        for (const key of ['movement', 'moment'] as const) {
          const parts = apart.map((each) => each[key](probe));
          const scale = Math.max(...parts.map(Math.abs));
          close(
            both[key](probe),
            parts.reduce((a, b) => a + b, 0),
            scale,
          );
          close(twice[key](probe), 2 * (parts[1] ?? NaN), scale);
        }
      }),
      runs,
    );
  });

  it('mirrors: the mirrored beam under the mirrored load does the mirrored thing', () => {
    fc.assert(
      fc.property(anyBeam, ({ beam, load, probe }) => {
        const L = beam.length_m;
        const mirrored = solved(
          {
            ...beam,
            supports: [...beam.supports].reverse().map((each) => ({ ...each, at_m: L - each.at_m })),
          },
          {
            lines: load.lines.map(({ from_m, to_m, load_Npm }) => ({
              from_m: L - to_m,
              to_m: L - from_m,
              load_Npm,
            })),
            points: load.points.map(({ at_m, load_N }) => ({ at_m: L - at_m, load_N })),
          },
        );
        const straight = solved(beam, load);
        const scale = Math.max(1, ...straight.reactions.map(Math.abs));
        [...mirrored.reactions].reverse().forEach((R, i) => close(R, straight.reactions[i] ?? NaN, scale));
        close(mirrored.movement(L - probe), straight.movement(probe), 1);
        close(mirrored.moment(L - probe), straight.moment(probe), scale);
      }),
      runs,
    );
  });

  it('is reciprocal (Maxwell): a unit load at a moves b as one at b moves a', () => {
    fc.assert(
      fc.property(anyBeam, ({ beam, load, probe }) => {
        const a = load.points[0]?.at_m ?? 0;
        const there = solved(beam, { points: [{ at_m: a, load_N: 1000 }] }).movement(probe);
        const back = solved(beam, { points: [{ at_m: probe, load_N: 1000 }] }).movement(a);
        close(there, back, Math.max(Math.abs(there), Math.abs(back)));
      }),
      runs,
    );
  });

  it('stores no less energy when it is softer: a load sinks further under itself', () => {
    fc.assert(
      fc.property(anyBeam, ({ beam, load }) => {
        const points = [{ at_m: load.points[0]?.at_m ?? 0, load_N: 100 }];
        const sinks = (more: object): number =>
          solved({ ...beam, ...more }, { points }).movement(points[0]?.at_m ?? 0);
        const stiff = sinks({});
        expect(stiff).toBeGreaterThanOrEqual(-1e-12);
        expect(sinks({ EI_Nm2: beam.EI_Nm2 * 0.8 })).toBeGreaterThanOrEqual(stiff * (1 - 1e-9) - 1e-12);
        expect(sinks({ GA_N: Math.min(beam.GA_N, 1e9) * 0.8 })).toBeGreaterThanOrEqual(
          stiff * (1 - 1e-9) - 1e-12,
        );
      }),
      runs,
    );
  });

  it('answers a moving load with the cubics of its influence lines', () => {
    fc.assert(
      fc.property(anyBeam, fc.integer({ min: 0, max: 100 }), ({ beam }, hundredth) => {
        const prepared = prepareBeam(beamOf(beam), []);
        const bays = baysOf(prepared);
        influenceOf(prepared, bays).forEach(({ bay, reactions, moments }) => {
          const s = ((bay.to_m - bay.from_m) * hundredth) / 100;
          const direct = solveSupports(prepared, {
            lines: [],
            points: [{ at_m: bay.from_m + s, load_N: 1 }],
          });
          reactions.forEach((line, i) => close(valueAt(line, s), direct.reactions_N[i] ?? NaN, 10));
          moments.forEach((line, i) => close(valueAt(line, s), direct.moments_Nm[i] ?? NaN, 10));
        });
      }),
      runs,
    );
  });

  it('needs two supports, in order', () => {
    expect(() => prepareBeam(beamOf({ length_m: 1, supports: [0.5] }), [])).toThrow(RangeError);
    expect(() => prepareBeam(beamOf({ length_m: 1, supports: [0.5, 0.2] }), [])).toThrow(RangeError);
    expect(() => prepareBeam(beamOf({ length_m: 1, supports: [0.5, 0.5] }), [])).toThrow(RangeError);
  });
});

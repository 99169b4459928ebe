import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fasteners } from '../../calc/catalogue/index.ts';
import type { Fixing, Ground } from '../../calc/elements/fixing/fixing.ts';
import { fixingCheckOf, screwMetalCheck } from '../../calc/elements/fixing/fixing-checks.ts';
import { capacityOf, solveFixing } from '../../calc/elements/fixing/solve.ts';
import { toeOf } from '../../calc/elements/fixing/toe.ts';

type Wood = Extract<Ground, { kind: 'wood' }>;

const wood: Wood = {
  kind: 'wood',
  G: 0.42,
  angle_deg: 0,
  grain: 'side',
  depth_m: 0.2,
  width_m: 0.038,
  E_Pa: 7e9,
};

/** A plate with two screws far apart; what a screw can take depends on nothing else of the plate. */
function plate(more: Partial<Fixing>): Fixing {
  return {
    system: 'metric',
    plate: { height_m: 0.3, width_m: 0.04, thickness_m: 0.004 },
    fastener: null,
    allowable: null,
    length_m: 0.08,
    thread_m: 0.05,
    driven: 'straight',
    heights_m: [0.28, 0.02],
    perHeight: 1,
    across_m: 0,
    gap_m: 0.0125,
    ground: wood,
    blockingHeight_m: null,
    moisture: 'dry',
    temperature: 'ordinary',
    coveringBearing_Pa: null,
    ...more,
  };
}

/** Pull and shear one screw can take; nothing where nothing is permitted. */
function strengths(fixing: Fixing): readonly [number, number] {
  const capacity = capacityOf(fixing, 1);
  return capacity.outcome === 'worked' ? [capacity.withdrawal_N, capacity.lateral_N] : [0, 0];
}

const anyFastener = fc.constantFrom(...fasteners);
const lengths = fc.integer({ min: 20, max: 200 }).map((mm) => mm / 1000);
const gaps = fc.integer({ min: 0, max: 60 }).map((mm) => mm / 1000);
const gravities = fc.integer({ min: 31, max: 73 }).map((percent) => percent / 100);
const angles = fc.constantFrom(0 as const, 90 as const);
const runs = { numRuns: 300 };

/** That no strength falls, but for the last digits. */
function neverLess(less: readonly [number, number], more: readonly [number, number]): void {
  less.forEach((value, index) => expect(more[index] ?? NaN).toBeGreaterThanOrEqual(value * (1 - 1e-9)));
}

describe('one screw', () => {
  it('is never weaker for being longer, its thread longer by as much', () => {
    fc.assert(
      fc.property(
        anyFastener,
        lengths,
        lengths,
        gaps,
        angles,
        (fastener, length_m, more_m, gap_m, angle_deg) => {
          const of = (each: number): readonly [number, number] =>
            strengths(
              plate({
                fastener,
                gap_m,
                length_m: each,
                thread_m: each - length_m / 3,
                ground: { ...wood, angle_deg, depth_m: 1 },
              }),
            );
          neverLess(of(length_m), of(length_m + more_m));
        },
      ),
      runs,
    );
  });

  it('is never stronger for a thicker covering', () => {
    fc.assert(
      fc.property(
        anyFastener,
        lengths,
        gaps,
        gaps,
        angles,
        (fastener, length_m, gap_m, more_m, angle_deg) => {
          const of = (each: number): readonly [number, number] =>
            strengths(
              plate({ fastener, length_m, thread_m: length_m, gap_m: each, ground: { ...wood, angle_deg } }),
            );
          neverLess(of(gap_m + more_m), of(gap_m));
        },
      ),
      runs,
    );
  });

  it('is never weaker in heavier wood', () => {
    fc.assert(
      fc.property(
        anyFastener,
        lengths,
        gravities,
        gravities,
        angles,
        (fastener, length_m, a, b, angle_deg) => {
          const of = (G: number): readonly [number, number] =>
            strengths(
              plate({ fastener, length_m, thread_m: length_m / 2, ground: { ...wood, angle_deg, G } }),
            );
          neverLess(of(Math.min(a, b)), of(Math.max(a, b)));
        },
      ),
      runs,
    );
  });

  it('changes little where length, covering or wood change little, while it stands deep enough for shear', () => {
    fc.assert(
      fc.property(anyFastener, lengths, gaps, gravities, (fastener, length_m, gap_m, G) => {
        const tiny = 1e-7;
        const base = plate({ fastener, length_m, thread_m: length_m * 0.6, gap_m, ground: { ...wood, G } });
        const [W, Z] = strengths(base);
        fc.pre(Z > 0);
        for (const near of [
          { ...base, length_m: length_m + tiny, thread_m: length_m * 0.6 + tiny },
          { ...base, gap_m: gap_m + tiny },
          { ...base, ground: { ...wood, G: G + tiny } },
        ]) {
          const [W_near, Z_near] = strengths(near);
          fc.pre(Z_near > 0);
          expect(Math.abs(W_near - W)).toBeLessThan(1e-3 * (W + 100));
          expect(Math.abs(Z_near - Z)).toBeLessThan(1e-3 * Z + 0.05);
        }
      }),
      runs,
    );
  });
});

describe('a plate of screws', () => {
  const forces = fc.integer({ min: 0, max: 2000 });

  it('is never used less under more of anything, and never less than pull or shear alone', () => {
    fc.assert(
      fc.property(anyFastener, forces, forces, forces, forces, (fastener, shear_N, pull_N, couple, more) => {
        const fixing = plate({ fastener, length_m: 0.15, thread_m: 0.1 });
        const capacity = capacityOf(fixing, 1);
        const used = (shear: number, pull: number, couple_Nm: number): number => {
          const load = { shear_N: shear, pull_N: pull, couple_Nm, duration: 'permanent', C_D: 1 } as const;
          const { ratios, outcome } = solveFixing(fixing, load, capacity, toeOf(fixing, { couple_Nm }));
          if (outcome !== 'worked') return Infinity;
          return Math.max(ratios.withdrawal ?? NaN, ratios.lateral ?? NaN, ratios.combined ?? NaN);
        };
        const before = used(shear_N, pull_N, couple / 20);
        for (const after of [
          used(shear_N + more, pull_N, couple / 20),
          used(shear_N, pull_N + more, couple / 20),
          used(shear_N, pull_N, (couple + more) / 20),
        ]) {
          expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-9));
        }
      }),
      runs,
    );
  });

  it('never looks better under more of a couple on a covering that crushes', () => {
    const place = { where: '', combination: '' };
    const severity = { holds: 0, 'cannot-say': 1, 'does-not-hold': 2 };
    fc.assert(
      fc.property(
        anyFastener,
        fc.integer({ min: 5, max: 2000 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 100 }),
        (fastener, kPa, couple, more) => {
          const fixing = plate({ fastener, length_m: 0.15, thread_m: 0.1, coveringBearing_Pa: kPa * 1000 });
          const capacity = capacityOf(fixing, 1);
          const under = (couple_Nm: number) => {
            const load = { shear_N: 0, pull_N: 0, couple_Nm, duration: 'permanent', C_D: 1 } as const;
            const toe = toeOf(fixing, load);
            const answer = solveFixing(fixing, load, capacity, toe);
            const [metal] = screwMetalCheck(fixing, toe, load, place);
            if (metal === undefined) throw new Error('screws of the tables have a metal');
            return [fixingCheckOf(fixing, answer, load, place).check, metal.check] as const;
          };
          const [light, heavy] = [under(couple / 2), under((couple + more) / 2)];
          light.forEach((before, index) => {
            const after = heavy[index];
            if (after === undefined) throw new Error('two checks');
            expect(severity[after.outcome]).toBeGreaterThanOrEqual(severity[before.outcome]);
            expect(after.ratio ?? Infinity).toBeGreaterThanOrEqual((before.ratio ?? Infinity) * (1 - 1e-6));
          });
        },
      ),
      runs,
    );
  });
});

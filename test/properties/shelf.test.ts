import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import type { BracketShelfInput } from '../../shared/check-document/index.ts';
import { shelf, type Load } from '../calc/elements/documents.ts';

/* What must hold for every shelf. Lengths come in millimetres, so that a mirrored place is the same number. */
const mm = (n: number): string => `${n} mm`;
const durations = ['permanent', 'ten-years', 'two-months', 'seven-days', 'ten-minutes'] as const;

interface Plan {
  readonly length: number;
  readonly positions: readonly number[];
  readonly depth: number;
  readonly thickness: number;
  readonly arm: number;
  readonly hold: 'screwed' | 'resting';
  readonly loads: readonly PlanLoad[];
}
interface PlanLoad {
  readonly kind: 'line' | 'point' | 'roaming';
  readonly amount: number;
  readonly places: readonly [number, number];
  readonly duration: (typeof durations)[number];
  readonly free: boolean;
  readonly sustained: number;
  readonly front: boolean;
}

const anyLoad: fc.Arbitrary<PlanLoad> = fc.record({
  kind: fc.constantFrom('line', 'point', 'roaming'),
  amount: fc.integer({ min: 5, max: 200 }),
  places: fc.tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 100 })),
  duration: fc.constantFrom(...durations),
  free: fc.boolean(),
  sustained: fc.integer({ min: 0, max: 10 }).map((n) => n / 10),
  front: fc.boolean(),
});

const planWith = (hold: fc.Arbitrary<'screwed' | 'resting'>): fc.Arbitrary<Plan> =>
  fc
    .record({
      left: fc.oneof(fc.constant(0), fc.integer({ min: 30, max: 250 })),
      spans: fc.array(fc.integer({ min: 300, max: 900 }), { minLength: 1, maxLength: 3 }),
      right: fc.oneof(fc.constant(0), fc.integer({ min: 30, max: 250 })),
      depth: fc.integer({ min: 150, max: 300 }),
      thickness: fc.integer({ min: 15, max: 40 }),
      arm: fc.integer({ min: 60, max: 100 }),
      hold,
      loads: fc.array(anyLoad, { maxLength: 3 }),
    })
    .map(({ left, spans, right, arm, ...others }) => {
      let x = left;
      const positions = [left, ...spans.map((span) => (x += span))];
      return { ...others, positions, length: x + right, arm: Math.round((others.depth * arm) / 100) };
    });
const anyPlan = planWith(fc.constantFrom('screwed', 'resting'));
const screwedPlan = planWith(fc.constant('screwed'));

function written({ kind, amount, places, duration, free, sustained, front }: PlanLoad, plan: Plan): Load {
  const arrangement = free ? 'free' : 'fixed';
  const [a, b] = places.map((share) => Math.round((share / 100) * plan.length));
  const stands = front ? { eccentricity: mm(plan.depth) } : {};
  if (kind === 'roaming') return { kind, amount: `${amount} N`, duration, sustained };
  if (kind === 'point')
    return { kind, amount: `${amount} N`, at: mm(a ?? 0), duration, arrangement, sustained, ...stands };
  const [from, to] = [Math.min(a ?? 0, b ?? 0), Math.max(a ?? 0, b ?? 0)];
  const ends = from < to ? { from: mm(from), to: mm(to) } : {};
  return { kind, amount: `${amount} N/m`, duration, arrangement, sustained, ...ends, ...stands };
}

function documentOf(plan: Plan, changes: Partial<BracketShelfInput> = {}): BracketShelfInput {
  return {
    ...shelf({
      board: { length: mm(plan.length), depth: mm(plan.depth), thickness: mm(plan.thickness) },
      brackets: {
        positions: plan.positions.map(mm),
        arm: mm(plan.arm),
        armWidth: '20 mm',
        hold: plan.hold,
        capacity: { basis: 'rated', allowable: '600 N', at: mm(Math.round(plan.depth / 2)) },
      },
      loads: plan.loads.map((load) => written(load, plan)),
    }),
    ...changes,
  };
}

const ratios = (result: CheckResult): (readonly [string, number | null])[] =>
  result.checks.map(({ id, ratio }) => [id, ratio] as const);
const runs = { numRuns: 20 };

/** Every ratio of the second shelf is at least that of the first, check by check. */
function noneIsLower(lighter: CheckResult, heavier: CheckResult, ids?: readonly string[]): void {
  for (const check of lighter.checks) {
    if (ids !== undefined && !ids.includes(check.id)) continue;
    const other = heavier.checks.find(({ id }) => id === check.id);
    if (other === undefined) throw new Error(`${check.id} is gone`);
    if (check.ratio === null) {
      expect(other.outcome === 'does-not-hold' || check.outcome === 'cannot-say', check.id).toBe(true);
    } else if (other.ratio !== null) {
      expect(other.ratio, check.id).toBeGreaterThanOrEqual(check.ratio * (1 - 1e-6) - 1e-9);
    }
  }
}

/** Without ways out, which nothing here looks at but that they are the same every time. */
const judged = (document: BracketShelfInput) => check(document, { waysOut: false });

describe('every shelf', () => {
  it('holds only if every check does, with a ratio of 1 or less', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const result = judged(documentOf(plan));
        const outcomes = result.checks.map(({ outcome }) => outcome);
        for (const { outcome, ratio, demand, capacity } of result.checks) {
          if (outcome === 'holds') expect(ratio).toBeLessThanOrEqual(1);
          if (ratio !== null && ratio > 1) expect(outcome).toBe('does-not-hold');
          if (ratio !== null && capacity !== null)
            expect((demand?.value ?? NaN) / capacity.value).toBeCloseTo(ratio, 9);
          if (ratio !== null) expect(Number.isFinite(ratio)).toBe(true);
        }
        const expected = outcomes.includes('does-not-hold')
          ? 'does-not-hold'
          : outcomes.includes('cannot-say')
            ? 'cannot-say'
            : 'holds';
        expect(result.verdict).toBe(expected);
      }),
      runs,
    );
  });

  it('is the same every time, and in either system of units', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const document = documentOf(plan);
        const result = check(document);
        expect(JSON.stringify(check(structuredClone(document)))).toBe(JSON.stringify(result));
        expect(ratios(check({ ...document, units: 'metric' }))).toEqual(ratios(result));
      }),
      runs,
    );
  });

  it('mirrored gives mirrored results', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const mirrored: Plan = {
          ...plan,
          positions: plan.positions.map((x) => plan.length - x).reverse(),
        };
        const flip = (load: Load): Load => {
          if (load.kind === 'point') return { ...load, at: mm(plan.length - Number.parseInt(load.at, 10)) };
          if (load.kind !== 'line' || load.from === undefined || load.to === undefined) return load;
          return {
            ...load,
            from: mm(plan.length - Number.parseInt(load.to, 10)),
            to: mm(plan.length - Number.parseInt(load.from, 10)),
          };
        };
        const straight = documentOf(plan);
        const [a, b] = [
          judged(straight),
          judged({ ...documentOf(mirrored), loads: straight.loads?.map(flip) }),
        ];
        const same = (x: number, y: number, scale: number): void =>
          expect(Math.abs(x - y)).toBeLessThanOrEqual(1e-6 * scale + 1e-12);
        const heaviest = Math.max(...a.analysis.supports.map(({ reaction }) => reaction.max.value));
        [...b.analysis.supports].reverse().forEach(({ reaction }, i) => {
          same(reaction.max.value, a.analysis.supports[i]?.reaction.max.value ?? NaN, heaviest);
          same(reaction.min.value, a.analysis.supports[i]?.reaction.min.value ?? NaN, heaviest);
        });
        [...b.analysis.deflection.bays].reverse().forEach((bay, i) => {
          const other = a.analysis.deflection.bays[i];
          same(bay.live.value, other?.live.value ?? NaN, a.analysis.deflection.longTerm.value);
          same(bay.longTerm.value, other?.longTerm.value ?? NaN, a.analysis.deflection.longTerm.value);
          same(bay.twist.value, other?.twist.value ?? NaN, 1e-3);
        });
        expect(b.verdict).toBe(a.verdict);
        ratios(b).forEach(([id, ratio], i) => {
          expect(id).toBe(ratios(a)[i]?.[0]);
          if (ratio !== null) same(ratio, ratios(a)[i]?.[1] ?? NaN, Math.max(1, ratio));
        });
      }),
      runs,
    );
  });

  it('under fixed loads only, has no range: the largest reaction is the smallest', () => {
    fc.assert(
      fc.property(screwedPlan, (plan) => {
        const loads = plan.loads
          .filter(({ kind }) => kind !== 'roaming')
          .map((load) => ({ ...load, free: false }));
        const { analysis } = judged(documentOf({ ...plan, loads }));
        const heaviest = Math.max(...analysis.supports.map(({ reaction }) => Math.abs(reaction.max.value)));
        for (const { reaction } of analysis.supports) {
          expect(Math.abs(reaction.max.value - reaction.min.value)).toBeLessThanOrEqual(1e-9 * heaviest);
        }
      }),
      runs,
    );
  });

  it('the same load free to come and go is never easier than fixed', () => {
    fc.assert(
      fc.property(screwedPlan, (plan) => {
        const set = (free: boolean): CheckResult =>
          judged(documentOf({ ...plan, loads: plan.loads.map((load) => ({ ...load, free })) }));
        noneIsLower(set(false), set(true));
      }),
      runs,
    );
  });

  it('more of a free load never lowers a ratio', () => {
    fc.assert(
      fc.property(screwedPlan, fc.integer({ min: 0, max: 2 }), (plan, which) => {
        const loads = plan.loads.map((load) => ({ ...load, free: true }));
        const more = loads.map((load, i) => (i === which ? { ...load, amount: load.amount * 2 } : load));
        noneIsLower(judged(documentOf({ ...plan, loads })), judged(documentOf({ ...plan, loads: more })));
      }),
      runs,
    );
  });

  it('one more free load of a duration that is there never lowers a ratio', () => {
    fc.assert(
      fc.property(screwedPlan, anyLoad, (plan, extra) => {
        const loads = plan.loads.map((load) => ({ ...load, free: true }));
        const duration = loads[0]?.duration ?? 'permanent';
        if (loads.length === 0) return;
        const more = [...loads, { ...extra, free: true, duration }];
        noneIsLower(judged(documentOf({ ...plan, loads })), judged(documentOf({ ...plan, loads: more })));
      }),
      runs,
    );
  });

  it('a thicker board never moves more under the same loads', () => {
    fc.assert(
      fc.property(screwedPlan, (plan) => {
        const live = (thickness: number): number[] =>
          judged(documentOf({ ...plan, thickness })).analysis.deflection.bays.map(
            ({ live: moved, twist }) => moved.value + twist.value,
          );
        const thin = live(plan.thickness);
        live(plan.thickness + 3).forEach((moved, i) =>
          expect(moved).toBeLessThanOrEqual((thin[i] ?? NaN) * (1 + 1e-9) + 1e-12),
        );
      }),
      runs,
    );
  });

  it('the more of a load stays, the more a simple span sags over the years', () => {
    fc.assert(
      fc.property(screwedPlan, (plan) => {
        const [first = 0, second = 0] = plan.positions;
        const simple: Plan = { ...plan, positions: [0, second - first], length: second - first };
        const sag = (sustained: number): number =>
          judged(documentOf({ ...simple, loads: plan.loads.map((load) => ({ ...load, sustained })) }))
            .analysis.deflection.longTerm.value;
        expect(sag(0.7)).toBeGreaterThanOrEqual(sag(0.2) * (1 - 1e-9));
        expect(sag(1)).toBeGreaterThanOrEqual(sag(0.7) * (1 - 1e-9));
      }),
      runs,
    );
  });

  it('a load that lasts longer never raises a strength', () => {
    fc.assert(
      fc.property(screwedPlan, (plan) => {
        const at = (duration: (typeof durations)[number]): CheckResult =>
          judged(documentOf({ ...plan, loads: plan.loads.map((load) => ({ ...load, duration })) }));
        const results = [...durations].reverse().map(at);
        results.slice(1).forEach((longer, i) => {
          const shorter = results[i];
          if (shorter !== undefined)
            noneIsLower(shorter, longer, [
              'bending',
              'shear',
              'bearing',
              'bracket',
              'deflection-live',
              'board-screws',
            ]);
        });
      }),
      { numRuns: 12 },
    );
  });

  it('a strip of the same wood glued to the front never makes the board less stiff', () => {
    fc.assert(
      fc.property(
        screwedPlan,
        fc.integer({ min: 10, max: 80 }),
        fc.integer({ min: 10, max: 40 }),
        fc.constantFrom('top', 'bottom'),
        (plan, height, thickness, flush) => {
          const bare = documentOf({ ...plan, loads: [] });
          const EI = (board: BracketShelfInput['board']): number =>
            judged({ ...bare, board }).analysis.stiffness.EI.value;
          const nosing = { height: mm(height), thickness: mm(thickness), flush } as const;
          expect(EI({ ...bare.board, nosing })).toBeGreaterThanOrEqual(EI(bare.board) * (1 - 1e-9));
        },
      ),
      runs,
    );
  });
});

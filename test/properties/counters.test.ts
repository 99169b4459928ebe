import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import type { CounterOverhangInput, CounterRunInput } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import { expectSound } from './expect-sound.ts';

/* Laws that hold for counters of any size: nothing here is a number of our own. A check takes a while: few runs each. */

const few = { numRuns: 8 };
const timeout = 120_000;

const inches = (least: number, most: number) =>
  fc.integer({ min: 2 * least, max: 2 * most }).map((n) => n / 2);
const chance = fc.record({
  length: inches(30, 80),
  depth: inches(26, 40),
  base: inches(16, 24),
  thickness: fc.constantFrom(1, 1.5, 1.75, 2.5),
  inset: inches(0, 8),
  person: fc.integer({ min: 50, max: 300 }),
  staves: fc.constantFrom('along' as const, 'across' as const),
  weight: fc.integer({ min: 50, max: 400 }),
  prop: fc.constantFrom('none', 'leg', 'bracket', 'flat-bar'),
  isHeld: fc.boolean(),
});
type Chance = typeof chance extends fc.Arbitrary<infer T> ? T : never;

/** In inches and pounds, x counted from the left end, or from the right one. */
function overhangOf(each: Chance, isMirrored = false): CounterOverhangInput {
  const x = (place: number): string => `${isMirrored ? each.length - place : place} in`;
  const [from, to] = [x(each.inset), x(each.length)];
  const at = x(each.length / 3);
  const reach = `${each.depth - 1} in`;
  const rated = { allowable: '400 lbf', source: 'a test' };
  const props = {
    none: [],
    leg: [{ kind: 'leg' as const, at, to: reach, ...rated }],
    bracket: [{ kind: 'bracket' as const, at, to: reach, ...rated }],
    'flat-bar': [
      {
        ...{ kind: 'flat-bar' as const, at, from: '4 in', to: reach },
        ...{ width: '2 in', thickness: '1/2 in', metal: 'a36' },
      },
    ],
  }[each.prop];
  return {
    schema: 1,
    element: 'counter-overhang',
    top: {
      ...{ build: 'edge-glued-staves', material: 'sugar-maple', appearance: 'nearly-clear' },
      ...{ staves: each.staves, thickness: `${each.thickness} in` },
      ...{ length: `${each.length} in`, depth: `${each.depth} in` },
    },
    base: {
      from: isMirrored ? to : from,
      to: isMirrored ? from : to,
      back: '0 in',
      front: `${each.base} in`,
      weight: `${each.weight} lbf`,
      weightAt: `${each.base / 2} in`,
      foot: `${each.base - 2} in`,
      height: '34 in',
      ...(each.isHeld
        ? { heldToFloor: true, anchorPull: '500 lbf', anchorPullFront: '500 lbf' }
        : { heldToFloor: false }),
    },
    screws: {
      ...{ fastener: 'wood-screw-10', length: '1-1/2 in', through: '3/4 in' },
      at: [
        [x(each.inset + 3), '2 in'],
        [x(each.length - 3), '2 in'],
      ],
    },
    props,
    loads: [
      { kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
      { kind: 'person', amount: `${each.person} lbf`, duration: 'seven-days', patch: '4 in' },
    ],
  };
}

/** How much of each check is used, by its name; a check that does not hold for want of any resistance counts as endless. */
function usedOf(result: CheckResult): Map<string, number> {
  return new Map(
    result.checks.flatMap(({ id, ratio, outcome }) =>
      ratio !== null ? [[id, ratio]] : outcome === 'does-not-hold' ? [[id, Infinity]] : [],
    ),
  );
}

function expectNoLess(more: CheckResult, less: CheckResult, share = 1e-3): void {
  const used = usedOf(more);
  usedOf(less).forEach((ratio, id) => {
    const other = used.get(id);
    if (other !== undefined) expect(other, id).toBeGreaterThanOrEqual(ratio * (1 - share) - 1e-6);
  });
}

/** Where less was found from one end than from the other, up to 1 %, while places to stand were laid out from the left end alone. */
const uneven: [Chance][] = [
  [
    {
      ...{ length: 38, depth: 30, base: 17, thickness: 1, inset: 4, person: 147, staves: 'along' },
      ...{ weight: 140, prop: 'none', isHeld: true },
    },
  ],
  [
    {
      ...{ length: 78.5, depth: 30, base: 22, thickness: 1, inset: 8, person: 82, staves: 'along' },
      ...{ weight: 162, prop: 'flat-bar', isHeld: false },
    },
  ],
  [
    {
      ...{ length: 60, depth: 31, base: 23, thickness: 1, inset: 0, person: 293, staves: 'across' },
      ...{ weight: 82, prop: 'flat-bar', isHeld: false },
    },
  ],
  // All its screws pull with what they hold: the rail carries the same wherever somebody stands.
  [
    {
      ...{ length: 31.5, depth: 35, base: 22, thickness: 1, inset: 3.5, person: 300, staves: 'along' },
      ...{ weight: 149, prop: 'none', isHeld: true },
    },
  ],
];

describe('counter overhangs of any size', () => {
  it('give sound results', { timeout }, () => {
    fc.assert(
      fc.property(chance, (each) => expectSound(check(overhangOf(each)))),
      few,
    );
  });

  it('are the same counted from either end', { timeout }, () => {
    fc.assert(
      fc.property(chance, (each) => {
        const [one, other] = [usedOf(check(overhangOf(each))), usedOf(check(overhangOf(each, true)))];
        expect([...other.keys()]).toEqual([...one.keys()]);
        one.forEach((ratio, id) => {
          // Mesh lines and the places where somebody stands are a mirror image too. Of cases that are alike on the coarse
          // mesh rounding chooses which is worked out on the fine one: there they may differ by a little.
          if (Number.isFinite(ratio))
            expect(Math.abs((other.get(id) ?? NaN) - ratio), id).toBeLessThan(
              Math.min(5e-3 * ratio + 1e-3, 0.06 * ratio + 1e-6),
            );
          else expect(other.get(id), id).toBe(ratio);
        });
      }),
      { numRuns: few.numRuns + uneven.length, examples: uneven },
    );
  });

  it('are asked for no less by somebody heavier', { timeout }, () => {
    fc.assert(
      fc.property(chance, (each) =>
        expectNoLess(check(overhangOf({ ...each, person: each.person + 50 })), check(overhangOf(each))),
      ),
      few,
    );
  });

  it('tip no sooner on a heavier base', { timeout }, () => {
    fc.assert(
      fc.property(chance, (each) => {
        const heavier = usedOf(check(overhangOf({ ...each, weight: each.weight + 100 })));
        const used = usedOf(check(overhangOf(each)));
        for (const id of ['tip-over', 'tip-over-push'])
          expect(heavier.get(id) ?? 0, id).toBeLessThanOrEqual((used.get(id) ?? Infinity) + 1e-9);
      }),
      few,
    );
  });
});

const runChance = fc.record({
  opening: inches(10, 40),
  depth: inches(12, 30),
  person: fc.integer({ min: 50, max: 300 }),
  panel: fc.constantFrom(
    ['birch-plywood', '24 mm', 1] as const,
    ['birch-plywood', '48 mm', 2] as const,
    ['mdf', '18 mm', 1] as const,
    ['particleboard', '18 mm', 1] as const,
    ['osb', '18 mm', 1] as const,
  ),
  grain: fc.constantFrom('along' as const, 'across' as const),
  finish: fc.constantFrom(undefined, 'ceramic-tile' as const, 'natural-stone' as const),
});

function runOf(each: typeof runChance extends fc.Arbitrary<infer T> ? T : never): CounterRunInput {
  const [material, thickness, sheets] = each.panel;
  return {
    schema: 1,
    element: 'counter-run',
    substrate: { material, thickness, sheets, bond: 'structural', grain: each.grain },
    opening: `${each.opening} in`,
    depth: `${each.depth} in`,
    ...(each.finish === undefined ? {} : { finish: { kind: each.finish, thickness: '3/8 in' } }),
    loads: [
      { kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
      { kind: 'person', amount: `${each.person} lbf`, duration: 'seven-days', patch: '4 in' },
    ],
  };
}

describe('counter runs of any size', () => {
  it('give sound results', { timeout }, () => {
    fc.assert(
      fc.property(runChance, (each) => {
        expectSound(check(runOf(each)));
      }),
      { numRuns: 30 },
    );
  });

  it('are asked for no less by somebody heavier, nor over a longer span', { timeout }, () => {
    fc.assert(
      fc.property(runChance, (each) => {
        const result = check(runOf(each));
        for (const harder of [
          { ...each, person: each.person + 50 },
          { ...each, opening: each.opening + 2 },
        ]) {
          expectNoLess(check(runOf(harder)), result, 0.01);
        }
      }),
      { numRuns: 20 },
    );
  });
});

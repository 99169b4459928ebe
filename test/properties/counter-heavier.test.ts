import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import type { CounterOverhangInput } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';

/*
 * Somebody lighter may lean wherever somebody heavier does: what a heavier person is checked for takes in all that a lighter one
 * asks, with the screws holding and with the screws loose. A law: nothing here is a number of our own.
 */

const steps = (least: number, most: number) =>
  fc.integer({ min: 2 * least, max: 2 * most }).map((n) => n / 2);
const chance = fc.record({
  length: steps(36, 72),
  base: steps(14, 26),
  out: steps(6, 16),
  inset: fc.constantFrom<number>(0, 0, 6),
  thickness: fc.constantFrom(1, 1.25, 1.5, 2, 3),
  material: fc.constantFrom('sugar-maple', 'red-oak', 'black-cherry', 'eastern-white-pine'),
  staves: fc.constantFrom('along' as const, 'across' as const),
  rows: fc.constantFrom(1, 2),
  columns: fc.constantFrom(2, 3, 6),
  prop: fc.constantFrom('bracket' as const, 'leg' as const, 'flat-bar' as const),
  /** Shares of the length of the base. */
  props: fc.constantFrom<readonly number[]>([], [0.5], [0.05, 0.65], [0.2, 0.8], [0.05, 0.5, 0.8]),
  /** Share of what stands out. */
  reach: fc.constantFrom<number>(0.5, 0.7, 0.95),
  railHeight: fc.constantFrom(undefined, '4 in'),
  person: fc.integer({ min: 20, max: 300 }),
  more: fc.integer({ min: 5, max: 100 }),
});
type Chance = typeof chance extends fc.Arbitrary<infer T> ? T : never;

function overhangOf(each: Chance, person: number): CounterOverhangInput {
  const { length, base, out, inset, thickness, rows, columns } = each;
  const x = (share: number): string => `${(inset + share * (length - inset)).toFixed(2)} in`;
  const xs = Array.from({ length: columns }, (_, k) => x(0.05 + (0.9 * k) / (columns - 1)));
  const to = `${(base + each.reach * out).toFixed(2)} in`;
  return {
    schema: 1,
    element: 'counter-overhang',
    top: {
      ...{ build: 'edge-glued-staves', material: each.material, appearance: 'small-knots' },
      ...{ staves: each.staves, thickness: `${thickness} in` },
      ...{ length: `${length} in`, depth: `${base + out} in` },
    },
    base: {
      ...{
        from: `${inset} in`,
        to: `${length} in`,
        back: '0 in',
        front: `${base} in`,
        panels: [0, 0.5, 1].map(x),
      },
      ...{ weight: '200 lbf', heldToFloor: true, anchorPull: '900 lbf', anchorPullFront: '900 lbf' },
      rail: {
        thickness: '3/4 in',
        ...(each.railHeight === undefined ? {} : { height: each.railHeight, material: 'yellow-poplar' }),
      },
    },
    screws: {
      ...{ fastener: 'wood-screw-10', length: `${Math.min(0.65 + thickness, 2.5)} in`, through: '3/4 in' },
      at: ['2 in', `${base - 2} in`].slice(0, rows).flatMap((y) => xs.map((at): [string, string] => [at, y])),
    },
    props: each.props.map((share) =>
      each.prop === 'flat-bar'
        ? {
            ...{ kind: each.prop, at: x(share), from: '3 in', to: `${base + out - 1} in` },
            ...{ width: '2 in', thickness: '1/2 in', metal: 'a36' },
          }
        : { kind: each.prop, at: x(share), to, allowable: '900 lbf' },
    ),
    loads: [
      { kind: 'area', amount: '10 psf', duration: 'ten-years', sustained: 0.3 },
      { kind: 'person', amount: `${person} lbf`, duration: 'seven-days' },
    ],
  };
}

/** The more the worse. */
const ranks = { holds: 0, 'cannot-say': 1, 'does-not-hold': 2 } as const;

/** The largest ratio of all; without end where the top tips off its base, or nothing is there to resist. */
function largestRatio({ checks }: CheckResult): number {
  return Math.max(
    ...checks.map(({ ratio, outcome, note }) =>
      outcome === 'does-not-hold' || note.startsWith('The top tips off its base')
        ? (ratio ?? Infinity)
        : (ratio ?? 0),
    ),
  );
}

function expectNoBetter(each: Chance): void {
  const [lighter, heavier] = [each.person, each.person + each.more].map((person) =>
    check(overhangOf(each, person)),
  );
  if (lighter === undefined || heavier === undefined) throw new Error('two');
  expect(ranks[heavier.verdict]).toBeGreaterThanOrEqual(ranks[lighter.verdict]);
  expect(largestRatio(heavier)).toBeGreaterThanOrEqual(0.995 * largestRatio(lighter));
}

/** Tops that somebody a little heavier makes rely on their screws: with them loose they were asked for more. */
const onTheBrink: [Chance][] = [
  [
    {
      ...{
        length: 65.5,
        base: 21.5,
        out: 12.5,
        inset: 8,
        thickness: 3,
        material: 'black-cherry',
        staves: 'across',
      },
      ...{ rows: 1, columns: 3, prop: 'bracket', props: [0.05, 0.8], reach: 0.84, railHeight: undefined },
      ...{ person: 227, more: 3 },
    },
  ],
  [
    {
      ...{
        length: 48.5,
        base: 16,
        out: 16.5,
        inset: 0,
        thickness: 1.25,
        material: 'red-oak',
        staves: 'across',
      },
      ...{ rows: 2, columns: 6, prop: 'bracket', props: [0.2, 0.8], reach: 0.91, railHeight: '4 in' },
      ...{ person: 95, more: 3 },
    },
  ],
  [
    {
      ...{
        length: 50.5,
        base: 17.5,
        out: 9.5,
        inset: 0,
        thickness: 1,
        material: 'sugar-maple',
        staves: 'across',
      },
      ...{ rows: 1, columns: 3, prop: 'bracket', props: [0.05, 0.65], reach: 0.53, railHeight: '4 in' },
      ...{ person: 25, more: 10 },
    },
  ],
];

describe('an overhang under somebody heavier', () => {
  it('never gets a better verdict, nor a smaller largest ratio', { timeout: 240_000 }, () => {
    fc.assert(fc.property(chance, expectNoBetter), {
      numRuns: 12 + onTheBrink.length,
      examples: onTheBrink,
    });
  });
});

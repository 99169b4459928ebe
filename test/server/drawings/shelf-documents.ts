import fc from 'fast-check';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';

const millimetres = (from: number, to: number) => fc.integer({ min: from, max: to });
const mm = (value: number): string => `${value} mm`;
const name = fc
  .string({ minLength: 1, maxLength: 60, unit: 'grapheme' })
  .filter((text) => text.trim() !== '');

const fractions = (count: number) =>
  fc
    .uniqueArray(fc.integer({ min: 0, max: 48 }), { minLength: 2, maxLength: count })
    .map((places) => places.map((place) => place / 48));

const loadOn = (length: number) =>
  fc.oneof(
    fc.record({
      kind: fc.constant('line' as const),
      name,
      amount: fc.integer({ min: 0, max: 900 }).map((each) => `${each} N/m`),
      from: millimetres(0, Math.floor(length / 2) - 1).map(mm),
      to: millimetres(Math.ceil(length / 2), length).map(mm),
    }),
    fc.record({
      kind: fc.constant('point' as const),
      name,
      amount: fc.integer({ min: 0, max: 400 }).map((each) => `${each} N`),
      at: millimetres(0, length).map(mm),
    }),
    fc.record({
      kind: fc.constant('roaming' as const),
      name,
      amount: fc.integer({ min: 1, max: 400 }).map((each) => `${each} N`),
    }),
  );

/** Any bracket shelf a form could describe: short and long, few brackets and many, one load and forty. */
export const shelfDocuments: fc.Arbitrary<BracketShelfInput> = millimetres(400, 6000).chain((length) =>
  fc.record({
    schema: fc.constant(1 as const),
    element: fc.constant('bracket-shelf' as const),
    title: name,
    units: fc.constantFrom('inch-pound' as const, 'metric' as const),
    board: fc.record({
      material: fc.constantFrom('sugar-maple', 'eastern white pine'),
      length: fc.constant(mm(length)),
      depth: millimetres(80, 600).map(mm),
      thickness: millimetres(10, 60).map(mm),
      nosing: fc.option(
        fc.record({
          height: millimetres(8, 120).map(mm),
          thickness: millimetres(8, 40).map(mm),
          flush: fc.constantFrom('top' as const, 'bottom' as const),
        }),
        { nil: undefined },
      ),
    }),
    brackets: fractions(10).map((places) => ({
      positions: places.map((place) => mm(Math.floor(place * length))),
      arm: '70 mm',
      armWidth: '5 mm',
      hold: 'screwed' as const,
      ...(places.length % 2 === 0 ? { plate: { height: mm(100 + places.length * 40), width: '30 mm' } } : {}),
    })),
    wall: fc.option(
      fc.record({
        framing: fc.constant('wood-stud' as const),
        studs: fc.record({ first: millimetres(0, 1500).map(mm), spacing: millimetres(150, 900).map(mm) }),
      }),
      { nil: undefined },
    ),
    loads: fc.array(loadOn(length), { minLength: 0, maxLength: 40 }),
  }),
);

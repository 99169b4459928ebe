import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check, DocumentError } from '../../calc/index.ts';
import type { CheckResult, FieldError } from '../../shared/check-result.ts';
import { expectSound } from './expect-sound.ts';
import { soundShelf } from './sound-shelf.ts';

/** The path is an RFC 6901 pointer to a place in the document, or to a field that is missing from such a place. */
function expectPlace(document: unknown, path: string): void {
  expect(path).toMatch(/^(?:\/(?:[^~/]|~[01])*)*$/s);
  const keys = path
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
  let place = document;
  for (const key of keys) {
    expect(typeof place === 'object' && place !== null, `${path} leads through something without parts`).toBe(
      true,
    );
    place = Object.getOwnPropertyDescriptor(place, key)?.value as unknown;
  }
}

function expectErrors(document: unknown, errors: readonly FieldError[]): void {
  expect(errors.length).toBeGreaterThan(0);
  for (const { path, message } of errors) {
    expectPlace(document, path);
    // A whole sentence in our own words: none of the schema library's, none of the language's.
    expect(message).toMatch(/[.?]$/);
    expect(message).not.toMatch(
      /invalid input|expected|received|too (?:big|small)|undefined|\[object|z\.|zod/i,
    );
  }
  expect(new Set(errors.map(({ path, message }) => `${path} ${message}`)).size).toBe(errors.length);
}

/** Either a sound result or errors, and never anything else. */
function expectAnswer(document: unknown, waysOut = true): 'result' | 'errors' {
  let result: CheckResult;
  try {
    result = check(document, { waysOut });
  } catch (error) {
    if (!(error instanceof DocumentError)) throw error;
    expectErrors(document, error.errors);
    return 'errors';
  }
  expectSound(result);
  return 'result';
}

const quantities = fc.constantFrom(
  ...[
    '0 in',
    '1 in',
    '3/4 in',
    '9-1/4 in',
    '30 in',
    '8 ft',
    '11 m',
    '1 mm',
    '20 lbf/ft',
    '0 lbf/ft',
    '3000 lbf/ft',
  ],
  ...[
    '25 psf',
    '50 lbf',
    '0 lbf',
    '9000 lbf',
    '1.2 kN',
    '3 kg',
    '500 kg/m3',
    '1e9 in',
    '-1 in',
    '96',
    '∞ in',
    '1e-9 m',
  ],
);
const words = fc.constantFrom(
  ...[
    'bracket-shelf',
    'nds-asd',
    'metric',
    'wet',
    'hot',
    'sugar-maple',
    'clear-wood',
    'graded',
    'panel',
    'knotty',
  ],
  ...[
    'line',
    'area',
    'point',
    'roaming',
    'free',
    'fixed',
    'permanent',
    'impact',
    'screwed',
    'resting',
    'rated',
    'steel',
  ],
  ...[
    'unknown',
    'wood-stud',
    'blocking',
    'masonry',
    'hollow',
    'none',
    'L/360',
    'L/50',
    'none',
    '__proto__',
    'constructor',
  ],
);
const junk = fc.oneof(
  { weight: 4, arbitrary: quantities },
  { weight: 3, arbitrary: words },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
  { weight: 1, arbitrary: fc.constantFrom(null, true, 0, 1, 2, -1, 0.5, 1e9, NaN, Infinity, [], {}) },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) },
);
const names = fc.constantFrom(
  ...[
    'material',
    'length',
    'amount',
    'at',
    'from',
    'to',
    'box',
    'layers',
    'joints',
    'rail',
    'strut',
    'eccentricity',
  ],
  ...['sustained', 'arrangement', 'things', '__proto__', 'constructor', 'toString', 'a/b', 'a~b', ''],
);

/** Values that can stand in for one another, so that many changed documents are still sound and are really computed. */
const alike: readonly (readonly string[])[] = [
  [
    '0 in',
    '1/8 in',
    '3/4 in',
    '1-1/2 in',
    '7 in',
    '8 in',
    '9-1/4 in',
    '11 in',
    '16 in',
    '40 in',
    '47.9 in',
    '93 in',
    '2.4 m',
  ],
  ['0 lbf/ft', '18 lbf/ft', '3000 lbf/ft', '1e-9 N/m', '50 kN/m'],
  ['0 lbf', '22 lbf', '50 lbf', '150 lbf', '9000 lbf', '1e-9 N', '3 kg'],
  ['inch-pound', 'metric'],
  ['dry', 'wet'],
  ['sugar-maple', 'red oak', 'western redcedar', 'not sure'],
  ['nearly-clear', 'small-knots', 'knotty'],
  ['top', 'bottom'],
  ['screwed', 'resting'],
  ['line', 'roaming'],
  ['permanent', 'ten-years', 'two-months', 'seven-days', 'ten-minutes', 'impact'],
  ['L/360', 'L/240', 'none', '1/4 in', '1e-6 in', 'L/50'],
  ['wood-stud', 'blocking', 'sheathing', 'metal-stud', 'masonry', 'concrete', 'hollow'],
  ['wood-screw-10', 'wood-screw-8', 'lag-screw-1/4'],
];

const unitOf = (text: string): string | undefined => /^\d.* (in|lbf|lbf\/ft)$/.exec(text)?.[1];

function standIn(old: unknown, pick: number): unknown {
  const isSame = (word: string): boolean =>
    word === old || (typeof old === 'string' && unitOf(word) !== undefined && unitOf(word) === unitOf(old));
  const group = alike.find((words) => words.some(isSame));
  return group === undefined ? old : group[pick % group.length];
}

interface Change {
  readonly pick: number;
  readonly how: 'drop' | 'replace' | 'stand in' | 'add' | 'repeat';
  readonly value: unknown;
  readonly name: string;
}
const change: fc.Arbitrary<Change> = fc.record({
  pick: fc.nat(),
  how: fc.constantFrom('drop', 'replace', 'stand in', 'stand in', 'stand in', 'stand in', 'add', 'repeat'),
  value: junk,
  name: names,
});

interface Place {
  readonly holder: Record<string, unknown> | unknown[];
  readonly key: string;
}

function placesOf(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(value).flatMap((key) => [{ holder, key }, ...placesOf(holder[key])]);
}

function apply(document: unknown, { pick, how, value, name }: Change): void {
  const places = placesOf(document);
  const place = places[pick % places.length];
  if (place === undefined) return;
  const { holder, key } = place;
  if (how === 'repeat' && Array.isArray(holder)) holder.push(structuredClone(holder[Number(key)]));
  else if (how === 'drop' && Array.isArray(holder)) holder.splice(Number(key), 1);
  else if (how === 'drop') Reflect.deleteProperty(holder, key);
  else if (how === 'add' && !Array.isArray(holder)) define(holder, name, value);
  else if (how === 'stand in') define(holder, key, standIn(Reflect.get(holder, key), pick));
  else define(holder, key, value);
}

function define(holder: object, key: string, value: unknown): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

describe('any value at all', () => {
  it('is answered with errors that say where and what', () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withDate: true, withMap: true, withSparseArray: true }),
        (value) => {
          expect(expectAnswer(value)).toBe('errors');
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('behind the head of a document likewise', () => {
    fc.assert(
      fc.property(
        fc.record({ board: junk, brackets: junk, wall: junk, loads: junk, limits: junk, title: junk }),
        (parts) => {
          expectAnswer({ schema: 1, element: 'bracket-shelf', ...parts });
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('a sound document with random changes', () => {
  it.each([1, 2, 6])('%d at a time, gives a sound result or errors', (count) => {
    let tried = 0;
    let results = 0;
    let refusals = 0;
    fc.assert(
      fc.property(fc.array(change, { minLength: count, maxLength: count }), (changes) => {
        const document = structuredClone(soundShelf);
        for (const each of changes) apply(document, each);
        tried += 1;
        // Ways out are many checks: every twentieth document is enough of them.
        if (expectAnswer(document, tried % 20 === 0) === 'result') results += 1;
        else refusals += 1;
      }),
      { numRuns: 700, endOnFailure: true },
    );
    // The changes are neither all harmless nor all fatal, or this would prove nothing.
    expect(refusals).toBeGreaterThan(50);
    if (count < 3) expect(results).toBeGreaterThan(50);
  });
});

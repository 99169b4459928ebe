import { describe, expect, it } from 'vitest';
import { check, DocumentError } from '../../calc/index.ts';
import type { FieldError } from '../../shared/check-result.ts';
import { soundShelf } from './sound-shelf.ts';

type Json = Record<string, unknown>;

/** The sound shelf with other values in places named by JSON pointers; `absent` takes a field out. */
const absent = Symbol('absent');
function changed(changes: Readonly<Record<string, unknown>>): Json {
  const document = structuredClone(soundShelf) as unknown as Json;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('/').slice(1);
    const last = keys.pop() ?? '';
    let place = document;
    for (const key of keys) place = place[key] as Json;
    if (value === absent) Reflect.deleteProperty(place, last);
    else Object.defineProperty(place, last, { value, enumerable: true, configurable: true, writable: true });
  }
  return document;
}

function errorsOf(document: unknown): readonly FieldError[] {
  try {
    check(document);
  } catch (error) {
    if (error instanceof DocumentError) return error.errors;
    throw error;
  }
  return [];
}

/** Exactly these errors: path, and what the message says among other things. */
function expectErrors(document: unknown, expected: readonly (readonly [string, string | RegExp])[]): void {
  const errors = errorsOf(document);
  expect(errors.map(({ path }) => path)).toEqual(expected.map(([path]) => path));
  expected.forEach(([, message], index) => expect(errors[index]?.message).toMatch(message));
}

const length = 'It takes a length with its unit, such as 96 in, 8 ft 4-1/2 in or 2.4 m';

describe('a value that is no document', () => {
  it.each([
    ['undefined', undefined],
    ['null', null],
    ['a number', 96],
    ['NaN', NaN],
    ['text', '96 in'],
    ['a list', [soundShelf]],
    ['a function', () => soundShelf],
    ['a symbol', Symbol('shelf')],
    ['a big integer', 96n],
  ])('%s', (_what, value) => {
    expectErrors(value, [['', 'It takes a JSON object, the check document.']]);
  });

  it('an empty object', () => {
    expectErrors({}, [
      ['/schema', 'It is missing. It takes the number 1'],
      [
        '/element',
        'It is missing. It takes "bracket-shelf", "wall-fixing", "counter-overhang" or "counter-run".',
      ],
    ]);
  });

  it('an element nobody builds', () => {
    expectErrors(changed({ '/element': 'bookcase', '/units': 'cubits' }), [
      ['/units', 'It takes "inch-pound" or "metric".'],
      ['/element', 'It takes "bracket-shelf", "wall-fixing", "counter-overhang" or "counter-run".'],
    ]);
  });
});

describe('one thing wrong with a field', () => {
  it.each<[string, string, unknown, string | RegExp]>([
    ['missing', '/board/length', absent, `It is missing. ${length}`],
    ['null', '/board/length', null, length],
    ['a number without its unit', '/board/length', 96, `${length}, written as text.`],
    ['text without a unit', '/board/length', '96', `"96" has no unit. ${length}.`],
    ['a unit of another kind', '/board/length', '96 lbf', `"lbf" is not a unit this field knows. ${length}.`],
    [
      'a length for a load',
      '/loads/0/amount',
      '18 in',
      /"in" is not a unit this field knows\. It takes a load per length/,
    ],
    ['negative', '/board/length', '-96 in', `"-96 in" is negative. ${length}.`],
    ['NaN as text', '/board/length', 'NaN in', `"NaN in" is not a quantity. ${length}.`],
    ['NaN as a number', '/board/length', NaN, length],
    ['infinite', '/board/length', Infinity, length],
    ['infinite as text', '/board/length', '1e400 in', `"1e400 in" is not a finite number. ${length}.`],
    ['huge', '/board/depth', '1e9 in', /"1e9 in" is outside what this field takes: from .* to .*mm\)\./],
    ['nothing', '/board/depth', '', `Nothing is written here. ${length}.`],
    ['zero where it must be something', '/board/depth', '0 in', /"0 in" is outside what this field takes/],
    ['very long text', '/board/depth', `${'9'.repeat(5_000_000)} in`, 'too long for one quantity'],
    ['a list', '/board/depth', ['9 in'], length],
    ['a group', '/board/depth', { value: 9, unit: 'in' }, length],
    [
      'no group',
      '/brackets',
      absent,
      'It is missing. It takes a group of fields, with "positions" and "arm" at least.',
    ],
    [
      'a list for a group',
      '/board',
      [],
      'It takes a group of fields, with "length", "depth" and "thickness" at least.',
    ],
    ['text for a list', '/loads', 'none', 'It takes a list of at most 40 loads.'],
    ['one bracket', '/brackets/positions', ['8 in'], 'It takes two brackets or more'],
    ['no bracket', '/brackets/positions', [], 'It takes two brackets or more'],
    [
      'too many brackets',
      '/brackets/positions',
      Array.from({ length: 25 }, (_, i) => `${i * 3} in`),
      'a list of 2 to 24 places',
    ],
    [
      '100,000 loads',
      '/loads',
      Array.from({ length: 100_000 }, () => soundShelf.loads?.[0]),
      'at most 40 loads',
    ],
    ['a word nobody knows', '/code', 'thumb', 'It takes "nds-asd".'],
    ['a kind nobody knows', '/loads/0/kind', 'falling', 'It takes "line", "area", "point" or "roaming".'],
    ['no kind', '/loads/0/kind', absent, 'It is missing. It takes "line", "area", "point" or "roaming".'],
    ['a load that is none', '/loads/1', 'a pot', 'It takes a group of fields, of which "kind" is'],
    ['a share above one', '/loads/0/sustained', 1.5, 'It takes a number from 0 to 1, without a unit.'],
    ['half a screw', '/brackets/screws/perHeight', 1.5, 'It takes a whole number from 1 to 4.'],
    ['no screw', '/brackets/screws/perHeight', 0, 'It takes a whole number from 1 to 4.'],
    ['a date that is none', '/date', '2025-02-29', 'It takes a day of the calendar, such as 2026-03-14.'],
    ['a title of many lines', '/title', 'one\ntwo', 'plain text on one line'],
    ['a long title', '/title', 'x'.repeat(121), 'at most 120 characters'],
    ['a limit that is none', '/limits/live', 'L/0', 'It takes a span fraction such as "L/360"'],
    ['the next version', '/schema', 2, 'It takes the number 1'],
    [
      'an unknown field',
      '/board/lenght',
      '96 in',
      /There is no such field here\. The fields here are "material", .* and "joints"\./,
    ],
    ['an unknown field with a slash', '/board/a~b', 1, 'There is no such field here.'],
    ['a field named __proto__', '/__proto__', { polluted: true }, 'There is no such field here.'],
    ['a field named constructor', '/board/constructor', 'x', 'There is no such field here.'],
    ['a field named toString', '/brackets/toString', 'x', 'There is no such field here.'],
    ['a field named hasOwnProperty', '/wall/hasOwnProperty', 'x', 'There is no such field here.'],
    ['a kind named __proto__', '/loads/0/kind', '__proto__', 'It takes "line", "area"'],
    [
      'a basis named constructor',
      '/brackets/capacity/basis',
      'constructor',
      'It takes "rated", "steel" or "unknown".',
    ],
    ['an unknown stud layout', '/wall/studs', {}, 'It takes { "first", "spacing" }'],
    ['a stud layout with a slip', '/wall/studs/spacing', '16', `"16" has no unit. ${length}.`],
  ])('%s: %s', (_what, path, value, message) => {
    expectErrors(changed({ [path]: value }), [[path.replace('~', '~0'), message]]);
  });
});

describe('fields that do not fit together', () => {
  it.each<[string, Readonly<Record<string, unknown>>, string, string]>([
    [
      'a bracket off the board',
      { '/brackets/positions/3': '97 in' },
      '/brackets/positions/3',
      'It is off the board, which ends at 96 in.',
    ],
    [
      'two brackets at one place',
      { '/brackets/positions/1': '8 in' },
      '/brackets/positions/1',
      'Bracket 1 is already at this place.',
    ],
    [
      'thicker than deep',
      { '/board/thickness': '5 in', '/board/depth': '4 in' },
      '/board/thickness',
      'the wrong way round',
    ],
    [
      'a load off the board',
      { '/loads/1/at': '8 ft 1 in' },
      '/loads/1/at',
      'It is off the board, which ends at 96 in.',
    ],
    [
      'a load that ends before it begins',
      { '/loads/0/from': '60 in', '/loads/0/to': '40 in' },
      '/loads/0/from',
      'left of where the load ends',
    ],
    [
      'a load that begins at the very end',
      { '/loads/0/from': '96 in' },
      '/loads/0/from',
      'left of where the load ends',
    ],
    ['a load without an amount', { '/loads/0/amount': absent }, '/loads/0/amount', 'It takes an amount'],
    [
      'a load before the board',
      { '/loads/0/eccentricity': '12 in' },
      '/loads/0/eccentricity',
      'in front of the board',
    ],
    [
      'a screw above its plate',
      { '/brackets/screws/heights/0': '9 in' },
      '/brackets/screws/heights/0',
      'The plate is only 8 in high.',
    ],
    [
      'a rating without a number',
      { '/brackets/capacity/allowable': absent },
      '/brackets/capacity/allowable',
      'It takes the allowable load',
    ],
    [
      'a rail that hangs where every arm starts',
      { '/board/rail': { height: '2-1/2 in', thickness: '3/4 in' } },
      '/board/rail/height',
      'hangs down where every arm starts',
    ],
    [
      'a nosing that hangs where the arms reach under it',
      { '/brackets/arm': '9-3/8 in' },
      '/board/nosing/height',
      'arms of at most 9-1/4 in',
    ],
    [
      'a nosing that hangs, flush with nobody says which face',
      { '/brackets/arm': '10 in', '/board/nosing/flush': absent },
      '/board/nosing/height',
      'flush with the bottom',
    ],
    [
      'a joint between brackets',
      { '/board/joints': ['48 in'] },
      '/board/joints/0',
      'A joint must lie over a bracket',
    ],
  ])('%s', (_what, changes, path, message) => {
    expectErrors(changed(changes), [[path, message]]);
  });
});

describe('a strip stays clear of the arms', () => {
  const rail = (height: string, flush: string) => ({
    '/board/rail': { height, thickness: '3/4 in', flush },
  });
  it.each<[string, Readonly<Record<string, unknown>>]>([
    ['a rail that stands up', rail('2-1/2 in', 'bottom')],
    ['a rail as high as the board is thick', rail('3/4 in', 'top')],
    ['a nosing before the ends of the arms', { '/brackets/arm': '9-1/4 in' }],
    [
      'a nosing before the ends of the arms, pushed on by a rail',
      { ...rail('3/4 in', 'top'), '/brackets/arm': '10 in' },
    ],
    ['a nosing that stands up, over the arms', { '/board/nosing/flush': 'bottom', '/brackets/arm': '10 in' }],
    ['a nosing no higher than the board', { '/board/nosing/height': '3/4 in', '/brackets/arm': '10 in' }],
  ])('%s', (_what, changes) => {
    expect(errorsOf(changed(changes))).toEqual([]);
  });
});

describe('names that no table knows', () => {
  it.each([
    ['/board/material', 'suger maple', 'Nearest: Sugar maple'],
    ['/board/material', '__proto__', ''],
    ['/board/material', 'constructor', ''],
    ['/board/material', 'toString', ''],
    ['/board/nosing/material', 'hasOwnProperty', ''],
    ['/brackets/screws/fastener', 'wood-screw-11', 'Nearest: Wood screw, #10'],
    ['/brackets/screws/fastener', '__proto__', ''],
  ])('%s: "%s"', (path, name, nearest) => {
    const errors = errorsOf(changed({ [path]: name }));
    expect(errors.map((error) => error.path)).toEqual([path]);
    expect(errors[0]?.message).toContain(nearest);
    expect(errors[0]?.message).toMatch(/^[A-Z"].*[.?]$/);
  });

  it('a steel nobody rolls', () => {
    const capacity = { basis: 'steel', metal: 'constructor', width: '1 in', thickness: '1/4 in' };
    expectErrors(changed({ '/brackets/capacity': capacity }), [['/brackets/capacity/metal', /./]]);
  });

  it('things nobody shelves', () => {
    const load = {
      kind: 'line',
      things: [
        { thing: '__proto__', count: 3 },
        { thing: 'toString', count: 1 },
      ],
    };
    expectErrors(changed({ '/loads': [load] }), [
      ['/loads/0/things/0/thing', /./],
      ['/loads/0/things/1/thing', /./],
    ]);
  });
});

describe('many things wrong', () => {
  it('are all told at once: fields, unknown fields, conflicts between sound fields, and unknown names', () => {
    const document = changed({
      '/schema': '1',
      '/colour': 'white',
      '/board/material': 'unobtainium',
      '/board/depth': 9.25,
      '/brackets/positions/0': '200 in',
      '/brackets/arm': '8',
      '/loads/0/amount': '18 lbf',
      '/loads/1/at': '9 ft',
      '/limits/live': 'little',
    });
    const paths = errorsOf(document).map(({ path }) => path);
    expect(new Set(paths)).toEqual(
      new Set([
        '/schema',
        '/colour',
        '/board/material',
        '/board/depth',
        '/brackets/positions/0',
        '/brackets/arm',
        '/loads/0/amount',
        '/loads/1/at',
        '/limits/live',
      ]),
    );
  });

  it('are cut off with a count where there are thousands', () => {
    const loads = Array.from({ length: 100 }, () => ({
      kind: 'line',
      things: Array.from({ length: 100 }, () => ({})),
    }));
    const junk = Object.fromEntries(Array.from({ length: 5000 }, (_, index) => [`junk${index}`, 1]));
    expect(errorsOf(changed({ '/loads': loads })).length).toBeLessThanOrEqual(1001);
    const errors = errorsOf({ ...changed({}), ...junk });
    expect(errors).toHaveLength(1001);
    expect(errors.at(-1)).toEqual({ path: '', message: 'There are 4000 more errors like these.' });
  });
});

describe('documents made to hurt', () => {
  it.each<[string, () => unknown]>([
    ['a deep nest of groups', (): unknown => JSON.parse(`${'{"board":'.repeat(5000)}1${'}'.repeat(5000)}`)],
    [
      'a deep nest inside a document',
      () => changed({ '/board/nosing': JSON.parse('['.repeat(5000) + ']'.repeat(5000)) as unknown }),
    ],
    [
      'a circle',
      () => {
        const document = changed({});
        document['board'] = document;
        return document;
      },
    ],
    ['a million loads', () => changed({ '/loads': Array.from({ length: 1_000_000 }, () => ({})) })],
    ['a list with holes', () => changed({ '/brackets/positions': Array(1_000_000) })],
    ['5 MB of text', () => changed({ '/board/material': 'x'.repeat(5_000_000) })],
    ['a 5 MB field name', () => changed({ [`/board/${'x'.repeat(5_000_000)}`]: 1 })],
    [
      '100,000 fields',
      () => Object.fromEntries(Array.from({ length: 100_000 }, (_, i) => [`field ${i}`, i])),
    ],
    ['text of many dashes', () => changed({ '/board/length': `1${' - '.repeat(20)}` })],
  ])('%s: is refused soon and in few words', (_what, make) => {
    const document = make();
    const start = performance.now();
    const errors = errorsOf(document);
    expect(performance.now() - start).toBeLessThan(5000);
    expect(errors.length).toBeGreaterThan(0);
    expect(JSON.stringify(errors).length).toBeLessThan(500_000);
  });

  it('leaves the prototype of all objects alone', () => {
    errorsOf(
      JSON.parse(
        '{"element": "bracket-shelf", "__proto__": {"polluted": 1}, "board": {"__proto__": {"length": "96 in"}}}',
      ),
    );
    expect('polluted' in {}).toBe(false);
    expect('length' in {}).toBe(false);
  });

  it('does not take a field from a prototype', () => {
    const heir = Object.create(soundShelf) as unknown;
    expect(errorsOf(heir).map(({ path }) => path)).toContain('/element');
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { fillForm } from '../../../server/form/index.ts';
import { createTypesetter } from '../../../server/typeset/index.ts';
import { checkPage } from '../../../server/view-models/check-page.ts';
import type { Part } from '../../../server/view-models/form/model.ts';
import { shelf } from '../fixtures/shelf.ts';

type Shelf = Record<string, unknown> & { board: object; brackets: object; loads: readonly object[] };
const bare: Shelf = {
  ...shelf,
  conditions: {},
  board: {
    material: 'sugar-maple',
    basis: 'clear-wood',
    length: '96 in',
    depth: '9-1/4 in',
    thickness: '3/4 in',
  },
  brackets: { positions: ['8 in', '32 in', '64 in', '88 in'], arm: '8 in', armWidth: '1 in' },
  loads: [
    { kind: 'line', amount: '18 lbf/ft' },
    { kind: 'point', amount: '22 lbf', at: '48 in' },
    { kind: 'roaming', amount: '50 lbf' },
  ],
};
const inBoard = (more: object): Shelf => ({ ...bare, board: { ...bare.board, ...more } });
const inBrackets = (more: object): Shelf => ({ ...bare, brackets: { ...bare.brackets, ...more } });
const nosing = { height: '1-1/2 in', thickness: '3/4 in' };
const layers = [{ thickness: '3/8 in' }, { thickness: '3/8 in' }];
const box = { skin: '1/4 in', frame: '1-1/2 in' };
const rated = { basis: 'rated', allowable: '150 lbf' };
const steel = { basis: 'steel', width: '1 in', thickness: '3/8 in' };
const eachLoad = (change: (load: object, index: number) => object): Shelf => ({
  ...bare,
  loads: bare.loads.map(change),
});

/** What was checked and how it came out, without the words about what was given and what was not. */
const numbers = (document: object): unknown =>
  check(document, { waysOut: false }).checks.map(({ id, ratio, outcome }) => [
    id,
    ratio === null ? ratio : Number(ratio.toPrecision(7)),
    outcome,
  ]);

/** Where the form says what is taken when nothing is said: field, the words, and the same said outright. */
const taken: readonly (readonly [string, RegExp, Shelf, Shelf])[] = [
  ['brackets.hold', /resting/, bare, inBrackets({ hold: 'resting' })],
  ['conditions.moisture', /dry/, bare, { ...bare, conditions: { moisture: 'dry' } }],
  ['conditions.temperature', /ordinary/, bare, { ...bare, conditions: { temperature: 'ordinary' } }],
  ['board.appearance', /small sound knots/, bare, inBoard({ appearance: 'small-knots' })],
  ['board.nosing.flush', /top/, inBoard({ nosing }), inBoard({ nosing: { ...nosing, flush: 'top' } })],
  [
    'board.nosing.material',
    /as the board/,
    inBoard({ nosing }),
    inBoard({ nosing: { ...nosing, material: 'sugar-maple' } }),
  ],
  ['board.bond', /not glued/, inBoard({ layers }), inBoard({ layers, bond: 'none' })],
  ['board.box.members', /: 2/, inBoard({ box }), inBoard({ box: { ...box, members: 2 } })],
  [
    'brackets.capacity.at',
    /middle of the arm/,
    inBrackets({ capacity: rated }),
    inBrackets({ capacity: { ...rated, at: '4 in' } }),
  ],
  [
    'brackets.capacity.metal',
    /ordinary structural steel/,
    inBrackets({ capacity: steel }),
    inBrackets({ capacity: { ...steel, metal: 'a36' } }),
  ],
  [
    'loads.0.duration',
    /for good/,
    bare,
    eachLoad((load, i) => (i === 0 ? { ...load, duration: 'permanent' } : load)),
  ],
  [
    'loads.1.duration',
    /for good/,
    bare,
    eachLoad((load, i) => (i === 1 ? { ...load, duration: 'permanent' } : load)),
  ],
  [
    'loads.2.duration',
    /for days/,
    bare,
    eachLoad((load, i) => (i === 2 ? { ...load, duration: 'seven-days' } : load)),
  ],
  [
    'loads.0.arrangement',
    /comes and goes/,
    bare,
    eachLoad((load, i) => (i === 0 ? { ...load, arrangement: 'free' } : load)),
  ],
  ['loads.0.from', /left end/, bare, eachLoad((load, i) => (i === 0 ? { ...load, from: '0 in' } : load))],
  ['loads.0.to', /right end/, bare, eachLoad((load, i) => (i === 0 ? { ...load, to: '96 in' } : load))],
];

describe('what the form says is taken where nothing is said', () => {
  it.each(taken)('is what is taken: %s', (field, words, unsaid, said) => {
    expect(numbers(unsaid)).toEqual(numbers(said));
    expect(wordsOf(field, unsaid)).toMatch(words);
  });

  it('is what is taken for the loads of a shelf without any', () => {
    const { loads: _, ...unloaded } = bare;
    const usual = [
      { kind: 'line', amount: '20 lbf/ft', duration: 'permanent' },
      { kind: 'roaming', amount: '50 lbf', duration: 'seven-days' },
    ];
    expect(numbers(unloaded)).toEqual(numbers({ ...bare, loads: usual }));
    expect(wordsOf('loads.by', unloaded)).toMatch(/20 lbf\/ft and a hand/);
  });

  it('is the worst appearance for a board nobody named', () => {
    const { material: _, ...unnamed } = bare.board as Record<string, unknown>;
    const [unsaid, said] = [
      { ...bare, board: unnamed },
      { ...bare, board: { ...unnamed, appearance: 'knotty' } },
    ];
    expect(numbers(unsaid)).toEqual(numbers(said));
    expect(wordsOf('board.appearance', unsaid)).toMatch(/knotty/);
  });
});

/** What the form says of a field: its hint, and the choice that stands for nothing said. */
function wordsOf(name: string, document: object): string {
  const { form } = checkPage(checkInPlace(fillForm(document), false), createTypesetter());
  const field = form.sections.flatMap(({ parts }) => fieldsOf(parts)).find(({ id }) => id === name);
  if (field === undefined) throw new Error(`the form has no field ${name}`);
  const chosen = field.options.find(({ selected }) => selected);
  return `${field.hint} ${chosen?.label ?? ''}`;
}

function fieldsOf(parts: readonly Part[]): Part['fields'] {
  return parts.flatMap(({ fields, mores, tables }) => [
    ...fields,
    ...mores.flatMap((more) => fieldsOf(more.parts)),
    ...tables.flatMap(({ rows }) => rows.flatMap((row) => fieldsOf(row.parts))),
  ]);
}

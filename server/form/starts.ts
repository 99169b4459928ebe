import type { UnitSystem } from '../../shared/quantity/index.ts';
import { patternOf } from './alternatives.ts';
import { carryWeight } from './carry-weight.ts';
import { elementOf, type Element } from './elements.ts';
import { anyWritten, rowsOf, written, type Texts } from './texts.ts';

/** A value to start from, in each system of units; one text where it is no quantity. */
type Start = string | Readonly<Record<UnitSystem, string>>;

const inches = (inch: string, millimetres: number): Start => ({
  'inch-pound': `${inch} in`,
  metric: `${millimetres} mm`,
});

const strip = { height: inches('1-1/2', 38), thickness: inches('3/4', 19), flush: 'top' };
const bar = { width: inches('1', 25), thickness: inches('1/4', 6) };

/**
 * What a part of the form holds when it is first opened or a row is first added: sizes to be changed, in plain sight.
 * Nothing a maker or a grade stamp has to say is among them.
 */
const starts: Readonly<Record<string, Readonly<Record<string, Start>>>> = {
  'board.nosing': strip,
  'board.rail': { ...strip, flush: 'bottom' },
  'board.box': { skin: inches('1/4', 6), frame: inches('1-1/2', 38) },
  'board.layers.*': { thickness: inches('3/8', 9) },
  'brackets.capacity.steel': bar,
  'brackets.capacity.strut': { at: inches('6', 150), drop: inches('6', 150), ...bar },
  'brackets.boardScrews.at.*': { '': inches('4', 100) },
  'brackets.plate': { height: inches('8', 200), width: inches('1-1/4', 32) },
  'brackets.screws': {
    fastener: 'wood-screw-10',
    length: inches('3', 75),
    'heights.0': inches('7', 175),
    'heights.1': inches('1', 25),
  },
  'brackets.screws.heights.*': { '': inches('4', 100) },
  'wall.studs.first': { first: inches('0', 0), spacing: inches('16', 400) },
  'wall.studs.at': { 'at.0': inches('0', 0), 'at.1': inches('16', 400) },
  'wall.coverings': { '0.material': 'gypsum-board', '0.thickness': inches('1/2', 12.5) },
  'wall.coverings.*': { material: 'gypsum-board', thickness: inches('1/2', 12.5) },
  'loads.*': {
    kind: 'line',
    amount: { 'inch-pound': '10 lbf/ft', metric: '150 N/m' },
    duration: 'ten-years',
  },
  'loads.*.line': { amount: { 'inch-pound': '10 lbf/ft', metric: '150 N/m' } },
  'loads.*.area': { amount: { 'inch-pound': '15 psf', metric: '0.75 kPa' } },
  'loads.*.point': { amount: { 'inch-pound': '20 lbf', metric: '100 N' }, at: inches('12', 300) },
  'loads.*.roaming': { amount: { 'inch-pound': '50 lbf', metric: '220 N' } },
  'loads.*.things': { '0.thing': 'dinner-plate', '0.count': '12' },
  'loads.*.things.*': { thing: 'dinner-plate', count: '12' },
};

/** The same where another element means something else by a part. */
const ownStarts: Readonly<Record<Element, typeof starts>> = {
  'bracket-shelf': {},
  'wall-fixing': {
    'screws.heights.*': { '': inches('4', 100) },
    'loads.*': { shear: { 'inch-pound': '20 lbf', metric: '100 N' }, duration: 'ten-years' },
  },
  'counter-run': {
    finish: { kind: 'ceramic-tile', thickness: inches('3/8', 9), bed: inches('1/8', 3) },
    'loads.*': { kind: 'area', amount: { 'inch-pound': '10 psf', metric: '0.5 kPa' }, duration: 'ten-years' },
    'loads.*.area': { amount: { 'inch-pound': '10 psf', metric: '0.5 kPa' } },
    'loads.*.person': { amount: { 'inch-pound': '300 lbf', metric: '1300 N' } },
  },
  'counter-overhang': {
    'top.finish': { kind: 'ceramic-tile', thickness: inches('3/8', 9), bed: inches('1/8', 3) },
    'base.rail': { thickness: inches('3/4', 19) },
    screws: {
      fastener: 'wood-screw-10',
      length: inches('2', 50),
      through: inches('3/4', 19),
      'at.0.0': inches('3', 75),
      'at.0.1': inches('2', 50),
    },
    'screws.at.*': { '0': inches('12', 300), '1': inches('2', 50) },
    'props.*': { kind: 'bracket', at: inches('12', 300), to: inches('30', 760) },
    'props.*.flat-bar': { from: inches('4', 100), width: inches('2', 50), thickness: inches('3/8', 10) },
    'loads.*': { kind: 'area', amount: { 'inch-pound': '10 psf', metric: '0.5 kPa' }, duration: 'ten-years' },
    'loads.*.area': { amount: { 'inch-pound': '10 psf', metric: '0.5 kPa' } },
    'loads.*.person': { amount: { 'inch-pound': '250 lbf', metric: '1100 N' } },
  },
};

/** The fields to write into a part of the form that is empty. */
export function startOf(part: string, name: string, texts: Texts): [string, string][] {
  const system: UnitSystem = written(texts, 'units') === 'metric' ? 'metric' : 'inch-pound';
  const own = ownStarts[elementOf(texts)][part];
  return Object.entries(own ?? starts[part] ?? {}).map(([field, start]) => [
    field === '' ? name : `${name}.${field}`,
    typeof start === 'string' ? start : start[system],
  ]);
}

/**
 * Fills each part of the form that was just chosen and has nothing in it yet with values to start from. A row that is added gets
 * its own as it is: one with nothing in it came like that from a file, and nothing is put into it.
 */
export function withStarts(texts: Texts): Map<string, string> {
  const filled = new Map(texts);
  const fillIn = (part: string, name: string): void => {
    if (anyWritten(filled, name)) return;
    for (const [field, text] of startOf(part, name, filled)) filled.set(field, text);
  };
  for (const [name, by] of texts) {
    if (name === 'top.build.was') changeBuild(filled, by);
    else if (name.endsWith('.was')) fillNewKind(filled, name.slice(0, -'.was'.length), by);
    if (!name.endsWith('.by')) continue;
    const group = name.slice(0, -'.by'.length);
    if (by === 'given' && !patternOf(group).endsWith('.*')) fillIn(patternOf(group), group);
    if (by === 'first') fillOption(filled, group, 'first', 'spacing');
    if (by === 'at') fillOption(filled, group, 'at');
    if (by === 'things') fillIn(`${patternOf(group)}.things`, `${group}.things`);
    if (patternOf(group) === 'loads.*') carryWeight(filled, group, written(texts, `${name}.was`), by);
    if (by === 'box') fillIn('board.box', 'board.box');
    if (by === 'layers') fillLayers(filled);
  }
  if (
    written(texts, 'brackets.capacity.basis') === 'steel' &&
    !anyWritten(texts, 'brackets.capacity.width')
  ) {
    for (const [field, text] of startOf('brackets.capacity.steel', 'brackets.capacity', filled)) {
      if (written(filled, field) === '') filled.set(field, text);
    }
  }
  return filled;
}

function fillOption(texts: Map<string, string>, group: string, option: string, ...more: string[]): void {
  if ([option, ...more].some((field) => anyWritten(texts, `${group}.${field}`))) return;
  for (const [field, text] of startOf(`${group}.${option}`, group, texts)) texts.set(field, text);
}

/** A panel is another material than wood, and has other questions. */
function changeBuild(texts: Map<string, string>, was: string): void {
  const now = written(texts, 'top.build');
  if ((now === 'panel') === (was === 'panel')) return;
  for (const name of texts.keys()) {
    if (/^top\.(material|appearance|sheets|bond|finish\b.*)$/.test(name)) texts.delete(name);
  }
  texts.set('top.material', now === 'panel' ? 'birch-plywood' : 'sugar-maple');
}

function fillLayers(texts: Map<string, string>): void {
  if (rowsOf(texts, 'board.layers').length > 0) return;
  for (const row of [0, 1]) {
    for (const [field, text] of startOf('board.layers.*', `board.layers.${row}`, texts))
      texts.set(field, text);
  }
}

/** A load that became another kind of load can't keep an amount that kind does not take; a prop needs other sizes. */
function fillNewKind(texts: Map<string, string>, row: string, was: string): void {
  const kind = written(texts, `${row}.kind`);
  if (kind === was || kind === '' || anyWritten(texts, `${row}.things`)) return;
  if (was === 'line' && written(texts, `${row}.by`) === 'total') texts.set(`${row}.by`, 'amount');
  if (was === 'line') texts.delete(`${row}.total`);
  for (const [field, text] of startOf(`${patternOf(row)}.${kind}`, row, texts)) {
    if (field.endsWith('.amount') || written(texts, field) === '') texts.set(field, text);
  }
}

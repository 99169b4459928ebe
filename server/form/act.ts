import { inch, parseQuantity, type UnitSystem } from '../../shared/quantity/index.ts';
import { patternOf } from './alternatives.ts';
import { bareUnits } from './bare-units.ts';
import { setFields } from './changes.ts';
import { readForm } from './read-form.ts';
import { arrange } from './rows.ts';
import { startOf } from './starts.ts';
import { rowsOf, written, type Texts } from './texts.ts';

/** A form after one of its buttons was pressed, and the field or button that should have the focus then. */
export interface Acted {
  readonly texts: Texts;
  readonly at: string;
}

/**
 * Does what a button of the form says: `add:<list>`, `remove:<list>.<row>`, `up:<list>.<row>`, `down:<list>.<row>`,
 * `board:<basis>=<name>` or `set:<fields, as a query>`. Anything else changes nothing.
 */
export function act(texts: Texts, doing: string): Acted {
  const [, verb = '', object = ''] = /^(add|remove|up|down|board|set):(.+)$/.exec(doing) ?? [];
  if (verb === 'add') return add(texts, object);
  if (verb === 'board') return chooseBoard(texts, object);
  if (verb === 'set') return { texts: setFields(texts, object), at: 'verdict' };
  const [, list = '', row = ''] = /^(.+)\.(\d{1,3})$/.exec(object) ?? [];
  const rows = rowsOf(texts, list);
  const place = rows.indexOf(Number(row));
  if (verb === '' || place < 0) return { texts, at: '' };
  if (verb === 'remove') {
    const order = rows.filter((each) => each !== Number(row));
    const next = Math.min(place, order.length - 1);
    const at = next < 0 ? `add:${list}` : `remove:${list}.${next}`;
    const arranged = arrange(texts, list, order);
    const emptied = order.length === 0 ? emptiedLists[patternOf(list)] : undefined;
    if (emptied !== undefined) arranged.set(emptied.by(list), emptied.way);
    return { texts: arranged, at };
  }
  const target = verb === 'up' ? place - 1 : place + 1;
  const other = rows[target];
  if (other === undefined) return { texts: arrange(texts, list, rows), at: `${verb}:${object}` };
  const order = rows.map((each, index) => (index === place ? other : index === target ? Number(row) : each));
  const isLast = target === 0 || target === rows.length - 1;
  const turned = verb === 'up' ? 'down' : 'up';
  return { texts: arrange(texts, list, order), at: `${isLast ? turned : verb}:${list}.${target}` };
}

/** What it means that the last row of a list was removed, where that is not plain. */
const emptiedLists: Readonly<
  Record<string, { readonly by: (list: string) => string; readonly way: string }>
> = {
  'board.layers': { by: () => 'board.by', way: 'plain' },
  'wall.studs.at': { by: () => 'wall.studs.by', way: 'none' },
  'base.panels': { by: (list) => `${list}.by`, way: 'empty' },
  'wall.coverings': { by: (list) => `${list}.by`, way: 'empty' },
  'loads.*.things': { by: (list) => list.replace(/things$/, 'by'), way: 'amount' },
};

function chooseBoard(texts: Texts, object: string): Acted {
  const [, basis = '', name = ''] = /^([a-z-]*)=(.*)$/.exec(object) ?? [];
  const chosen = new Map(texts).set('board.material', name).set('board.basis', basis);
  if (basis !== 'clear-wood') chosen.delete('board.appearance');
  if (basis !== 'graded') chosen.delete('board.grade');
  return { texts: chosen, at: 'board.material' };
}

function add(texts: Texts, list: string): Acted {
  const rows = rowsOf(texts, list);
  const added = arrange(texts, list, rows);
  const name = `${list}.${rows.length}`;
  if (added.get(`${list}.by`) !== 'given') added.delete(`${list}.by`);
  const pattern = patternOf(name);
  const start = placed.has(pattern) ? [] : startOf(pattern, name, texts);
  for (const [field, text] of start) added.set(field, text);
  const places = rows.map((_, row) => `${list}.${row}`);
  if (start.length === 0) added.set(name, nextPlace(added, places, lengthBehind(list)));
  if (pattern === 'props.*') {
    const at = nextPlace(
      added,
      places.map((place) => `${place}.at`),
      'top.length',
    );
    if (at !== '') added.set(`${name}.at`, at);
  }
  return { texts: added, at: start[0]?.[0] ?? name };
}

/** Lists of places along the board or the top, where a new one goes on from the last two. */
const placed = new Set(['brackets.positions.*', 'wall.studs.at.*', 'board.joints.*', 'base.panels.*']);

/** The field that says how long the thing is that a list gives places along. */
const lengthBehind = (list: string): string => (list === 'base.panels' ? 'top.length' : 'board.length');

/** The middle of the widest gap between the places so far, or of the board. */
function nextPlace(texts: Texts, names: readonly string[], lengthName: string): string {
  const { system } = readForm(texts);
  const unit = bareUnits[system].length;
  const places = names.map((name) => lengthOf(texts, name, unit));
  const length = lengthOf(texts, lengthName, unit);
  if (length === undefined) return nextStud(places.at(-1), system);
  const known = places.filter((place) => place !== undefined && place <= length);
  const marks = [0, ...known, length].filter((mark) => mark !== undefined).sort((a, b) => a - b);
  let [from, to] = [0, 0];
  marks.forEach((mark, index) => {
    const before = marks[index - 1] ?? mark;
    if (mark - before > to - from + 1e-9) [from, to] = [before, mark];
  });
  const middle = (from + to) / 2;
  if (system === 'metric') return `${Math.round(middle * 1000)} mm`;
  return `${Math.round(middle / inch)} in`;
}

/** Where there is no board, 16 in (400 mm) on from the last place. */
function nextStud(last: number | undefined, system: UnitSystem): string {
  if (last === undefined) return '';
  return system === 'metric' ? `${Math.round(last * 1000) + 400} mm` : `${Math.round(last / inch) + 16} in`;
}

function lengthOf(texts: Texts, name: string, unit: string): number | undefined {
  const parsed = parseQuantity(written(texts, name), 'length', unit);
  return parsed.ok ? parsed.value : undefined;
}

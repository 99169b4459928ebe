import { rowOfCommonWord } from './common-word.ts';
import { combinationIndex } from './graded-lumber.ts';
import type { NameIndex, Named } from './name-index.ts';
import { panelIndex } from './panels.ts';
import { findSpecies, notSure, speciesIndex, woodKinds } from './species.ts';
import type { BoardMatch, Species } from './types.ts';

const most = 12;
const near = 0.45;

/**
 * Boards for a picker: whatever common name is typed, whole or in part, in any word order.
 *
 * @param text what was typed
 * @returns up to 12 species, lumber combinations and panels, best first; for no text, or one that names no wood, the likely
 *   species. A common word for several woods gives the row for whoever can't tell which first
 */
export function searchBoards(text: string): BoardMatch[] {
  const common = rowOfCommonWord(text);
  if (text.trim() === '' || common === notSure())
    return speciesIndex.rows.slice(0, most).map((row) => match('species', row));
  const isNamed = [speciesIndex, combinationIndex, panelIndex].some(
    (index) => index.find(text) !== undefined,
  );
  const kind = common ?? kindNamed(text);
  if (kind !== undefined && common === undefined) return searchBoards(kind.name.replace(/,.*/, ''));
  return [
    ...(kind === undefined ? [] : [{ board: match('species', kind), distance: -1 }]),
    ...ranked('species', speciesIndex, text, isNamed),
    ...ranked('lumber', combinationIndex, text, isNamed),
    ...ranked('panel', panelIndex, text, isNamed),
  ]
    .filter(({ distance }) => distance < near)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, most)
    .map((found) => found.board);
}

/** The row of a kind of wood by the name it has as a row: "Oak, kind not known". */
function kindNamed(text: string): Species | undefined {
  const found = findSpecies(text);
  return found.ok && woodKinds.includes(found.row) ? found.row : undefined;
}

function ranked<T extends Named>(
  kind: BoardMatch['kind'],
  index: NameIndex<T>,
  text: string,
  isNamed: boolean,
): { board: BoardMatch; distance: number }[] {
  const exact = index.find(text);
  if (isNamed) {
    // Somebody has found a board: its name needs no guessing, only what is called alike beside it.
    const alike = index.sharingWord(text).filter((row) => row !== exact);
    const found = exact === undefined ? [] : [{ board: match(kind, exact), distance: -1 }];
    return [...found, ...alike.map((row) => ({ board: match(kind, row), distance: 0 }))];
  }
  return index.ranked(text).map(({ row, distance }) => ({
    board: match(kind, row),
    distance: row === exact ? -1 : distance,
  }));
}

function match(kind: BoardMatch['kind'], row: Named): BoardMatch {
  return Object.freeze({ kind, id: row.id, name: row.name });
}

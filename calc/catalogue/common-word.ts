import { words } from './nearest.ts';
import { panelIndex } from './panels.ts';
import { notSure, woodKinds } from './species.ts';
import type { Species } from './types.ts';

/** Words that say what a board is for or how it is made, and nothing of its wood. */
const sayNoWood = new Set(
  (
    'board boards block butcher butcherblock counter counters countertop edge glued hardwood lumber made of old plank planks ' +
    'real shelf shelves shelving slab softwood solid stave staves strips timber top wood wooden worktop'
  ).split(' '),
);

/**
 * The row to take for a common word, where whoever writes it can't tell which wood it is.
 *
 * @param name as it was written: "oak", "pine board", "butcher block"
 * @returns the row of that kind of wood; that of a wood not known where the words name none; undefined where it is neither
 */
export function rowOfCommonWord(name: string): Species | undefined {
  const written = words(name.slice(0, 80));
  const wood = written.filter((word) => !sayNoWood.has(word) && !/\d/.test(word));
  if (written.length > 0 && wood.length === 0) return notSure();
  return wood.length === 1 ? woodKinds.find(({ id }) => id === `${wood[0] ?? ''}-kind-not-known`) : undefined;
}

/**
 * What to answer to a name that no wood goes by, where it means something all the same: a word for several woods, for none in
 * particular, or a panel.
 *
 * @param takesPanels whether the field takes panels too
 * @returns a sentence; empty where the name is like nothing
 */
export function commonWordSaid(name: string, takesPanels: boolean): string {
  const panel = panelIndex.find(name);
  if (!takesPanels && panel !== undefined)
    return `"${name}" is a panel: say so where it asks how it is built or where its strength is from.`;
  const written = words(name.slice(0, 80));
  if (written.length > 1 && written.some((word) => word === 'plywood' || word === 'ply')) {
    return takesPanels ? cores : '';
  }
  const row = rowOfCommonWord(name);
  if (row === undefined) return '';
  return row === notSure()
    ? 'That names no wood. Where nobody can tell which it is, "not sure" takes the lowest strength and stiffness of the likely ones.'
    : `It may be ${row.drawn?.woods.replace(/ and (?=[^,]*$)/, ' or ') ?? ''}. Where nobody can tell, "${row.name}" is safe: it takes the lowest strength and stiffness of them.`;
}

const cores =
  'A face veneer carries little: the core counts. For one of veneers it takes "plywood"; where nobody can tell, "particleboard" is safe, the weakest core.';

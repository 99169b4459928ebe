import { actionsOf } from '../../calc/elements/bracket-shelf/actions.ts';
import { contentsOf } from '../../calc/elements/bracket-shelf/contents.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import { show, type UnitSystem } from '../../shared/quantity/index.ts';
import { depths } from './profile.ts';

/** A load as it is drawn: its number in the list, what it is called, what it weighs, how far from the wall it acts. */
interface Named {
  readonly number: number;
  readonly name: string;
  readonly amount: string;
  readonly fromWall: number;
}
export interface Band extends Named {
  readonly from: number;
  readonly to: number;
}
export interface Weight extends Named {
  readonly at: number;
}

/** The loads of a shelf, sorted by how they are drawn; positions in m from the left end. */
export interface DrawnLoads {
  readonly bands: readonly Band[];
  readonly weights: readonly Weight[];
  readonly roaming: readonly Named[];
}

/** The loads the check counts with: those given, things weighed, and the usual ones where none are given. */
export function drawnLoads(document: BracketShelfDocument, units: UnitSystem): DrawnLoads {
  const bands: Band[] = [];
  const weights: Weight[] = [];
  const roaming: Named[] = [];
  const { contents } = contentsOf(document.loads ?? [], units);
  const { actions } = actionsOf(document, depths(document.board).front, contents);
  actions.forEach(({ name, eccentricity_m, load }, index) => {
    const amount = load.kind === 'line' ? show(load.load_Npm, 'N/m', units) : show(load.load_N, 'N', units);
    const named = { number: index + 1, name, amount, fromWall: eccentricity_m };
    if (load.kind === 'line') bands.push({ ...named, from: load.from_m, to: load.to_m });
    else if (load.kind === 'point') weights.push({ ...named, at: load.at_m });
    else roaming.push(named);
  });
  return { bands, weights, roaming };
}

/** `Plates and jugs, 18 lbf/ft`. */
export function withAmount({ name, amount }: Named): string {
  return `${name}, ${amount}`;
}

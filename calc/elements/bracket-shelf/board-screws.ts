import { show, inch } from '../../../shared/quantity/index.ts';
import { findFastener, findFramingWood, findSpecies } from '../../catalogue/index.ts';
import type { Shelf } from './shelf.ts';

/** The screws up through each arm into the board, with what was not given filled in. */
export interface BoardScrews {
  readonly fastener: string;
  readonly length_m: number;
  /** Screws in one arm, and those of them nearest the wall. */
  readonly count: number;
  readonly atFirst: number;
  readonly firstAt_m: number;
  /** All of them, from the wall. */
  readonly places_m: readonly number[];
  readonly armThickness_m: number;
  readonly armMaterial: string;
  /** Thread in the board. */
  readonly thread_m: number;
  readonly assumed: boolean;
  readonly words: string;
}

/**
 * Screws as given, or two #8 wood screws at the quarter points of the arm that stop 1/8 in under the face of what they go into:
 * the board, its lowest layer, or the lower skin of a box. The thread is two thirds of a wood screw, from its tip (NDS
 * Appendix L), and counts as far as it is in there.
 */
export function boardScrewsOf({ document, board, bearingLength_m, capacity, system }: Shelf): BoardScrews {
  const given = document.brackets.boardScrews;
  const usual_m = capacity.basis === 'steel' ? capacity.thickness : inch / 8;
  const armThickness_m = given?.armThickness ?? usual_m;
  const thickness_m = board.onArms.height_m;
  const places = given?.at ?? [bearingLength_m / 4, (3 * bearingLength_m) / 4];
  const firstAt_m = Math.min(...places);
  const fastener = given?.fastener ?? 'wood-screw-8';
  const length_m = given?.length ?? armThickness_m + Math.max(thickness_m - inch / 8, thickness_m / 2);
  const found = findFastener(fastener);
  const reach_m = length_m - armThickness_m;
  const threaded = Math.max((2 * length_m) / 3, found.ok ? 4 * found.row.diameter_m : 0);
  return {
    fastener,
    length_m,
    count: places.length,
    atFirst: places.filter((place) => place < firstAt_m + inch / 8).length,
    firstAt_m,
    places_m: places,
    armThickness_m,
    armMaterial: given?.armMaterial ?? 'metal',
    thread_m: Math.max(0, Math.min(reach_m, thickness_m) - Math.max(0, reach_m - threaded)),
    assumed:
      given?.at === undefined ||
      given.length === undefined ||
      given.fastener === undefined ||
      given.armThickness === undefined,
    words: `${places.length} × ${found.ok ? found.row.name : fastener}, ${show(length_m, 'm', system)} long, up through each arm, ${show(armThickness_m, 'm', system)} thick, at ${places.map((place) => show(place, 'm', system)).join(' and ')} from the wall`,
  };
}

/** Specific gravity of a wood by name: as framing where the NDS assigns it one, else as clear wood; null if unknown. */
export function woodGravity(name: string): number | null {
  const framing = findFramingWood(name);
  if (framing.ok) return framing.row.specificGravity;
  const species = findSpecies(name);
  return species.ok ? species.row.dry.specificGravity : null;
}

import type { WallDocument } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import { levelDimension, ticks, type Room, type Strip } from './dimension.ts';
import { dimensionText, textWidth } from './lettering.ts';
import type { Scale } from './scale.ts';
import { line } from './svg.ts';

/** A bracket or plate that stands further from the nearest stud than its screws allow. Places in m, as the studs are measured. */
export interface Miss {
  readonly bracket: number;
  /** `Bracket 3`, or `The plate`. */
  readonly what: string;
  readonly at_m: number;
  readonly stud_m: number;
  /** `2 in`. */
  readonly distance: string;
}

/** The brackets that are off their studs, as the check judged them; none where no stud has to be met. */
export function missesOf(document: WallDocument, result: CheckResult): Miss[] {
  const check = result.checks.find(({ id }) => id === 'bracket-on-stud');
  if (check === undefined) return [];
  const allowed_m = check.capacity?.value ?? 0;
  const units = document.units ?? 'inch-pound';
  const places = placesOf(document);
  return result.fixings.flatMap(({ bracket, stud, miss }) => {
    const at_m = places[bracket - 1];
    if (stud === null || miss === null || at_m === undefined || miss.value <= allowed_m + 1e-9) return [];
    const what = document.element === 'bracket-shelf' ? `Bracket ${bracket}` : 'The plate';
    return [{ bracket, what, at_m, stud_m: stud.value, distance: dimensionText(miss.value, units) }];
  });
}

/** Where brackets stand, from the left; or where a plate alone does, if anybody says. */
export function placesOf(document: WallDocument): number[] {
  if (document.element === 'bracket-shelf') return document.brackets.positions.toSorted((a, b) => a - b);
  return document.position === undefined ? [] : [document.position];
}

/** A dimension from each bracket that misses to the centre line it should meet; its words where they have room. */
export function missParts(
  misses: readonly Miss[],
  top: number,
  scale: Scale,
  size: number,
  room: Room,
): Strip {
  if (misses.length === 0) return { parts: [], bottom: top };
  const y = top + size * 1.4 + 4;
  let taken = -Infinity;
  const parts = misses.flatMap(({ at_m, stud_m, distance }) => {
    const [from, to] = [at_m, stud_m]
      .toSorted((a, b) => a - b)
      .map((place) => Math.min(Math.max(scale.x(place), room.left), room.right));
    if (from === undefined || to === undefined) return [];
    const words = [`${distance} off`, distance].find(
      (each) => labelOf(each, from, to, size, room).left > taken,
    );
    if (words === undefined) return [line({ x: from, y }, { x: to, y }, 'thin'), ticks([{ x: from, y }])];
    taken = labelOf(words, from, to, size, room).right + size * 0.3;
    return levelDimension({ from, to, y }, words, size, room);
  });
  return { parts, bottom: y + 3 };
}

function labelOf(words: string, from: number, to: number, size: number, room: Room): Room {
  const half = textWidth(words, size) / 2;
  const middle = Math.min(Math.max((from + to) / 2, room.left + half), room.right - half);
  return { left: middle - half, right: middle + half };
}

/** `Bracket 3, at 48 in, is 2 in off the stud at 50 in.` */
export function missWords({ what, at_m, stud_m, distance }: Miss, units: 'inch-pound' | 'metric'): string {
  return `${what}, at ${dimensionText(at_m, units)}, is ${distance} off the stud at ${dimensionText(stud_m, units)}.`;
}

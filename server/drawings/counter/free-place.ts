import { textWidth } from '../lettering.ts';
import type { Box, Point } from '../svg.ts';

/** Words and their size, set about the middle of where they stand. */
interface Label {
  readonly words: string;
  readonly size: number;
}

/**
 * The first place at which a label stands on nothing that would make it hard to read; the first of all where none is free.
 *
 * @param places middle of the label's foot, the best first; there is at least one
 * @param taken hatching, outlines and whatever else is drawn there
 */
export function freePlace(places: readonly [Point, ...Point[]], label: Label, taken: readonly Box[]): Point {
  return places.find((place) => !taken.some((box) => overlap(boxOf(place, label), box))) ?? places[0];
}

function boxOf({ x, y }: Point, { words, size }: Label): Box {
  const half = textWidth(words, size) / 2;
  return { left: x - half, right: x + half, top: y - size * 0.75, bottom: y + size * 0.2 };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

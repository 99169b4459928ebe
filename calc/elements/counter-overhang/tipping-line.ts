import { clipped, measured, type Point } from '../../mechanics/hull.ts';
import type { Overhang } from './overhang.ts';
import { stoolSpacing_m } from './usual.ts';

/** How far outside a line a place is; inside it is less than nothing. */
export type Lever = (place: Point) => number;

/** The lever about the line through two points that have the inside on their left. */
export function leverAbout([x0, y0]: Point, [x1, y1]: Point): Lever {
  const length = Math.hypot(x1 - x0, y1 - y0);
  return ([x, y]) => ((y1 - y0) * (x - x0) - (x1 - x0) * (y - y0)) / length;
}

/** A part of the top: its weight, its area, and how far its middle is from the line. */
export interface TopPart {
  readonly weight_N: number;
  readonly area_m2: number;
  readonly lever_m: number;
}

/** The parts of a top outside a line and inside it. */
export function topParts(
  { length_m, depth_m, weight_N }: Overhang['top'],
  lever: Lever,
): { readonly outside: TopPart; readonly inside: TopPart } {
  const whole: Point[] = [
    [0, 0],
    [length_m, 0],
    [length_m, depth_m],
    [0, depth_m],
  ];
  const part = (side: Lever): TopPart => {
    const { area_m2, lever_m } = measured(clipped(whole, side), side);
    return { area_m2, lever_m, weight_N: (weight_N * area_m2) / (length_m * depth_m) };
  };
  return { outside: part(lever), inside: part((place) => -lever(place)) };
}

/** How many people are outside a line, and how far each of them in the middle. */
export interface PeopleOutside {
  readonly count: number;
  readonly lever_m: number;
}

/**
 * People where they turn the counter most over a line: at an end of any edge, with a second beside them where two stools
 * fit; where the place of one is given, that one alone.
 */
export function peopleOutside({ top, person }: Overhang, lever: Lever): PeopleOutside {
  if (person === null) return nobody;
  const half = person.patch_m / 2;
  const { length_m, depth_m } = top;
  if (person.at_m !== null) return outsideOf([lever([person.at_m, depth_m - half])]);
  const [near, farX, farY] = [half, length_m - half, depth_m - half];
  const corners: Point[] = [
    [near, near],
    [farX, near],
    [farX, farY],
    [near, farY],
  ];
  const stands = corners.flatMap((corner, index) =>
    [1, 3].map((step) => {
      const other = corners[(index + step) % 4] ?? corner;
      const span = Math.hypot(other[0] - corner[0], other[1] - corner[1]);
      if (span + person.patch_m < 2 * stoolSpacing_m) return outsideOf([lever(corner)]);
      const share = stoolSpacing_m / span;
      const second: Point = [
        corner[0] + share * (other[0] - corner[0]),
        corner[1] + share * (other[1] - corner[1]),
      ];
      return outsideOf([lever(corner), lever(second)]);
    }),
  );
  return stands.reduce((a, b) => (b.count * b.lever_m > a.count * a.lever_m ? b : a), nobody);
}

/** Whoever is nearer to a line than that stands on it: their lever is what rounding leaves. */
const onTheLine_m = 1e-9;

const nobody: PeopleOutside = { count: 0, lever_m: 0 };

function outsideOf(levers: readonly number[]): PeopleOutside {
  const out = levers.filter((each) => each > onTheLine_m);
  if (out.length === 0) return nobody;
  return { count: out.length, lever_m: out.reduce((a, b) => a + b, 0) / out.length };
}

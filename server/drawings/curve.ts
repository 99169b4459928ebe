import type { Point } from './svg.ts';

/** A place where a curve turns: a peak, a trough, or an end that sticks out. */
export interface Turn {
  readonly at: number;
  readonly value: number;
}

/**
 * The places where a curve is farthest from zero among its neighbours, on one side of the axis.
 *
 * @param at positions, never falling; a jump has its position twice
 * @param side +1 for peaks above zero, −1 for troughs below
 * @param least values nearer to zero than this are no turning points
 */
export function turningPoints(
  at: readonly number[],
  values: readonly number[],
  side: 1 | -1,
  least: number,
): Turn[] {
  const height = values.map((value) => value * side);
  const turns: Turn[] = [];
  let rising = true;
  height.forEach((here, index) => {
    const next = height[index + 1] ?? -Infinity;
    if (next > here) rising = true;
    if (next < here) {
      const place = at[index];
      if (rising && here >= least && place !== undefined) turns.push({ at: place, value: here * side });
      rising = false;
    }
  });
  return turns;
}

/** The value of a curve at a place, by a straight line between its neighbours. */
export function valueAt(at: readonly number[], values: readonly number[], place: number): number {
  const after = at.findIndex((each) => each >= place);
  const [a, b] = [at[after - 1], at[after]];
  const [from, to] = [values[after - 1], values[after]];
  if (to === undefined || b === undefined) return values.at(-1) ?? 0;
  if (a === undefined || from === undefined || b === a) return to;
  return from + ((to - from) * (place - a)) / (b - a);
}

/** Upright strokes from the axis to a curve, as moment and shear are hatched. */
export function ordinates(
  at: readonly number[],
  values: readonly number[],
  to: (place: number, value: number) => Point,
  step: number,
): [Point, Point][] {
  const [start = 0, end = 0] = [at[0], at.at(-1)];
  const count = Math.floor((end - start) / step);
  return Array.from({ length: count }, (_, index): [Point, Point] => {
    const place = start + (index + 0.5) * step;
    return [to(place, 0), to(place, valueAt(at, values, place))];
  }).filter(([foot, top]) => Math.abs(foot.y - top.y) > 0.5);
}

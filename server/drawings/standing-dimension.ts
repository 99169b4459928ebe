import { spread, ticks } from './dimension.ts';
import { line, polyline, text } from './svg.ts';

/** A height on a standing dimension: where, and the number written beside it. */
export interface HeightMark {
  readonly y: number;
  readonly words: string;
}

/** How far apart the numbers of a standing dimension lie at the least, for letters of a size. */
export const rowOf = (size: number): number => size * 1.15;

/**
 * A running dimension that stands upright: one thin line at `x`, a tick at every height, its number to the left. Numbers
 * that would meet are set apart and led to their ticks.
 *
 * @param marks from the top down
 * @param room the highest and the lowest middle of a number
 */
export function standingDimension(
  marks: readonly HeightMark[],
  x: number,
  size: number,
  room: { readonly top: number; readonly bottom: number },
): string[] {
  const [first, last] = [marks[0], marks.at(-1)];
  if (first === undefined || last === undefined) return [];
  const rows = spread(
    marks.map(({ y }) => y),
    rowOf(size),
    { left: room.top, right: room.bottom },
  );
  return [
    line({ x, y: first.y }, { x, y: last.y }, 'thin'),
    ticks(marks.map(({ y }) => ({ x, y }))),
    ...marks.flatMap(({ y, words }, index) => {
      const row = rows[index] ?? y;
      const leader = [
        { x: x - 3, y },
        { x: x - 11, y: row },
      ];
      return [
        Math.abs(row - y) < 0.5 ? '' : polyline(leader, 'thin'),
        text(words, { x: x - 13, y: row + size * 0.35 }, { size, anchor: 'end' }),
      ];
    }),
  ];
}

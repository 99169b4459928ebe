import { contours } from 'd3-contour';
import { areas, type Point } from '../svg.ts';

/** Values over a top at the crossings of its mesh, row by row from the back edge, each row from the left end. */
export interface Grid {
  readonly x_m: readonly number[];
  readonly y_m: readonly number[];
  readonly values: readonly number[];
}

const mostBands = 6;

/** Round levels from nought up, no more than six, the last of them under the largest value. */
export function levelsOf(largest: number): number[] {
  if (!(largest > 0)) return [];
  const decade = 10 ** Math.floor(Math.log10(largest / mostBands));
  const step = ([1, 2, 2.5, 5, 10].find((part) => largest <= mostBands * part * decade) ?? 10) * decade;
  const count = Math.ceil(largest / step - 1e-9);
  return Array.from({ length: count }, (_, index) => Number((index * step).toPrecision(6)));
}

/**
 * Bands between levels, one tone over another, so that what is more is darker and the next tone starts where a line runs.
 *
 * @param place where a place on the top lies on the drawing
 */
export function bandParts(
  field: Grid,
  levels: readonly number[],
  place: (x_m: number, y_m: number) => Point,
): string[] {
  const { x_m, y_m, values } = field;
  const along = placeAt(x_m);
  const down = placeAt(y_m);
  const trace = contours().size([x_m.length, y_m.length]);
  return levels
    .filter((level) => level > 0)
    .map((level) => {
      const { coordinates } = trace.contour([...values], level);
      const rings = coordinates.flatMap((polygon) =>
        polygon.map((ring) => ring.map(([i = 0, j = 0]) => place(along(i), down(j)))),
      );
      return areas(rings);
    });
}

/** Turns a place among the lines of the mesh, half a cell before the first, into metres. */
function placeAt(lines: readonly number[]): (index: number) => number {
  const last = lines.length - 1;
  return (index) => {
    const at = Math.min(Math.max(index - 0.5, 0), last);
    const before = Math.min(Math.floor(at), Math.max(last - 1, 0));
    const [from = 0, to = from] = [lines[before], lines[before + 1]];
    return from + (to - from) * (at - before);
  };
}

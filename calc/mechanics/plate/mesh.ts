/** A grid of lines over a rectangle, from 0 to its length (x) and depth (y); in order. */
export interface PlateMesh {
  readonly x_m: readonly number[];
  readonly y_m: readonly number[];
}

/** A place by its cell and its share of the cell's sides. */
interface InCell {
  readonly i: number;
  readonly j: number;
  readonly s: number;
  readonly t: number;
  readonly hx: number;
  readonly hy: number;
}

/**
 * Number of the node at line i of x and line j of y. Nodes are numbered along the side with fewer lines, which keeps
 * the band of the matrix narrow.
 */
export function nodeOf({ x_m, y_m }: PlateMesh, i: number, j: number): number {
  return y_m.length <= x_m.length ? i * y_m.length + j : j * x_m.length + i;
}

export function nodeCount({ x_m, y_m }: PlateMesh): number {
  return x_m.length * y_m.length;
}

/** The cell a place lies in; a place on a line belongs to the cell before it, or the first. */
export function cellAt({ x_m, y_m }: PlateMesh, x: number, y: number): InCell {
  const [i, s, hx] = sideAt(x_m, x);
  const [j, t, hy] = sideAt(y_m, y);
  return { i, j, s, t, hx, hy };
}

/** Interval of a list of lines a place lies in, the share of it, and its length. */
export function sideAt(lines_m: readonly number[], at_m: number): readonly [number, number, number] {
  let low = 0;
  let high = lines_m.length - 2;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines_m[middle + 1] ?? Infinity) < at_m) low = middle + 1;
    else high = middle;
  }
  const from = lines_m[low] ?? 0;
  const h = (lines_m[low + 1] ?? from) - from;
  return [low, (at_m - from) / h, h];
}

/** The line nearest to a place. */
export function nearestLine(lines_m: readonly number[], at_m: number): number {
  return lines_m.reduce(
    (best, line) => (Math.abs(line - at_m) < Math.abs(best - at_m) ? line : best),
    lines_m[0] ?? 0,
  );
}

/** How fine a mesh is to be, and where. */
export interface Fineness {
  /** Largest cell anywhere. */
  readonly largest_m: number;
  /** Largest cell at each of these places; away from them cells grow by at most `growth` of the distance. */
  readonly near: readonly { readonly at_m: number; readonly size_m: number; readonly growth?: number }[];
  readonly growth?: number;
}

/**
 * Lines from 0 to a length through given stops, closer together near some places.
 *
 * @param stops_m places that must be lines; those nearer to each other than `closest_m` are one
 * @returns lines in order, at least two
 */
export function gradedLines(
  length_m: number,
  stops_m: readonly number[],
  fineness: Fineness,
  closest_m = 1e-4,
): number[] {
  const stops = distinct(
    [0, length_m, ...stops_m.filter((at) => at > 0 && at < length_m)],
    length_m,
    closest_m,
  );
  const { growth = 0.35 } = fineness;
  const size = (at: number): number =>
    Math.min(
      fineness.largest_m,
      ...fineness.near.map(({ at_m, size_m, growth: own = growth }) => size_m + own * Math.abs(at - at_m)),
    );
  return stops.flatMap((from, index) => {
    const to = stops[index + 1];
    return to === undefined ? [from] : [from, ...between(from, to, size)];
  });
}

/** Inner lines of a stretch: equal steps of the number of cells that the wanted sizes add up to. */
function between(from: number, to: number, size: (at: number) => number): number[] {
  const samples = 64;
  const counts = [0];
  for (let k = 0; k < samples; k++) {
    const at = from + ((k + 0.5) / samples) * (to - from);
    counts.push((counts[k] ?? 0) + (to - from) / samples / size(at));
  }
  const cells = Math.max(1, Math.ceil((counts[samples] ?? 1) - 1e-6));
  const lines: number[] = [];
  let k = 0;
  for (let cell = 1; cell < cells; cell++) {
    const wanted = (cell / cells) * (counts[samples] ?? 1);
    while ((counts[k + 1] ?? Infinity) < wanted) k++;
    const below = counts[k] ?? 0;
    const share = (wanted - below) / ((counts[k + 1] ?? wanted) - below);
    lines.push(from + ((k + share) / samples) * (to - from));
  }
  return lines;
}

function distinct(stops: readonly number[], length_m: number, closest_m: number): number[] {
  const sorted = [...stops].sort((a, b) => a - b);
  const kept = sorted.filter((at, index) => index === 0 || at - (sorted[index - 1] ?? 0) > closest_m);
  const inside = kept.filter((at) => at > closest_m && at < length_m - closest_m);
  return [0, ...inside, length_m];
}

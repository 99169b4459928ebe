/** A place on the top: along it, and from its back edge. */
export type Point = readonly [number, number];

const cross = ([ox, oy]: Point, [ax, ay]: Point, [bx, by]: Point): number =>
  (ax - ox) * (by - oy) - (ay - oy) * (bx - ox);

/** The outermost of some points, in order, with the inside on the left (Andrew's chains). */
export function hullOf(points: readonly Point[]): Point[] {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const chain = (order: readonly Point[]): Point[] => {
    const kept: Point[] = [];
    for (const point of order) {
      for (;;) {
        const [before, last] = [kept[kept.length - 2], kept[kept.length - 1]];
        if (before === undefined || last === undefined || cross(before, last, point) > 1e-12) break;
        kept.pop();
      }
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/** What of a polygon is on the side where a straight function of the place is positive. */
export function clipped(polygon: readonly Point[], side: (point: Point) => number): Point[] {
  return polygon.flatMap((point, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? point;
    const [a, b] = [side(point), side(next)];
    const kept: Point[] = a >= 0 ? [point] : [];
    if (a >= 0 === b >= 0) return kept;
    const s = a / (a - b);
    return [...kept, [point[0] + s * (next[0] - point[0]), point[1] + s * (next[1] - point[1])]];
  });
}

/** Area of a polygon, and the mean over it of a straight function of the place. */
export function measured(
  polygon: readonly Point[],
  lever: (point: Point) => number,
): { readonly area_m2: number; readonly lever_m: number } {
  const [first] = polygon;
  if (first === undefined) return { area_m2: 0, lever_m: 0 };
  let [area, moment] = [0, 0];
  polygon.slice(1).forEach((point, index) => {
    const next = polygon[index + 2];
    if (next === undefined) return;
    const part = Math.abs(cross(first, point, next)) / 2;
    area += part;
    moment += (part * (lever(first) + lever(point) + lever(next))) / 3;
  });
  return { area_m2: area, lever_m: area < 1e-12 ? 0 : moment / area };
}

import { strokes, type Box, type Point } from './svg.ts';

type Segment = readonly [Point, Point];

/**
 * Hatches a box with lines at 45°, leaving out holes for labels and arrows. The lines are computed rather than filled from a
 * pattern, so that a drawing needs no ids and can stand on a page more than once.
 */
export function hatch(box: Box, spacing: number, holes: readonly Box[] = [], rising = true): string {
  return strokes(
    hatchLines(box, spacing, rising).flatMap((each) => outside(each, holes)),
    'hatch',
  );
}

function hatchLines(box: Box, spacing: number, rising: boolean): Segment[] {
  const { left, right, top, bottom } = box;
  const height = bottom - top;
  const lines: Segment[] = [];
  const step = spacing * Math.SQRT2;
  const [foot, slope] = rising ? [bottom, -1] : [top, 1];
  for (let start = left - height + step / 2; start < right; start += step) {
    const from = Math.max(start, left);
    const to = Math.min(start + height, right);
    if (to <= from) continue;
    lines.push([
      { x: from, y: foot + slope * (from - start) },
      { x: to, y: foot + slope * (to - start) },
    ]);
  }
  return lines;
}

/** What is left of a segment outside all holes. */
function outside(segment: Segment, holes: readonly Box[]): Segment[] {
  let parts: [number, number][] = [[0, 1]];
  for (const hole of holes) {
    const [from, to] = inside(segment, hole);
    if (from >= to) continue;
    parts = parts.flatMap(([start, end]): [number, number][] => {
      const kept: [number, number][] = [
        [start, Math.min(end, from)],
        [Math.max(start, to), end],
      ];
      return kept.filter(([a, b]) => b - a > 1e-6);
    });
  }
  if (parts.length === 1 && parts[0]?.[0] === 0 && parts[0][1] === 1) return [segment];
  return parts.map(([a, b]): Segment => [along(segment, a), along(segment, b)]);
}

/** The part of a segment inside a box, as shares of its length; empty (from ≥ to) where there is none. */
function inside([a, b]: Segment, box: Box): [number, number] {
  const [fromX, toX] = within(a.x, b.x - a.x, box.left, box.right);
  const [fromY, toY] = within(a.y, b.y - a.y, box.top, box.bottom);
  return [Math.max(0, fromX, fromY), Math.min(1, toX, toY)];
}

/** The shares of a change between which a number stays between two others. */
function within(start: number, change: number, low: number, high: number): [number, number] {
  if (change === 0) return start < low || start > high ? [0, -1] : [0, 1];
  const [one, other] = [(low - start) / change, (high - start) / change];
  return one < other ? [one, other] : [other, one];
}

function along([a, b]: Segment, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

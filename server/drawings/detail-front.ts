import type { Detail } from './detail.ts';
import type { Scale } from './scale.ts';
import { circle, line, rect, strokes, type Point } from './svg.ts';

const beyond = 10;

/** The plate from the front: its screws as circles, led out to the heights at `edge`; the stud's edges dashed behind it. */
export function frontParts(
  { plate, screws, offsets, studs, head }: Detail,
  scale: Scale,
  { top, bottom, edge }: { readonly top: number; readonly bottom: number; readonly edge: number },
): string[] {
  const radius = Math.max(scale.length(head) / 2, 1.6);
  const [left, right] = [scale.x(-plate.width / 2), scale.x(plate.width / 2)];
  const level = (height: number): number => bottom - scale.length(height);
  const leaders = [plate.height, 0, ...screws.heights].map((height): readonly [Point, Point] => [
    { x: edge + 5, y: level(height) },
    {
      x: height === 0 || height === plate.height ? left : scale.x(offsets[0] ?? 0) - radius - 1,
      y: level(height),
    },
  ]);
  return [
    ...studs.flatMap(({ from, to }) => [
      ...[from, to].map((place) =>
        line({ x: scale.x(place), y: top - beyond }, { x: scale.x(place), y: bottom + beyond }, 'hidden'),
      ),
      line(
        { x: scale.x((from + to) / 2), y: top - beyond },
        { x: scale.x((from + to) / 2), y: bottom + beyond },
        'centre',
      ),
    ]),
    rect({ left, right, top, bottom }, 'outline'),
    strokes(leaders, 'hatch'),
    ...screws.heights.flatMap((height) =>
      offsets.flatMap((offset) => [
        circle({ x: scale.x(offset), y: level(height) }, radius, 'outline'),
        strokes(cross({ x: scale.x(offset), y: level(height) }, radius * 0.6), 'thin'),
      ]),
    ),
  ];
}

function cross({ x, y }: Point, arm: number): readonly (readonly [Point, Point])[] {
  return [
    [
      { x: x - arm, y },
      { x: x + arm, y },
    ],
    [
      { x, y: y - arm },
      { x, y: y + arm },
    ],
  ];
}

import { ordinates, turningPoints, type Turn } from './curve.ts';
import type { Frame } from './frame.ts';
import { textWidth } from './lettering.ts';
import type { Scale } from './scale.ts';
import { circle, line, polyline, strokes, text, type Box, type Point } from './svg.ts';

/** What one chart shows: one curve, or the upper and then the lower of an envelope. */
export interface Chart {
  readonly title: string;
  readonly at: readonly number[];
  readonly curves: readonly (readonly number[])[];
  /** Whether positive values are drawn below the axis, as a movement is. */
  readonly downwards: boolean;
  readonly shown: (value: number) => string;
  readonly pen: 'curve' | 'settled';
  readonly hatched: boolean;
}

/** Height of one chart, lettering included. */
export function chartHeight(frame: Frame): number {
  return frame.letters * 5.6 + frame.band * 2.6;
}

/** Draws a chart in its strip: title, axis, hatched curves, and the values where they turn. */
export function chartParts(
  chart: Chart,
  supports: readonly number[],
  top: number,
  scale: Scale,
  frame: Frame,
): string[] {
  const size = frame.letters;
  const all = chart.curves.flat();
  const direction = chart.downwards ? 1 : -1;
  const high = Math.max(0, ...all.map((each) => -each * direction));
  const low = Math.max(0, ...all.map((each) => each * direction));
  const room = { top: top + size * 3, bottom: top + chartHeight(frame) - size * 2 };
  const unit = high + low > 0 ? (room.bottom - room.top) / (high + low) : 0;
  const axis = room.top + high * unit;
  const to = (place: number, value: number): Point => ({
    x: scale.x(place),
    y: axis + value * direction * unit,
  });
  const [start = 0, end = 0] = [chart.at[0], chart.at.at(-1)];
  const labels = turnLabels(chart, to, frame);
  return [
    ...supports.map((place) => supportLine(scale.x(place), room, labels, size)),
    text(chart.title, { x: frame.left, y: top + size }, { size, strong: true }),
    line(to(start, 0), to(end, 0), 'thin'),
    ...chart.curves.flatMap((values) => [
      chart.hatched ? strokes(ordinates(chart.at, values, to, 6 / scale.unitsPerMetre), 'hatch') : '',
      polyline(
        values.map((value, index) => to(chart.at[index] ?? 0, value)),
        chart.pen,
      ),
    ]),
    ...labels.flatMap(({ turn, words, box }) => [
      circle(to(turn.at, turn.value), 1.6, 'outline'),
      text(
        words,
        { x: (box.left + box.right) / 2, y: box.bottom - size * 0.25 },
        {
          size,
          anchor: 'middle',
          clear: true,
        },
      ),
    ]),
  ];
}

interface Label {
  readonly turn: Turn;
  readonly words: string;
  readonly box: Box;
}

/** A bracket's line across a chart, open where a label stands. */
function supportLine(
  x: number,
  room: { top: number; bottom: number },
  labels: readonly Label[],
  size: number,
): string {
  const [top, bottom] = [room.top - size * 0.5, room.bottom + size * 0.5];
  const holes = labels.filter(({ box }) => box.left - 2 < x && x < box.right + 2).map(({ box }) => box);
  const edges = [
    top,
    ...holes.toSorted((a, b) => a.top - b.top).flatMap((box) => [box.top, box.bottom]),
    bottom,
  ];
  const pieces = edges.flatMap((from, index): [Point, Point][] => {
    const to = edges[index + 1];
    return index % 2 === 1 || to === undefined || to <= from
      ? []
      : [
          [
            { x, y: from },
            { x, y: to },
          ],
        ];
  });
  return strokes(pieces, 'hidden');
}

/** Values where the outer curves turn away from the axis, the largest first; one that would meet another's is left to the tables. */
function turnLabels(chart: Chart, to: (place: number, value: number) => Point, frame: Frame): Label[] {
  const largest = Math.max(0, ...chart.curves.flat().map(Math.abs));
  if (largest === 0) return [];
  const turns = chart.curves
    .flatMap((values, index) => [
      ...(index === 0 ? turningPoints(chart.at, values, 1, largest * 0.03) : []),
      ...(index === chart.curves.length - 1 ? turningPoints(chart.at, values, -1, largest * 0.03) : []),
    ])
    .toSorted((a, b) => Math.abs(b.value) - Math.abs(a.value));
  const labels: Label[] = [];
  for (const turn of turns) {
    const label = { turn, ...labelAt(turn, chart, to, frame) };
    if (!labels.some(({ box }) => meet(box, label.box))) labels.push(label);
  }
  return labels;
}

function labelAt(
  turn: Turn,
  chart: Chart,
  to: (place: number, value: number) => Point,
  frame: Frame,
): { words: string; box: Box } {
  const size = frame.letters;
  const words = chart.shown(turn.value);
  const half = textWidth(words, size) / 2;
  const point = to(turn.at, turn.value);
  const middle = Math.min(Math.max(point.x, half + 2), frame.width - half - 2);
  const below = turn.value > 0 === chart.downwards;
  const top = below ? point.y + 4 : point.y - 4 - size * 1.15;
  return { words, box: { left: middle - half, right: middle + half, top, bottom: top + size * 1.15 } };
}

function meet(a: Box, b: Box): boolean {
  return a.left < b.right + 3 && b.left < a.right + 3 && a.top < b.bottom && b.top < a.bottom;
}

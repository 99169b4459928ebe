import type { TopPlace } from '../../../shared/check-result.ts';
import { significant } from '../../../shared/quantity/index.ts';
import type { Strip } from '../dimension.ts';
import type { Frame, View } from '../frame.ts';
import { textWidth } from '../lettering.ts';
import { areas, drawing, rect, strokes, text, type Box, type Drawing, type Point } from '../svg.ts';
import { bandParts, levelsOf, type Grid } from './contours.ts';
import { freePlace } from './free-place.ts';
import { planLayout, type PlanLayout, type PlanOf } from './plan-layout.ts';
import { personBoxes, personParts, topOutline } from './plan-parts.ts';

/** What a picture of bands shows: values in the unit they are written in. */
export interface Bands {
  readonly kind: string;
  readonly title: string;
  readonly field: Grid;
  /** Where people stand then. */
  readonly people: readonly TopPlace[];
  readonly unit: string;
}

/** A top from above, and what is drawn under it. */
export interface PlanSubject extends PlanOf {
  readonly under: (layout: PlanLayout) => readonly string[];
}

/** Something that differs from place to place on a counter top, as bands with a key that reads in grey. */
export function contourPicture(subject: PlanSubject, bands: Bands, view: View): Drawing {
  const layout = planLayout(subject, view, 28);
  const { frame, scale, y } = layout;
  const size = frame.letters;
  const place = (x_m: number, y_m: number): Point => ({ x: scale.x(x_m), y: y(y_m) });
  const peak = peakOf(bands.field);
  const levels = levelsOf(peak.value);
  const key = bandKey(levels, bands.unit, y(subject.top.depth) + size * 1.4, frame);
  const most = `${significant(peak.value, 2)} ${bands.unit}`;
  const parts = [
    text(bands.title, { x: frame.left, y: size * 1.2 }, { size, strong: true }),
    ...bandParts(bands.field, levels, place),
    ...subject.under(layout),
    ...personParts(subject, bands.people, layout),
    topOutline(subject, layout),
    ...peakParts(place(peak.x_m, peak.y_m), most, frame, taken(subject, bands, layout)),
    ...key.parts,
  ];
  const words = {
    kind: `${bands.kind}-${view}`,
    title: bands.title,
    description: `The most is ${most}, ${significant((peak.x_m / subject.top.length) * 100, 2)} % along the top and ${significant((peak.y_m / subject.top.depth) * 100, 2)} % of its depth from the back edge.`,
  };
  return drawing({ width: frame.width, height: key.bottom + size }, words, parts);
}

interface Peak {
  readonly value: number;
  readonly x_m: number;
  readonly y_m: number;
}

function peakOf({ x_m, y_m, values }: Grid): Peak {
  const index = values.reduce((best, value, at) => (value > (values[best] ?? 0) ? at : best), 0);
  return {
    value: values[index] ?? 0,
    x_m: x_m[index % x_m.length] ?? 0,
    y_m: y_m[Math.floor(index / x_m.length)] ?? 0,
  };
}

/** Where a label would be hard to read: on hatching, and on the outline of the top. */
function taken(subject: PlanSubject, { people }: Bands, layout: PlanLayout): Box[] {
  const { scale, y } = layout;
  const [left, right] = [scale.x(0), scale.x(subject.top.length)];
  const [top, bottom] = [y(0), y(subject.top.depth)];
  return [
    ...personBoxes(subject, people, layout),
    ...[left, right].map((x) => ({ left: x - 1, right: x + 1, top, bottom })),
    ...[top, bottom].map((edge) => ({ left, right, top: edge - 1, bottom: edge + 1 })),
  ];
}

/** A cross where the most is, and how much: over it, or else where nothing is in the way. */
function peakParts({ x, y }: Point, words: string, frame: Frame, obstacles: readonly Box[]): string[] {
  const [arm, size] = [4, frame.letters];
  const half = textWidth(words, size) / 2;
  const middles = [x, x - half - arm, x + half + arm].map((each) =>
    Math.min(Math.max(each, half + 2), frame.width - half - 2),
  );
  const feet = [y - arm, ...obstacles.map(({ top }) => top - 2)]
    .filter((foot) => foot <= y - arm)
    .map((foot) => foot - size * 0.4)
    .sort((a, b) => b - a);
  const cross = strokes(
    [
      [
        { x: x - arm, y: y - arm },
        { x: x + arm, y: y + arm },
      ],
      [
        { x: x - arm, y: y + arm },
        { x: x + arm, y: y - arm },
      ],
    ],
    'arrow',
  );
  const [middle = x] = middles;
  const places = feet.flatMap((foot) => middles.map((each) => ({ x: each, y: foot })));
  const at = freePlace([{ x: middle, y: y - arm - size * 0.4 }, ...places], { words, size }, obstacles);
  return [cross, text(words, at, { size, anchor: 'middle', strong: true, clear: true })];
}

const sample = 22;

/** One box for each band, in its tone, with the level it starts at. */
function bandKey(levels: readonly number[], unit: string, top: number, frame: Frame): Strip {
  const size = frame.letters;
  const parts: string[] = [];
  let [x, y] = [frame.left, top];
  levels.forEach((level, index) => {
    const next = levels[index + 1];
    const words = next === undefined ? `over ${level} ${unit}` : `${level} to ${next}`;
    const width = sample + 5 + textWidth(words, size);
    if (x > frame.left && x + width > frame.width - 2) [x, y] = [frame.left, y + size * 1.6];
    const box = { left: x, right: x + sample, top: y, bottom: y + size };
    const corners = [
      { x: box.left, y: box.top },
      { x: box.right, y: box.top },
      { x: box.right, y: box.bottom },
      { x: box.left, y: box.bottom },
    ];
    parts.push(
      ...Array.from({ length: index }, () => areas([corners])),
      rect(box, 'thin'),
      text(words, { x: box.right + 5, y: box.bottom - size * 0.12 }, { size }),
    );
    x += width + 14;
  });
  return { parts, bottom: y + size };
}

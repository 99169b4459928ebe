import type { Frame } from './frame.ts';
import { hatch } from './hatch.ts';
import { fitted, textWidth } from './lettering.ts';
import { withAmount, type Band } from './loads.ts';
import type { Scale } from './scale.ts';
import { rect, text, type Box } from './svg.ts';

/** Contents that stand on the same stretch go above each other. */
export function lanesOf(bands: readonly Band[]): Band[][] {
  const lanes: Band[][] = [];
  for (const band of bands) {
    const free = lanes.find((lane) => lane.every((other) => band.to <= other.from || band.from >= other.to));
    if (free === undefined) lanes.push([band]);
    else free.push(band);
  }
  return lanes;
}

/** A hatched band with its name, left open where the shafts of arrows pass. */
export function bandParts(
  band: Band,
  bottom: number,
  scale: Scale,
  frame: Frame,
  shafts: readonly Box[],
): string[] {
  const box = { left: scale.x(band.from), right: scale.x(band.to), top: bottom - frame.band, bottom };
  const label = bandLabel(band, box, frame.letters, shafts);
  if (label === undefined) return [hatch(box, 5.5, shafts), rect(box, 'thin')];
  const at = {
    x: (label.box.left + label.box.right) / 2,
    y: bottom - frame.band / 2 + frame.letters * 0.36,
  };
  return [
    hatch(box, 5.5, [...shafts, label.box]),
    rect(box, 'thin'),
    text(label.words, at, { size: frame.letters, anchor: 'middle' }),
  ];
}

/** The name in the widest stretch between arrows; its number in the list where the name has no room. */
function bandLabel(
  band: Band,
  box: Box,
  size: number,
  shafts: readonly Box[],
): { words: string; box: Box } | undefined {
  const [from, to] = widestGap(box, shafts);
  const room = to - from - 10;
  const whole = withAmount(band);
  const words =
    fitted(whole, size, room) === whole
      ? whole
      : fitted(band.name, size, room) || fitted(`no. ${band.number}`, size, room);
  if (words === '') return undefined;
  const half = textWidth(words, size) / 2 + 3;
  const middle = (from + to) / 2;
  return {
    words,
    box: { left: middle - half, right: middle + half, top: box.top + 2, bottom: box.bottom - 2 },
  };
}

function widestGap(box: Box, shafts: readonly Box[]): [number, number] {
  const inside = shafts
    .filter(({ left, right }) => right > box.left && left < box.right)
    .toSorted((a, b) => a.left - b.left);
  const starts = [box.left, ...inside.map(({ right }) => right)];
  const ends = [...inside.map(({ left }) => left), box.right];
  return starts
    .map((start, index): [number, number] => [start, ends[index] ?? start])
    .reduce((widest, gap) => (gap[1] - gap[0] > widest[1] - widest[0] ? gap : widest));
}

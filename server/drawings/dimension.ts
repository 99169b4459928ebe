import { textWidth } from './lettering.ts';
import { arrowhead, line, polyline, strokes, text, type Point } from './svg.ts';

/** A place on a running dimension: where, and the number written at it. */
export interface Mark {
  readonly x: number;
  readonly words: string;
}

/** A strip of drawing and how far down it reaches. */
export interface Strip {
  readonly parts: readonly string[];
  readonly bottom: number;
}

const tick = 3;

/**
 * A running dimension: one thin line, a tick at every place, and its distance from the first. Numbers read along the line;
 * where they would meet they are turned, set apart, and led to their ticks.
 */
export function runningDimension(
  marks: readonly Mark[],
  y: number,
  size: number,
  room: { readonly left: number; readonly right: number },
): Strip {
  const [first, last] = [marks[0], marks.at(-1)];
  if (first === undefined || last === undefined) return { parts: [], bottom: y };
  const base = [line({ x: first.x, y }, { x: last.x, y }, 'thin'), ticks(marks.map(({ x }) => ({ x, y })))];
  const clear = marks.every((mark, index) => {
    const next = marks[index + 1];
    const half = (each: Mark): number => textWidth(each.words, size) / 2;
    return next === undefined || next.x - mark.x >= half(next) + half(mark) + size * 0.35;
  });
  if (clear) {
    const numbers = marks.map(({ x, words }) => {
      const half = textWidth(words, size) / 2;
      const middle = Math.min(Math.max(x, room.left + half), room.right - half);
      return text(words, { x: middle, y: y + size + tick }, { size, anchor: 'middle' });
    });
    return { parts: [...base, ...numbers], bottom: y + size * 1.35 + tick };
  }
  return turnedNumbers(marks, y, size, room, base);
}

function turnedNumbers(
  marks: readonly Mark[],
  y: number,
  size: number,
  room: { readonly left: number; readonly right: number },
  base: readonly string[],
): Strip {
  const places = spread(
    marks.map(({ x }) => x),
    Math.min(size * 1.1, (room.right - room.left) / marks.length),
    { left: room.left + size / 2, right: room.right - size / 2 },
  );
  const top = y + 14;
  const longest = Math.max(...marks.map(({ words }) => textWidth(words, size)));
  const numbers = marks.flatMap(({ x, words }, index) => {
    const place = places[index] ?? x;
    const leader = polyline(
      [
        { x, y: y + tick },
        { x: place, y: top - 3 },
      ],
      'thin',
    );
    return [leader, text(words, { x: place + size * 0.35, y: top }, { size, anchor: 'end', turned: true })];
  });
  return { parts: [...base, ...numbers], bottom: top + longest + size * 0.3 };
}

/** Moves places apart to at least a pitch, in order and inside the room, each no further than it must. */
export function spread(
  places: readonly number[],
  pitch: number,
  room: { readonly left: number; readonly right: number },
): number[] {
  const result = [...places];
  for (let index = 0; index < result.length; index += 1) {
    const least = index === 0 ? room.left : (result[index - 1] ?? room.left) + pitch;
    result[index] = Math.max(result[index] ?? least, least);
  }
  for (let index = result.length - 1; index >= 0; index -= 1) {
    const most = index === result.length - 1 ? room.right : (result[index + 1] ?? room.right) - pitch;
    result[index] = Math.min(result[index] ?? most, most);
  }
  return result;
}

/** A plain dimension: a thin line between two ticks, its number above the middle as far as the drawing's width lets it. */
export function levelDimension(
  { from, to, y }: { readonly from: number; readonly to: number; readonly y: number },
  words: string,
  size: number,
  width: number,
): string[] {
  const half = textWidth(words, size) / 2;
  const middle = Math.min(Math.max((from + to) / 2, half + 2), width - half - 2);
  return [
    line({ x: from, y }, { x: to, y }, 'thin'),
    ticks([
      { x: from, y },
      { x: to, y },
    ]),
    text(words, { x: middle, y: y - 3 }, { size, anchor: 'middle' }),
  ];
}

/** Slanted strokes that end a dimension. */
function ticks(places: readonly Point[]): string {
  return strokes(
    places.map(({ x, y }) => [
      { x: x - tick, y: y + tick },
      { x: x + tick, y: y - tick },
    ]),
    'outline',
  );
}

/** A load: an arrow that points down to a place. */
export function loadArrow(tail: Point, tip: number): string[] {
  return [line(tail, { x: tail.x, y: tip - 4 }, 'arrow'), arrowhead({ x: tail.x, y: tip }, 'down')];
}

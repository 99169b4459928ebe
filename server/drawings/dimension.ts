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

/** How far to the left and to the right something may reach. */
export interface Room {
  readonly left: number;
  readonly right: number;
}

const tick = 3;

/**
 * A running dimension: one thin line, a tick at every place, and its distance from the first. Numbers read along the line;
 * where they would meet they are turned, set apart, and led to their ticks.
 */
export function runningDimension(marks: readonly Mark[], y: number, size: number, room: Room): Strip {
  const [first, last] = [marks[0], marks.at(-1)];
  if (first === undefined || last === undefined) return { parts: [], bottom: y };
  const base = [line({ x: first.x, y }, { x: last.x, y }, 'thin'), ticks(marks.map(({ x }) => ({ x, y })))];
  return levelNumbers(marks, y, size, room, base) ?? turnedNumbers(marks, y, size, room, base);
}

/** Numbers along the line, those that would meet set apart and led to their ticks; undefined where one would go too far. */
function levelNumbers(
  marks: readonly Mark[],
  y: number,
  size: number,
  room: Room,
  base: readonly string[],
): Strip | undefined {
  const halves = marks.map(({ words }) => textWidth(words, size) / 2);
  const pitches = halves.slice(1).map((half, index) => half + (halves[index] ?? 0) + size * 0.5);
  const places = spread(
    marks.map(({ x }) => x),
    pitches,
    { left: room.left + (halves[0] ?? 0), right: room.right - (halves.at(-1) ?? 0) },
  );
  const moved = marks.map(({ x }, index) => Math.abs((places[index] ?? x) - x));
  const isApart = pitches.every(
    (pitch, index) => (places[index + 1] ?? 0) - (places[index] ?? 0) > pitch - 0.01,
  );
  if (!isApart || Math.max(...moved) > size * 1.5 || (places[0] ?? 0) < room.left + (halves[0] ?? 0) - 0.01)
    return undefined;
  const top = y + tick + (moved.some((each) => each > size * 0.5) ? 7 : 0);
  const numbers = marks.flatMap(({ x, words }, index) => {
    const place = places[index] ?? x;
    const leader = [
      { x, y: y + tick },
      { x: place, y: top + 2 },
    ];
    return [
      top > y + tick ? polyline(leader, 'thin') : '',
      text(words, { x: place, y: top + size }, { size, anchor: 'middle' }),
    ];
  });
  return { parts: [...base, ...numbers], bottom: top + size * 1.35 };
}

function turnedNumbers(
  marks: readonly Mark[],
  y: number,
  size: number,
  room: Room,
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

/**
 * Moves places apart to at least a pitch, in order and inside the room, each no further than it must.
 *
 * @param pitch one for all, or one for each place and the next
 */
export function spread(places: readonly number[], pitch: number | readonly number[], room: Room): number[] {
  const result = [...places];
  const after = (index: number): number => (typeof pitch === 'number' ? pitch : (pitch[index] ?? 0));
  for (let index = 0; index < result.length; index += 1) {
    const least = index === 0 ? room.left : (result[index - 1] ?? room.left) + after(index - 1);
    result[index] = Math.max(result[index] ?? least, least);
  }
  for (let index = result.length - 1; index >= 0; index -= 1) {
    const most = index === result.length - 1 ? room.right : (result[index + 1] ?? room.right) - after(index);
    result[index] = Math.min(result[index] ?? most, most);
  }
  return result;
}

/** A plain dimension: a thin line between two ticks, its number above the middle as far as its room lets it. */
export function levelDimension(
  { from, to, y }: { readonly from: number; readonly to: number; readonly y: number },
  words: string,
  size: number,
  room: Room,
): string[] {
  const half = textWidth(words, size) / 2;
  const middle = Math.min(Math.max((from + to) / 2, room.left + half), room.right - half);
  // Words that reach over a tick stand clear of it; letters that go below the line are a quarter of their size.
  const meetsTick = middle - half < from + tick || middle + half > to - tick;
  const lift = size * 0.25 + (meetsTick ? tick + 1 : 1);
  return [
    line({ x: from, y }, { x: to, y }, 'thin'),
    ticks([
      { x: from, y },
      { x: to, y },
    ]),
    text(words, { x: middle, y: y - lift }, { size, anchor: 'middle' }),
  ];
}

/** Slanted strokes that end a dimension. */
export function ticks(places: readonly Point[]): string {
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

import { listed } from '../../shared/words.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { bracketNumbers, bracketParts, plateHeight, studLine, studPlaces } from './brackets.ts';
import { runningDimension, type Room, type Strip } from './dimension.ts';
import { boardParts } from './elevation-board.ts';
import type { Frame, View } from './frame.ts';
import { bareDimension, dimensionText } from './lettering.ts';
import { missesOf, missParts, missWords } from './misses.ts';
import { boardScale, nosingReach } from './profile.ts';
import type { Scale } from './scale.ts';
import { drawing, text, type Drawing } from './svg.ts';

/** Letters large enough to be read from a ladder: 14 points on a page, and on a phone of 360 pixels. */
const bigFrames: Readonly<Record<View, Frame>> = {
  wide: { width: 540, left: 24, right: 516, letters: 14.2, mostHeight: 62, band: 0 },
  narrow: { width: 336, left: 20, right: 316, letters: 19.5, mostHeight: 110, band: 0 },
};

interface Chain {
  readonly title: string;
  readonly from_m: number;
}

/**
 * The shelf from the front as it is set out on the wall: brackets with their numbers, studs, and two rows of running
 * distances, from the board's left end and from the first stud behind it.
 */
export function settingOut(document: BracketShelfDocument, result: CheckResult, view: View): Drawing {
  const { board, brackets } = document;
  const units = document.units ?? 'inch-pound';
  const frame = bigFrames[view];
  const size = frame.letters;
  const scale = boardScale(document, frame);
  const nosing = nosingReach(board);
  const places = brackets.positions.toSorted((a, b) => a - b);
  const studs = studPlaces(document);
  const misses = missesOf(document, result);
  const room = { left: 2, right: frame.width - 2 };

  const boardTop = 6 + scale.length(nosing.above);
  const underside = boardTop + scale.length(board.thickness);
  const bottom = underside + Math.max(scale.length(plateHeight(document)), 12);
  const foot = Math.max(bottom, boardTop + scale.length(nosing.below)) + 6;
  const missed = missParts(misses, foot + size, scale, size, room);
  const chains = [
    { title: 'From the left end', from_m: 0 },
    ...studs.slice(0, 1).map((from_m) => ({ title: 'From the first stud', from_m })),
  ];
  const drawn = chains.reduce<Strip>(
    ({ parts, bottom: top }, chain) => {
      const next = chainParts(chain, document, places, top, scale, size, room, units);
      return { parts: [...parts, ...next.parts], bottom: next.bottom };
    },
    { parts: [], bottom: missed.bottom + size * 0.2 },
  );
  const parts = [
    ...studs.map((place) => studLine(place, 2, foot, scale)),
    ...places.flatMap((place) => bracketParts(document, place, underside, scale)),
    ...boardParts(document, boardTop, scale),
    ...bracketNumbers(places.map(scale.x), foot + size, size),
    ...missed.parts,
    ...drawn.parts,
  ];
  const words = {
    kind: `setting-out-${view}`,
    title: 'Where the brackets go',
    description: [
      `A board ${dimensionText(board.length, units)} long.`,
      ...chains.map(({ title, from_m }) => {
        const distances = places.map((place) => dimensionText(taped(place - from_m, units), units));
        return `${title}, the brackets stand at ${listed(distances)}.`;
      }),
      ...misses.map((miss) => missWords(miss, units)),
    ].join(' '),
  };
  return drawing({ width: frame.width, height: drawn.bottom + size * 0.3 }, words, parts);
}

/** A distance as a tape shows it: to the millimetre in metric, as it is in inches. */
function taped(distance_m: number, units: UnitSystem): number {
  return units === 'metric' ? Math.round(distance_m * 1000) / 1000 : distance_m;
}

const unitNames: Readonly<Record<UnitSystem, string>> = { 'inch-pound': 'inches', metric: 'mm' };

/** One row of running distances: the ends of the board, the brackets, and where the row begins. */
function chainParts(
  { title, from_m }: Chain,
  { board }: BracketShelfDocument,
  places: readonly number[],
  top: number,
  scale: Scale,
  size: number,
  room: Room,
  units: UnitSystem,
): Strip {
  const marks = [0, from_m, ...places, board.length]
    .toSorted((a, b) => a - b)
    .filter((place, index, all) => index === 0 || place - (all[index - 1] ?? 0) > 1e-6)
    .map((place) => ({
      x: scale.x(place),
      words: bareDimension(taped(place - from_m, units), units).replace(/^-/, '−'),
    }));
  const letters = Math.min(size, (room.right - room.left) / marks.length / 1.12);
  const titleAt = { x: room.left, y: top + size };
  const running = runningDimension(marks, top + size * 1.5, letters, room);
  return {
    parts: [text(`${title}, ${unitNames[units]}`, titleAt, { size, strong: true }), ...running.parts],
    bottom: running.bottom,
  };
}

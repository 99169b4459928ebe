import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { BracketShelfResult } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { bracketNumbers, bracketParts, plateHeight, studLine, studPlaces } from './brackets.ts';
import { levelDimension, runningDimension } from './dimension.ts';
import { boardParts } from './elevation-board.ts';
import { elevationWords } from './elevation-words.ts';
import { frames, type View } from './frame.ts';
import { keyStrip, type KeyItem } from './key.ts';
import { bareDimension, dimensionText } from './lettering.ts';
import { loadLanes } from './load-lanes.ts';
import { drawnLoads } from './loads.ts';
import { missesOf, missParts } from './misses.ts';
import { boardScale, nosingReach } from './profile.ts';
import { scaleBar } from './scale.ts';
import { settledShape } from './settled.ts';
import { drawing, type Drawing } from './svg.ts';

/**
 * The shelf from the front, to true scale: board, nosing, brackets, studs, what stands on it, and the shape it settles to.
 *
 * @param document the checked document (SI)
 * @param result the answer to it; its settled shape is drawn
 * @param view `wide` for a desk or a sheet of paper, `narrow` for a phone
 */
export function elevation(document: BracketShelfDocument, result: BracketShelfResult, view: View): Drawing {
  const { board, brackets } = document;
  const studs = studPlaces(document);
  const units = document.units ?? 'inch-pound';
  const frame = frames[view];
  const size = frame.letters;
  const nosing = nosingReach(board);
  const scale = boardScale(document, frame);
  const loads = drawnLoads(document, units);
  const lanes = loadLanes(loads, board.length, scale, frame);
  const settled = settledShape(result, scale, 24);

  const boardTop = 4 + Math.max(lanes.height + scale.length(nosing.above), settled.above);
  const underside = boardTop + scale.length(board.thickness);
  const frontBottom = boardTop + scale.length(nosing.below);
  const [left, right] = [scale.x(0), scale.x(board.length)];
  const platesBottom = underside + Math.max(scale.length(plateHeight(document)), 10);
  const held = Math.max(platesBottom, frontBottom, underside + settled.below) + 4;
  const places = brackets.positions.toSorted((a, b) => a - b);

  const room = { left: 2, right: frame.width - 2 };
  const numbers = bracketNumbers(places.map(scale.x), held + size, size);
  const misses = missesOf(document, result);
  const missed = missParts(misses, held + size, scale, size, room);
  const marks = [0, ...places, board.length]
    .filter((place, index, all) => index === 0 || place - (all[index - 1] ?? 0) > 1e-6)
    .map((place) => ({ x: scale.x(place), words: bareDimension(place, units) }));
  const running = runningDimension(marks, missed.bottom + size * 0.9, size, room);
  const overall = running.bottom + size * 1.6;
  const items = keyItems(settled.factor, studs.length > 0, misses.length > 0, units);
  const key = keyStrip(items, overall + size * 1.9, frame);
  const barAt = { x: frame.left, y: key.bottom + size * 1.1 };

  const parts = [
    ...lanes.draw(boardTop - scale.length(nosing.above)),
    ...studs.map((place) => studLine(place, frontBottom, platesBottom, scale)),
    ...places.flatMap((place) => bracketParts(document, place, underside, scale)),
    ...boardParts(document, boardTop, scale),
    settled.draw((boardTop + underside) / 2),
    ...numbers,
    ...missed.parts,
    ...running.parts,
    ...levelDimension(
      { from: left, to: right, y: overall },
      `overall ${dimensionText(board.length, units)}`,
      size,
      room,
    ),
    ...key.parts,
    ...scaleBar(scale, barAt, frame.width * 0.3, size, units),
  ];
  const title = `Elevation${document.title === undefined ? '' : `: ${document.title}`}`;
  const words = {
    kind: `elevation-${view}`,
    title,
    description: elevationWords(document, result, loads, misses),
  };
  return drawing({ width: frame.width, height: barAt.y + size }, words, parts);
}

const unitWords: Readonly<Record<UnitSystem, string>> = { 'inch-pound': 'inches', metric: 'millimetres' };

function keyItems(factor: number, hasStuds: boolean, hasMisses: boolean, units: UnitSystem): KeyItem[] {
  return [
    { words: `Distances from the left end in ${unitWords[units]}` },
    { pen: 'settled', words: `settled shape, drawn × ${factor}` },
    ...(hasStuds ? [{ pen: 'centre' as const, words: 'stud' }] : []),
    ...(hasMisses ? [{ words: '“off”: from the bracket to the nearest stud' }] : []),
  ];
}

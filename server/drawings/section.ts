import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { levelDimension, loadArrow } from './dimension.ts';
import { frames } from './frame.ts';
import { dimensionText, fitted, textWidth } from './lettering.ts';
import { loadLines, type LoadLine } from './load-lines.ts';
import { drawnLoads } from './loads.ts';
import { depths, nosingReach } from './profile.ts';
import { scaleAt, scaleBar, type Scale } from './scale.ts';
import { boardSection } from './section-board.ts';
import { bracketSection } from './section-bracket.ts';
import { wallSection, wallThickness } from './section-wall.ts';
import { sectionWords } from './section-words.ts';
import { drawing, line, text, type Drawing } from './svg.ts';

const { width, letters: size } = frames.narrow;
const left = 8;
const mostHeight = 230;
const row = size * 1.35;

/**
 * The shelf cut across, to true scale: wall, bracket and its screws, board with nosing, and the lines the loads act in. It
 * is as wide as a phone and serves a desk and paper as it is.
 */
export function section(document: BracketShelfDocument): Drawing {
  const units = document.units ?? 'inch-pound';
  const { board, brackets } = document;
  const reach = nosingReach(board);
  const below = Math.max(reach.below, board.thickness + (brackets.plate?.height ?? brackets.arm / 2));
  const scale = sectionScale(document, units, reach.above + below);
  const loads = loadLines(drawnLoads(document, units), units);
  const boardTop = 28 + loads.length * row + scale.length(reach.above);
  const underside = boardTop + scale.length(board.thickness);
  const bottom = boardTop + scale.length(below);
  const spans = spanParts(document, bottom + 10, scale, units);
  const barAt = { x: left, y: spans.bottom + size * 1.6 };
  const parts = [
    ...wallSection(document, 4, bottom + 8, scale),
    ...bracketSection(document, underside, scale),
    ...boardSection(document, boardTop, scale),
    ...loads.flatMap((load, index) => loadParts(load, index, boardTop - scale.length(reach.above), scale)),
    ...thicknessParts(document, boardTop, underside, scale, units),
    ...spans.parts,
    ...scaleBar(scale, barAt, 90, size, units),
  ];
  const words = {
    kind: 'section',
    title: 'Section through the wall, a bracket and the board',
    description: sectionWords(document, loads),
  };
  return drawing({ width, height: barAt.y + size }, words, parts);
}

/** From the back of the wall that is drawn to the front edge, with room for the thickness written before it. */
function sectionScale(document: BracketShelfDocument, units: UnitSystem, height_m: number): Scale {
  const { board, brackets } = document;
  const wall = wallThickness(document);
  const across = wall + Math.max(depths(board).front, brackets.arm);
  const room = width - left - textWidth(dimensionText(board.thickness, units), size) - 20;
  const unitsPerMetre = Math.min(room / across, mostHeight / height_m);
  return scaleAt(unitsPerMetre, left + wall * unitsPerMetre);
}

/** An arrow in the line a load acts in, with its distance and name above. */
function loadParts({ place, words }: LoadLine, index: number, tip: number, scale: Scale): string[] {
  const y = 6 + (index + 0.75) * row;
  const end = width - 4;
  const label = fitted(words, size, end - scale.x(0) - 4);
  const x = scale.x(place);
  const start = Math.min(x + 5, end - textWidth(label, size));
  return [...loadArrow({ x, y: y + 4 }, tip), text(label, { x: start, y }, { size })];
}

function thicknessParts(
  document: BracketShelfDocument,
  top: number,
  bottom: number,
  scale: Scale,
  units: UnitSystem,
): string[] {
  const { board, brackets } = document;
  const x = scale.x(Math.max(depths(board).front, brackets.arm)) + 10;
  const stroke = (y: number): string => line({ x: x - 6, y }, { x: x + 3, y }, 'thin');
  const at = { x: x + 6, y: (top + bottom) / 2 + size * 0.35 };
  return [
    stroke(top),
    stroke(bottom),
    line({ x, y: top - 7 }, { x, y: bottom + 7 }, 'thin'),
    text(dimensionText(board.thickness, units), at, { size }),
  ];
}

/** Dimensions from the wall finish, one under the other. */
function spanParts(document: BracketShelfDocument, top: number, scale: Scale, units: UnitSystem) {
  const { boardFront, front } = depths(document.board);
  const spans: readonly (readonly [string, number])[] = [
    ['arm', document.brackets.arm],
    ['board', boardFront],
    ...(front > boardFront + 1e-9 ? [['front edge', front] as const] : []),
  ];
  const y = (index: number): number => top + (index + 1) * size * 1.75;
  const parts = spans.flatMap(([name, reach_m], index) => {
    const words = `${name} ${dimensionText(reach_m, units)}`;
    return levelDimension({ from: scale.x(0), to: scale.x(reach_m), y: y(index) }, words, size, {
      left: 2,
      right: width - 2,
    });
  });
  return { parts, bottom: y(spans.length - 1) };
}

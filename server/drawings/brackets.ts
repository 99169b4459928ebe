import { inch } from '../../shared/quantity/index.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { Scale } from './scale.ts';
import { textWidth } from './lettering.ts';
import { screwOffsets } from './screws.ts';
import { circle, line, polyline, rect, text } from './svg.ts';

/** Places of the studs' centre lines that show behind the board, m from its left end. */
export function studPlaces(document: BracketShelfDocument): number[] {
  const studs = document.wall?.studs;
  const length = document.board.length;
  if (studs === undefined) return [];
  if ('at' in studs) return studs.at.filter((at) => at <= length).toSorted((a, b) => a - b);
  const before = Math.floor(studs.first / studs.spacing + 1e-9);
  const start = studs.first - before * studs.spacing;
  const count = Math.max(0, Math.floor((length - start) / studs.spacing + 1e-9) + 1);
  return Array.from({ length: count }, (_, index) => start + index * studs.spacing);
}

/** How far a bracket reaches below the board: its plate; nothing is made up where no plate is given. */
export function plateHeight(document: BracketShelfDocument): number {
  return document.brackets.plate?.height ?? 0;
}

/** One bracket from the front: plate, screws and arm as plain outlines; a triangle where no plate is given. */
export function bracketParts(
  document: BracketShelfDocument,
  position_m: number,
  underside: number,
  scale: Scale,
): string[] {
  const { plate, screws, armWidth = inch } = document.brackets;
  const x = scale.x(position_m);
  if (plate === undefined) {
    const corners = [
      { x, y: underside },
      { x: x - 5, y: underside + 9 },
      { x: x + 5, y: underside + 9 },
      { x, y: underside },
    ];
    return [polyline(corners, 'outline')];
  }
  const half = Math.max(scale.length(plate.width) / 2, 1);
  const armHalf = Math.max(scale.length(armWidth) / 2, 0.8);
  const bottom = underside + scale.length(plate.height);
  const armBottom = Math.min(bottom, underside + Math.max(scale.length(armWidth), 2));
  const offsets = screwOffsets(document.brackets);
  const radius = Math.min(Math.max(scale.length(0.0025), 0.9), 3);
  return [
    rect({ left: x - half, right: x + half, top: underside, bottom }, 'outline'),
    rect({ left: x - armHalf, right: x + armHalf, top: underside, bottom: armBottom }, 'thin'),
    ...(screws?.heights ?? []).flatMap((height) =>
      offsets.map((offset) =>
        circle({ x: x + scale.length(offset), y: bottom - scale.length(height) }, radius, 'thin'),
      ),
    ),
  ];
}

/** A stud's centre line below the board. */
export function studLine(position_m: number, top: number, bottom: number, scale: Scale): string {
  return line({ x: scale.x(position_m), y: top }, { x: scale.x(position_m), y: bottom }, 'centre');
}

/** The brackets' numbers under them; one that would meet its neighbour's is left out. */
export function bracketNumbers(places: readonly number[], y: number, size: number): string[] {
  let taken = -Infinity;
  return places.flatMap((x, index) => {
    const half = textWidth(String(index + 1), size) / 2;
    if (x - half < taken) return [];
    taken = x + half + 2;
    return [text(String(index + 1), { x, y }, { size, anchor: 'middle', strong: true })];
  });
}

import type { SheetTable } from '../../view-models/sheet-sections.ts';
import type { Printable } from './printable.ts';

/* What views/paper/parts.typ and sheet.typ set tables with: sizes of the type, room between columns, margins. */
const [headType_pt, type_pt] = [7.6, 9];
const [roomyApart_pt, behind_pt] = [14, 2];
const margins_mm = 15 + 13;
const paper_mm = { a4: 210, letter: 215.9 };
const pointsOfMillimetre = 72 / 25.4;

/** Pairs of letters stand a little nearer or farther than their widths say. */
const certainty = 1.02;

/** A symbol at the head of a column is no wider than so many sizes of the type for each letter of its TeX. */
const symbolWidth = 0.8;

/** A column of so many letters is never broken into lines to make room. */
const shortLetters = 20;

/** How wide the sheet is between its margins. */
export function roomBetweenMargins_pt(isA4: boolean): number {
  return (paper_mm[isA4 ? 'a4' : 'letter'] - margins_mm) * pointsOfMillimetre;
}

/**
 * How a table's columns share the room there is: none where every column has the width of its words, roomily apart. Else 0 for a
 * column that is as wide as its words all the same, and a share for the others, which are broken into lines.
 *
 * @param rows its cells as they are printed
 */
export function sharesOf(
  head: SheetTable['head'],
  rows: readonly (readonly string[])[],
  { width }: Printable,
  room_pt: number,
): readonly number[] | null {
  const titles = head.map((pieces) =>
    pieces.reduce((sum, { words, symbol }) => sum + width(words) + symbolWidth * symbol.length, 0),
  );
  const widest_pt = titles.map((title, column) =>
    Math.max(headType_pt * title, ...rows.map((row) => type_pt * width(row[column] ?? ''))),
  );
  const apart_pt = roomyApart_pt * (head.length - 1) + behind_pt * head.length;
  const all_pt = widest_pt.reduce((sum, each) => sum + each, apart_pt);
  if (all_pt * certainty <= room_pt) return null;
  return head.map((pieces, column) => {
    const title = pieces.reduce((sum, { words, symbol }) => sum + words.length + symbol.length, 0);
    const letters = Math.max(title, ...rows.map((row) => row[column]?.length ?? 0));
    return letters <= shortLetters ? 0 : Math.sqrt(letters);
  });
}

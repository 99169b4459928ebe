import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { Scale } from './scale.ts';
import { polyline, rect, strokes } from './svg.ts';
import { inch } from '../../shared/quantity/index.ts';

const thinMetal_m = 0.25 * inch;

/** A bracket from the side: plate on the wall, arm under the board, strut where there is one, screws in true length. */
export function bracketSection(document: BracketShelfDocument, underside: number, scale: Scale): string[] {
  const { arm, plate, screws, capacity, boardScrews } = document.brackets;
  const steel = capacity?.basis === 'steel' ? capacity : undefined;
  const armThickness = steel?.thickness ?? boardScrews?.armThickness ?? thinMetal_m;
  const plateThickness = plate?.thickness ?? thinMetal_m;
  const least = (length_m: number): number => Math.max(scale.length(length_m), 1.5);
  const armBox = {
    left: scale.x(0),
    right: scale.x(arm),
    top: underside,
    bottom: underside + least(armThickness),
  };
  const plateBottom = underside + scale.length(plate?.height ?? 0);
  return [
    rect(armBox, 'outline'),
    plate === undefined
      ? ''
      : rect(
          {
            left: scale.x(0),
            right: scale.x(0) + least(plateThickness),
            top: underside,
            bottom: plateBottom,
          },
          'outline',
        ),
    steel?.strut === undefined
      ? ''
      : polyline(
          [
            { x: scale.x(steel.strut.at), y: armBox.bottom },
            { x: scale.x(0), y: underside + scale.length(steel.strut.drop) },
          ],
          'arrow',
        ),
    plate === undefined || screws === undefined
      ? ''
      : strokes(
          screws.heights.flatMap((height) =>
            screwStrokes(plateBottom - scale.length(height), plateThickness, screws.length, scale),
          ),
          'arrow',
        ),
    strokes(
      (boardScrews?.at ?? []).flatMap((at) =>
        boardScrewStrokes(scale.x(at), armBox.bottom, boardScrews?.length ?? 0, scale),
      ),
      'arrow',
    ),
  ];
}

/** A screw up through the arm, its head under it; its head alone where its length is not given. */
function boardScrewStrokes(x: number, head: number, length_m: number, scale: Scale) {
  const radius = Math.max(scale.length(0.0035), 1.8);
  return [
    [
      { x, y: head },
      { x, y: head - scale.length(length_m) },
    ],
    [
      { x: x - radius, y: head },
      { x: x + radius, y: head },
    ],
  ] as const;
}

function screwStrokes(y: number, head_m: number, length_m: number, scale: Scale) {
  const head = scale.x(0) + Math.max(scale.length(head_m), 1.5);
  const radius = Math.max(scale.length(0.004), 2);
  return [
    [
      { x: head, y },
      { x: scale.x(head_m - length_m), y },
    ],
    [
      { x: head, y: y - radius },
      { x: head, y: y + radius },
    ],
  ] as const;
}

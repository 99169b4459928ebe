import type { WallDocument } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { detailOf, type Detail } from './detail.ts';
import { detailWords } from './detail-words.ts';
import { frontParts } from './detail-front.ts';
import { sideParts } from './detail-side.ts';
import { levelDimension, type Room } from './dimension.ts';
import { bareDimension, dimensionText, textWidth } from './lettering.ts';
import { scaleAt, scaleBar, type Scale } from './scale.ts';
import { rowOf, standingDimension } from './standing-dimension.ts';
import { drawing, text, type Drawing } from './svg.ts';

/** Two sizes of lettering: beside an answer or a calculation, and for reading at arm's length. */
export type DetailSize = 'plain' | 'big';

interface DetailFrame {
  readonly width: number;
  readonly letters: number;
  readonly mostHeight: number;
}

const detailFrames: Readonly<Record<DetailSize, DetailFrame>> = {
  plain: { width: 340, letters: 11.5, mostHeight: 220 },
  big: { width: 312, letters: 20, mostHeight: 100 },
};

const armStub = 16;
const between = 20;

/**
 * The plate of a bracket, or a plate alone, enlarged, from the front on its stud and cut from the side: heights of the screws from the plate's lower
 * end, edges of the stud dashed, the coverings with their thickness, how far the screws reach behind them.
 *
 * @returns undefined where plate, screws or wall are not given
 */
export function bracketDetail(
  document: WallDocument,
  result: CheckResult,
  size: DetailSize = 'plain',
): Drawing | undefined {
  const detail = detailOf(document, result);
  return detail === undefined ? undefined : drawn(detail, document.units ?? 'inch-pound', size);
}

function drawn(detail: Detail, units: UnitSystem, size: DetailSize): Drawing {
  const { width, letters, mostHeight } = detailFrames[size];
  const { plate, screws } = detail;
  const heights = [...new Set([plate.height, ...screws.heights, 0].map((each) => Number(each.toFixed(6))))]
    .toSorted((a, b) => b - a)
    .map((height) => ({ height, words: bareDimension(height, units) }));
  const column = Math.max(...heights.map(({ words }) => textWidth(words, letters))) + 16;
  const front = frontReach(detail);
  const side = sideReach(detail);
  const room = width - column - 14 - between - armStub - 6;
  const unitsPerMetre = Math.min(
    mostHeight / plate.height,
    room / (front.right + front.left + side.left + side.right),
  );
  const scale = scaleAt(unitsPerMetre, 0);
  const needed = Math.max(scale.length(plate.height), rowOf(letters) * (heights.length - 1));
  const top = letters * 2.4 + (needed - scale.length(plate.height)) / 2;
  const bottom = top + scale.length(plate.height);
  const free = (room - (front.right + front.left + side.left + side.right) * unitsPerMetre) / 2;
  const middle = column + 14 + free / 2 + scale.length(front.left);
  const finish = width - 6 - armStub - scale.length(side.right) - free / 2;
  const split = finish - scale.length(side.left) - between / 2;
  const area = { top: letters * 2.4, bottom: letters * 2.4 + needed };
  const place = scaleAt(unitsPerMetre, middle);
  const across = scaleAt(unitsPerMetre, finish);
  const rows = dimensionRows(detail, units, size, place, across, area.bottom + 12, letters, {
    left: { left: 2, right: size === 'big' ? width - 2 : split },
    right: { left: size === 'big' ? 2 : split + 4, right: width - 2 },
  });
  const barAt = { x: 8, y: rows.bottom + letters * 1.5 };
  const foot = size === 'big' ? [] : scaleBar(place, barAt, 90, letters, units);
  const unit = units === 'metric' ? 'mm' : 'inches';
  const heading = size === 'big' ? `Up the plate, ${unit}` : `${unit} above the plate’s lower end`;
  const parts = [
    text(heading, { x: 4, y: letters }, { size: letters }),
    ...standingDimension(
      heights.map(({ height, words }) => ({ y: bottom - scale.length(height), words })),
      column,
      letters,
      area,
    ),
    ...frontParts(detail, place, { top, bottom, edge: column }),
    ...sideParts(detail, across, { top, bottom, stub: armStub }),
    ...rows.parts,
    ...foot,
  ];
  const words = {
    kind: `bracket-detail-${size}`,
    title: detail.hasArm ? 'Bracket plate and screws, enlarged' : 'Plate and screws',
    description: detailWords(detail, units),
  };
  return drawing({ width, height: (size === 'big' ? rows.bottom : barAt.y) + letters }, words, parts);
}

/** How far the front view reaches to both sides of the plate's middle, m. */
function frontReach({ plate, studs, offsets }: Detail): Room {
  const edges = [
    plate.width / 2,
    -plate.width / 2,
    ...offsets,
    ...studs.flatMap(({ from, to }) => [from, to]),
  ];
  return { left: -Math.min(...edges), right: Math.max(...edges) };
}

/** How far the cut reaches behind the wall finish and before it, m. */
function sideReach({ plate, screws, gap, behind, head }: Detail): Room {
  const screw = screws.length - plate.thickness;
  const drawnBehind = Math.min(behind, Math.max(screw - gap, 0) * 1.2 + 0.005);
  return { left: Math.max(gap + drawnBehind, screw), right: plate.thickness + head / 3 };
}

/** Sizes under the two views. Where a row has no room for all its words, it keeps the number. */
function dimensionRows(
  detail: Detail,
  units: UnitSystem,
  size: DetailSize,
  front: Scale,
  side: Scale,
  top: number,
  letters: number,
  rooms: { readonly left: Room; readonly right: Room },
): { readonly parts: readonly string[]; readonly bottom: number } {
  const { plate, studs, offsets, gap, screws, penetration } = detail;
  const amount = (length_m: number): string => dimensionText(length_m, units);
  const y = (row: number): number => top + (row + 1) * letters * 1.7;
  const spans = {
    left: [
      { from: -plate.width / 2, to: plate.width / 2, words: ['plate', amount(plate.width)] },
      ...studs.map(({ from, to }) => ({ from, to, words: ['stud', amount(to - from)] })),
      ...(offsets.length < 2
        ? []
        : [
            {
              from: offsets[0] ?? 0,
              to: offsets.at(-1) ?? 0,
              words: ['screws', amount((offsets.at(-1) ?? 0) - (offsets[0] ?? 0))],
            },
          ]),
    ],
    right: [
      ...(gap > 0 ? [{ from: -gap, to: 0, words: ['covering', amount(gap)] }] : []),
      ...(penetration > 0
        ? [{ from: -gap - penetration, to: -gap, words: [amount(penetration), detail.into] }]
        : []),
      ...(size === 'big'
        ? []
        : [
            {
              from: plate.thickness - screws.length,
              to: plate.thickness,
              words: ['screw', amount(screws.length)],
            },
          ]),
    ],
  };
  const view = (each: 'left' | 'right', scale: Scale): string[] =>
    (size === 'big' && each === 'left' ? [] : spans[each]).flatMap(({ from, to, words }, row) => {
      const bounds = rooms[each];
      const number = words.find((word) => /\d/.test(word)) ?? '';
      const label =
        textWidth(words.join(' '), letters) <= bounds.right - bounds.left ? words.join(' ') : number;
      return levelDimension({ from: scale.x(from), to: scale.x(to), y: y(row) }, label, letters, bounds);
    });
  const count = size === 'big' ? spans.right.length : Math.max(spans.left.length, spans.right.length);
  return { parts: [...view('left', front), ...view('right', side)], bottom: y(count - 1) };
}

import { bandParts, lanesOf } from './bands.ts';
import { loadArrow } from './dimension.ts';
import type { Frame } from './frame.ts';
import { fitted, textWidth } from './lettering.ts';
import { withAmount, type DrawnLoads } from './loads.ts';
import type { Scale } from './scale.ts';
import { arrowhead, line, text, type Box } from './svg.ts';
import { placeWeights } from './weights.ts';

/** Loads above the board: roaming ones on top, weights below them, contents on the board. */
export interface LoadLanes {
  readonly height: number;
  /** Draws them so that they stand on the board's top. */
  draw(boardTop: number): string[];
}

const mostBandLanes = 6;
const mostRoaming = 3;
const arrowLength = 12;

export function loadLanes(loads: DrawnLoads, length_m: number, scale: Scale, frame: Frame): LoadLanes {
  const lanes = lanesOf(loads.bands);
  const bands = lanes.slice(0, mostBandLanes);
  const weights = placeWeights(loads.weights, scale, frame);
  const roaming = loads.roaming.slice(0, mostRoaming);
  const hidden = lanes.slice(mostBandLanes).flat().length + loads.roaming.length - roaming.length;
  const row = frame.letters * 1.25;
  const roamingRow = row + 18;
  const note = hidden > 0 ? row : 0;
  const bandHeight = bands.length * frame.band;
  const labelHeight = weights.length === 0 ? 0 : (Math.max(...weights.map(({ lane }) => lane)) + 1) * row;
  const weightHeight = labelHeight === 0 ? 0 : labelHeight + arrowLength;
  return {
    height: note + roaming.length * roamingRow + weightHeight + bandHeight,
    draw(boardTop) {
      const bandsTop = boardTop - bandHeight;
      const top = bandsTop - weightHeight - roaming.length * roamingRow - note;
      const shafts = weights.map(({ x }): Box => ({
        left: x - 5,
        right: x + 5,
        top: bandsTop,
        bottom: boardTop,
      }));
      const remark = `and ${hidden} more: see the list of loads`;
      return [
        hidden > 0 ? text(remark, { x: frame.left, y: top + frame.letters }, { size: frame.letters }) : '',
        ...roaming.flatMap((load, index) =>
          roamingParts(
            withAmount(load),
            top + note + index * roamingRow,
            [scale.x(0), scale.x(length_m)],
            frame,
          ),
        ),
        ...bands.flatMap((lane, index) =>
          lane.flatMap((band) => bandParts(band, boardTop - index * frame.band, scale, frame, shafts)),
        ),
        ...weights.flatMap(({ x, label, left, lane }) => {
          const bottom = bandsTop - arrowLength - lane * row;
          const words = text(label, { x: left, y: bottom - 3 }, { size: frame.letters });
          return [...loadArrow({ x, y: bottom - row + 3 }, boardTop), label === '' ? '' : words];
        }),
      ];
    },
  };
}

/** A load that may stand anywhere along the front edge: an arrow on a line with a head at both ends. */
function roamingParts(words: string, top: number, [left, right]: [number, number], frame: Frame): string[] {
  const size = frame.letters;
  const y = top + size * 1.25 + 3;
  const room = frame.width - 8;
  const label = fitted(`${words}, anywhere along the front edge`, size, room) || fitted(words, size, room);
  const half = textWidth(label, size) / 2;
  const middle = (left + right) / 2;
  const labelAt = Math.min(Math.max(middle, half + 2), frame.width - half - 2);
  return [
    text(label, { x: labelAt, y: top + size }, { size, anchor: 'middle' }),
    line({ x: left, y }, { x: right, y }, 'thin'),
    arrowhead({ x: left, y }, 'left', 5),
    arrowhead({ x: right, y }, 'right', 5),
    ...loadArrow({ x: middle, y }, y + 12),
  ];
}

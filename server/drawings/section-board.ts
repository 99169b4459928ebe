import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import { hatch } from './hatch.ts';
import { depths, nosingReach } from './profile.ts';
import type { Scale } from './scale.ts';
import { line, rect, type Box } from './svg.ts';

/** The board cut across: solid wood hatched, a box with its skins and frame, layers with their joints, strips apart. */
export function boardSection(document: BracketShelfDocument, boardTop: number, scale: Scale): string[] {
  const { board } = document;
  const { boardBack, boardFront, front } = depths(board);
  const box = {
    left: scale.x(boardBack),
    right: scale.x(boardFront),
    top: boardTop,
    bottom: boardTop + scale.length(board.thickness),
  };
  const reach = nosingReach(board);
  const nosingTop = boardTop - scale.length(reach.above);
  return [
    ...inside(board, box, scale),
    rect(box, 'outline'),
    ...(board.nosing === undefined
      ? []
      : cut({
          left: box.right,
          right: scale.x(front),
          top: nosingTop,
          bottom: nosingTop + scale.length(board.nosing.height),
        })),
    ...(board.rail === undefined ? [] : cut(railBox(board.rail, board.thickness, box, scale))),
  ];
}

function cut(box: Box): string[] {
  return [hatch(box, 4, [], false), rect(box, 'outline')];
}

function railBox(
  rail: NonNullable<BracketShelfDocument['board']['rail']>,
  thickness_m: number,
  board: Box,
  scale: Scale,
): Box {
  const top =
    rail.flush === 'bottom' ? board.top - scale.length(Math.max(0, rail.height - thickness_m)) : board.top;
  return { left: scale.x(0), right: board.left, top, bottom: top + scale.length(rail.height) };
}

function inside(board: BracketShelfDocument['board'], box: Box, scale: Scale): string[] {
  if (board.box !== undefined) {
    const { skin, frame, members = 2 } = board.box;
    const [upper, lower] = [box.top + scale.length(skin), box.bottom - scale.length(skin)];
    const width = scale.length(frame);
    const free = box.right - box.left - width;
    const skins = [
      { ...box, bottom: upper },
      { ...box, top: lower },
    ];
    const frameBoxes = Array.from({ length: members }, (_, index) => {
      const left = box.left + (free * index) / (members - 1);
      return { left, right: left + width, top: upper, bottom: lower };
    });
    return [
      ...skins.map((each) => hatch(each, 4)),
      ...frameBoxes.flatMap(cut),
      ...skins.map((each) => rect(each, 'thin')),
    ];
  }
  if (board.layers !== undefined) {
    let top = box.top;
    return board.layers.flatMap(({ thickness }, index) => {
      const layer = { ...box, top, bottom: top + scale.length(thickness) };
      top = layer.bottom;
      const joint = line({ x: box.left, y: top }, { x: box.right, y: top }, 'thin');
      return [hatch(layer, 4, [], index % 2 === 0), joint];
    });
  }
  return [hatch(box, 4.5)];
}

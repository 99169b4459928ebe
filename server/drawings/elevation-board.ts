import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import { nosingReach } from './profile.ts';
import type { Scale } from './scale.ts';
import { line, rect } from './svg.ts';

/** The board, and its nosing before it, which hides it. */
export function boardParts(document: BracketShelfDocument, boardTop: number, scale: Scale): string[] {
  const { board } = document;
  const reach = nosingReach(board);
  const [left, right] = [scale.x(0), scale.x(board.length)];
  const box = { left, right, top: boardTop, bottom: boardTop + scale.length(board.thickness) };
  const joints = (board.joints ?? []).map((joint) =>
    line({ x: scale.x(joint), y: box.top }, { x: scale.x(joint), y: box.bottom }, 'outline'),
  );
  if (board.nosing === undefined) return [rect(box, 'outline'), ...joints];
  const top = boardTop - scale.length(reach.above);
  const bottom = top + scale.length(board.nosing.height);
  return [rect(box, 'hidden'), rect({ left, right, top, bottom }, 'outline'), ...joints];
}

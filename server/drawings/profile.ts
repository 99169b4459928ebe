import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { Frame } from './frame.ts';
import { trueScale, type Scale } from './scale.ts';

type Board = BracketShelfDocument['board'];

/** How far the nosing reaches above and below the board's top face, m. */
export function nosingReach({ nosing, thickness }: Board): { above: number; below: number } {
  if (nosing === undefined) return { above: 0, below: thickness };
  if (nosing.flush === 'bottom') return { above: Math.max(0, nosing.height - thickness), below: thickness };
  return { above: 0, below: Math.max(nosing.height, thickness) };
}

/** The scale of everything that runs along the board: the elevation and, under it, the diagrams. */
export function boardScale(document: BracketShelfDocument, frame: Frame): Scale {
  const reach = nosingReach(document.board);
  const height = reach.above + reach.below + (document.brackets.plate?.height ?? 0);
  return trueScale(document.board.length, frame, height, frame.mostHeight);
}

/** Places across the section, m from the wall finish: back rail, board, nosing. */
export function depths(board: Board): { boardBack: number; boardFront: number; front: number } {
  const boardBack = board.rail?.thickness ?? 0;
  const boardFront = boardBack + board.depth;
  return { boardBack, boardFront, front: boardFront + (board.nosing?.thickness ?? 0) };
}

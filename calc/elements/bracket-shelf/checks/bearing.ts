import { show } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { bearingStress } from '../../../standards/nds-2018/3-members.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { frameOf } from '../board.ts';
import type { BoardPart } from '../board-part.ts';
import type { Context } from '../context.ts';
import type { Shelf } from '../shelf.ts';
import { atBracket, largestReaction } from './reactions.ts';

/** Crushing of the board on an arm, over the area of board that truly lies on it; of a box, where its frame stands over the arm. */
export function bearingCheck(context: Context): Judged {
  const { shelf } = context;
  const frame = shelf.document.board.box === undefined ? [] : frameOf(shelf.board);
  const [first] = frame;
  const { onArms } = shelf.board;
  if (first === undefined) return crushing(context, onArms, shelf.bearingLength_m, '');
  const length_m = frame.reduce((sum, member) => sum + lengthOnArm(member, shelf.bearingLength_m), 0);
  const words = `A box bears where its frame stands over the arm: ${show(length_m, 'm', shelf.system)}.`;
  return worstCheck([crushing(context, onArms, length_m, words), crushing(context, first, length_m, words)]);
}

function crushing(context: Context, { material }: BoardPart, length_m: number, words: string): Judged {
  const { shelf, service } = context;
  const worst = largestReaction(service, (reaction_N, index) => reaction_N / widthUnder(shelf, index));
  const width_m = widthUnder(shelf, worst.index);
  const area = width_m * Math.max(least_m, length_m);
  const stress = work(bearingStress, { R: worst.weighted * width_m, A_b: area }, shelf.system);
  const resistance = context.resist(material, 'bearing', worst.situation.combination.duration);
  return {
    check: makeCheck(
      {
        id: 'bearing',
        title: 'Bearing of the board on the arm',
        unit: 'Pa',
        demand: stress.value,
        capacity: resistance.ok ? resistance.value_Pa : null,
        clause: resistance.clause,
        where: atBracket(shelf, worst.index),
        combination: worst.situation.combination.name,
        note: resistance.ok ? words : `Cannot say: ${resistance.why}.`,
      },
      shelf.system,
    ),
    steps: [stress.step, ...(resistance.ok ? [resistance.step] : [])],
  };
}

/** How much of the arm a member of the frame stands over, the arm reaching from the wall to a_m. */
function lengthOnArm({ y_m, width_m }: BoardPart, a_m: number): number {
  return Math.max(0, Math.min(y_m + width_m, a_m) - Math.max(0, y_m));
}

/**
 * Width of board on an arm: less at the ends of the board. Where two lengths meet, each may have to carry the whole
 * reaction on its own part of the arm, the smaller of which counts.
 */
function widthUnder({ armWidth_m, positions_m, length_m, document }: Shelf, index: number): number {
  const at = positions_m[index] ?? 0;
  const half = armWidth_m / 2;
  const [left, right] = [Math.max(0, at - half), Math.min(length_m, at + half)];
  const joint = (document.board.joints ?? []).find((each) => Math.abs(each - at) <= Math.max(half, 0.001));
  if (joint === undefined) return right - left;
  return Math.max(least_m, Math.min(joint - left, right - joint));
}

/** A board that ends where its arm does lies on next to nothing. */
const least_m = 1e-4;

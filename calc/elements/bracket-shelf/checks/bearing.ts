import { work } from '../../../formula/step.ts';
import { bearingStress } from '../../../standards/nds-2018/3-members.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context } from '../context.ts';
import type { Shelf } from '../shelf.ts';
import { atBracket, largestReaction } from './reactions.ts';

/** Crushing of the board on an arm, over the area of board that truly lies on it. */
export function bearingCheck(context: Context): Judged {
  const { shelf, service } = context;
  const worst = largestReaction(service, (reaction_N, index) => reaction_N / widthUnder(shelf, index));
  const width_m = widthUnder(shelf, worst.index);
  const area = width_m * shelf.bearingLength_m;
  const stress = work(bearingStress, { R: worst.weighted * width_m, A_b: area }, shelf.system);
  const { material } = shelf.board.onArms;
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
        note: resistance.ok ? '' : `Cannot say: ${resistance.why}.`,
      },
      shelf.system,
    ),
    steps: [stress.step, ...(resistance.ok ? [resistance.step] : [])],
  };
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
  return Math.max(leastWidth_m, Math.min(joint - left, right - joint));
}

/** A board that ends where its arm does lies on next to nothing. */
const leastWidth_m = 1e-4;

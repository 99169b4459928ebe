import { work } from '../../../formula/step.ts';
import { bearingStress } from '../../../standards/nds-2018/3-members.ts';
import { makeCheck } from '../../make-check.ts';
import type { Context, Judged } from '../context.ts';
import { atBracket, largestReaction } from './reactions.ts';

/** Crushing of the board on an arm, over the area that lies on it. Where two boards meet there, each may have
 * to carry the whole reaction on its half of the arm. */
export function bearingCheck(context: Context): Judged {
  const { shelf, service } = context;
  const joints = shelf.document.board.joints ?? [];
  const worst = largestReaction(service, (reaction_N, index) => {
    const isJoint = joints.some(
      (joint) => Math.abs(joint - (shelf.positions_m[index] ?? NaN)) <= shelf.armWidth_m / 2,
    );
    return isJoint ? 2 * reaction_N : reaction_N;
  });
  const area = shelf.armWidth_m * shelf.bearingLength_m;
  const stress = work(bearingStress, { R: worst.weighted, A_b: area }, shelf.system);
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

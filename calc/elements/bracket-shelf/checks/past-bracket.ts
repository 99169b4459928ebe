import { work } from '../../../formula/step.ts';
import { show } from '../../../../shared/quantity/index.ts';
import { noseMoment, noseStress } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context, Situation } from '../context.ts';
import { patch_m, type Action, type Shelf } from '../shelf.ts';
import { atBracket, largestCouple, reactionAndLever } from './reactions.ts';

/** Up to this share of the derived strength across the grain the check holds; above it, it cannot say. */
const sureAcrossGrain = 0.5;

/** The board in front of the arms' tips, bent across its grain over each arm. */
export function pastBracketCheck(context: Context): Judged[] {
  const { shelf } = context;
  const nose_m = shelf.depth_m - shelf.bearingLength_m;
  if (nose_m < 1e-6) return [];
  const [first, ...rest] = context.situations.map((situation) => judge(context, situation, nose_m));
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

function judge(context: Context, situation: Situation, nose_m: number): Judged {
  const { shelf } = context;
  const { system, board } = shelf;
  const { solved, factor, combination } = situation;
  const standing = shelf.positions_m.map((_, index) =>
    // What the rest of the board lifts off a bracket relieves nothing of what stands in front of it.
    Math.max(
      0,
      largestCouple(solved.model, solved.lines, factor, index, (action) =>
        action?.load.kind === 'roaming' ? 0 : noseLever(shelf, action, nose_m),
      ),
    ),
  );
  const roaming = Math.max(0, ...solved.model.roaming.map(({ action, load_N }) => load_N * factor(action)));
  const bent = standing.map((couple, each) => {
    const { b_a, c_l, c_r } = bentWidth(shelf, each, nose_m);
    return (couple + roaming * patchLever(nose_m)) / (b_a + c_l + c_r);
  });
  const index = bent.indexOf(Math.max(...bent));
  const largest = standing[index] ?? 0;
  const { reaction_N: R, lever_m: l_R } = reactionAndLever(
    largest,
    situation.forces.reactionMax_N[index] ?? 0,
  );
  const moment = work(noseMoment, { P: roaming, l_P: patchLever(nose_m), R, l_R }, system);
  const part = board.onArms;
  const stress = work(
    noseStress,
    { M_n: moment.value, ...bentWidth(shelf, index, nose_m), t: part.height_m },
    system,
  );
  const resistance = context.resist(part.material, 'tension-across', combination.duration);
  const isPanel = part.material.basis === 'panel';
  const rule = isPanel
    ? ''
    : 'No standard gives a design value for tension across the grain: up to half of the derived value holds, above it a longer arm is wanted.';
  const check = makeCheck(
    {
      id: 'board-past-bracket',
      title: 'Board in front of the arm, across its grain',
      unit: 'Pa',
      demand: stress.value,
      capacity: resistance.ok ? resistance.value_Pa : null,
      clause: resistance.clause,
      where: `${atBracket(shelf, index)}, the ${show(nose_m, 'm', system)} in front of the arm`,
      combination: combination.name,
      note: resistance.ok ? rule : `Cannot say: ${resistance.why}. A longer arm would settle it.`,
      sureUpTo: isPanel ? 1 : sureAcrossGrain,
    },
    system,
  );
  return { check, steps: [moment.step, stress.step, ...(resistance.ok ? [resistance.step] : [])] };
}

/** Width of board bent over an arm: on the arm, and spread at 45° to its left and right as far as the board goes. */
function bentWidth(
  { positions_m, armWidth_m, length_m, document }: Shelf,
  index: number,
  nose_m: number,
): Readonly<Record<'b_a' | 'c_l' | 'c_r', number>> {
  const at = positions_m[index] ?? 0;
  const half = armWidth_m / 2;
  const joints = document.board.joints ?? [];
  const start = Math.max(0, ...joints.filter((joint) => joint < at - half));
  const end = Math.min(length_m, ...joints.filter((joint) => joint > at + half));
  const [left, right] = [Math.max(start, at - half), Math.min(end, at + half)];
  const [c_l, c_r] = [Math.min(nose_m, left - start), Math.min(nose_m, end - right)];
  const joint = joints.find((each) => Math.abs(each - at) <= half);
  if (joint === undefined) return { b_a: right - left, c_l, c_r };
  // Of two lengths on one arm, the one with less of it.
  return joint - left + c_l < right - joint + c_r
    ? { b_a: joint - left, c_l, c_r: 0 }
    : { b_a: right - joint, c_l: 0, c_r };
}

/** Mean lever past the tip of the arm: of a load spread over the depth, or of one that stands on a line. */
function noseLever(shelf: Shelf, action: Action | null, nose_m: number): number {
  if (action === null || action.spread) return nose_m ** 2 / (2 * shelf.depth_m);
  return Math.max(0, action.eccentricity_m - shelf.bearingLength_m);
}

/** Lever of a load on a patch flush with the front edge: only what lies past the tip of the arm bends the board. */
function patchLever(nose_m: number): number {
  return nose_m >= patch_m ? nose_m - patch_m / 2 : nose_m ** 2 / (2 * patch_m);
}

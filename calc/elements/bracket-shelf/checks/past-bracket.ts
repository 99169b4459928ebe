import { work } from '../../../formula/step.ts';
import { show } from '../../../../shared/quantity/index.ts';
import { handMoment, noseMoment, noseStress } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { frameOf } from '../board.ts';
import type { Context, Situation } from '../context.ts';
import { patch_m, type Action, type Shelf } from '../shelf.ts';
import { atBracket, largestCouple, reactionAndLever } from './reactions.ts';

/** Up to this share of the derived strength across the grain the check holds; above it, it cannot say. */
export const sureAcrossGrain = 0.5;

/** The board in front of the arms' tips, bent across its grain over each arm. */
export function pastBracketCheck(context: Context): Judged[] {
  const { shelf } = context;
  const nose_m = shelf.depth_m - shelf.bearingLength_m;
  if (nose_m < 1e-6) return [];
  if (shelf.document.board.box !== undefined) return boxPastBracket(shelf);
  const [first, ...rest] = context.situations.map((situation) => judge(context, situation, nose_m));
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

/** A box reaches past its arms by no more than half of the front member of its frame, or it hangs on a skin. */
function boxPastBracket(shelf: Shelf): Judged[] {
  const front = frameOf(shelf.board).at(-1);
  if (front === undefined || shelf.bearingLength_m >= front.y_m + front.width_m / 2 - least_m) return [];
  const check = makeCheck(
    {
      id: 'board-past-bracket',
      title: 'Box in front of the arm',
      unit: 'Pa',
      demand: null,
      capacity: null,
      clause: 'no rule for a box on part of its frame',
      where: `the front member of its frame, ${show(front.y_m, 'm', shelf.system)} from the wall`,
      combination: '',
      note: 'Cannot say: the arms end before the middle of the front member of the frame, and the skins would have to carry it. Longer arms under that member would settle it.',
    },
    shelf.system,
  );
  return [{ check, steps: [] }];
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
    const { b_a, c_l, c_r, b_R } = bentWidth(shelf, each, nose_m);
    return couple / b_R + (roaming * patchLever(nose_m)) / (b_a + c_l + c_r);
  });
  const index = bent.indexOf(Math.max(...bent));
  const { reaction_N: R, lever_m: l_R } = reactionAndLever(
    standing[index] ?? 0,
    situation.forces.reactionMax_N[index] ?? 0,
  );
  const hand = work(handMoment, { P: roaming, l_P: patchLever(nose_m) }, system);
  const rest = work(noseMoment, { R, l_R }, system);
  const part = board.onArms;
  const stress = work(
    noseStress,
    { M_P: hand.value, M_R: rest.value, ...bentWidth(shelf, index, nose_m), t: part.height_m },
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
  return { check, steps: [hand.step, rest.step, stress.step, ...(resistance.ok ? [resistance.step] : [])] };
}

/**
 * Width of board bent over an arm: on the arm, and spread at 45° to its left and right as far as the board goes. Of what
 * stands all along the board an arm has no more than up to halfway to the next, b_R.
 */
function bentWidth(
  { positions_m, armWidth_m, length_m, document }: Shelf,
  index: number,
  nose_m: number,
): Readonly<Record<'b_a' | 'c_l' | 'c_r' | 'b_R', number>> {
  const at = positions_m[index] ?? 0;
  const half = armWidth_m / 2;
  const joints = document.board.joints ?? [];
  const start = Math.max(0, ...joints.filter((joint) => joint < at - half));
  const end = Math.min(length_m, ...joints.filter((joint) => joint > at + half));
  const [left, right] = [Math.max(start, at - half), Math.min(end, at + half)];
  const [c_l, c_r] = [Math.min(nose_m, left - start), Math.min(nose_m, end - right)];
  const halfway = (to: number | undefined): number => (to === undefined ? Infinity : Math.abs(to - at) / 2);
  const before = Math.min(at - left + c_l, halfway(positions_m[index - 1]));
  const after = Math.min(right - at + c_r, halfway(positions_m[index + 1]));
  const joint = joints.find((each) => Math.abs(each - at) <= half);
  if (joint === undefined) return { b_a: right - left, c_l, c_r, b_R: before + after };
  // Of two lengths on one arm, the one with less of it.
  const off = joint - at;
  return before + off < after - off
    ? { b_a: joint - left, c_l, c_r: 0, b_R: Math.max(least_m, before + off) }
    : { b_a: right - joint, c_l: 0, c_r, b_R: Math.max(least_m, after - off) };
}

/** A board that ends where its arm does has next to nothing on it. */
const least_m = 1e-4;

/** Mean lever past the tip of the arm: of a load spread over the depth, or of one that stands on a line. */
function noseLever(shelf: Shelf, action: Action | null, nose_m: number): number {
  if (action === null || action.spread) return nose_m ** 2 / (2 * shelf.depth_m);
  return Math.max(0, action.eccentricity_m - shelf.bearingLength_m);
}

/** Lever of a load on a patch flush with the front edge: only what lies past the tip of the arm bends the board. */
function patchLever(nose_m: number): number {
  return nose_m >= patch_m ? nose_m - patch_m / 2 : nose_m ** 2 / (2 * patch_m);
}

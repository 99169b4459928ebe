import { show } from '../../../../shared/quantity/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { bearingStress } from '../../../standards/nds-2018/3-members.ts';
import { memberLoad } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { frameOf } from '../board.ts';
import type { BoardPart } from '../board-part.ts';
import type { Context, Situation } from '../context.ts';
import { byLoadAt, sharesOfReaction } from '../load-shares.ts';
import type { Shelf } from '../shelf.ts';
import { atBracket, largestCouple, largestReaction, leverFromWall } from './reactions.ts';

/** Crushing of the board on an arm, over the area of board that truly lies on it; of a box, where its frame stands over the arm. */
export function bearingCheck(context: Context): Judged {
  const { shelf } = context;
  const { onArms, box } = { onArms: shelf.board.onArms, box: shelf.document.board.box };
  const members = box === undefined ? [] : membersOnArm(shelf);
  const [first, ...rest] = members.flatMap((member) =>
    [onArms, member.part].map((part) => boxCrushing(context, part, member)),
  );
  if (first !== undefined) return worstCheck([first, ...rest]);
  return crushing(context, box === undefined ? shelf.bearingLength_m : 0);
}

function crushing(context: Context, length_m: number): Judged {
  const { shelf, service } = context;
  const worst = largestReaction(service, (reaction_N, index) => reaction_N / widthUnder(shelf, index));
  const width_m = widthUnder(shelf, worst.index);
  const area = width_m * Math.max(least_m, length_m);
  const stress = work(bearingStress, { R: worst.weighted * width_m, A_b: area }, shelf.system);
  const where = { situation: worst.situation, index: worst.index, words: '' };
  return judge(context, shelf.board.onArms, where, [stress]);
}

/** A member of a box's frame over an arm: the length of it there, and what falls to it. */
interface MemberOnArm {
  readonly part: BoardPart;
  readonly length_m: number;
  /** Its share of a load over the middle of the frame on the arm, and of a couple about there, 1/m. */
  readonly share: number;
  readonly perCouple_perm: number;
  readonly middle_m: number;
  readonly all_m: number;
}

/** The members that stand over an arm. The box turns about their middle as one stiff piece. */
function membersOnArm({ board, bearingLength_m }: Shelf): MemberOnArm[] {
  const lying = frameOf(board).flatMap((part) => {
    const length_m = lengthOnArm(part, bearingLength_m);
    return length_m > 0 ? [{ part, length_m, at_m: part.y_m + length_m / 2 }] : [];
  });
  const all_m = lying.reduce((sum, { length_m }) => sum + length_m, 0);
  const middle_m = lying.reduce((sum, { length_m, at_m }) => sum + length_m * at_m, 0) / all_m;
  const second = lying.reduce((sum, { length_m, at_m }) => sum + length_m * (at_m - middle_m) ** 2, 0);
  return lying.map(({ part, length_m, at_m }) => ({
    part,
    length_m,
    share: length_m / all_m,
    perCouple_perm: second === 0 ? 0 : (length_m * (at_m - middle_m)) / second,
    middle_m,
    all_m,
  }));
}

/** Under one member: its share of the reaction, and what a load in front of the frame's middle on the arm, or behind it, adds. */
function boxCrushing(context: Context, part: BoardPart, member: MemberOnArm): Judged {
  const { shelf, service } = context;
  const { system } = shelf;
  const from = leverFromWall(shelf);
  const sense = member.perCouple_perm < 0 ? -1 : 1;
  const loads = service.flatMap((situation) =>
    shelf.positions_m.map((_, index) => {
      const { solved, factor, forces } = situation;
      const couple_Nm = Math.max(
        0,
        largestCouple(solved.model, solved.lines, factor, index, (a) => sense * (from(a) - member.middle_m)),
      );
      const k_C = Math.abs(member.perCouple_perm);
      const numbers = { R: forces.reactionMax_N[index] ?? 0, k_R: member.share, C_m: couple_Nm, k_C };
      return { situation, index, numbers, each: memberLoad.evaluate(numbers) / widthUnder(shelf, index) };
    }),
  );
  const worst = loads.reduce((most, load) => (load.each > most.each ? load : most));
  const load = work(memberLoad, worst.numbers, system);
  const area = widthUnder(shelf, worst.index) * member.length_m;
  const stress = work(bearingStress, { R: load.value, A_b: area }, system);
  const words = `A box bears where its frame stands over the arm: ${show(member.all_m, 'm', system)}, of which ${show(member.length_m, 'm', system)} here, under the ${member.part.name}.`;
  return judge(context, part, { ...worst, words }, [load, stress]);
}

/** What is crushed against what the wood takes; the last line of the working is the stress. */
function judge(
  context: Context,
  { material }: BoardPart,
  { situation, index, words }: { situation: Situation; index: number; words: string },
  working: readonly Worked[],
): Judged {
  const { shelf } = context;
  const { combination } = situation;
  const resistance = context.resist(material, 'bearing', combination.duration);
  return {
    check: makeCheck(
      {
        id: 'bearing',
        title: 'Bearing of the board on the arm',
        unit: 'Pa',
        demand: working[working.length - 1]?.value ?? null,
        capacity: resistance.ok ? resistance.value_Pa : null,
        clause: resistance.clause,
        where: atBracket(shelf, index),
        combination: combination.name,
        note: resistance.ok ? words : `Cannot say: ${resistance.why}.`,
      },
      shelf.system,
    ),
    steps: [...working.map(({ step }) => step), ...(resistance.ok ? [resistance.step] : [])],
    byLoad: byLoadAt(shelf, 'On the bracket at', shelf.positions_m[index] ?? 0, 'N', () =>
      sharesOfReaction(situation, index),
    ),
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

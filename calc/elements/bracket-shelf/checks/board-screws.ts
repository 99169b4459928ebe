import type { Step } from '../../../../shared/check-result.ts';
import { findFastener, type Fastener } from '../../../catalogue/index.ts';
import { work } from '../../../formula/step.ts';
import { temperatureFactor } from '../../../standards/nds-2018/2.3-adjustment.ts';
import {
  adjustedWithdrawal,
  headPullThrough,
  pullThroughConstant_Pa,
  woodScrewConstant_Pa,
  woodScrewWithdrawal,
} from '../../../standards/nds-2018/12.2-withdrawal.ts';
import { boardScrewPull, prisedLift, screwsTogether } from '../../bracket-formulas.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Context, Situation } from '../context.ts';
import { boardScrewsOf, woodGravity, type BoardScrews } from '../board-screws.ts';
import { extremeOf } from '../forces.ts';
import type { Shelf } from '../shelf.ts';
import { coupleAboutTip, least_m, priseOf, type Prise } from './prising.ts';
import { atBracket, heldDown } from './reactions.ts';

/** Wet service of screws in withdrawal, NDS 2018 Table 11.3.3. */
const wetWithdrawal = 0.7;

interface Pull {
  readonly situation: Situation;
  readonly index: number;
  readonly pull_N: number;
  /** What turns the board about the tip of the arm. */
  readonly couple_Nm: number;
  /** Of a board that is lifted; null where what stands in front of the tip is looked at. */
  readonly prise: Prise | null;
}

/** Pull on the screws from each arm into the board, where the arm has to hold the board down. */
export function boardScrewsCheck(context: Context): Judged[] {
  const { shelf } = context;
  if (shelf.hold !== 'screwed') return [];
  const screws = boardScrewsOf(shelf);
  const found = findFastener(screws.fastener);
  const pulls = context.situations.map((situation) => worstPull(context, screws, situation));
  const [first, ...rest] = pulls.map((pull) =>
    judge(context, screws, found.ok ? found.row : undefined, pull),
  );
  return first === undefined ? [] : [worstCheck([first, ...rest])];
}

/**
 * The bracket whose screws are pulled most: by what stands in front of the tip of the arm, on the screws nearest the wall, or by
 * what lifts the board, on all of them.
 */
function worstPull(context: Context, screws: BoardScrews, situation: Situation): Pull {
  const { shelf } = context;
  const lever_m = Math.max(leverOf(context, screws), least_m);
  const joints = jointBrackets(shelf);
  const none: Pull = { situation, index: 0, pull_N: 0, couple_Nm: 0, prise: null };
  const pulls = shelf.positions_m.flatMap((_, index) => {
    const inFront_Nm = coupleAboutTip(shelf, situation, index, false);
    const prise = priseOf(
      shelf,
      situation,
      screws,
      index,
      Math.max(0, ...liftOfPieces(situation, index, joints)),
    );
    return [
      { ...none, index, pull_N: inFront_Nm / lever_m, couple_Nm: inFront_Nm },
      { ...none, index, pull_N: prisedLift.evaluate(prise), couple_Nm: prise.C_t, prise },
    ];
  });
  const used = (pull: Pull): number => pull.pull_N / carrying(pull, screws, joints);
  return pulls.reduce((worst, each) => (used(each) > used(worst) ? each : worst), none);
}

/** From the screws nearest the wall to the tip of the arm. */
function leverOf({ shelf }: Context, screws: BoardScrews): number {
  return shelf.bearingLength_m - screws.firstAt_m;
}

/**
 * Screws that share a pull: those nearest the wall take what stands in front of the tip, all of them a lift. Where two lengths meet on an arm, each has
 * half of them.
 */
function carrying({ prise, index }: Pull, screws: BoardScrews, joints: ReadonlySet<number>): number {
  return (prise === null ? screws.atFirst : screws.count) * (joints.has(index) ? 0.5 : 1);
}

/** Brackets on which two lengths of board meet. */
function jointBrackets({ document, positions_m }: Shelf): ReadonlySet<number> {
  const nearest = (joint: number): number => {
    const distances = positions_m.map((position) => Math.abs(position - joint));
    return distances.indexOf(Math.min(...distances));
  };
  return new Set((document.board.joints ?? []).map(nearest));
}

/** Lift of each length of board where two meet on one bracket: one can rise while the other presses down. */
function liftOfPieces({ solved, factor }: Situation, index: number, joints: ReadonlySet<number>): number[] {
  if (!joints.has(index)) return [];
  const { model, lines } = solved;
  const [, leastRight] = lines.shear[index]?.right ?? [0, 0];
  const [mostLeft] = lines.shear[index]?.left ?? [0, 0];
  const right = extremeOf(
    model,
    factor,
    -1,
    ({ always, shearRight }) => (always ? heldDown(shearRight[index] ?? 0) : (shearRight[index] ?? 0)),
    () => leastRight,
  );
  const left = extremeOf(
    model,
    factor,
    1,
    ({ always, shearLeft }) => (always ? -heldDown(-(shearLeft[index] ?? 0)) : (shearLeft[index] ?? 0)),
    () => mostLeft,
  );
  return [-right, left];
}

function judge(context: Context, screws: BoardScrews, fastener: Fastener | undefined, pull: Pull): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const { combination } = pull.situation;
  const base = {
    id: 'board-screws',
    title: 'Screws from the arm into the board',
    unit: 'N',
    where: atBracket(shelf, pull.index),
    combination: combination.name,
  } as const;
  if (pull.pull_N === 0) {
    const parts = {
      ...base,
      demand: 0,
      capacity: null,
      clause: 'NDS 12.2',
      note: 'Nothing lifts the board off an arm.',
    };
    return { check: makeCheck(parts, system), steps: [] };
  }
  if (pull.couple_Nm > 0 && leverOf(context, screws) < least_m) {
    const note =
      'The screws stand at the tip of the arm: they have no lever against what stands in front of it.';
    const parts = {
      ...base,
      unit: 'N.m',
      demand: pull.couple_Nm,
      capacity: 0,
      clause: 'statics',
      note,
    } as const;
    return { check: makeCheck(parts, system), steps: [] };
  }
  const demand =
    pull.prise === null
      ? work(boardScrewPull, { C_f: pull.couple_Nm, a: shelf.bearingLength_m, x_s: screws.firstAt_m }, system)
      : work(prisedLift, pull.prise, system);
  const G = shelf.board.onArms.material.specificGravity;
  if (fastener === undefined || fastener.kind !== 'wood-screw' || G === null) {
    const why =
      G === null
        ? 'no withdrawal of screws is published for this board: glue a wood strip under it, or bolt through'
        : `"${screws.fastener}" is not a wood screw of the catalogue`;
    const parts = {
      ...base,
      demand: demand.value,
      capacity: null,
      clause: 'NDS 12.2.2',
      note: `Cannot say: ${why}.`,
    };
    return { check: makeCheck(parts, system), steps: [demand.step] };
  }
  const { moisture, temperature } = {
    moisture: 'dry',
    temperature: 'ordinary',
    ...shelf.document.conditions,
  } as const;
  const factors = {
    C_D: shelf.code.connectionDuration(combination.duration),
    C_M: moisture === 'wet' ? wetWithdrawal : 1,
    C_t: temperatureFactor[moisture][temperature],
  };
  const W = work(woodScrewWithdrawal, { k_W: woodScrewConstant_Pa, G, D: fastener.diameter_m }, system);
  const withdrawal = work(
    adjustedWithdrawal,
    { W: W.value, p_t: screws.thread_m, ...factors, C_eg: 1, C_tn: 1 },
    system,
  );
  const through = pullThrough(screws, fastener, factors, context);
  const steps: Step[] = [demand.step, W.step, withdrawal.step];
  if (through !== undefined) steps.push(through.step);
  const T_1 = Math.min(withdrawal.value, through?.value ?? Infinity);
  const n_s = carrying(pull, screws, jointBrackets(shelf));
  const together = work(screwsTogether, { n_s, T_1 }, system);
  steps.push(together.step);
  const parts = {
    ...base,
    demand: demand.value,
    capacity: together.value,
    clause: through !== undefined && through.value < withdrawal.value ? 'NDS 12.2.5' : 'NDS 12.2.2',
    note: screws.assumed ? `Assumes ${screws.words}.` : '',
  };
  return { check: makeCheck(parts, system), steps };
}

/** The head pulls through a wooden arm; on a metal arm it can't. */
function pullThrough(
  screws: BoardScrews,
  fastener: Fastener,
  factors: { readonly C_D: number; readonly C_M: number; readonly C_t: number },
  { shelf }: Context,
) {
  if (screws.armMaterial === 'metal' || fastener.headDiameter_m === null) return undefined;
  const G = woodGravity(screws.armMaterial) ?? 0;
  return work(
    headPullThrough,
    { k_H: pullThroughConstant_Pa, D_H: fastener.headDiameter_m, G, t_ns: screws.armThickness_m, ...factors },
    shelf.system,
  );
}

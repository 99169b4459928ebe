import { work, type Worked } from '../../../formula/step.ts';
import * as steel from '../../../standards/aisc-360/steel-arm.ts';
import { armBetween, armInFront, armPull } from '../../bracket-formulas.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { allowedBending, allowedSqueeze, type Allowed, type SteelBar } from '../../steel-bar.ts';
import type { Context } from '../context.ts';
import { largestBeyond, largestOnArm } from './arm-moment.ts';
import {
  atBracket,
  coupleOn,
  workCouple,
  liftingCoupleOn,
  worstCouple,
  worstLiftingCouple,
  type Turn,
} from './reactions.ts';

/** A bar between the arm, `at` from the wall, and the wall, `drop` below the arm; all in m. */
interface Strut {
  readonly at: number;
  readonly drop: number;
  readonly width: number;
  readonly thickness: number;
}

/** Every arm on its strut, and the struts that carry most: a loaded arm is pulled and its strut squeezed, a lifted one the other way. */
export function armsOnStruts(
  context: Context,
  bar: SteelBar,
  strut: Strut,
  holes_m: number,
): readonly [Judged, ...Judged[]] {
  const arms = context.shelf.positions_m.flatMap((_, index) =>
    [coupleOn(context, index), liftingCoupleOn(context, index)].flatMap((turn) =>
      turn === null || turn.couple_Nm <= 0 ? [] : [armCheck(context, bar, strut, holes_m, turn)],
    ),
  );
  const lifted = worstLiftingCouple(context);
  const struts = lifted === null ? [] : [strutCheck(context, bar, strut, lifted)];
  return [strutCheck(context, bar, strut, worstCouple(context)), ...struts, ...arms];
}

function armCheck(context: Context, bar: SteelBar, strut: Strut, holes_m: number, turn: Turn): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const { t } = bar;
  const b = bar.b - holes_m;
  const { isLifted } = turn;
  const whole = workCouple(context.shelf, turn);
  const arm = armMoment(context, turn, strut.at);
  const words = isLifted ? 'push along the lifted arm' : armPull.caption;
  const along = work(armPull, { C: whole.value, h: strut.drop }, system, words);
  const bent = allowedBending(bar, Math.max(shelf.arm_m - strut.at, strut.at), system);
  const forces = { M: arm.value, N: along.value, b, t };
  const pushed = isLifted ? pushedArm(context, bar, strut, forces) : null;
  const stress = pushed?.stress ?? work(steel.armStress, forces, system);
  const allowed = pushed === null || bent.value_Pa <= pushed.allowed.value_Pa ? bent : pushed.allowed;
  const check = makeCheck(
    {
      id: 'bracket',
      title: isLifted ? 'Bending and push of the lifted steel arm' : 'Bending and pull of the steel arm',
      unit: 'Pa',
      demand: stress.value,
      capacity: allowed.value_Pa,
      clause: 'AISC 360 H1, sum of stresses',
      where: atBracket(shelf, turn.index),
      combination: turn.combination,
    },
    system,
  );
  const others = pushed === null ? [] : pushed.allowed.steps;
  return { check, steps: [whole.step, arm.step, along.step, ...others, stress.step, ...bent.steps] };
}

/**
 * A lifted arm is pushed against the wall by its strut: it may buckle between them, and sags the more. Pushed past five
 * eighths of its elastic buckling load it has buckled, whatever bends it.
 */
function pushedArm(
  { shelf: { system } }: Context,
  bar: SteelBar,
  { at }: Strut,
  forces: { readonly M: number; readonly N: number; readonly b: number; readonly t: number },
): { readonly stress: Worked; readonly allowed: Allowed } {
  const { F_e, ...allowed } = allowedSqueeze(bar, at, system, 'allowable stress of the pushed arm');
  const isBuckled = 1.6 * forces.N >= F_e * forces.b * forces.t;
  const stress = isBuckled
    ? work(steel.armStress, forces, system)
    : work(steel.pushedArmStress, { ...forces, F_e }, system);
  return { stress, allowed };
}

function strutCheck({ shelf }: Context, bar: SteelBar, strut: Strut, turn: Turn): Judged {
  const { system } = shelf;
  const length = Math.hypot(strut.at, strut.drop);
  const total = workCouple(shelf, turn);
  const force = work(steel.strutForce, { C: total.value, L_d: length, s: strut.at, h: strut.drop }, system);
  const stress = work(steel.strutStress, { N_d: force.value, A_d: strut.width * strut.thickness }, system);
  const { title, clause, allowed } = turn.isLifted
    ? {
        title: 'Pull on the strut of a lifted bracket',
        clause: 'AISC 360 D2',
        allowed: inTension(bar, shelf),
      }
    : {
        title: 'Buckling of the strut',
        clause: 'AISC 360 E3',
        allowed: allowedSqueeze({ ...bar, b: strut.width, t: strut.thickness }, length, system),
      };
  const parts = {
    id: 'bracket',
    title,
    unit: 'Pa',
    demand: stress.value,
    capacity: allowed.value_Pa,
    clause,
    where: atBracket(shelf, turn.index),
    combination: turn.combination,
  } as const;
  return {
    check: makeCheck(parts, system),
    steps: [total.step, force.step, stress.step, ...allowed.steps],
  };
}

function inTension({ F_y }: SteelBar, { system }: Context['shelf']): Allowed {
  const pulled = work(steel.allowableSteelTension, { F_y }, system);
  return { value_Pa: pulled.value, steps: [pulled.step] };
}

/**
 * Moment in an arm on a strut, each load at its own lever: between wall and strut as on a beam (AISC Manual, Table 3-23,
 * case 8), in front of the strut as a cantilever. What is spread over the depth counts with the mean of these over the depth.
 * Loads on the other side of the strut would relieve it and are left out. A lifted arm is bent the other way.
 */
function armMoment(context: Context, turn: Turn, s: number): Worked {
  const { shelf } = context;
  const d = shelf.depth_m;
  const between = largestOnArm(
    context,
    turn,
    () => (s < d ? s ** 2 / (6 * d) : d / 2 - d ** 2 / (3 * s)),
    (e) => (e * (s - e)) / s,
  );
  const inFront = largestBeyond(context, turn, s);
  const { couple_Nm, reaction_N: R } = between.couple_Nm >= inFront.couple_Nm ? between : inFront;
  const formula = between.couple_Nm >= inFront.couple_Nm ? armBetween : armInFront;
  return work(formula, { R, e_M: couple_Nm / R }, shelf.system);
}

import type { Duration } from '../../../../shared/check-document/index.ts';
import { show, type UnitSystem } from '../../../../shared/quantity/index.ts';
import type { Resistance } from '../../../codes/design-code.ts';
import { work, type Worked } from '../../../formula/step.ts';
import {
  roamingPlace,
  roamingShare,
  twistedShare,
  warpedJoint,
  warpedShear,
  warpLength,
} from '../../../mechanics/open-section-formulas.ts';
import {
  endTorque,
  rectangleFactor,
  shearOfAll,
  shearTogether,
  torqueShare,
  twistedBox,
  twistingPart,
  twistedRectangle,
} from '../../../mechanics/torsion-formulas.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { Board } from '../board.ts';
import type { Context, Situation } from '../context.ts';
import { shearBeside } from '../forces.ts';
import { byLoadAt, sharesOfShear } from '../load-shares.ts';
import type { Shelf } from '../shelf.ts';
import { torquesOf, type TorqueAtBracket } from '../torque.ts';
import { cutsOf, glueLineTitle, stressPerForce, stressSteps, type Cut } from './shear.ts';
import { twistedParts, type Twisted } from './twisted-parts.ts';

/** One part beside one bracket in one combination. */
interface Candidate {
  readonly situation: Situation;
  readonly torque: TorqueAtBracket;
  readonly twisted: Twisted;
  readonly cut: Cut | undefined;
  /** Shear by bending on that side of the bracket. */
  readonly V_N: number;
  readonly ratio: number;
}

/** Shear of the board by twisting and bending together, beside every bracket; none where nothing twists it. */
export function torsionCheck(context: Context): Judged[] {
  const { shelf } = context;
  const { board } = shelf;
  const cuts = cutsOf(shelf);
  const parts = twistedParts(shelf).map((twisted) => {
    const cut = worstCut(board, cuts, twisted);
    const perForce = cut === undefined ? 0 : stressPerForce(board, cut);
    const perTorque = (twistStress(twisted).evaluate(1) * twisted.GJ_Nm2) / twisted.whole_Nm2;
    return { twisted, cut, perForce, perTorque, perRest: restStress(twisted, 1, 0) };
  });
  const candidates = context.situations.flatMap((situation) => {
    const { combination, factor, solved } = situation;
    const resistances = parts.map(({ twisted }) => weakestOf(context, twisted, combination.duration));
    return torquesOf(shelf, situation).flatMap((torque) => {
      const T_Nm = torque.standing_Nm + torque.roaming_N * torque.reach_m;
      const T_t = torqueThatTwists(shelf, torque);
      if (T_Nm <= 1e-9) return [];
      const V_N = shearBeside(solved.model, solved.lines, factor, torque.support, torque.side);
      return parts.map(({ twisted, cut, perForce, perTorque, perRest }, index): Candidate => {
        const resistance = resistances[index];
        const stress_Pa = V_N * perForce + T_t * perTorque + (T_Nm - T_t) * perRest;
        const ratio = resistance?.ok === true ? stress_Pa / resistance.value_Pa : Infinity;
        return { situation, torque, twisted, cut, V_N, ratio };
      });
    });
  });
  const [first, ...rest] = candidates;
  if (first === undefined) return [];
  return [
    judge(
      context,
      rest.reduce((a, b) => (b.ratio > a.ratio ? b : a), first),
    ),
  ];
}

/** The torque that shears by twisting; the rest bends the parts. */
function torqueThatTwists(shelf: Shelf, { bay_m, standing_Nm, roaming_N, reach_m }: TorqueAtBracket): number {
  const numbers = warpNumbers(shelf, bay_m);
  if (numbers === null) return standing_Nm + roaming_N * reach_m;
  const u = warpLength.evaluate(numbers);
  const s_t = twistedShare.evaluate({ u });
  const s_r = roamingShare.evaluate({ w: roamingPlace.evaluate({ u }), u });
  return twistingPart.evaluate({ T_s: standing_Nm, s_t, P: roaming_N, e_t: reach_m, s_r });
}

/** What the share of a bay's torque that twists follows from; null where it is all of it. */
function warpNumbers({ board: { twisting } }: Shelf, bay_m: number | null) {
  const { warp, mostGJ_Nm2 } = twisting;
  return warp === null || bay_m === null ? null : { L: bay_m, GJ: mostGJ_Nm2, EI_w: warp.EIw_Nm4 };
}

function weakestOf(context: Context, { parts }: Twisted, duration: Duration): Resistance {
  return parts
    .map(({ material }) => context.resist(material, 'shear', duration))
    .reduce((a, b) => (!a.ok || (b.ok && a.value_Pa <= b.value_Pa) ? a : b));
}

/** The cut through a part, or the joint, that shear by bending strains most. */
function worstCut(board: Board, cuts: readonly Cut[], { parts, glueLine }: Twisted): Cut | undefined {
  const isHere = (cut: Cut): boolean =>
    glueLine === undefined
      ? cut.id === 'shear' && cut.parts.some((part) => parts.includes(part))
      : cut.title === glueLineTitle(glueLine);
  return cuts
    .filter(isHere)
    .reduce<Cut | undefined>(
      (worst, cut) =>
        worst === undefined || stressPerForce(board, cut) > stressPerForce(board, worst) ? cut : worst,
      undefined,
    );
}

function judge(context: Context, { situation, torque: twisting, twisted, cut, V_N }: Candidate): Judged {
  const { shelf } = context;
  const { system, board } = shelf;
  const { combination } = situation;
  const { standing_Nm, roaming_N, reach_m, support } = twisting;
  const direct = cut === undefined ? [] : stressSteps(board, cut, V_N, context);
  const torque = work(endTorque, { T_s: standing_Nm, P: roaming_N, e_t: reach_m }, system);
  const purely = twistingSteps(shelf, twisting);
  const T = purely[purely.length - 1]?.value ?? torque.value;
  const share =
    twisted.GJ_Nm2 === twisted.whole_Nm2
      ? null
      : work(torqueShare, { T, GJ_i: twisted.GJ_Nm2, GJ: twisted.whole_Nm2 }, system);
  const stress = twistStress(twisted).work(share?.value ?? T, system);
  const f_vt = stress[stress.length - 1]?.value ?? NaN;
  const f_v = direct[direct.length - 1]?.value ?? 0;
  const rest = purely.length === 0 ? [] : restSteps(twisted, torque.value, T, system);
  const f_vw = rest[0]?.value ?? 0;
  const both =
    rest.length === 0
      ? work(shearTogether, { f_v, f_vt }, system)
      : work(shearOfAll, { f_v, f_vt, f_vw }, system);
  const resistance = weakestOf(context, twisted, combination.duration);
  const at_m = shelf.positions_m[support] ?? 0;
  return {
    check: makeCheck(
      {
        id: 'torsion',
        title: `Shear of the ${twisted.name}, twisted and bent`,
        unit: 'Pa',
        demand: both.value,
        capacity: resistance.ok ? resistance.value_Pa : null,
        clause: `${resistance.clause}; torsion, Roark`,
        where: `beside the bracket at ${show(at_m, 'm', system)}`,
        combination: combination.name,
        note: resistance.ok ? '' : `Cannot say: ${resistance.why}.`,
      },
      system,
    ),
    steps: [
      ...direct.map(({ step }) => step),
      torque.step,
      ...purely.map(({ step }) => step),
      ...(share === null ? [] : [share.step]),
      ...stress.map(({ step }) => step),
      ...rest.map(({ step }) => step),
      both.step,
      ...(resistance.ok ? [resistance.step] : []),
    ],
    byLoad: byLoadAt(shelf, `Shear just ${twisting.side} of`, at_m, 'N', () =>
      sharesOfShear(situation, support, [twisting.side]),
    ),
  };
}

/** How much of a torque twists the parts, the last line; nothing where it is all of it. */
function twistingSteps(shelf: Shelf, { bay_m, standing_Nm, roaming_N, reach_m }: TorqueAtBracket): Worked[] {
  const numbers = warpNumbers(shelf, bay_m);
  if (numbers === null) return [];
  const { system } = shelf;
  const u = work(warpLength, numbers, system);
  const s_t = work(twistedShare, { u: u.value }, system);
  const w = work(roamingPlace, { u: u.value }, system);
  const s_r = work(roamingShare, { w: w.value, u: u.value }, system);
  const shares = { s_t: s_t.value, s_r: s_r.value };
  const T_t = work(twistingPart, { T_s: standing_Nm, P: roaming_N, e_t: reach_m, ...shares }, system);
  return [u, s_t, w, s_r, T_t];
}

/** Shear stress by that part of a torque that bends the parts. */
function restStress({ rest }: Twisted, T: number, T_t: number): number {
  if (rest === null) return 0;
  return rest.kind === 'joint'
    ? warpedJoint.evaluate({ T, T_t, c_q: rest.c_q, b_j: rest.b_j })
    : warpedShear.evaluate({ T, T_t, c_v: rest.c_v, b: rest.b, d: rest.d });
}

function restSteps({ rest }: Twisted, T: number, T_t: number, system: UnitSystem): Worked[] {
  if (rest === null) return [];
  return rest.kind === 'joint'
    ? [work(warpedJoint, { T, T_t, c_q: rest.c_q, b_j: rest.b_j }, system)]
    : [work(warpedShear, { T, T_t, c_v: rest.c_v, b: rest.b, d: rest.d }, system)];
}

/** The formula of the stress that a torque makes in a part, ready for the torque; the stress is the last line of its working. */
function twistStress({ shape }: Twisted): {
  readonly evaluate: (T: number) => number;
  readonly work: (T: number, system: UnitSystem) => readonly [Worked, ...Worked[]];
} {
  if (shape.kind === 'box') {
    const wall = { A_m: shape.area_m2, t: shape.t_m };
    return {
      evaluate: (T) => twistedBox.evaluate({ T, ...wall }),
      work: (T, system) => [work(twistedBox, { T, ...wall }, system)],
    };
  }
  const sides = { b: shape.b_m, t: shape.t_m };
  const r_t = shape.t_m / shape.b_m;
  return {
    evaluate: (T) => twistedRectangle.evaluate({ T, k_T: rectangleFactor.evaluate({ r_t }), ...sides }),
    work: (T, system) => {
      const factor = work(rectangleFactor, { r_t }, system);
      return [factor, work(twistedRectangle, { T, k_T: factor.value, ...sides }, system)];
    },
  };
}

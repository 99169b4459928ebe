import type { Duration } from '../../../../shared/check-document/index.ts';
import { show, type UnitSystem } from '../../../../shared/quantity/index.ts';
import type { Resistance } from '../../../codes/design-code.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { torsionOfRectangle } from '../../../mechanics/section.ts';
import {
  endTorque,
  rectangleFactor,
  shearTogether,
  torqueShare,
  twistedBox,
  twistedRectangle,
} from '../../../mechanics/torsion-formulas.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import { frameOf, type Board, type BoardPart } from '../board.ts';
import type { Context, Situation } from '../context.ts';
import { shearBeside } from '../forces.ts';
import type { Shelf } from '../shelf.ts';
import { torquesOf, type TorqueAtBracket } from '../torque.ts';
import { cutsOf, stressPerForce, stressSteps, type Cut } from './shear.ts';

/** A part of the board that a torque shears: a rectangle, or a wall of a box. */
interface Twisted {
  readonly name: string;
  /** Parts whose wood is sheared; the weakest counts. */
  readonly parts: readonly BoardPart[];
  readonly shape:
    | { readonly kind: 'rectangle'; readonly b_m: number; readonly t_m: number }
    | { readonly kind: 'box'; readonly area_m2: number; readonly t_m: number };
  /** Its stiffness against twisting at the most, and that of the whole board at the least. */
  readonly GJ_Nm2: number;
  readonly whole_Nm2: number;
}

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
  const cuts = cutsOf(board);
  const parts = twistedOf(shelf).map((twisted) => {
    const cut = worstCut(board, cuts, twisted);
    const perForce = cut === undefined ? 0 : stressPerForce(board, cut);
    const perTorque = (twistStress(twisted).evaluate(1) * twisted.GJ_Nm2) / twisted.whole_Nm2;
    return { twisted, cut, perForce, perTorque };
  });
  const candidates = context.situations.flatMap((situation) => {
    const { combination, factor, solved } = situation;
    const resistances = parts.map(({ twisted }) => weakestOf(context, twisted, combination.duration));
    return torquesOf(shelf, situation).flatMap((torque) => {
      const T_Nm = torque.standing_Nm + torque.roaming_N * torque.reach_m;
      if (T_Nm <= 1e-9) return [];
      const V_N = shearBeside(solved.model, solved.lines, factor, torque.support, torque.side);
      return parts.map(({ twisted, cut, perForce, perTorque }, index): Candidate => {
        const resistance = resistances[index];
        const stress_Pa = V_N * perForce + T_Nm * perTorque;
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

function weakestOf(context: Context, { parts }: Twisted, duration: Duration): Resistance {
  return parts
    .map(({ material }) => context.resist(material, 'shear', duration))
    .reduce((a, b) => (!a.ok || (b.ok && a.value_Pa <= b.value_Pa) ? a : b));
}

/** What a torque is shared among: the body of the board, and the strips glued along it. All turn alike. */
function twistedOf({ board, document }: Shelf): Twisted[] {
  const strips = board.parts.filter(({ name }) => name === 'nosing' || name === 'back rail');
  const body = board.parts.filter((part) => !strips.includes(part));
  const G = body.map(({ material }) => material.torsionG_Pa);
  const ofStrips = strips.reduce((sum, part) => sum + stiffnessOf(part), 0);
  const { box, depth, thickness } = document.board;
  const alone = (part: BoardPart, whole_Nm2: number): Twisted =>
    rectangle(part.name, [part], part.width_m, part.height_m, stiffnessOf(part), whole_Nm2);
  if (box !== undefined) {
    const whole_Nm2 = board.GJ_Nm2;
    const shared = { GJ_Nm2: whole_Nm2 - ofStrips, whole_Nm2 };
    const area_m2 = (depth - box.frame) * (thickness - box.skin);
    const skins = body.filter(({ name }) => name.endsWith('skin'));
    // What runs round the box goes through the glue from skin to frame, as wide as a member: the weaker wood counts.
    return [
      { name: 'skins', parts: skins, shape: { kind: 'box', area_m2, t_m: box.skin }, ...shared },
      {
        name: 'frame',
        parts: [...frameOf(board), ...skins],
        shape: { kind: 'box', area_m2, t_m: box.frame },
        ...shared,
      },
      ...strips.map((strip) => alone(strip, whole_Nm2)),
    ];
  }
  if (!board.bonded) return board.parts.map((part) => alone(part, board.GJ_Nm2));
  const J = torsionOfRectangle(depth, thickness);
  const whole_Nm2 = Math.min(...G) * J + ofStrips;
  return [
    rectangle('board', body, depth, thickness, Math.max(...G) * J, whole_Nm2),
    ...strips.map((strip) => alone(strip, whole_Nm2)),
  ];
}

function rectangle(
  name: string,
  parts: readonly BoardPart[],
  side_m: number,
  other_m: number,
  GJ_Nm2: number,
  whole_Nm2: number,
): Twisted {
  const [b_m, t_m] = [Math.max(side_m, other_m), Math.min(side_m, other_m)];
  return { name, parts, shape: { kind: 'rectangle', b_m, t_m }, GJ_Nm2, whole_Nm2 };
}

function stiffnessOf({ material, width_m, height_m }: BoardPart): number {
  return material.torsionG_Pa * torsionOfRectangle(width_m, height_m);
}

/** The cut through a part that shear by bending strains most. */
function worstCut(board: Board, cuts: readonly Cut[], { parts }: Twisted): Cut | undefined {
  return cuts
    .filter((cut) => cut.id === 'shear' && cut.parts.some((part) => parts.includes(part)))
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
  const share =
    twisted.GJ_Nm2 === twisted.whole_Nm2
      ? null
      : work(torqueShare, { T: torque.value, GJ_i: twisted.GJ_Nm2, GJ: twisted.whole_Nm2 }, system);
  const stress = twistStress(twisted).work(share?.value ?? torque.value, system);
  const f_vt = stress[stress.length - 1]?.value ?? NaN;
  const f_v = direct[direct.length - 1]?.value ?? 0;
  const both = work(shearTogether, { f_v, f_vt }, system);
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
      ...(share === null ? [] : [share.step]),
      ...stress.map(({ step }) => step),
      both.step,
      ...(resistance.ok ? [resistance.step] : []),
    ],
  };
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

import { show } from '../../../../shared/quantity/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { cornerStress, layerStress, sectionModulus } from '../../../mechanics/section-formulas.ts';
import { stressPerMoment, worstCorner } from '../../../mechanics/section.ts';
import { bendingStress } from '../../../standards/nds-2018/3-members.ts';
import { makeCheck, worstCheck } from '../../make-check.ts';
import type { Asked } from '../asked.ts';
import type { BoardPart } from '../board-part.ts';
import type { Judged } from '../../judged.ts';
import type { Context, Situation } from '../context.ts';
import type { Peak } from '../forces.ts';
import { byLoadAt, sharesOfMoment } from '../load-shares.ts';
import { boxPeak, withSkinAlone, type BoxPeak } from './box-bending.ts';
import { warpedPeak, warpedSteps, type BentParts, type Place, type WarpedPeak } from './warped-bending.ts';

interface Candidate {
  readonly part: BoardPart;
  readonly situation: Situation;
  readonly peak: Peak;
  /** Where the board warps as it twists. */
  readonly warped: WarpedPeak | null;
  /** Of a box, whose members do not share a load evenly. */
  readonly box: BoxPeak | null;
}

/** Bending of every part of the board in every combination; the worst is worked out on the sheet. */
export function bendingCheck(context: Context, { asked, places }: BentParts): Judged {
  const unknown = asked.find(({ isKnown }) => !isKnown);
  const isAsked = (each: Asked): boolean => unknown === undefined || each === unknown;
  const worst =
    places === null
      ? worstOf(context, asked.filter(isAsked))
      : worstWarped(
          context,
          places.filter((place) => isAsked(place.asked)),
        );
  return worstCheck([judge(context, worst)]);
}

function worstOf(context: Context, asked: readonly Asked[]): Candidate {
  const ofBox = boxPeak(context, asked, ({ part }) => stressFactor(context, part));
  if (ofBox !== null) return { ...ofBox.asked, peak: ofBox.box.peak, warped: null, box: ofBox.box };
  const candidates = asked.map(({ situation, part, by_Pa }) => {
    const { sagging, hogging } = situation.forces;
    const peak = sagging.value >= -hogging.value ? sagging : hogging;
    const ratio = (Math.abs(peak.value) * stressFactor(context, part)) / by_Pa;
    return { part, situation, peak, warped: null, box: null, ratio };
  });
  return candidates.reduce((a, b) => (b.ratio > a.ratio ? b : a));
}

function worstWarped(context: Context, places: readonly Place[]): Candidate {
  const { asked, warped } = warpedPeak(context, places);
  return { ...asked, peak: warped.peak, warped, box: null };
}

/** Stress for each unit of moment, Pa/(N·m), of a board without strips. */
export function stressFactor({ shelf }: Context, part: BoardPart): number {
  const { board } = shelf;
  if (!board.bonded) return (part.E_Pa * part.height_m) / (2 * board.EI_Nm2);
  return Math.abs(stressPerMoment(board.section, part, worstCorner(board.section, part)));
}

function judge(context: Context, { part, situation, peak, warped, box }: Candidate): Judged {
  const { shelf } = context;
  const { warp } = shelf.board.twisting;
  const { combination } = situation;
  const resistance = context.resist(part.material, 'bending', combination.duration);
  const stress =
    warp === null || warped === null
      ? boxSteps(context, box, stressSteps(context, part, Math.abs(peak.value)))
      : warpedSteps(context, situation, part, warp, warped);
  const demand = stress[stress.length - 1]?.value ?? null;
  return {
    check: makeCheck(
      {
        id: 'bending',
        title: shelf.board.parts.length === 1 ? 'Bending of the board' : `Bending of the ${part.name}`,
        unit: 'Pa',
        demand,
        capacity: resistance.ok ? resistance.value_Pa : null,
        clause: resistance.clause,
        where: `${peak.value < 0 ? 'over the bracket' : 'between brackets'} at ${show(peak.at_m, 'm', shelf.system)}`,
        combination: combination.name,
        note: resistance.ok ? '' : `Cannot say: ${resistance.why}.`,
      },
      shelf.system,
    ),
    steps: [...stress.map(({ step }) => step), ...(resistance.ok ? [resistance.step] : [])],
    byLoad: byLoadAt(shelf, 'Moment at', peak.at_m, 'N.m', () => sharesOfMoment(situation, peak)),
  };
}

/** Of a box, how often each load counts, and what the upper skin is bent by itself. */
function boxSteps(context: Context, box: BoxPeak | null, stress: Worked[]): Worked[] {
  if (box === null) return stress;
  return [...box.steps(), ...stress.flatMap((each) => withSkinAlone(context, box, each))];
}

/** That stress, worked out. */
export function stressSteps({ shelf }: Context, part: BoardPart, moment_Nm: number): Worked[] {
  const { board, system } = shelf;
  if (board.parts.length === 1) {
    const S = work(sectionModulus, { b: part.width_m, t: part.height_m }, system);
    return [S, work(bendingStress, { M: moment_Nm, S: S.value }, system)];
  }
  if (!board.bonded) {
    return [
      work(layerStress, { M: moment_Nm, E_i: part.E_Pa, t_i: part.height_m, EI_eff: board.EI_Nm2 }, system),
    ];
  }
  const { section } = board;
  const corner = worstCorner(section, part);
  return [
    work(
      cornerStress,
      {
        M: moment_Nm,
        E_i: part.E_Pa,
        EI_x: section.EIx_Nm2,
        EI_y: section.EIy_Nm2,
        EI_xy: section.EIxy_Nm2,
        z_i: corner.z_m,
        y_i: corner.y_m,
      },
      system,
      `bending stress at the worst corner of the ${part.name}`,
    ),
  ];
}

import { show } from '../../../../shared/quantity/index.ts';
import { work } from '../../../formula/step.ts';
import { stripStress } from '../../../mechanics/edge-strip-formulas.ts';
import { makeCheck } from '../../make-check.ts';
import type { Judged } from '../../judged.ts';
import type { BoardPart } from '../board-part.ts';
import type { Context, Situation } from '../context.ts';
import { edgeExcesses, isOnLine, type EdgeExcess } from '../edge-loads.ts';
import { EdgePlate } from '../edge-plate.ts';
import { hoggingOver } from '../forces.ts';
import { atBracket } from './reactions.ts';

interface Candidate {
  readonly situation: Situation;
  readonly excess: EdgeExcess;
  readonly moment_Nm: number;
  readonly ratio: number;
}

/**
 * Bending of a plain board where a load beside its edge bends it: across the grain wood is so soft that a strip along the edge
 * carries most of it. The mean of the whole width from everything, and above it what the loads beside one edge do.
 */
export function edgeStripCheck(context: Context): Judged[] {
  const { shelf } = context;
  const { grain, parts } = shelf.board;
  const [part] = parts;
  if (grain === null || part === undefined || !shelf.actions.some(isOnLine)) return [];
  const plate = new EdgePlate(part, grain, shelf.system);
  let worst: Candidate | null = null;
  for (const situation of context.situations) {
    const resistance = context.resist(part.material, 'bending', situation.combination.duration);
    const by_Pa = resistance.ok ? resistance.value_Pa : 1;
    for (const excess of edgeExcesses(shelf, plate, situation)) {
      if (excess.roaming_N + excess.others_N <= 0) continue;
      const ratioAt = (M_Nm: number): number => stripStress.evaluate(stressOf(part, excess, M_Nm)) / by_Pa;
      if (worst !== null && ratioAt(mostMoment(situation, excess)) <= worst.ratio) continue;
      const moment_Nm = momentAt(situation, excess);
      const ratio = ratioAt(moment_Nm);
      if (worst === null || ratio > worst.ratio) worst = { situation, excess, moment_Nm, ratio };
    }
  }
  return worst === null ? [] : [judge(context, plate, part, worst)];
}

/** No less than the moment there, and quickly found. */
function mostMoment({ forces }: Situation, { at }: EdgeExcess): number {
  return 'support' in at ? -forces.hogging.value : forces.sagging.value;
}

/** The largest sagging moment of any bay, or the hogging moment over the bracket. */
function momentAt({ solved, factor, forces }: Situation, { at }: EdgeExcess): number {
  if (!('support' in at)) return forces.sagging.value;
  return Math.max(0, -hoggingOver(solved.model, solved.lines, factor, at.support));
}

function stressOf({ width_m, height_m }: BoardPart, { roaming_N, others_N }: EdgeExcess, M: number) {
  return { M, b: width_m, m_r: roaming_N, m_f: others_N, t: height_m };
}

function judge(context: Context, plate: EdgePlate, part: BoardPart, candidate: Candidate): Judged {
  const { shelf } = context;
  const { system } = shelf;
  const { situation, excess, moment_Nm } = candidate;
  const { combination } = situation;
  const resistance = context.resist(part.material, 'bending', combination.duration);
  const stress = work(stripStress, stressOf(part, excess, moment_Nm), system);
  const { at, edge } = excess;
  const place =
    'support' in at
      ? atBracket(shelf, at.support)
      : `between the brackets at ${show(at.from_m, 'm', system)} and ${show(at.to_m, 'm', system)}`;
  return {
    check: makeCheck(
      {
        id: 'edge-strip',
        title: `Bending of the strip along the ${edge} edge`,
        unit: 'Pa',
        demand: stress.value,
        capacity: resistance.ok ? resistance.value_Pa : null,
        clause: `${resistance.clause}; orthotropic plate, Levy`,
        where: `${edge} edge, ${place}`,
        combination: combination.name,
        note: resistance.ok
          ? 'Across its grain a board is soft: what stands beside its edge is mostly carried by a strip along it.'
          : `Cannot say: ${resistance.why}.`,
      },
      system,
    ),
    steps: [
      ...plate.steps(),
      ...excess.parts.flatMap(({ steps }) => steps().map(({ step }) => step)),
      stress.step,
      ...(resistance.ok ? [resistance.step] : []),
    ],
  };
}

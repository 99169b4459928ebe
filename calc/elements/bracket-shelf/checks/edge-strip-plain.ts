import { work, type Worked } from '../../../formula/step.ts';
import { stripStress } from '../../../mechanics/edge-strip-formulas.ts';
import type { BoardPart } from '../board-part.ts';
import type { Context, Situation } from '../context.ts';
import { edgeExcesses, type EdgeExcess } from '../edge-loads.ts';
import type { EdgePlate } from '../edge-plate.ts';
import { hoggingOver } from '../forces.ts';

/** A part of the board where a strip along an edge is bent, and the stress there, worked out: the last line. */
export interface Bent {
  readonly situation: Situation;
  readonly part: BoardPart;
  readonly excess: EdgeExcess;
  readonly stress: () => Worked[];
}

/** The worst place of a board of one piece: the mean of the whole width from everything, and above it the strip. */
export function worstOfPlain(context: Context, plate: EdgePlate, part: BoardPart): Bent | null {
  const { shelf } = context;
  let worst: (Bent & { readonly ratio: number }) | null = null;
  for (const situation of context.situations) {
    const resistance = context.resist(part.material, 'bending', situation.combination.duration);
    const by_Pa = resistance.ok ? resistance.value_Pa : 1;
    for (const excess of edgeExcesses(shelf, plate, situation)) {
      if (excess.roaming_N + excess.others_N <= 0) continue;
      const ratioAt = (M_Nm: number): number => stripStress.evaluate(stressOf(part, excess, M_Nm)) / by_Pa;
      if (worst !== null && ratioAt(mostMoment(situation, excess)) <= worst.ratio) continue;
      const moment_Nm = momentAt(situation, excess);
      const ratio = ratioAt(moment_Nm);
      const stress = (): Worked[] => [work(stripStress, stressOf(part, excess, moment_Nm), shelf.system)];
      if (worst === null || ratio > worst.ratio) worst = { situation, part, excess, stress, ratio };
    }
  }
  return worst;
}

/** No less than the moment there, and quickly found. */
export function mostMoment({ forces }: Situation, { at }: EdgeExcess): number {
  return 'support' in at ? -forces.hogging.value : forces.sagging.value;
}

/** The largest sagging moment of any bay, or the hogging moment over the bracket. */
export function momentAt({ solved, factor, forces }: Situation, { at }: EdgeExcess): number {
  if (!('support' in at)) return forces.sagging.value;
  return Math.max(0, -hoggingOver(solved.model, solved.lines, factor, at.support));
}

function stressOf({ width_m, height_m }: BoardPart, { roaming_N, others_N }: EdgeExcess, M: number) {
  return { M, b: width_m, m_r: roaming_N, m_f: others_N, t: height_m };
}

import type { Step } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import type { Material } from '../codes/design-code.ts';
import { work, type Worked } from '../formula/step.ts';
import {
  bucklingStress,
  effectiveLength,
  effectiveLengthLong,
  effectiveLengthShort,
  leastStiffness,
  mostSlenderness,
  slenderness,
  stabilityFactor,
  stableBending,
} from '../standards/nds-2018/3.3.3-stability.ts';

/** A rail on edge, held from turning over at its ends alone. */
export interface EdgeBeam {
  readonly thickness_m: number;
  readonly height_m: number;
  readonly span_m: number;
  readonly material: Material;
}

/** What a rail may be bent to, or null where it is too slender to be built so. */
export type StableBending =
  | { readonly ok: true; readonly value_Pa: number; readonly steps: readonly Step[] }
  | { readonly ok: false; readonly why: string; readonly steps: readonly Step[] };

/** Said wherever a rail is judged. */
export const endsHeld =
  'The ends of a rail are held from turning over (NDS 3.3.3.4); between them nothing holds it.';

/** Variation of stiffness of lumber graded by eye (NDS Appendix F). */
const variation = 0.25;

/**
 * Allowable bending of a rail on edge with its stability (NDS 3.3.3).
 *
 * @param F_b_star allowable bending stress with everything but stability
 */
export function stableBendingOf(
  { thickness_m: b, height_m: d, span_m: l_u, material }: EdgeBeam,
  F_b_star: number,
  system: UnitSystem,
): StableBending {
  if (d <= b) return { ok: true, value_Pa: F_b_star, steps: [] };
  const l_e = effectiveLengthOf(l_u, d, system);
  const R_B = work(slenderness, { l_e: l_e.value, d, b }, system);
  if (R_B.value > mostSlenderness) {
    const why = `its slenderness is ${Math.round(R_B.value)}, and more than ${mostSlenderness} is not permitted (NDS 3.3.3.7): a thicker or lower rail, or one held along its length`;
    return { ok: false, why, steps: [l_e.step, R_B.step] };
  }
  const E_min = work(leastStiffness, { E: material.apparentE_Pa, V_E: variation }, system);
  const F_bE = work(bucklingStress, { E_min: E_min.value, R_B: R_B.value }, system);
  const C_L = work(stabilityFactor, { F_bE: F_bE.value, F_b_star }, system);
  const allowed = work(stableBending, { C_L: C_L.value, F_b_star }, system);
  const steps = [l_e, R_B, E_min, F_bE, C_L, allowed].map(({ step }) => step);
  return { ok: true, value_Pa: allowed.value, steps };
}

function effectiveLengthOf(l_u: number, d: number, system: UnitSystem): Worked {
  if (l_u / d < 7) return work(effectiveLengthShort, { l_u }, system);
  return l_u / d <= 14.3
    ? work(effectiveLength, { l_u, d }, system)
    : work(effectiveLengthLong, { l_u }, system);
}

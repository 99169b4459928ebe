import type { Step } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { work } from '../formula/step.ts';
import * as steel from '../standards/aisc-360/steel-arm.ts';

/** An allowable stress and how it was found. */
export interface Allowed {
  readonly value_Pa: number;
  readonly steps: readonly Step[];
}

/** A flat bar of steel: E_s, F_y in Pa; width b and depth t in the plane of bending, in m. */
export interface SteelBar {
  readonly E_s: number;
  readonly F_y: number;
  readonly b: number;
  readonly t: number;
}

/** Bending of a bar; one that stands on edge may turn over between the places that hold it, L_b apart (m). */
export function allowedBending({ E_s, F_y, b, t }: SteelBar, L_b: number, system: UnitSystem): Allowed {
  if (t <= b) {
    const plain = work(steel.allowableSteelBending, { F_y }, system);
    return { value_Pa: plain.value, steps: [plain.step] };
  }
  const slenderness = work(steel.barSlenderness, { L_b, t, b }, system);
  const turned = work(steel.barOnEdge, { F_y, E_s, lambda_b: slenderness.value }, system);
  return { value_Pa: turned.value, steps: [slenderness.step, turned.step] };
}

/** A bar squeezed along its length, which may buckle over L_d (m), pinned at both ends. */
export function allowedSqueeze(
  { E_s, F_y, b, t }: SteelBar,
  L_d: number,
  system: UnitSystem,
  caption?: string,
): Allowed & { readonly F_e: number } {
  const F_e = work(steel.elasticBuckling, { E_s, L_d, r_g: Math.min(b, t) / Math.sqrt(12) }, system);
  const held =
    F_y / F_e.value <= 2.25
      ? work(steel.inelasticStrut, { F_y, F_e: F_e.value }, system, caption)
      : work(steel.elasticStrut, { F_e: F_e.value }, system, caption);
  return { value_Pa: held.value, steps: [F_e.step, held.step], F_e: F_e.value };
}

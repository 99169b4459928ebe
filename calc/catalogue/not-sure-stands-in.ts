import { notSure } from './species.ts';
import type { Species } from './types.ts';

/**
 * Whether the row of a wood not known is safe for a wood: whatever is in print of the wood dry is no less than what that row
 * takes, and it is no heavier. A wood of which bending, stiffness, shear or specific gravity is not in print is not vouched for.
 */
export function notSureStandsIn({ dry, density_kgm3 }: Species): boolean {
  const least = notSure();
  const pairs = [
    [dry.modulusOfRupture_Pa, least.dry.modulusOfRupture_Pa],
    [dry.modulusOfElasticity_Pa, least.dry.modulusOfElasticity_Pa],
    [dry.shear_Pa, least.dry.shear_Pa],
    [dry.specificGravity, least.dry.specificGravity],
  ] as const;
  const isNoWeaker = pairs.every(([has, taken]) => has !== null && taken !== null && has >= taken);
  return isNoWeaker && density_kgm3 <= least.density_kgm3;
}

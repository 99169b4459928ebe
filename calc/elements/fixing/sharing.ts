import { work, type Worked } from '../../formula/step.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { heightsAbove, screwPull, screwPullOff, toeForce } from '../../mechanics/plate-group.ts';
import type { FixingLoad } from './fixing.ts';
import { middleOf, sumsAbove } from './toe.ts';

/** What the pull on a screw is worked out from: of a plate that is pressed on the wall, or of one the pull lifts off it. */
export type Share =
  | { readonly isOff: false; readonly symbols: Record<'C' | 'N' | 'z_c' | 'z' | 'k_n' | 'S_z', number> }
  | { readonly isOff: true; readonly symbols: Record<'N' | 'n_h' | 'C' | 'z_m' | 'k_n' | 'S_m', number> };

/**
 * The share of one screw at each height, in the order of the heights. A pull acts at the middle of the screws. As long as the
 * couple presses the end of the plate on the wall, the pulls grow with the height over where it turns; where the pull lifts the
 * plate off, nothing but the screws holds it, and it turns about their middle.
 *
 * @param heights_m from the end about which the plate turns
 * @param k_n screws at one height
 */
export function sharesOf(
  heights_m: readonly number[],
  pivot_m: number,
  load: Pick<FixingLoad, 'couple_Nm' | 'pull_N'>,
  k_n: number,
): Share[] {
  const [C, N] = [Math.max(0, load.couple_Nm), Math.max(0, load.pull_N)];
  const { S_1, S_z } = sumsAbove(heights_m, pivot_m);
  const z_c = middleOf(heights_m, pivot_m);
  const isPressed = S_z > 0 && (N === 0 || toeForce.evaluate({ C, N, z_c, S_1, S_z }) > 0);
  if (isPressed || N === 0) {
    return heightsAbove(heights_m, pivot_m).map((z) => ({
      isOff: false,
      symbols: S_z > 0 ? { C, N, z_c, z, k_n, S_z } : { C: 0, N, z_c, z, k_n, S_z: 1 },
    }));
  }
  const middle_m = middleOf(heights_m, 0);
  const S_m = heights_m.reduce((sum, z) => sum + (z - middle_m) ** 2, 0);
  const [couple, spread] = S_m > 0 ? [C, S_m] : [0, 1];
  return heights_m.map((z) => ({
    isOff: true,
    symbols: { N, n_h: heights_m.length, C: couple, z_m: z - middle_m, k_n, S_m: spread },
  }));
}

/** Pull on a screw, N. */
export function pullOf(share: Share): number {
  return share.isOff ? screwPullOff.evaluate(share.symbols) : screwPull.evaluate(share.symbols);
}

/** Pull on a screw with its working. */
export function workPull(share: Share, system: UnitSystem, caption: string): Worked {
  return share.isOff
    ? work(screwPullOff, share.symbols, system, `${caption}; the pull lifts the plate off the wall`)
    : work(screwPull, share.symbols, system, caption);
}

import { inch } from '../../../shared/quantity/index.ts';

/** Fasteners of 1/4 in and more have distances to keep; thinner ones only must not split the wood (NDS 12.5.1). */
export const leastPlacedDiameter_m = 0.25 * inch - 1e-9;

/** Edge distance for a load along the grain, NDS Table 12.5.1C: 1.5 diameters. */
export const edgeAlong = 1.5;
/** Edge the load points to, for a load across the grain, NDS Table 12.5.1C. */
export const loadedEdgeAcross = 4;

/** End distances at which all of the value counts, NDS Table 12.5.1A: load away from the end; towards it, softwood; across. */
export const endDistance = { away: 4, towards: 7, across: 4 } as const;

/** Spacing in a row, NDS Table 12.5.1B: the least that is permitted, and that at which all of the value counts. */
export const spacingInRow = { least: 3, full: 4 } as const;

/**
 * Spacing between rows in diameters, NDS Table 12.5.1D.
 *
 * @param slenderness length of the fastener in the wood over its diameter
 */
export function spacingBetweenRows(angle_deg: 0 | 90, slenderness: number): number {
  if (angle_deg === 0) return 1.5;
  return Math.min(5, Math.max(2.5, (5 * slenderness + 10) / 8));
}

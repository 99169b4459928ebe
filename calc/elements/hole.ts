import { inch } from '../../shared/quantity/index.ts';

/** Hole for a fastener whose size is not known. */
const usualHole_m = (5 / 16) * inch;
/** Holes are bored 1/16 in wider than the fastener. */
const clearance_m = inch / 16;

/** Width of a hole for a fastener, m (common practice, no source). */
export function holeOf(diameter_m: number | null): number {
  return diameter_m === null ? usualHole_m : diameter_m + clearance_m;
}

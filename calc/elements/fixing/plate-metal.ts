import { inch } from '../../../shared/quantity/index.ts';
import { findMetal } from '../../catalogue/index.ts';
import type { Fixing } from './fixing.ts';
import type { Place } from './fixing-checks.ts';

/** Hole for a fastener whose size is not known. */
const usualHole_m = (5 / 16) * inch;
/** Holes are bored 1/16 in wider than the fastener. */
const clearance_m = inch / 16;

/** Diameter of the holes in a plate. */
export function holeOf({ fastener }: Fixing): number {
  return fastener === null ? usualHole_m : fastener.diameter_m + clearance_m;
}

/** What every check of a bent plate says, its yield point, and what is said where it has none. */
export function plateCheck(metal: string, title: string, place: Place) {
  const found = findMetal(metal);
  const base = { id: 'plate', title, unit: 'Pa', clause: 'AISC 360 F11', ...place } as const;
  const note = `Cannot say: ${metal} is brittle or has no yield point in the tables.`;
  return {
    F_y: found.ok && found.row.kind === 'steel' ? found.row.yield_Pa : null,
    base,
    unknown: { ...base, demand: null, capacity: null, note },
  };
}

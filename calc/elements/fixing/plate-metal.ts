import { findMetal } from '../../catalogue/index.ts';
import type { Place } from './fixing-checks.ts';

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

import type { UnitSystem } from '../../shared/quantity/index.ts';

/** What the sheet is laid out for. Its margins fit both, so that either also prints well on the other. */
export type Paper = 'letter' | 'a4';

const usual: Readonly<Record<UnitSystem, Paper>> = { 'inch-pound': 'letter', metric: 'a4' };

/** The paper asked for, or the one that goes with the units. */
export function paperOf(asked: string, units: UnitSystem): Paper {
  return asked === 'a4' || asked === 'letter' ? asked : usual[units];
}

import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import type { Fixing, FixingLoad } from '../fixing/fixing.ts';
import type { PlateMoment } from '../fixing/plate-bending.ts';

/** Moment in the plate of a wall fixing: the whole couple, and the pull as on a beam between the outer screws. */
export const plateMoment = formula({
  symbol: 'M',
  caption: 'moment in the plate, of couple and pull',
  expression: 'C + N * s_z / 4',
  symbols: { C: 'N.m', N: 'N', s_z: 'm' },
  unit: 'N.m',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause: 'simple beam with one load in the middle',
  },
});

/** The symbols of the moment in a plate. */
export function bendingOf({ heights_m }: Fixing, { couple_Nm, pull_N }: FixingLoad) {
  const s_z = Math.max(...heights_m) - Math.min(...heights_m);
  return { C: couple_Nm, N: pull_N, s_z };
}

/** What bends the plate under a load, with its working. */
export function bentBy(fixing: Fixing, load: FixingLoad): PlateMoment {
  const { value, step } = work(plateMoment, bendingOf(fixing, load), fixing.system);
  return { value_Nm: value, steps: [step] };
}

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

/** What bends the plate under a load. */
export function bentBy({ heights_m, system }: Fixing, { couple_Nm, pull_N }: FixingLoad): PlateMoment {
  const s_z = Math.max(...heights_m) - Math.min(...heights_m);
  const moment = work(plateMoment, { C: couple_Nm, N: pull_N, s_z }, system);
  return { value_Nm: moment.value, steps: [moment.step] };
}

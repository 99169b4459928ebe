import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import type { Fixing, FixingLoad } from '../fixing/fixing.ts';
import type { PlateMoment } from '../fixing/plate-bending.ts';

/** Moment in the plate of a wall fixing: the whole couple, and the pull as on a beam between the outer screws. */
export const plateMoment = formula({
  symbol: 'M',
  caption: 'moment in the plate, of couple and pull',
  expression: 'C + k_b * N * s_z / 4',
  symbols: { C: 'N.m', k_b: '1', N: 'N', s_z: 'm' },
  unit: 'N.m',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause: 'simple beam with one load in the middle',
  },
});

/** A pull bends no more width of a plate than spreads at 45° between it and the screws. */
export const pullSpread = formula({
  symbol: 'k_b',
  caption: 'how many times the width over which the pull spreads at 45° goes into the plate',
  expression: 'b / (s_z + a_s)',
  symbols: { b: 'm', s_z: 'm', a_s: 'm' },
  unit: '1',
  source: { document: 'common practice, no source', edition: '', clause: 'spread of a load in a plate' },
});

/** The symbols of the moment in a plate, and the width a pull spreads over where it is not the whole of it. */
function bendingOf({ heights_m, plate, across_m }: Fixing, { couple_Nm, pull_N }: FixingLoad) {
  const s_z = Math.max(...heights_m) - Math.min(...heights_m);
  const spread = { b: plate.width_m, s_z, a_s: across_m };
  const isNarrow = pull_N > 0 && s_z > 0 && s_z + across_m < plate.width_m;
  return { given: { C: couple_Nm, N: pull_N, s_z }, spread: isNarrow ? spread : null };
}

/** Moment in the plate under a load, N·m. */
export function plateMoment_Nm(fixing: Fixing, load: FixingLoad): number {
  const { given, spread } = bendingOf(fixing, load);
  return plateMoment.evaluate({ ...given, k_b: spread === null ? 1 : pullSpread.evaluate(spread) });
}

/** What bends the plate under a load, with its working. */
export function bentBy(fixing: Fixing, load: FixingLoad): PlateMoment {
  const { given, spread } = bendingOf(fixing, load);
  const k_b = spread === null ? null : work(pullSpread, spread, fixing.system);
  const { value, step } = work(plateMoment, { ...given, k_b: k_b?.value ?? 1 }, fixing.system);
  return { value_Nm: value, steps: [...(k_b === null ? [] : [k_b.step]), step] };
}

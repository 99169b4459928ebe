import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import type { Fixing, FixingLoad } from '../fixing/fixing.ts';
import type { PlateMoment } from '../fixing/plate-bending.ts';
import { toeOf } from '../fixing/toe.ts';

/** Moment in the plate of a wall fixing: the whole couple, and the pull as on a beam between the outer screws. */
export const plateMoment = formula({
  symbol: 'M',
  caption: 'moment in the plate, of couple and pull',
  expression: 'k_c * C + k_b * N * s_z / 4',
  symbols: { k_c: '1', C: 'N.m', k_b: '1', N: 'N', s_z: 'm' },
  unit: 'N.m',
  source: {
    document: 'elementary mechanics',
    edition: '',
    clause: 'simple beam with one load in the middle',
  },
});

const spreading = {
  document: 'common practice, no source',
  edition: '',
  clause: 'spread of a load in a plate',
} as const;

/** A pull bends no more width of a plate than spreads at 45° between it and the screws. */
export const pullSpread = formula({
  symbol: 'k_b',
  caption: 'how many times the width over which the pull spreads at 45° goes into the plate',
  expression: 'b / (s_z + a_s)',
  symbols: { b: 'm', s_z: 'm', a_s: 'm' },
  unit: '1',
  source: spreading,
});

/** A couple bends no more width of a plate than spreads at 45° halfway from the screws to where the plate is pressed. */
export const coupleSpread = formula({
  symbol: 'k_c',
  caption:
    'how many times the width over which the pull of the highest screws spreads at 45°, halfway down to where the plate is pressed, goes into the plate',
  expression: 'b / (z_f + a_s)',
  symbols: { b: 'm', z_f: 'm', a_s: 'm' },
  unit: '1',
  source: spreading,
});

/** The symbols of the moment in a plate, and the widths pull and couple spread over where they are not the whole of it. */
function bendingOf(fixing: Fixing, load: FixingLoad) {
  const { heights_m, plate, across_m } = fixing;
  const { couple_Nm, pull_N } = load;
  const highest_m = Math.max(...heights_m);
  const s_z = highest_m - Math.min(...heights_m);
  const z_f = highest_m - toeOf(fixing, load).from_m;
  const b = plate.width_m;
  const isPullNarrow = pull_N > 0 && s_z > 0 && s_z + across_m < b;
  const isCoupleNarrow = couple_Nm > 0 && z_f > 0 && z_f + across_m < b;
  return {
    given: { C: couple_Nm, N: pull_N, s_z },
    pull: isPullNarrow ? { b, s_z, a_s: across_m } : null,
    couple: isCoupleNarrow ? { b, z_f, a_s: across_m } : null,
  };
}

/** Moment in the plate under a load, N·m. */
export function plateMoment_Nm(fixing: Fixing, load: FixingLoad): number {
  const { given, pull, couple } = bendingOf(fixing, load);
  const k_b = pull === null ? 1 : pullSpread.evaluate(pull);
  const k_c = couple === null ? 1 : coupleSpread.evaluate(couple);
  return plateMoment.evaluate({ ...given, k_b, k_c });
}

/** What bends the plate under a load, with its working. */
export function bentBy(fixing: Fixing, load: FixingLoad): PlateMoment {
  const { system } = fixing;
  const { given, pull, couple } = bendingOf(fixing, load);
  const k_c = couple === null ? null : work(coupleSpread, couple, system);
  const k_b = pull === null ? null : work(pullSpread, pull, system);
  const factors = { k_c: k_c?.value ?? 1, k_b: k_b?.value ?? 1 };
  const { value, step } = work(plateMoment, { ...given, ...factors }, system);
  const spread = [k_c, k_b].flatMap((each) => (each === null ? [] : [each.step]));
  return { value_Nm: value, steps: [...spread, step] };
}

import { show } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { mayMiss } from '../../mechanics/plate-group.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing } from './fixing.ts';
import type { Held } from './standing.ts';
import { edgesOf } from './studs.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

const clause =
  'edge distance, NDS Table 12.5.1C from 1/4 in on; the middle half of the stud (common practice, no source)';

/** A plate must meet a stud with its outer screws far enough from the edges of it. */
export function edgeCheck(fixing: Fixing, wall: Wall, { standing, combination }: Held): Judged {
  const { stud_m, miss_m } = standing.stud;
  const { needed_m, centred_m } = edgesOf(wall, fixing);
  const from = { c_s: centred_m, c_e: needed_m };
  const mayMiss_m = mayMiss.evaluate(from);
  const shared = {
    id: 'bracket-on-stud',
    unit: 'm',
    clause,
    where: standing.where,
    combination,
  } as const;
  const parts =
    mayMiss_m < -1e-9
      ? {
          ...shared,
          title: 'Edge distance of the screws in the stud',
          demand: needed_m,
          capacity: Math.max(0, centred_m - (miss_m ?? 0)),
          note: 'The stud is too narrow for these screws, even where the plate stands on its centre line.',
        }
      : {
          ...shared,
          title: 'Plate on a stud: distance from its centre line',
          demand: miss_m,
          capacity: miss_m === null ? null : Math.max(0, mayMiss_m),
          note: missNote(fixing, stud_m, miss_m),
        };
  const steps = mayMiss_m < -1e-9 ? [] : [work(mayMiss, from, fixing.system).step];
  return { check: makeCheck(parts, fixing.system), steps };
}

/** Whether screws have too little edge distance even on the centre line of a stud. */
export function isTooNarrow(fixing: Fixing, wall: Wall): boolean {
  const { needed_m, centred_m } = edgesOf(wall, fixing);
  return centred_m - needed_m < -1e-9;
}

function missNote({ system }: Fixing, stud_m: number | null, miss_m: number | null): string {
  if (miss_m === null) return 'Cannot say: the places of the studs are not given.';
  return stud_m === null ? '' : `The nearest stud is at ${show(stud_m, 'm', system)}.`;
}

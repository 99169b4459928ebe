import { show } from '../../../shared/quantity/index.ts';
import { formula } from '../../formula/formula.ts';
import { work } from '../../formula/step.ts';
import * as steel from '../../standards/aisc-360/steel-arm.ts';
import type { Judged } from '../judged.ts';
import { makeCheck } from '../make-check.ts';
import type { Fixing, FixingLoad } from './fixing.ts';
import type { Place } from './fixing-checks.ts';
import { holeOf } from '../hole.ts';
import { plateCheck } from './plate-metal.ts';
import { rowPulls, type RowPull } from './row-pulls.ts';
import { workPull } from './sharing.ts';
import { turningOf } from './turning.ts';

const mechanics = (clause: string) => ({ document: 'elementary mechanics', edition: '', clause });

/** Moment that bends a plate sideways between the outer screws at one height. */
export const rowMoment = formula({
  symbol: 'M_x',
  caption: 'moment in the plate, sideways from the arm (of no width where there is none) to the outer screws',
  expression: 'T_r * (a_s - b_a) / 4',
  symbols: { T_r: 'N', a_s: 'm', b_a: 'm' },
  unit: 'N.m',
  source: mechanics('half of the pull on a lever from the arm to either outer screw'),
});

/** Height of the plate that is bent sideways by the screws at one height. */
export const rowHeight = formula({
  symbol: 'h_r',
  caption:
    'height of the plate that counts: half the way to the next screws or the whole to the end, less a hole; no more than spreads at 45° from a screw',
  expression: 'min(h_1 + h_2 - d_h, min(h_1, (a_s - b_a) / 2) + min(h_2, (a_s - b_a) / 2))',
  symbols: { h_1: 'm', h_2: 'm', d_h: 'm', a_s: 'm', b_a: 'm' },
  unit: 'm',
  source: {
    document: 'common practice, no source',
    edition: '',
    clause: 'a load at the edge of a clamped plate bends 1.96 of its lever (Roark: K_m 0.509)',
  },
});

/** Stress in a plate that is bent sideways. */
export const rowStress = formula({
  symbol: 'f_pl',
  caption: 'bending stress in the plate, sideways',
  expression: '6 * M_x / (h_r * t^2)',
  symbols: { M_x: 'N.m', h_r: 'm', t: 'm' },
  unit: 'Pa',
  source: mechanics('bending of a rectangle'),
});

/** One row of screws and the plate above and below that belongs to it. */
type Row = RowPull & Readonly<Record<'h_1' | 'h_2', number>>;

/** Whether the screws stand beyond the arm on both sides, so that the plate is bent sideways. */
export function bendsAcross({ across_m }: Fixing, armWidth_m: number): boolean {
  return across_m > armWidth_m + 1e-9;
}

/** The largest stress sideways at any row, Pa; Infinity where the holes leave nothing of the plate. */
export function acrossStress_Pa(fixing: Fixing, armWidth_m: number, load: FixingLoad): number {
  return stressAt(fixing, armWidth_m, worstRow(fixing, armWidth_m, load));
}

/** The plate bent sideways by the screws at the height that bends it most. */
export function plateAcross(
  fixing: Fixing,
  metal: string,
  armWidth_m: number,
  load: FixingLoad,
  place: Place,
): Judged {
  const { system, plate } = fixing;
  const row = worstRow(fixing, armWidth_m, load);
  const lengths = { a_s: fixing.across_m, b_a: armWidth_m };
  const at = `screws ${show(row.z, 'm', system)} from the ${turningOf(fixing, load).end} end`;
  const pull = workPull(row.share, system, `pull on all ${at}, as on one`);
  const moment = work(rowMoment, { T_r: pull.value, ...lengths }, system);
  const height = work(
    rowHeight,
    { h_1: row.h_1, h_2: row.h_2, d_h: holeOf(fixing.fastener?.diameter_m ?? null), ...lengths },
    system,
  );
  const steps = [pull.step, moment.step, height.step];
  const parts = plateCheck(metal, 'Bending of the plate on the wall, sideways to its screws', place);
  if (parts.F_y === null) return { check: makeCheck(parts.unknown, system), steps };
  const allowed = work(steel.allowableSteelBending, { F_y: parts.F_y }, system);
  if (height.value <= 0) {
    const note = 'The holes of the screws leave nothing of the plate.';
    return {
      check: makeCheck({ ...parts.base, demand: allowed.value, capacity: 0, note }, system),
      steps,
    };
  }
  const stress = work(rowStress, { M_x: moment.value, h_r: height.value, t: plate.thickness_m }, system);
  const from = armWidth_m > 0 ? 'from the arm' : 'from the middle';
  const note = `The whole pull on the ${at} goes sideways ${from} to the outer ones (common practice, no source).`;
  return {
    check: makeCheck({ ...parts.base, demand: stress.value, capacity: allowed.value, note }, system),
    steps: [...steps, stress.step, allowed.step],
  };
}

function worstRow(fixing: Fixing, armWidth_m: number, load: FixingLoad): Row {
  const [first, ...rest] = rowsOf(fixing, load);
  if (first === undefined) throw new RangeError('a plate has screws');
  const stress = (row: Row): number => stressAt(fixing, armWidth_m, row);
  return rest.reduce((worst, each) => (stress(each) > stress(worst) ? each : worst), first);
}

function stressAt(fixing: Fixing, armWidth_m: number, { pull_N, h_1, h_2 }: Row): number {
  const lengths = { a_s: fixing.across_m, b_a: armWidth_m };
  const h_r = rowHeight.evaluate({ h_1, h_2, d_h: holeOf(fixing.fastener?.diameter_m ?? null), ...lengths });
  if (h_r <= 0) return Infinity;
  const M_x = rowMoment.evaluate({ T_r: pull_N, ...lengths });
  return rowStress.evaluate({ M_x, h_r, t: fixing.plate.thickness_m });
}

/** Every row with the plate on either side of it: half the way to the next row, or the whole way to the end. */
function rowsOf(fixing: Fixing, load: FixingLoad): Row[] {
  const rows = rowPulls(fixing, load).sort((a, b) => a.z - b.z);
  return rows.map((row, index) => {
    const [before, after] = [rows[index - 1], rows[index + 1]];
    return {
      ...row,
      h_1: before === undefined ? row.z : (row.z - before.z) / 2,
      h_2: after === undefined ? Math.max(0, fixing.plate.height_m - row.z) : (after.z - row.z) / 2,
    };
  });
}

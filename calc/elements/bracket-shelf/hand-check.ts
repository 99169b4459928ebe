import type { Step, Table } from '../../../shared/check-result.ts';
import { showInCalculation, significant, type Unit } from '../../../shared/quantity/index.ts';
import { work } from '../../formula/step.ts';
import { movementIn, momentIn } from '../../mechanics/beam-field.ts';
import { valueAt, type Polynomial } from '../../mechanics/polynomial.ts';
import * as closed from '../../standards/beam-tables/closed-forms.ts';
import type { Context } from './context.ts';
import type { UnitCase } from './model.ts';

/** An independent check by closed forms: what was worked by hand, and the solver's value beside it. */
export interface HandCheck {
  readonly steps: readonly Step[];
  readonly table: Table | null;
  readonly notes: readonly string[];
}

interface Compared {
  readonly what: string;
  readonly byHand: number;
  readonly bySolver: number;
  readonly unit: Unit;
}

/** Compares the solver with closed forms for the weight and the full-length loads, all bays loaded. */
export function handCheckOf(context: Context): HandCheck {
  const { shelf, solved } = context;
  const { model } = solved[0];
  const uniform = model.cases.filter(({ action }) => action === null || isWhole(action.load, shelf.length_m));
  const actions = new Set(uniform.map(({ action }) => action));
  const w = [...actions].reduce(
    (sum, action) =>
      sum +
      (action === null ? shelf.board.selfWeight_Npm : action.load.kind === 'line' ? action.load.load_Npm : 0),
    0,
  );
  const sum = (pick: (unit: UnitCase) => number): number =>
    uniform.reduce((total, unit) => total + pick(unit), 0);
  const steps: Step[] = [];
  const compared: Compared[] = [];
  const { positions_m, length_m, system, board } = shelf;
  const [first = 0] = positions_m;
  const last = positions_m[positions_m.length - 1] ?? 0;
  const spans = positions_m.slice(1).map((position, i) => position - (positions_m[i] ?? 0));
  const overhangs = [first, length_m - last];
  const areAlike = Math.abs(first - (length_m - last)) < 1e-9;
  /** Over every bracket, hogging positive. */
  const over = positions_m.map((_, i) => -sum(({ field }) => field.moments_Nm[i] ?? 0));
  const jointed = (shelf.document.board.joints ?? []).length > 0;

  const ends = overhangs.map((a, side) => {
    if (a <= 0) return 0;
    const end = areAlike ? 'either' : side === 0 ? 'the left' : 'the right';
    const moment = work(
      closed.overhangMoment,
      { w, a },
      system,
      `moment over the bracket nearest ${end} end`,
      side === 0 ? 'M_A' : 'M_B',
    );
    if (areAlike && side === 1) return moment.value;
    steps.push(moment.step);
    const support = side === 0 ? 0 : positions_m.length - 1;
    const bySolver = over[support] ?? 0;
    compared.push({ what: moment.step.caption, byHand: moment.value, bySolver, unit: 'N.m' });
    return moment.value;
  });
  const [M_A = 0, M_B = 0] = ends;
  const [L_1 = 0, L_2 = 0] = spans;
  const even = spans.every((each) => Math.abs(each - L_1) < 1e-6);
  if (spans.length === 1) {
    const middle = work(closed.middleMoment, { w, L: L_1, M_A, M_B }, system);
    const moved =
      board.GA_N === null
        ? work(closed.middleMovement, { w, L: L_1, EI: board.EI_Nm2, M_A, M_B }, system)
        : work(
            closed.middleMovementWithShear,
            { w, L: L_1, EI: board.EI_Nm2, M_A, M_B, GA: board.GA_N },
            system,
          );
    steps.push(middle.step, moved.step);
    const at = first + L_1 / 2;
    compared.push(
      {
        what: middle.step.caption,
        byHand: middle.value,
        bySolver: sum((unit) => at_(unit, at, momentIn)),
        unit: 'N.m',
      },
      {
        what: moved.step.caption,
        byHand: moved.value,
        bySolver: sum((unit) => at_(unit, at, movementIn)),
        unit: 'm',
      },
    );
  } else if (
    !jointed &&
    even &&
    Math.max(...overhangs) < 1e-6 &&
    (spans.length === 2 || spans.length === 3 || spans.length === 4)
  ) {
    const { moment: c_M, reaction: c_R } = closed.equalBays[spans.length];
    const moment = work(closed.equalBaysMoment, { c_M, w, L: L_1 }, system);
    const reaction = work(closed.equalBaysReaction, { c_R, w, L: L_1 }, system);
    steps.push(moment.step, reaction.step);
    compared.push(
      {
        what: moment.step.caption,
        byHand: moment.value,
        bySolver: over[1] ?? 0,
        unit: 'N.m',
      },
      {
        what: reaction.step.caption,
        byHand: reaction.value,
        bySolver: sum(({ field }) => field.reactions_N[0] ?? 0),
        unit: 'N',
      },
    );
  } else if (
    !jointed &&
    spans.length === 3 &&
    Math.abs(L_1 - (spans[2] ?? 0)) < 1e-6 &&
    Math.abs(M_A - M_B) < 1e-9
  ) {
    const moment = work(closed.threeBaysMoment, { w, L_1, L_2, M_A }, system);
    steps.push(moment.step);
    const bySolver = over[1] ?? 0;
    compared.push({ what: moment.step.caption, byHand: moment.value, bySolver, unit: 'N.m' });
  } else if (!jointed && spans.length > 1) {
    const [j, bySolver] = over
      .slice(1, -1)
      .reduce<readonly [number, number]>(
        (most, moment, i) => (moment > most[1] ? [i + 1, moment] : most),
        [1, over[1] ?? 0],
      );
    const moment = work(
      closed.threeMoments,
      { w, L_l: spans[j - 1] ?? 0, L_r: spans[j] ?? 0, M_l: over[j - 1] ?? 0, M_r: over[j + 1] ?? 0 },
      system,
      `moment over bracket ${j + 1}, from those over its neighbours`,
    );
    steps.push(moment.step);
    compared.push({ what: moment.step.caption, byHand: moment.value, bySolver, unit: 'N.m' });
  }
  if (spans.length > 1) {
    const k = spans.indexOf(Math.max(...spans));
    const numbers = { w, L: spans[k] ?? 0, EI: board.EI_Nm2, M_A: over[k] ?? 0, M_B: over[k + 1] ?? 0 };
    const caption = `movement in the middle between brackets ${k + 1} and ${k + 2}, the moments over them by the solver`;
    const moved =
      board.GA_N === null
        ? work(closed.middleMovement, numbers, system, caption)
        : work(closed.middleMovementWithShear, { ...numbers, GA: board.GA_N }, system, caption);
    const at = (positions_m[k] ?? 0) + numbers.L / 2;
    steps.push(moved.step);
    compared.push({
      what: `movement in the middle between brackets ${k + 1} and ${k + 2}`,
      byHand: moved.value,
      bySolver: sum((unit) => at_(unit, at, movementIn)),
      unit: 'm',
    });
  }
  const total = sum(({ field }) => field.reactions_N.reduce((all, each) => all + each, 0));
  compared.push({
    what: 'all reactions against all the weight, w L',
    byHand: w * length_m,
    bySolver: total,
    unit: 'N',
  });
  return {
    steps,
    table: {
      title: 'By hand and by the solver',
      head: ['What', 'By hand', 'By the solver', 'Difference'],
      rows: compared.map(({ what, byHand, bySolver, unit }) => [
        what,
        showInCalculation(byHand, unit, system),
        showInCalculation(bySolver, unit, system),
        difference(byHand, bySolver),
      ]),
    },
    notes: [
      `The board's own weight and every load along its whole length, ${showInCalculation(w, 'N/m', system)} in all bays at once.`,
      'Closed forms over several bays leave shear movement out, and printed coefficients are rounded; that is the difference.',
    ],
  };
}

function isWhole(load: { kind: string; from_m?: number; to_m?: number }, length_m: number): boolean {
  return load.kind === 'line' && (load.from_m ?? 0) <= 1e-9 && (load.to_m ?? 0) >= length_m - 1e-9;
}

function at_(
  { field }: UnitCase,
  x_m: number,
  polynomial: (field: UnitCase['field'], interval: number) => Polynomial,
): number {
  const { grid_m } = field.prepared;
  let interval = 0;
  while (interval + 2 < grid_m.length && (grid_m[interval + 1] ?? 0) <= x_m) interval += 1;
  return valueAt(polynomial(field, interval), x_m - (grid_m[interval] ?? 0));
}

function difference(byHand: number, bySolver: number): string {
  if (byHand === 0) return bySolver === 0 ? '0 %' : 'no hand value';
  const share = (bySolver / byHand - 1) * 100;
  return `${Math.abs(share) < 0.005 ? '0' : significant(share, 2)} %`;
}

import { quantity, showUsed, type Unit } from '../../../shared/quantity/index.ts';
import type { FixingResult, Table } from '../../../shared/check-result.ts';
import { durationFactor } from '../../standards/nds-2018/2.3-adjustment.ts';
import type { Fixing, FixingAnswer, FixingLoad } from './fixing.ts';
import { ratioOf } from './fixing-checks.ts';
import { capacityOf, solveFixing, type Capacity } from './solve.ts';
import type { StudMiss } from './studs.ts';
import { toeOf } from './toe.ts';

/** What acts on a plate in one combination of loads. */
export interface Acting {
  readonly load: FixingLoad;
  readonly combination: string;
}

/** One plate on the wall. */
export interface Standing {
  /** Counted from the left, from 1. */
  readonly number: number;
  /** `bracket 2, at 32 in`. */
  readonly where: string;
  readonly stud: StudMiss;
  readonly acting: readonly [Acting, ...Acting[]];
}

/** One plate worked out in the combination that asks most of its screws. */
export interface Held extends Acting {
  readonly standing: Standing;
  readonly answer: FixingAnswer;
}

/** A combination on a plate, where it is worst for something. */
export interface Worst extends Acting {
  readonly standing: Standing;
}

/** Works plates out one by one; screws are strong once for each duration. */
export function holderOf(fixing: Fixing): (standing: Standing) => Held {
  const capacities = new Map<number, Capacity>();
  const capacityFor = (C_D: number): Capacity => {
    const known = capacities.get(C_D) ?? capacityOf(fixing, C_D);
    capacities.set(C_D, known);
    return known;
  };
  return (standing) => {
    const [first, ...rest] = worthTrying(fixing, standing.acting).map(({ load, combination }): Held => {
      const toe = toeOf(fixing, load);
      const answer = solveFixing(fixing, load, capacityFor(load.C_D), toe);
      return { standing, load, combination, answer };
    });
    if (first === undefined) throw new RangeError('one combination is always worth trying');
    return rest.reduce((worst, each) => (used(each.answer) > used(worst.answer) ? each : worst), first);
  };
}

function used(answer: FixingAnswer): number {
  return ratioOf(answer) ?? Infinity;
}

/**
 * The combinations that can govern. What the NDS gives grows with C_D, so loads are compared over it; values of a report
 * stay as they are, and so do the loads. On a covering that crushes the pull grows faster than the couple, and nothing can
 * be told beforehand.
 */
function worthTrying(
  { allowable, coveringBearing_Pa }: Fixing,
  acting: Standing['acting'],
): readonly Acting[] {
  if (coveringBearing_Pa !== null) return acting;
  const weight = ({ C_D }: FixingLoad): number => (allowable === null ? C_D : 1);
  const asksMore = (a: FixingLoad, b: FixingLoad): boolean => {
    if ((a.isLifted ?? false) !== (b.isLifted ?? false)) return false;
    const more = (['shear_N', 'pull_N', 'couple_Nm'] as const).map(
      (force) => a[force] / weight(a) - b[force] / weight(b),
    );
    return more.every((each) => each >= 0) && more.some((each) => each > 0);
  };
  return acting.filter(({ load }) => !acting.some((other) => asksMore(other.load, load)));
}

/** The plate and combination in which something is largest. */
export function worstBy(
  standings: readonly [Standing, ...Standing[]],
  size: (load: FixingLoad) => number,
): Worst {
  const [first, ...rest] = standings.flatMap((standing) =>
    standing.acting.map((acting) => ({ standing, ...acting, size: size(acting.load) })),
  );
  if (first === undefined) throw new RangeError('something acts on every plate');
  return rest.reduce((worst, each) => (each.size > worst.size ? each : worst), first);
}

/** How much a load asks of wood in bending: it is the stronger the shorter the load lasts. */
export function overDuration(size_: number, { duration }: FixingLoad): number {
  return size_ / durationFactor[duration];
}

/** A plate's line of the result. */
export function resultOf({ standing, answer, load }: Held, { system }: Fixing): FixingResult {
  const q = (value: number, unit: Unit) => quantity(value, unit, system);
  const maybe = (value: number | null, unit: Unit) => (value === null ? null : q(value, unit));
  return {
    bracket: standing.number,
    stud: maybe(standing.stud.stud_m, 'm'),
    miss: maybe(standing.stud.miss_m, 'm'),
    tension: q(answer.tension_N, 'N'),
    shear: q(answer.shear_N, 'N'),
    couple: q(load.isLifted === true ? -load.couple_Nm : load.couple_Nm, 'N.m'),
    penetration: q(answer.penetration_m, 'm'),
    withdrawalCapacity: maybe(answer.withdrawal_N, 'N'),
    lateralCapacity: maybe(answer.lateral_N, 'N'),
    mode: answer.mode,
    ...answer.ratios,
    ratio: ratioOf(answer),
  };
}

const columns = ['Stud', 'Misses by', 'Couple', 'Pull', 'Shear', 'Withdrawal', 'Lateral', 'Mode', 'Used'];

/**
 * All plates in one table.
 *
 * @param what what a plate is called: "Bracket"
 */
export function tableOf(rows: readonly FixingResult[], what: string, title: string): Table {
  return {
    title,
    head: [what, ...columns],
    rows: rows.map((row) => [
      String(row.bracket),
      row.stud?.shown ?? '–',
      row.miss?.shown ?? '–',
      row.couple.shown,
      row.tension.shown,
      row.shear.shown,
      row.withdrawalCapacity?.shown ?? '–',
      row.lateralCapacity?.shown ?? '–',
      row.mode ?? '–',
      row.ratio === null ? '–' : showUsed(row.ratio),
    ]),
  };
}

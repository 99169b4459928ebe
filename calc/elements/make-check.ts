import type { Check, Outcome } from '../../shared/check-result.ts';
import { quantity, type Unit, type UnitSystem } from '../../shared/quantity/index.ts';

/** What a check is made of. Demand and capacity are SI numbers of the same unit. */
export interface CheckParts {
  readonly id: string;
  readonly title: string;
  readonly unit: Unit;
  readonly demand: number | null;
  /** Null: not known, and the check cannot say. Zero: nothing resists. */
  readonly capacity: number | null;
  readonly clause: string;
  readonly where: string;
  readonly combination: string;
  readonly note?: string;
  /** A ratio above this and up to 1 cannot be vouched for; 1 where nothing else is said. */
  readonly sureUpTo?: number;
}

/** The one place where a ratio and an outcome come from. A demand below 0 or without end is none: the check cannot say. */
export function makeCheck(parts: CheckParts, system: UnitSystem): Check {
  const { capacity, unit } = parts;
  const demand = parts.demand !== null && parts.demand >= 0 && parts.demand < Infinity ? parts.demand : null;
  const ratio = ratioOf(demand, capacity);
  return Object.freeze({
    id: parts.id,
    title: parts.title,
    demand: demand === null ? null : quantity(demand, unit, system),
    capacity: capacity === null || capacity <= 0 ? null : quantity(capacity, unit, system),
    ratio,
    outcome: outcomeOf(demand, capacity, ratio, parts.sureUpTo ?? 1),
    clause: parts.clause,
    where: parts.where,
    combination: parts.combination,
    note: parts.note ?? '',
  });
}

function ratioOf(demand: number | null, capacity: number | null): number | null {
  if (demand === null) return null;
  if (demand === 0) return 0;
  return capacity === null || capacity <= 0 ? null : demand / capacity;
}

function outcomeOf(
  demand: number | null,
  capacity: number | null,
  ratio: number | null,
  sureUpTo: number,
): Outcome {
  if (demand === 0) return 'holds';
  if (demand === null || capacity === null) return 'cannot-say';
  if (ratio === null || ratio > 1) return 'does-not-hold';
  return ratio <= sureUpTo ? 'holds' : 'cannot-say';
}

/** The worst of several checks on one thing: what does not hold first, then what can't be said, then the most used. */
export function worstCheck<T extends { readonly check: Check }>(candidates: readonly [T, ...T[]]): T {
  return candidates.reduce((worst, each) => (isWorse(each.check, worst.check) ? each : worst));
}

const severity: Readonly<Record<Outcome, number>> = { holds: 0, 'cannot-say': 1, 'does-not-hold': 2 };

/** Whether one check is worse than another. */
export function isWorse(a: Check, b: Check): boolean {
  if (a.outcome !== b.outcome) return severity[a.outcome] > severity[b.outcome];
  if (a.ratio === null && b.ratio === null) return (a.demand?.value ?? 0) > (b.demand?.value ?? 0);
  return (a.ratio ?? Infinity) > (b.ratio ?? Infinity);
}

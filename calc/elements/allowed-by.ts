import type { Limit } from '../../shared/check-document/index.ts';

/** What a limit allows on a span, m; null where there is none. */
export function allowedBy(limit: Limit, span_m: number): number | null {
  if (limit.kind === 'none') return null;
  return limit.kind === 'amount' ? limit.amount_m : span_m / limit.divisor;
}

import { z } from 'zod';
import { DocumentError } from '../../shared/check-document/index.ts';
import type { Check, CheckResult, FieldError, Outcome } from '../../shared/check-result.ts';
import type { Study } from '../check/study.ts';

/** What a frozen result says of one check, as far as it is compared. */
export interface FrozenCheck extends Pick<Check, 'id' | 'title' | 'outcome' | 'ratio'> {
  readonly demand: FrozenValue | null;
  readonly capacity: FrozenValue | null;
}

interface FrozenValue {
  readonly value: number;
  readonly unit: string;
  readonly shown: string;
}

/** What was answered, as far as it is compared. */
export interface ComparedResult {
  readonly verdict: Outcome;
  readonly checks: readonly FrozenCheck[];
}

/** A check whose numbers or outcome are others now; `null` where it was not worked out. */
export interface DifferingCheck {
  readonly title: string;
  readonly then: FrozenCheck | null;
  readonly now: FrozenCheck | null;
}

/** Whether this version of the tool gives the answer that was frozen. */
export type Today =
  | { readonly kind: 'same' }
  | {
      readonly kind: 'differs';
      readonly then: Outcome;
      readonly now: Outcome;
      readonly checks: readonly DifferingCheck[];
    }
  /** This version does not take the document. */
  | { readonly kind: 'refused'; readonly errors: readonly FieldError[] }
  /** It could not be worked out just now. */
  | { readonly kind: 'failed' };

const outcome = z.enum(['holds', 'does-not-hold', 'cannot-say']);
const value = z.object({ value: z.number(), unit: z.string(), shown: z.string() }).nullable();
const frozenShape = z.object({
  check: z.unknown(),
  result: z.object({
    verdict: outcome,
    checks: z.array(
      z.object({
        id: z.string(),
        title: z.string(),
        outcome,
        ratio: z.number().nullable(),
        demand: value,
        capacity: value,
      }),
    ),
  }),
});

/**
 * Works the check of a frozen document out anew, and compares.
 *
 * @param report is told why it could not be worked out
 */
export async function workedOutToday(
  study: Study,
  frozen: string,
  report: (error: unknown) => void,
): Promise<Today> {
  const { check, result } = frozenShape.parse(JSON.parse(frozen));
  try {
    return compare(result, await study.check(check, { waysOut: false }));
  } catch (error) {
    if (error instanceof DocumentError) return { kind: 'refused', errors: error.errors };
    report(error);
    return { kind: 'failed' };
  }
}

/** Compares two answers to one document, check by check. */
export function compare(then: ComparedResult, now: ComparedResult | CheckResult): Today {
  const ids = [...new Set([...then.checks, ...now.checks].map(({ id }) => id))];
  const checks = ids.flatMap((id): DifferingCheck[] => {
    const [before, after] = [then, now].map((each) => each.checks.find((check) => check.id === id) ?? null);
    if (before === undefined || after === undefined || areAlike(before, after)) return [];
    return [{ title: after?.title ?? before?.title ?? '', then: before, now: after }];
  });
  if (checks.length === 0 && then.verdict === now.verdict) return { kind: 'same' };
  return { kind: 'differs', then: then.verdict, now: now.verdict, checks };
}

function areAlike(a: FrozenCheck | null, b: FrozenCheck | null): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.outcome === b.outcome &&
    isAbout(a.ratio, b.ratio) &&
    isAbout(a.demand?.value ?? null, b.demand?.value ?? null) &&
    isAbout(a.capacity?.value ?? null, b.capacity?.value ?? null)
  );
}

/** Machines differ in the last digits of a number; that is no difference. */
const sameTo = 1e-9;

function isAbout(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a === b;
  return Math.abs(a - b) <= sameTo * Math.max(Math.abs(a), Math.abs(b));
}

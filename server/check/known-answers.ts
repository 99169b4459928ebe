import { LRUCache } from 'lru-cache';
import type { CheckResult } from '../../shared/check-result.ts';

/** An answer is about 200 kB; a check is pure, so one that was worked out stays right. */
const known = new LRUCache<string, CheckResult>({ max: 40 });

/** Keeps the answer to a document that took its time. */
export function rememberAnswer(document: unknown, result: CheckResult): void {
  known.set(JSON.stringify(document), result);
}

/** The answer to a document, where it was worked out lately. */
export function knownAnswer(document: unknown): CheckResult | undefined {
  return known.size === 0 ? undefined : known.get(JSON.stringify(document));
}

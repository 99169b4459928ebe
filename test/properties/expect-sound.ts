import { expect } from 'vitest';
import type { CheckResult } from '../../shared/check-result.ts';

/** Every number, word and blank of a result; a path for each that is none. */
function faultsIn(value: unknown, path = ''): string[] {
  if (value === null || typeof value === 'boolean') return [];
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (typeof value === 'string') {
    return /\b(?:NaN|undefined|Infinity)\b|\[object/.test(value) ? [`${path}: ${value}`] : [];
  }
  if (typeof value !== 'object') return [`${path}: ${typeof value}`];
  return Object.entries(value).flatMap(([key, item]) => faultsIn(item, `${path}/${key}`));
}

/** Every number finite, every outcome by its ratio, and the verdict by the outcomes. */
export function expectSound(result: CheckResult): void {
  expect(faultsIn(result)).toEqual([]);
  expect(result.checks.length).toBeGreaterThan(0);
  for (const { id, ratio, outcome } of result.checks) {
    if (ratio !== null) {
      expect(ratio, id).toBeGreaterThanOrEqual(0);
      if (outcome === 'holds') expect(ratio, id).toBeLessThanOrEqual(1);
      if (outcome === 'does-not-hold') expect(ratio, id).toBeGreaterThan(1);
    } else expect(outcome, id).not.toBe('holds');
  }
  const outcomes = result.checks.map(({ outcome }) => outcome);
  if (outcomes.includes('does-not-hold')) expect(result.verdict).toBe('does-not-hold');
  else if (outcomes.includes('cannot-say')) expect(result.verdict).toBe('cannot-say');
  else expect(['holds', 'cannot-say']).toContain(result.verdict);
  expect(result.checks.map(({ id }) => id)).toContain(result.governing);
  expect(result.cautions.length).toBeGreaterThan(0);
}

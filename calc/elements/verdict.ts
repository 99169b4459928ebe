import type { Check, Outcome } from '../../shared/check-result.ts';
import { isWorse } from './make-check.ts';

/** The verdict of a list of checks and the check that governs it. */
export function verdictOf(checks: readonly Check[]): {
  readonly verdict: Outcome;
  readonly governing: Check;
} {
  const [first, ...rest] = checks;
  if (first === undefined) throw new RangeError('a verdict needs a check');
  const governing = rest.reduce((worst, each) => (isWorse(each, worst) ? each : worst), first);
  return { verdict: governing.outcome, governing };
}

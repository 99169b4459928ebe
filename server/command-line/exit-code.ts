import type { Outcome } from '../../shared/check-result.ts';
import type { Judgement } from './judge.ts';

const codeOfVerdict: Readonly<Record<Outcome, number>> = { holds: 0, 'does-not-hold': 1, 'cannot-say': 3 };

/** Worst first: a fault, then bad input, then something that does not hold, then something that can't be said. */
const precedence = [4, 2, 1, 3, 0];

export function exitCode(judgement: Judgement): number {
  if (judgement.kind === 'fault') return 4;
  return judgement.kind === 'bad-input' ? 2 : codeOfVerdict[judgement.result.verdict];
}

/** The exit code of several sources together. */
export function worst(codes: readonly number[]): number {
  return precedence.find((code) => codes.includes(code)) ?? 0;
}

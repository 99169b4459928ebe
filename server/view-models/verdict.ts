import type { CheckResult, Outcome } from '../../shared/check-result.ts';
import { caution } from '../../shared/cautions.ts';

/** How an outcome is told: the word, and which shape stands beside it. */
export interface OutcomeWords {
  readonly word: string;
  readonly holds: boolean;
  readonly fails: boolean;
  readonly cannotSay: boolean;
}

const words: Readonly<Record<Outcome, OutcomeWords>> = {
  holds: { word: 'Holds', holds: true, fails: false, cannotSay: false },
  'does-not-hold': { word: 'Does not hold', holds: false, fails: true, cannotSay: false },
  'cannot-say': { word: 'Cannot say', holds: false, fails: false, cannotSay: true },
};

/** The caution that no verdict stands without, where there is room for a few words. */
export const cautionInShort = caution.aid.slice(0, caution.aid.indexOf('.') + 1);

export function outcomeWords(outcome: Outcome): OutcomeWords {
  return words[outcome];
}

/** The summary without the word it begins with, which is set large before it. */
export function summaryAfterWord({ verdict, summary }: CheckResult): string {
  const { word } = words[verdict];
  return summary.startsWith(word) ? summary.slice(word.length).replace(/^[.:,]?\s*/, '') : summary;
}

import type { CheckResult, Governing, Outcome } from '../../shared/check-result.ts';
import { inOrder, waysOutLead, waysOutTitle } from '../check/ways-out-words.ts';
import type { CheckState } from '../check/check-state.ts';
import { percent } from './checks.ts';
import { cautionInShort, outcomeWords, type OutcomeWords } from './verdict.ts';
import { wayOnTo, type WayOn } from './way-on.ts';

/** A change that was checked, and how to make it. */
interface WayOutView extends OutcomeWords, WayOn {
  readonly what: string;
  readonly governing: string;
}

export interface WaysOutView {
  /** Whether there is something to say of them, be it that there are none. */
  readonly hasWaysOut: boolean;
  readonly waysOutTitle: string;
  /** What is offered: margin, changes that are enough, only some that help, or none. */
  readonly lead: string;
  readonly hasChanges: boolean;
  readonly cautionInShort: string;
  readonly waysOut: readonly WayOutView[];
}

/** Ways out of a check that does not hold or is close, each to be made with one click. */
export function waysOutView(result: CheckResult, state: CheckState): WaysOutView {
  const lead = waysOutLead(result);
  return {
    hasWaysOut: lead !== '',
    waysOutTitle: waysOutTitle(result),
    lead,
    hasChanges: result.remedies.length > 0,
    cautionInShort,
    waysOut: inOrder(result.remedies).map(({ what, document, verdict, governing }) => ({
      ...outcomeWords(verdict),
      ...wayOnTo(state, document),
      what,
      governing: outcomeOf(verdict, governing),
    })),
  };
}

/** What governs what was tried; plainly so where it can't be vouched for. */
export function outcomeOf(verdict: Outcome, governing: Governing): string {
  return `${verdict === 'cannot-say' ? 'Not shown to hold: ' : ''}${governingWords(governing)}`;
}

/** What governs, and how much of it is used. */
export function governingWords({ title, ratio }: Governing): string {
  return ratio === null ? title : `${title}, ${percent(ratio)} used`;
}

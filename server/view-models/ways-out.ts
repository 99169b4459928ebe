import type { Governing, Remedy } from '../../shared/check-result.ts';
import type { CheckState } from '../check/check-state.ts';
import { percent } from './checks.ts';
import { outcomeWords, type OutcomeWords } from './verdict.ts';
import { wayOnTo, type WayOn } from './way-on.ts';

/** A change that was checked, and how to make it. */
interface WayOutView extends OutcomeWords, WayOn {
  readonly what: string;
  readonly governing: string;
}

export interface WaysOutView {
  readonly hasWaysOut: boolean;
  /** What is offered: changes that are enough, or only some that help. */
  readonly lead: string;
  readonly waysOut: readonly WayOutView[];
}

/** Ways out of a check that does not hold or is close, each to be made with one click. */
export function waysOutView(remedies: readonly Remedy[], state: CheckState): WaysOutView {
  const fails = remedies.some(({ verdict }) => verdict === 'does-not-hold');
  return {
    hasWaysOut: remedies.length > 0,
    lead: fails
      ? 'No change that was tried is enough. These help, each by itself; they were checked like this one.'
      : 'Each by itself, smallest change first; every one was checked like this one.',
    waysOut: remedies.map(({ what, document, verdict, governing }) => ({
      ...outcomeWords(verdict),
      ...wayOnTo(state, document),
      what,
      governing: governingWords(governing),
    })),
  };
}

/** What governs, and how much of it is used. */
export function governingWords({ title, ratio }: Governing): string {
  return ratio === null ? title : `${title}, ${percent(ratio)} used`;
}

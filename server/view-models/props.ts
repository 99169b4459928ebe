import { caution } from '../../shared/cautions.ts';
import type { Governing, Outcome, PropsAnswer } from '../../shared/check-result.ts';
import { inOrder } from '../check/ways-out-words.ts';
import type { CheckState } from '../check/check-state.ts';
import { limitView, type LimitView } from './reach.ts';
import { outcomeWords, type OutcomeWords } from './verdict.ts';
import { wayOnTo, type WayOn } from './way-on.ts';
import { governingWords, outcomeOf } from './ways-out.ts';

export interface PropsView {
  readonly proposals: readonly (OutcomeWords &
    WayOn & { readonly what: string; readonly governing: string })[];
  readonly hasProposals: boolean;
  /** What the proposals are, beside what is there. */
  readonly lead: string;
  /** Kinds of which nothing is enough. */
  readonly notEnough: readonly (OutcomeWords & { readonly what: string; readonly why: string })[];
  readonly hasNotEnough: boolean;
  readonly reason: string;
  readonly caution: string;
  readonly unaided: LimitView;
}

/** What a counter wants under it. */
export function propsView(
  state: CheckState,
  { holds, proposals, notEnough, reason, unaided }: PropsAnswer,
): PropsView {
  return {
    proposals: inOrder(proposals).map(({ what, document, verdict, governing }) => ({
      ...outcomeWords(verdict),
      ...wayOnTo(state, document),
      what,
      governing: outcomeOf(verdict, governing),
    })),
    hasProposals: proposals.length > 0,
    lead: holds
      ? 'It holds on the props that are there, and nothing has to be changed. These would do in their place.'
      : '',
    notEnough: notEnough.map(({ what, verdict, governing }) => ({
      ...outcomeWords(verdict),
      what,
      why: whyNot(verdict, governing),
    })),
    hasNotEnough: notEnough.length > 0,
    reason,
    caution: caution.aid,
    unaided: limitView('How far it could stand out with nothing under it', unaided),
  };
}

/** The check in the way, and how much of it is used; where less than all of it can be vouched for, that too. */
function whyNot(verdict: Outcome, governing: Governing): string {
  const words = governingWords(governing);
  return verdict === 'cannot-say' && (governing.ratio ?? 2) <= 1
    ? `${words}, more than can be vouched for`
    : words;
}

import { caution } from '../../shared/cautions.ts';
import type { PropsAnswer } from '../../shared/check-result.ts';
import { inOrder } from '../check/ways-out-words.ts';
import type { CheckState } from '../check/check-state.ts';
import { limitView, type LimitView } from './reach.ts';
import { outcomeWords, type OutcomeWords } from './verdict.ts';
import { wayOnTo, type WayOn } from './way-on.ts';
import { outcomeOf } from './ways-out.ts';

export interface PropsView {
  readonly proposals: readonly (OutcomeWords &
    WayOn & { readonly what: string; readonly governing: string })[];
  readonly hasProposals: boolean;
  readonly reason: string;
  readonly caution: string;
  readonly unaided: LimitView;
}

/** What a counter wants under it. */
export function propsView(state: CheckState, { proposals, reason, unaided }: PropsAnswer): PropsView {
  return {
    proposals: inOrder(proposals).map(({ what, document, verdict, governing }) => ({
      ...outcomeWords(verdict),
      ...wayOnTo(state, document),
      what,
      governing: outcomeOf(verdict, governing),
    })),
    hasProposals: proposals.length > 0,
    reason,
    caution: caution.aid,
    unaided: limitView('How far it could stand out with nothing under it', unaided),
  };
}

import { caution } from '../../shared/cautions.ts';
import { listed } from '../../shared/words.ts';
import type { BracketLayout, Layouts } from '../../shared/check-result.ts';
import { inOrder } from '../check/ways-out-words.ts';
import type { CheckState } from '../check/check-state.ts';
import { percent } from './checks.ts';
import { outcomeWords, type OutcomeWords } from './verdict.ts';
import { wayOnTo, type WayOn } from './way-on.ts';
import { outcomeOf } from './ways-out.ts';

/** Brackets in some places: a strip with a mark for each, and what comes of them. */
interface LayoutView extends OutcomeWords {
  readonly title: string;
  readonly places: string;
  /** Places along the strip, in per cent of its length. */
  readonly marks: readonly string[];
  readonly governing: string;
  readonly movement: string;
}

export interface LayoutsView {
  readonly present: LayoutView;
  readonly proposals: readonly (LayoutView & WayOn)[];
  readonly hasProposals: boolean;
  /** Whether what is proposed is better without being enough. */
  readonly noneHolds: boolean;
  readonly reason: string;
  readonly rules: readonly string[];
  readonly searched: string;
  readonly caution: string;
}

/** Where the brackets of a check could go. */
export function layoutsView(state: CheckState, length_m: number, found: Layouts): LayoutsView {
  const { present, presentRank, proposals, reason, rules, searched } = found;
  const rank = presentRank === 1 ? 'As it is now, and none better was found' : 'As it is now';
  return {
    present: layoutView(present, rank, length_m),
    noneHolds: proposals.length > 0 && proposals.every(({ verdict }) => verdict !== 'holds'),
    proposals: inOrder(proposals).map((proposal, index) => ({
      ...layoutView(proposal, `Proposal ${index + 1}`, length_m),
      ...wayOnTo(state, proposal.document),
    })),
    hasProposals: proposals.length > 0,
    reason,
    rules,
    searched: searchedWords(searched),
    caution: caution.aid,
  };
}

function layoutView(layout: BracketLayout, title: string, length_m: number): LayoutView {
  const { positions, verdict, governing, movement, isSymmetric } = layout;
  return {
    ...outcomeWords(verdict),
    title,
    places: `${positions.length} brackets at ${listed(positions.map(({ shown }) => shown))}${isSymmetric ? ', even on both sides' : ''}`,
    marks: positions.map(({ value }) => ((100 * value) / length_m).toFixed(2)),
    governing: outcomeOf(verdict, governing),
    movement: governing.id.startsWith('deflection-')
      ? ''
      : `; its edge moves ${percent(movement)} of what it may`,
  };
}

function searchedWords({ layouts: all, judged, isExact }: Layouts['searched']): string {
  if (all === 0) return '';
  return isExact
    ? `${all} layouts were looked at, which is all that could be better; ${judged} of them were worked out in full.`
    : `${all} layouts were looked at and ${judged} worked out in full: there may be better ones.`;
}

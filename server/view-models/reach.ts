import { caution } from '../../shared/cautions.ts';
import type { Reach, ReachLimit } from '../../shared/check-result.ts';
import { governingWords } from './ways-out.ts';

export interface LimitView {
  readonly title: string;
  readonly value: string;
  readonly basis: string;
  readonly stops: string;
  readonly hasStops: boolean;
}

export interface ReachView {
  readonly limits: readonly LimitView[];
  readonly caution: string;
}

/** How far a check could go, in three limits. */
export function reachView({ longestBay, heaviestLine, heaviestPoint }: Reach): ReachView {
  return {
    caution: caution.aid,
    limits: [
      limitView('Longest bay', longestBay),
      limitView('Heaviest load along the board', heaviestLine),
      limitView('Heaviest single thing', heaviestPoint),
    ],
  };
}

/** One limit: how far, on what basis, and what stops it there. */
export function limitView(title: string, { value, reason, basis, governing }: ReachLimit): LimitView {
  const stops =
    value === null ? reason : reason || (governing === null ? '' : `Then: ${governingWords(governing)}.`);
  return { title, value: value?.shown ?? 'None', basis, stops, hasStops: stops !== '' };
}

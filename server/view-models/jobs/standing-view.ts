import { version } from '../../../calc/version.ts';
import type { Standing, StandingWord } from '../../store/tables.ts';
import { percent } from '../checks.ts';
import { outcomeWords } from '../verdict.ts';

/** How a check stands, by word and shape. */
export interface StandingView {
  readonly word: string;
  readonly holds: boolean;
  readonly fails: boolean;
  readonly cannotSay: boolean;
  /** What governs, and how much of it is used. */
  readonly governs: string;
}

/** Worst first. */
const order: readonly StandingWord[] = ['does-not-hold', 'unfinished', 'cannot-say', 'holds'];

/** How one check stands. What another version of the tool worked out is not said again as an answer. */
export function standingView(check: Standing): StandingView {
  if (check.tool !== version) return plain('To be worked out again');
  if (check.standing === 'unfinished') return plain('Unfinished');
  const used = check.used === null ? '' : `, ${percent(check.used)} used`;
  return { ...outcomeWords(check.standing), governs: check.governs === '' ? '' : `${check.governs}${used}` };
}

/** How a job stands: as the worst of its checks, with how many of them stand so. */
export function jobStanding(checks: readonly Standing[]): StandingView {
  const now = checks.filter(({ tool }) => tool === version);
  if (checks.length === 0) return plain('No checks yet');
  if (now.length < checks.length) return plain('To be worked out again');
  const sorted = now.toSorted(
    (a, b) => order.indexOf(a.standing) - order.indexOf(b.standing) || (b.used ?? 0) - (a.used ?? 0),
  );
  const [worst] = sorted;
  if (worst === undefined) return plain('No checks yet');
  const alike = sorted.filter(({ standing }) => standing === worst.standing).length;
  const view = standingView(worst);
  const isAll = alike === checks.length;
  const count = checks.length === 1 ? '' : isAll ? `, all ${alike}` : `, ${alike} of ${checks.length}`;
  return { ...view, word: view.word + count };
}

function plain(word: string): StandingView {
  return { word, holds: false, fails: false, cannotSay: true, governs: '' };
}

import type { ReachLimit } from '../../../shared/check-result.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import type { Quantity } from '../../../shared/quantity/index.ts';
import { judgeShelf, judgeUnlessItFails } from '../../elements/bracket-shelf/judge.ts';
import type { Shelf } from '../../elements/bracket-shelf/shelf.ts';
import { movementUsedAtLeast, hasLimit } from '../../elements/bracket-shelf/stillness.ts';
import { governingOf } from '../ranking.ts';
import { tryShelf } from '../subject.ts';

/** Whether every check of a shelf holds; what surely moves too far is not judged any further. */
export function holds(shelf: Shelf): boolean {
  if (hasLimit(shelf) && movementUsedAtLeast(shelf) > 1 + 1e-9) return false;
  return judgeUnlessItFails(shelf)?.verdict === 'holds';
}

/** No value, because all does not hold even at nothing, or can't be said to. */
export function noLimit(shelf: Shelf, basis: string, atLeast: string): ReachLimit {
  const { verdict, governing } = judgeShelf(shelf);
  const note = governing.note === '' ? '' : ` ${governing.note}`;
  const reason =
    verdict === 'cannot-say'
      ? `It can't be said: ${governing.title}.${note}`
      : `It does not hold ${atLeast}: ${governing.title}.${note}`;
  return { value: null, reason, basis, governing: governingOf({ governing }), document: null };
}

/** No value, because no check can be made of it. */
export function notAsked(basis: string, reason: string): ReachLimit {
  return { value: null, reason, basis, governing: null, document: null };
}

/** A value at which the whole check, read anew, holds. */
export function limitAt(
  input: BracketShelfInput,
  { basis, value, reason }: { readonly basis: string; readonly value: Quantity; readonly reason: string },
): ReachLimit {
  const shelf = tryShelf(input);
  if (shelf === null) return notAsked(basis, 'A check at this value can not be read.');
  const judgement = judgeShelf(shelf);
  if (judgement.verdict !== 'holds') return noLimit(shelf, basis, 'as it is written down');
  return { value, reason, basis, governing: governingOf(judgement), document: input };
}

import { makeCheck } from '../../make-check.ts';
import type { Context, Judged } from '../context.ts';
import { atBracket, largestReaction } from './reactions.ts';

/** The fixing into the wall. Until it is worked out it is never passed over in silence. */
export function fixingCheck({ shelf, service }: Context): Judged {
  const { wall, brackets } = shelf.document;
  const heaviest = largestReaction(service);
  const missing = [
    ...(wall === undefined ? ['what the wall is made of'] : []),
    ...(brackets.plate === undefined ? ['the size of the bracket plate'] : []),
    ...(brackets.screws === undefined ? ['the screws'] : []),
  ];
  const why =
    missing.length > 0
      ? `Not given: ${missing.join(', ')}. The fixing into the wall is not checked.`
      : 'The fixing into the wall is not worked out by this version. Have it checked by other means.';
  const parts = {
    id: 'fixing',
    title: 'Fixing into the wall',
    unit: 'N',
    demand: heaviest.weighted,
    capacity: null,
    clause: 'NDS chapter 12',
    where: atBracket(shelf, heaviest.index),
    combination: heaviest.situation.combination.name,
    note: why,
  } as const;
  return { check: makeCheck(parts, shelf.system), steps: [] };
}

import type { Bay } from '../../mechanics/bays.ts';
import { BoxMembers } from './box-members.ts';
import type { FactorOf } from './forces.ts';
import type { LoadShares } from './load-shares.ts';
import type { Shelf } from './shelf.ts';

/**
 * No less than the member of a box that goes down most: each load counts in the movement of the whole as often as in the moment of
 * that member, which is taken off it sooner than its movement is. Of a board that is no box, what it moves as a whole.
 *
 * @param shares what each load moves, counted once, m
 */
export function mostOfMembers(
  shelf: Shelf,
  { from_m, to_m, kind }: Bay,
  shares: LoadShares,
  factor: FactorOf,
): number {
  const members = BoxMembers.of(shelf);
  const place = { bay_m: (to_m - from_m) * (kind === 'span' ? 1 : 2), isOverBracket: false };
  const all = Array.from({ length: members?.count ?? 1 }, (_, index) => {
    let sum = 0;
    for (const [action, share] of shares) {
      const times = share > 0 ? (members?.countOf(index, action, place).moves ?? 1) : 1;
      sum += factor(action) * share * times;
    }
    return sum;
  });
  return Math.max(...all);
}

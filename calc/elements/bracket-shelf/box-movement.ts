import type { Bay } from '../../mechanics/bays.ts';
import type { BoxMembers } from './box-members.ts';
import type { FactorOf } from './forces.ts';
import type { LoadShares } from './load-shares.ts';

/**
 * No less than the member of a box that goes down most: each load counts in the movement of the whole as often as in the moment of
 * that member, which is taken off it sooner than its movement is.
 *
 * @param shares what each load moves, counted once, m
 */
export function mostOfMembers(
  members: BoxMembers,
  { from_m, to_m, kind }: Bay,
  shares: LoadShares,
  factor: FactorOf,
): number {
  const place = { bay_m: (to_m - from_m) * (kind === 'span' ? 1 : 2), isOverBracket: false };
  const all = Array.from({ length: members.count }, (_, index) => {
    let sum = 0;
    for (const [action, share] of shares) {
      // What stands on another member may relieve this one of nothing.
      const relieves = action === null || action.spread ? 1 : 0;
      const times = share > 0 ? members.countOf(index, action, place).moves : relieves;
      sum += factor(action) * share * times;
    }
    return sum;
  });
  return Math.max(...all);
}

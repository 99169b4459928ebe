import type { Check, Outcome } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { verdictWords } from '../verdict-words.ts';
import { whereIs } from './checks/movement.ts';
import type { Movements } from './movements.ts';
import type { Shelf } from './shelf.ts';

/** The verdict in one to three plain sentences: what governs, how much is used, and what will be seen. */
export function summaryOf(
  shelf: Shelf,
  verdict: Outcome,
  governing: Check,
  checks: readonly Check[],
  movements: Movements,
): string {
  return `${verdictWords(verdict, governing, checks)} ${whatIsSeen(shelf, movements)}`;
}

function whatIsSeen(shelf: Shelf, { bays }: Movements): string {
  const worst = bays.reduce((a, b) =>
    b.longTerm.value + b.twistLongTerm > a.longTerm.value + a.twistLongTerm ? b : a,
  );
  const amount = show(worst.longTerm.value + worst.twistLongTerm, 'm', shelf.system);
  return `Over the years the front edge moves up to ${amount}, ${whereIs(worst.bay, shelf.system)}.`;
}

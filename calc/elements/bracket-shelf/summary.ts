import type { Check, Outcome } from '../../../shared/check-result.ts';
import { inch } from '../../../shared/quantity/exact.ts';
import { show, type UnitSystem } from '../../../shared/quantity/index.ts';
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
  return `${verdictWords(verdict, governing, checks)} ${turnsOver(checks) ? overturned : whatIsSeen(shelf, movements)}`;
}

/** A board that turns over is in none of the states the other checks look at. */
function turnsOver(checks: readonly Check[]): boolean {
  return checks.some(
    ({ id, outcome }) => outcome === 'does-not-hold' && (id === 'lift-off' || id === 'tip-forward'),
  );
}

const overturned =
  'Before that is mended nothing is told by how far the board moves or what its brackets carry.';

function whatIsSeen(shelf: Shelf, { bays }: Movements): string {
  const worst = bays.reduce((a, b) =>
    b.longTerm.value + b.twistLongTerm.value_m > a.longTerm.value + a.twistLongTerm.value_m ? b : a,
  );
  const amount = atMost(worst.longTerm.value + worst.twistLongTerm.value_m, shelf.system);
  // It may be down or up: a resting end rises too.
  return `Over the years the ${worst.twistLongTerm.edge} edge moves as much as ${amount}, ${whereIs(worst.bay, shelf.system)}.`;
}

/** A movement as a rule is read, rounded up, so that it is never more than is said. */
function atMost(movement_m: number, system: UnitSystem): string {
  const finest_m = system === 'metric' ? 1e-4 : movement_m < inch ? inch / 32 : inch / 16;
  return show(Math.ceil(movement_m / finest_m - 1e-6) * finest_m, 'm', system);
}

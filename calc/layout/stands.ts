import { show, writeLength, inch } from '../../shared/quantity/index.ts';
import { needsStuds, studLines } from '../elements/fixing/studs.ts';
import type { Shelf } from '../elements/bracket-shelf/shelf.ts';

/** Places where brackets may stand along the board, in order; or why none can be proposed. */
export type Stands =
  | { readonly kind: 'studs' | 'free'; readonly places_m: readonly number[]; readonly rule: string }
  | { readonly kind: 'none'; readonly reason: string };

/** Where brackets may stand: on every stud behind the board, or anywhere on a fine grid where the whole wall holds screws. */
export function standsOf(shelf: Shelf): Stands {
  const { wall } = shelf.document;
  if (wall?.framing === 'hollow') {
    return none(
      'Nothing in a hollow wall carries a bracket. Say where its studs are, or let a board into them.',
    );
  }
  const isUnder = (at_m: number): boolean =>
    at_m >= shelf.armWidth_m / 2 - 1e-9 && at_m <= shelf.length_m - shelf.armWidth_m / 2 + 1e-9;
  if (wall === undefined || !needsStuds(wall)) {
    const step_m = shelf.system === 'metric' ? 0.025 : inch;
    const count = Math.floor(shelf.length_m / step_m + 1e-9) + 1;
    const places_m = Array.from({ length: count }, (_, i) => writeLength(i * step_m, shelf.system).value);
    return {
      kind: 'free',
      places_m: places_m.filter(isUnder),
      rule: `${wall === undefined ? 'No wall was given, so no stud is looked for' : 'The wall takes screws anywhere'}: brackets may stand every ${show(step_m, 'm', shelf.system)}, each arm wholly under the board.`,
    };
  }
  if (wall.studs === undefined) return none('Say where the studs are: brackets are proposed on studs only.');
  const places_m = studLines(wall, shelf.length_m)
    .map((at_m) => writeLength(at_m, shelf.system).value)
    .filter(isUnder);
  if (places_m.length < 2) return none('Fewer than two studs stand behind the board.');
  return {
    kind: 'studs',
    places_m,
    rule: 'Brackets stand on the centre lines of studs, each arm wholly under the board.',
  };
}

function none(reason: string): Stands {
  return { kind: 'none', reason };
}

/** How an end may stand out, in words. */
export const overhangRule =
  'An end stands out past its bracket by no more than half the bay beside it, unless nothing nearer the end can carry a bracket; its movement is checked as well (common practice, no source).';

/** Whether an end may stand out so far past its bracket. */
export function mayStandOut(overhang_m: number, bay_m: number, isNearest: boolean): boolean {
  return isNearest || overhang_m <= bay_m / 2 + 1e-9;
}

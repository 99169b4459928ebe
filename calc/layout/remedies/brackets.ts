import { listed } from '../../../shared/words.ts';
import { show, writeLength } from '../../../shared/quantity/index.ts';
import { movementUsedAtLeast } from '../../elements/bracket-shelf/stillness.ts';
import type { Shelf } from '../../elements/bracket-shelf/shelf.ts';
import { searchFree } from '../search-free.ts';
import { fitsJoints, mostBrackets, searchStuds } from '../search-studs.ts';
import { standsOf } from '../stands.ts';
import { onBrackets } from '../subject.ts';
import { withPositions } from '../layouts.ts';
import { armStep_m } from '../stock-sizes.ts';
import { effortOf, type Change, type Family, type Trouble } from './change.ts';

const mostNewBrackets = 2;

/** The best layout there is, where it is another than the present one. */
export function otherPositions({ input, shelf, allowance }: Trouble): Family {
  const stands = standsOf(shelf);
  if (stands.kind === 'none') return none;
  const search = stands.kind === 'studs' ? searchStuds : searchFree;
  if (allowance.left <= 0) return none;
  const found = search(shelf, stands.places_m, 1);
  const [best] = found.best;
  allowance.left -= found.judged;
  if (best === undefined) return none;
  const [count, before] = [best.shelf.positions_m.length, shelf.positions_m.length];
  if (best.standing === 'fails' && count > before + mostNewBrackets) return none;
  const places = listed(best.shelf.positions_m.map((at) => show(at, 'm', shelf.system)));
  const what =
    count === before
      ? `The ${count} brackets at ${places}.`
      : `${count} brackets instead of ${before}, at ${places}.`;
  const effort = effortOf.positions + Math.max(0, count - before) * 1.5;
  return {
    touches: 'all',
    changes: [{ kind: 'positions', what, effort, input: withPositions(input, best.shelf) }],
  };
}

/** One more bracket on a free stand, where the board then surely moves least. */
export function anotherBracket({ input, shelf }: Trouble): Family {
  if (shelf.positions_m.length >= mostBrackets) return none;
  const stands = standsOf(shelf);
  if (stands.kind === 'none') return none;
  const apart_m = Math.max(0.001, shelf.armWidth_m);
  const free = (stands.kind === 'studs' ? stands.places_m : middlesOf(shelf)).filter((place) =>
    shelf.positions_m.every((at) => Math.abs(at - place) >= apart_m),
  );
  const added = free
    .map((place) => ({
      place,
      moved: onBrackets(
        shelf,
        [...shelf.positions_m, place].sort((a, b) => a - b),
      ),
    }))
    .filter(({ moved }) => fitsJoints(moved))
    .map((each) => ({ ...each, atLeast: movementUsedAtLeast(each.moved) }))
    .sort((a, b) => a.atLeast - b.atLeast)
    .slice(0, mostNewBrackets);
  return {
    touches: 'all',
    changes: added.map(({ place, moved }): Change => {
      const where = stands.kind === 'studs' ? 'on the stud at' : 'at';
      const what = `One more bracket, ${where} ${show(place, 'm', shelf.system)}: ${moved.positions_m.length} in all.`;
      return {
        kind: 'another-bracket',
        what,
        effort: effortOf['another-bracket'],
        input: withBracket(input, moved, place),
      };
    }),
  };
}

/** Screws from the arms into a board that only rests on them. */
export function screwDown({ input, shelf }: Trouble): Family {
  if (shelf.hold !== 'resting') return none;
  const changed = { ...input, brackets: { ...input.brackets, hold: 'screwed' as const } };
  const what = 'The board screwed to its brackets from below instead of resting on them.';
  const effort = effortOf['screw-down'];
  return { touches: 'all', changes: [{ kind: 'screw-down', what, effort, input: changed }] };
}

/** Longer arms, up to the depth of the board. */
export function longerArms({ input, shelf }: Trouble): Family {
  const { board, brackets } = shelf.document;
  const step = armStep_m[shelf.system];
  const deepest = board.depth + (board.rail?.thickness ?? 0);
  const first = Math.floor(brackets.arm / step + 1e-6) + 1;
  const lengths = Array.from({ length: 40 }, (_, k) => (first + k) * step).filter((arm) => arm < deepest);
  const few = [lengths[0], lengths[(lengths.length - 1) >> 1], deepest].flatMap((arm) => arm ?? []);
  const wanted = [...new Set(few)].filter((arm) => arm > brackets.arm + 1e-6);
  const alike = { rated: ' with the same rating', steel: ' of the same bar', unknown: '' }[
    shelf.capacity.basis
  ];
  return {
    touches: 'all',
    changes: wanted.map((arm): Change => {
      const written = writeLength(arm, shelf.system);
      const what = `Brackets with arms ${show(arm, 'm', shelf.system)} long instead of ${show(brackets.arm, 'm', shelf.system)}${alike}.`;
      const changed = { ...input, brackets: { ...input.brackets, arm: written.text } };
      return { kind: 'longer-arm', what, effort: effortOf['longer-arm'], input: changed };
    }),
  };
}

const none: Family = { touches: 'all', changes: [] };

/** Middles of the bays, and of what stands out at the ends, on whole steps. */
function middlesOf({ positions_m, length_m, system, armWidth_m }: Shelf): number[] {
  const step = armStep_m[system];
  const cuts = [0, ...positions_m, length_m];
  return cuts
    .slice(1)
    .map((right, i) => Math.round((right + (cuts[i] ?? 0)) / 2 / step) * step)
    .map((at) => writeLength(at, system).value)
    .filter((at) => at >= armWidth_m / 2 && at <= length_m - armWidth_m / 2);
}

/** The check with one place put in among the others, whose own words stay. */
function withBracket(
  input: Trouble['input'],
  { positions_m, system }: Shelf,
  place: number,
): Trouble['input'] {
  const given = input.brackets.positions;
  const before = positions_m.indexOf(place);
  const positions = [...given.slice(0, before), writeLength(place, system).text, ...given.slice(before)];
  return { ...input, brackets: { ...input.brackets, positions } };
}

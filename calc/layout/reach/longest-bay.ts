import type { ReachLimit } from '../../../shared/check-result.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { inch, quantity, writeLength, writeLoadDown } from '../../../shared/quantity/index.ts';
import { needsStuds } from '../../elements/fixing/studs.ts';
import type { Shelf } from '../../elements/bracket-shelf/shelf.ts';
import { withoutWeight } from '../remedies/contents.ts';
import { tryShelf, type Subject } from '../subject.ts';
import { largestThatHolds } from './boundary.ts';
import { holds, limitAt, noLimit, notAsked } from './limit.ts';
import { widestBay } from './widest-bay.ts';

type LoadInput = NonNullable<BracketShelfInput['loads']>[number];

/** The longest and the shortest board a check takes, a little inside. */
const longestBoard_m = 11.99;
const shortestBoard_m = 0.301;

/**
 * The longest the widest bay may be if the whole shelf is stretched: the board, every bay and overhang, and the places and
 * lengths of the loads grow in proportion, line loads keep their weight for each length.
 */
export function longestBay({ input, shelf }: Subject): ReachLimit {
  const bay = widestBay(shelf);
  const basis = `The whole shelf stretched in proportion: every bay and overhang, and where the loads stand; line loads keep their weight for each length${needsStuds(shelf.document.wall) ? ', and a stud stands behind every bracket' : ''}.`;
  const stretched = (factor: number): BracketShelfInput => stretch(input, shelf, factor);
  const holdsAt = (factor: number): boolean => {
    const longer = tryShelf(stretched(factor));
    return longer !== null && holds(longer);
  };
  const most = longestBoard_m / shelf.length_m;
  const least = Math.min(1, shortestBoard_m / shelf.length_m);
  const found = largestThatHolds(holdsAt, { least, start: 1, most });
  if (found === null) {
    const shortest = tryShelf(stretched(1));
    return shortest === null
      ? notAsked(basis, 'A shelf stretched in this way can not be read.')
      : noLimit(shortest, basis, 'however short it gets');
  }
  const wide_m = bay.to_m - bay.from_m;
  const step_m = shelf.system === 'metric' ? 0.001 : inch / 16;
  const whole_m = Math.floor((wide_m * found) / step_m) * step_m;
  const bay_m = holdsAt(whole_m / wide_m) ? whole_m : wide_m * found;
  return limitAt(stretched(bay_m / wide_m), {
    basis,
    value: quantity(bay_m, 'm', shelf.system),
    reason: found >= most ? 'It holds up to the longest board this check takes.' : '',
  });
}

/** A check with every length along the wall times a factor. */
function stretch(input: BracketShelfInput, shelf: Shelf, factor: number): BracketShelfInput {
  const { document, system, positions_m } = shelf;
  const long = (value_m: number): string => writeLength(value_m * factor, system).text;
  const positions = positions_m.map(long);
  const { wall, board } = input;
  const joints = document.board.joints;
  return {
    ...input,
    board: {
      ...board,
      length: long(shelf.length_m),
      ...(joints === undefined ? {} : { joints: joints.map(long) }),
    },
    brackets: { ...input.brackets, positions },
    ...(wall === undefined || !needsStuds(document.wall)
      ? {}
      : { wall: { ...wall, studs: { at: positions } } }),
    ...(input.loads === undefined
      ? {}
      : { loads: input.loads.map((load, index) => stretchLoad(load, shelf, index, long)) }),
  };
}

function stretchLoad(
  load: LoadInput,
  { document, actions, system }: Shelf,
  index: number,
  long: (value_m: number) => string,
): LoadInput {
  const given = document.loads?.[index];
  if (load.kind === 'roaming' || given === undefined || given.kind === 'roaming') return load;
  if (load.kind === 'point') return given.kind === 'point' ? { ...load, at: long(given.at) } : load;
  if (given.kind === 'point') return load;
  const ends = {
    ...(given.from === undefined ? {} : { from: long(given.from) }),
    ...(given.to === undefined ? {} : { to: long(given.to) }),
  };
  if (load.kind === 'area') return { ...load, ...ends };
  const acting = actions[index]?.load;
  if (load.amount !== undefined || acting?.kind !== 'line') return { ...load, ...ends };
  return {
    ...withoutWeight(load),
    ...ends,
    amount: writeLoadDown(acting.load_Npm, 'line-load', system, 6).text,
  };
}

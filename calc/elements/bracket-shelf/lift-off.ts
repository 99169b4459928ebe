import { show } from '../../../shared/quantity/index.ts';
import { contextOf, type Context } from './context.ts';
import { makeCheck } from '../make-check.ts';
import type { Judged } from '../judged.ts';
import type { Shelf } from './shelf.ts';
import { standings } from './standings.ts';

/** What comes of a board that only rests on its brackets. */
export interface LiftOff {
  readonly context: Context;
  readonly warnings: readonly string[];
  /** That it can't be said on which brackets the board stands: too many sets of them, or on arms that bend. */
  readonly judged: readonly Judged[];
}

/**
 * A board that only rests on its brackets may lift off some of them, and then stands on the others. Every set of brackets
 * it can come to stand on is looked for, and the board is worked out on each of them as well as on all: the worst counts.
 */
export function liftOff(context: Context): LiftOff {
  const { shelf, solved } = context;
  const nothing = { context, warnings: [], judged: [] };
  if (shelf.hold !== 'resting') return nothing;
  const [{ model }] = solved;
  const tolerance = 1e-9 * (shelf.board.selfWeight_Npm * shelf.length_m);
  const liftsFromAll = shelf.positions_m.map((_, index) =>
    context.situations.some(
      ({ solved: on, forces }) => on.model === model && (forces.reactionMin_N[index] ?? 0) < -tolerance,
    ),
  );
  const judged = liftsOnBentArms(context, tolerance) ? [onBentArms(context)] : [];
  if (!liftsFromAll.includes(true)) return { ...nothing, judged };
  const { states, soft_Npm, complete } = standings(context);
  const lifting = shelf.positions_m.flatMap((_, index) =>
    liftsFromAll[index] === true || states.some((state) => !state.includes(index)) ? [index] : [],
  );
  const [first, ...others] = solved.map(({ model: { stiffness } }) => stiffness);
  const stiffnesses = (complete ? states : []).map((state) =>
    shelf.positions_m.map((_, index) => (state.includes(index) ? Infinity : soft_Npm)),
  );
  return {
    context:
      stiffnesses.length === 0 ? context : contextOf(shelf, [first ?? Infinity, ...others, ...stiffnesses]),
    warnings: [complete ? liftsOff(shelf, lifting) : liftsOffMany],
    judged: complete ? judged : [tooMany(context)],
  };
}

function liftsOff(shelf: Shelf, lifting: readonly number[]): string {
  const one = lifting.length === 1;
  const places = lifting.map(
    (index) => `${index + 1} (at ${show(shelf.positions_m[index] ?? 0, 'm', shelf.system)})`,
  );
  return `The board only rests on its brackets and lifts off ${one ? 'bracket' : 'brackets'} ${places.join(', ')} in some arrangement of the loads; it rocks and rattles there. It is worked out with and without ${one ? 'it' : 'them'}. Screws from the arms into the board stop it.`;
}

const liftsOffMany =
  'The board only rests on its brackets and lifts off many of them as the loads come and go; it rocks and rattles there. Screws from the arms into the board stop it.';

/** Share of the largest reaction by which bending of the arms may change one without being told apart from stiff arms. */
const asGoodAsStiff = 0.02;

/** Whether the board lifts off arms that bend so much that what is worked out on stiff ones does not tell of them. */
function liftsOnBentArms({ solved: [stiff], situations }: Context, tolerance_N: number): boolean {
  return situations.some(({ solved, combination, forces }) => {
    if (solved === stiff || forces.reactionMin_N.every((reaction_N) => reaction_N >= -tolerance_N))
      return false;
    const onStiff = situations.find((each) => each.solved === stiff && each.combination === combination);
    const most_N = Math.max(...forces.reactionMax_N);
    const differs = (some: readonly number[], others: readonly number[] | undefined): boolean =>
      some.some(
        (reaction_N, index) => Math.abs(reaction_N - (others?.[index] ?? 0)) > asGoodAsStiff * most_N,
      );
    return (
      differs(forces.reactionMin_N, onStiff?.forces.reactionMin_N) ||
      differs(forces.reactionMax_N, onStiff?.forces.reactionMax_N)
    );
  });
}

function onBentArms(context: Context): Judged {
  return standing(
    context,
    'The board only rests on arms of steel, which bend, and lifts off some of them: on which it then stands, and how far they bend, is not worked out. Nothing is said of it but what does not hold on stiff arms or on arms that hold it down. Screwed to the brackets it can be worked out.',
  );
}

function tooMany(context: Context): Judged {
  return standing(
    context,
    'The board only rests on its brackets, and as the loads come and go it stands on too many different sets of them for all to be worked out. Nothing is said of it but what does not hold even where it stands on all. Screwed to the brackets, or on fewer of them, it can be worked out.',
  );
}

/** That it can't be said on which brackets the board stands. */
function standing({ shelf, service }: Context, note: string): Judged {
  const parts = {
    id: 'standing',
    title: 'The brackets the board stands on',
    unit: 'N',
    demand: shelf.board.selfWeight_Npm * shelf.length_m,
    capacity: null,
    clause: 'equilibrium',
    where: 'along the whole board',
    combination: service[0].combination.name,
    note,
  } as const;
  return { check: makeCheck(parts, shelf.system), steps: [] };
}

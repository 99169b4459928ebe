import type { Bay } from '../../mechanics/bays.ts';
import type { Context, Solved } from './context.ts';
import type { FactorOf, Peak } from './forces.ts';
import { MovingLoad } from '../../mechanics/moving-load.ts';
import { largestMovements, type Datum, type Moved } from './movement.ts';
import type { Model } from './model.ts';
import { twistMovement, type TwistOfBay } from './twist-of-bay.ts';

/** How far a bay moves, and on which brackets. */
export interface MovedOn extends Moved {
  readonly model: Model;
  readonly datum: Datum;
  /** The board as it stands with nothing on it. */
  readonly empty: Model;
}

/** How one bay moves, in m: along the board's twist axis, and what twist adds at the edge that moves most. */
export interface BayMovements {
  readonly bay: Bay;
  /** Length its limit goes by: its own, or twice an overhang. */
  readonly span_m: number;
  readonly live: MovedOn;
  readonly longTerm: MovedOn;
  readonly twistLive: TwistOfBay;
  readonly twistLongTerm: TwistOfBay;
}

export interface Movements {
  readonly bays: readonly BayMovements[];
  /** Largest movement of the middle line from where the board began. */
  readonly live: Peak;
  readonly longTerm: Peak;
}

/** Everything but the board's own weight. */
export const liveFactor: FactorOf = (action) => (action === null ? 0 : 1);

/** Creep on the weight and on what stays; the rest once. */
export function longTermFactor(creep: number): FactorOf {
  return (action) => (action === null ? creep : creep * action.sustained + (1 - action.sustained));
}

/** Movement of every bay, the worst over the ideas of how stiff the brackets are. */
export function movementsOf({ shelf, solved }: Context): Movements {
  const longTerm = longTermFactor(shelf.board.creep.factor);
  const onFewer = solved.filter(isOnFewer);
  const onAll = solved.filter((each) => !isOnFewer(each));
  const reaches = onFewer.map(({ model }) => reachesOf(model));
  const lifted = solved[0].model.bays.map((_, index) =>
    worstLifted(onFewer, reaches, index, longTerm, solved[0].model),
  );
  const worst = (index: number, datum: Datum): Pair => {
    const [live, later] = worstOver(onAll, index, longTerm, datum);
    const [liftedLive, liftedLater] = lifted[index] ?? [live, later];
    return [more(live, liftedLive), more(later, liftedLater)];
  };
  const bays = solved[0].model.bays.map((bay, index): BayMovements => {
    const [live, later] = worst(index, 'bay');
    return {
      bay,
      span_m: (bay.to_m - bay.from_m) * (bay.kind === 'span' ? 1 : 2),
      live,
      longTerm: later,
      twistLive: twistMovement(shelf, bay, liveFactor),
      twistLongTerm: twistMovement(shelf, bay, longTerm),
    };
  });
  const isRigid = solved.every(({ model }) =>
    model.prepared.beam.supports.every(({ stiffness_Npm }) => stiffness_Npm === Infinity),
  );
  const overall = isRigid
    ? bays.map((bay) => [bay.live, bay.longTerm] as const)
    : bays.map((_, index) => worst(index, 'start'));
  return {
    bays,
    live: overall.map(([live]) => live).reduce(more),
    longTerm: overall.map(([, later]) => later).reduce(more),
  };
}

/** A board that lifts off a bracket stands on fewer of them, each with a stiffness of its own. */
function isOnFewer({ model }: Solved): boolean {
  return typeof model.stiffness !== 'number';
}

/** Movement under load, and over the years. */
type Pair = readonly [MovedOn, MovedOn];

/** Movement of one bay, the worst over the ideas of how stiff the brackets are. */
function worstOver(solved: readonly Solved[], index: number, longTerm: FactorOf, datum: Datum): Pair {
  return solved
    .map(({ model }) =>
      pairOf(
        model,
        model,
        datum,
        largestMovements(model, bayOf(model, index), [liveFactor, longTerm], datum),
      ),
    )
    .reduce(moreOfEach);
}

/**
 * The same over the sets of brackets a board that lifts off comes to stand on; null where it stands on all. It is measured
 * from the line of all the brackets, not from itself, and one after another: a set on which the bay surely moves no more
 * than on those before is not searched.
 *
 * @param empty the board where it began
 */
function worstLifted(
  onFewer: readonly Solved[],
  reaches: readonly (readonly number[])[],
  index: number,
  longTerm: FactorOf,
  empty: Model,
): Pair | null {
  let worst: Pair | null = null;
  const byReach = onFewer
    .map(({ model }, k) => ({ model, reach_mpN: reaches[k]?.[index] ?? Infinity }))
    .sort((a, b) => b.reach_mpN - a.reach_mpN);
  for (const { model, reach_mpN } of byReach) {
    const floors: number[] = worst === null ? [] : worst.map(({ value }) => value);
    const known = { empty, reach_mpN, floors };
    const found = largestMovements(model, bayOf(model, index), [liveFactor, longTerm], 'start', known);
    const pair = pairOf(model, empty, 'start', found);
    worst = worst === null ? pair : moreOfEach(worst, pair);
  }
  return worst;
}

function bayOf({ bays }: Model, index: number): Bay {
  const bay = bays[index];
  if (bay === undefined) throw new RangeError('every idea of the brackets has the same bays');
  return bay;
}

function pairOf(model: Model, empty: Model, datum: Datum, [live, later]: readonly Moved[]): Pair {
  if (live === undefined || later === undefined) throw new RangeError('a movement for each set of factors');
  return [
    { ...live, model, empty, datum },
    { ...later, model, empty, datum },
  ];
}

function moreOfEach(a: Pair, b: Pair): Pair {
  return [more(a[0], b[0]), more(a[1], b[1])];
}

function more(a: MovedOn, b: MovedOn): MovedOn {
  return b.value > a.value ? b : a;
}

/**
 * For each bay, what no place of it moves more than under a unit load anywhere, m/N. Measured from where the board began,
 * what a load at one place does at another is the same the other way round (Maxwell), and no more than the geometric mean
 * of what each does at its own place, since the energy of the two together is never below nothing.
 */
function reachesOf({ bays, influence, prepared, roaming }: Model): readonly number[] {
  if (roaming.length === 0) return bays.map(() => 0);
  const own = bays.map((bay) => new MovingLoad(prepared.beam, bay, influence, true).mostUnderLoad());
  const most = Math.max(...own);
  return own.map((each) => Math.sqrt(each * most));
}

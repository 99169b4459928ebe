import type { Bay } from '../../mechanics/bays.ts';
import type { Context, Solved } from './context.ts';
import type { FactorOf, Peak } from './forces.ts';
import { MovingLoad } from '../../mechanics/moving-load.ts';
import { largestMovements, type Datum } from './movement.ts';
import type { Model } from './model.ts';
import { twistMovement, type TwistOfBay } from './twist-of-bay.ts';

/** How one bay moves, in m: along the board's twist axis, and what twist adds at the edge that moves most. */
export interface BayMovements {
  readonly bay: Bay;
  /** Length its limit goes by: its own, or twice an overhang. */
  readonly span_m: number;
  readonly live: Peak;
  readonly longTerm: Peak;
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
  const worst = (index: number, datum: Datum): readonly [Peak, Peak] => {
    const [live, later] = worstOver(onAll, index, longTerm, datum);
    const [liftedLive, liftedLater] = lifted[index] ?? [live, later];
    return [largestPeak([live, liftedLive]), largestPeak([later, liftedLater])];
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
    live: largestPeak(overall.map(([live]) => live)),
    longTerm: largestPeak(overall.map(([, later]) => later)),
  };
}

/** A board that lifts off a bracket stands on fewer of them, each with a stiffness of its own. */
function isOnFewer({ model }: Solved): boolean {
  return typeof model.stiffness !== 'number';
}

/** Movement under load and over the years of one bay, the worst over the ideas of how stiff the brackets are. */
function worstOver(
  solved: readonly Solved[],
  index: number,
  longTerm: FactorOf,
  datum: Datum,
): readonly [Peak, Peak] {
  const each = solved.flatMap(({ model }) => {
    const bay = model.bays[index];
    return bay === undefined ? [] : [largestMovements(model, bay, [liveFactor, longTerm], datum)];
  });
  return [
    largestPeak(each.flatMap(([live]) => live ?? [])),
    largestPeak(each.flatMap(([, later]) => later ?? [])),
  ];
}

/**
 * The same over the sets of brackets a board that lifts off comes to stand on. It is measured from the line of all the
 * brackets, not from itself, and one after another: a set on which the bay surely moves no more than on those before is
 * not searched.
 *
 * @param empty the board where it began
 */
function worstLifted(
  onFewer: readonly Solved[],
  reaches: readonly (readonly number[])[],
  index: number,
  longTerm: FactorOf,
  empty: Model,
): readonly [Peak, Peak] {
  let worst: readonly [Peak, Peak] = [largestPeak([]), largestPeak([])];
  onFewer
    .map(({ model }, k) => ({ model, reach_mpN: reaches[k]?.[index] ?? Infinity }))
    .sort((a, b) => b.reach_mpN - a.reach_mpN)
    .forEach(({ model, reach_mpN }) => {
      const bay = model.bays[index];
      if (bay === undefined) return;
      const floors = worst.map(({ value }) => value);
      const known = { empty, reach_mpN, floors };
      const [live, later] = largestMovements(model, bay, [liveFactor, longTerm], 'start', known);
      worst = [largestPeak([worst[0], live ?? worst[0]]), largestPeak([worst[1], later ?? worst[1]])];
    });
  return worst;
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

function largestPeak(peaks: readonly Peak[]): Peak {
  return peaks.reduce((worst, peak) => (peak.value > worst.value ? peak : worst), { value: 0, at_m: 0 });
}

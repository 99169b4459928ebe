import type { Bay } from '../../mechanics/bays.ts';
import type { Limit } from '../../../shared/check-document/index.ts';
import type { Context, Solved } from './context.ts';
import type { FactorOf, Peak } from './forces.ts';
import { largestMovement, type Datum } from './movement.ts';
import { twistMovement } from './twist-of-bay.ts';

/** How one bay moves, in m: along the board's middle line, and what twist adds at the front edge. */
export interface BayMovements {
  readonly bay: Bay;
  /** Length its limit goes by: its own, or twice an overhang. */
  readonly span_m: number;
  readonly live: Peak;
  readonly longTerm: Peak;
  readonly twistLive: number;
  readonly twistLongTerm: number;
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
  const bays = solved[0].model.bays.map((bay, index): BayMovements => {
    const worst = (factor: FactorOf): Peak => worstOver(solved, index, factor, 'bay');
    return {
      bay,
      span_m: (bay.to_m - bay.from_m) * (bay.kind === 'span' ? 1 : 2),
      live: worst(liveFactor),
      longTerm: worst(longTerm),
      twistLive: twistMovement(shelf, bay, liveFactor),
      twistLongTerm: twistMovement(shelf, bay, longTerm),
    };
  });
  const isRigid = solved.every(({ model }) =>
    model.prepared.beam.supports.every(({ stiffness_Npm }) => stiffness_Npm === Infinity),
  );
  const overall = (pick: (movement: BayMovements) => Peak, factor: FactorOf): Peak =>
    largestPeak(isRigid ? bays.map(pick) : bays.map((_, index) => worstOver(solved, index, factor, 'start')));
  return {
    bays,
    live: overall(({ live }) => live, liveFactor),
    longTerm: overall((bay) => bay.longTerm, longTerm),
  };
}

function worstOver(solved: readonly Solved[], index: number, factor: FactorOf, datum: Datum): Peak {
  return largestPeak(
    solved.flatMap(({ model }) => {
      const bay = model.bays[index];
      return bay === undefined ? [] : [largestMovement(model, bay, factor, datum)];
    }),
  );
}

function largestPeak(peaks: readonly Peak[]): Peak {
  return peaks.reduce((worst, peak) => (peak.value > worst.value ? peak : worst), { value: 0, at_m: 0 });
}

/** What a limit allows on a span, m; null where there is none. */
export function allowedBy(limit: Limit, span_m: number): number | null {
  if (limit.kind === 'none') return null;
  return limit.kind === 'amount' ? limit.amount_m : span_m / limit.divisor;
}

import { parseLimit, type Limit } from '../../../shared/check-document/index.ts';
import type { Bay } from '../../mechanics/bays.ts';
import { MovingLoad } from '../../mechanics/moving-load.ts';
import { valueAt } from '../../mechanics/polynomial.ts';
import type { FactorOf } from './forces.ts';
import { modelOf, type Model } from './model.ts';
import { allowedBy } from '../allowed-by.ts';
import { liveFactor, longTermFactor, type Movements } from './movements.ts';
import type { Shelf } from './shelf.ts';
import { twistMovement } from './twist-of-bay.ts';

/** What movement is measured by where a shelf has no limit of its own. */
const usualLongTerm: Limit = parseLimit('L/240') ?? { kind: 'none', written: 'none' };

/** Whether a shelf has a limit of movement, so that what surely moves too far surely does not hold. */
export function hasLimit({ limits }: Shelf): boolean {
  return limits.live.kind !== 'none' || limits.longTerm.kind !== 'none';
}

/** The limits a shelf is compared by: its own, or the usual one over the years where it has none. */
function yardstick(shelf: Shelf): Shelf['limits'] {
  const { limits } = shelf;
  return hasLimit(shelf) ? limits : { ...limits, longTerm: usualLongTerm };
}

/** The worst share of its limit that an edge of any bay moves: the smaller, the stiller the shelf. */
export function movementUsed(shelf: Shelf, { bays }: Movements): number {
  const limits = yardstick(shelf);
  return Math.max(
    ...bays.flatMap(({ span_m, live, longTerm, twistLive, twistLongTerm }) => [
      share(live.value + twistLive.value_m, limits.live, span_m),
      share(longTerm.value + twistLongTerm.value_m, limits.longTerm, span_m),
    ]),
  );
}

/**
 * A share of its limit that some bay surely moves: the movement of the middle of a span, or the tip of an overhang, under
 * all that pushes it down and a roaming load that stands there. It is one place and one arrangement of those that
 * `movementUsed` takes the worst of, and so never more than that.
 */
export function movementUsedAtLeast(shelf: Shelf): number {
  const limits = yardstick(shelf);
  const model = modelOf(shelf, Infinity);
  const longTerm = longTermFactor(shelf.board.creep.factor);
  return Math.max(
    ...model.bays.map((bay) => {
      const span_m = (bay.to_m - bay.from_m) * (bay.kind === 'span' ? 1 : 2);
      const under =
        model.roaming.length === 0
          ? undefined
          : new MovingLoad(model.prepared.beam, bay, model.influence, false).underLoad();
      const moved = (factor: FactorOf): number =>
        Math.max(0, movedAt(model, bay, factor, under)) + twistMovement(shelf, bay, factor).value_m;
      return Math.max(
        limits.live.kind === 'none' ? 0 : share(moved(liveFactor), limits.live, span_m),
        limits.longTerm.kind === 'none' ? 0 : share(moved(longTerm), limits.longTerm, span_m),
      );
    }),
  );
}

/**
 * A share of its limit that one bay surely moves under load, whatever the other bays are: the twist of the bay, and the
 * loads on it as if the board were clamped over the brackets beside it. Under a load in the middle or along the whole bay
 * clamping can only lessen what its middle moves, and the loads of other bays may be gone, so it is never more than
 * `movementUsed`. Where fixed loads elsewhere may lift the bay, its twist alone counts.
 */
export function bayMovementUsedAtLeast(shelf: Shelf, bay: Pick<Bay, 'from_m' | 'to_m' | 'kind'>): number {
  const limits = yardstick(shelf);
  const span_m = (bay.to_m - bay.from_m) * (bay.kind === 'span' ? 1 : 2);
  const isLifted = shelf.actions.some(({ free }) => !free);
  const moved = isLifted ? 0 : clampedMovement(shelf, bay);
  return share(moved + twistMovement(shelf, bay, liveFactor).value_m, limits.live, span_m);
}

/** What the middle of a clamped span moves, or the tip of a clamped overhang, under what covers it whole and what roams. */
function clampedMovement(
  { actions, board }: Shelf,
  { from_m, to_m, kind }: Pick<Bay, 'from_m' | 'to_m' | 'kind'>,
): number {
  const L = to_m - from_m;
  const { EI_Nm2: EI, GA_N } = board;
  const GA = GA_N ?? Infinity;
  let [line_Npm, roaming_N] = [0, 0];
  for (const { load } of actions) {
    if (load.kind === 'roaming') roaming_N = Math.max(roaming_N, load.load_N);
    if (load.kind === 'line' && load.from_m <= from_m && load.to_m >= to_m) line_Npm += load.load_Npm;
  }
  return kind === 'span'
    ? roaming_N * (L ** 3 / (192 * EI) + L / (4 * GA)) + line_Npm * (L ** 4 / (384 * EI) + L ** 2 / (8 * GA))
    : roaming_N * (L ** 3 / (3 * EI) + L / GA) + line_Npm * (L ** 4 / (8 * EI) + L ** 2 / (2 * GA));
}

function share(moved_m: number, limit: Limit, span_m: number): number {
  const allowed = allowedBy(limit, span_m);
  return allowed === null ? 0 : moved_m / allowed;
}

function movedAt(model: Model, bay: Bay, factor: FactorOf, under: readonly number[] | undefined): number {
  const { grid_m } = model.prepared;
  const length = bay.to_m - bay.from_m;
  const place = { 'left-overhang': 0, span: length / 2, 'right-overhang': length }[bay.kind];
  let interval = bay.first;
  while (interval + 1 < bay.end && (grid_m[interval + 1] ?? 0) <= bay.from_m + place) interval++;
  const t = bay.from_m + place - (grid_m[interval] ?? 0);
  let moved = 0;
  for (const unit of model.cases) {
    const each = factor(unit.action) * valueAt(unit.movement[interval] ?? [0], t);
    if (unit.always || each > 0) moved += each;
  }
  const roaming_N = Math.max(0, ...model.roaming.map(({ action, load_N }) => load_N * factor(action)));
  return under === undefined ? moved : moved + roaming_N * Math.max(0, valueAt(under, place));
}

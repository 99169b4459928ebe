import type { Bay } from '../../mechanics/bays.ts';
import { largestSum, sortedSum } from '../../mechanics/envelope.ts';
import { MovingLoad } from '../../mechanics/moving-load.ts';
import { addScaled, shifted, type Polynomial } from '../../mechanics/polynomial.ts';
import type { FactorOf, Peak } from './forces.ts';
import type { Model, UnitCase } from './model.ts';
import { movementIn } from '../../mechanics/beam-field.ts';

/** How movement is measured: from the straight line between a bay's supports, or from where the board began. */
export type Datum = 'bay' | 'start';

/** Movement of one bay from every load but the roaming one, interval by interval; what surely helps is in `always`. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly always: Polynomial;
  readonly free: readonly Polynomial[];
}

/**
 * The largest movement of a bay, down or up, over every arrangement of the loads, for each of several sets of factors;
 * `value` is its size.
 *
 * A roaming load is moved to where it does most for the place that moves most, and the place is found again, until
 * neither changes: each of the two is exact, and the movement can only grow.
 */
export function largestMovements(model: Model, bay: Bay, factors: readonly FactorOf[], datum: Datum): Peak[] {
  const moving =
    model.roaming.length === 0
      ? undefined
      : new MovingLoad(model.prepared.beam, bay, model.influence, datum === 'start');
  return factors.map((factor) => {
    const down = oneWay(model, bay, factor, datum, moving, 1, 0);
    const up = oneWay(model, bay, factor, datum, moving, -1, down.value);
    const worst = up.value > down.value ? up : down;
    return { value: worst.value, at_m: bay.from_m + worst.at_m };
  });
}

/** The largest movement in one sense; where it surely can't beat `floor`, no more is said than that. */
function oneWay(
  model: Model,
  bay: Bay,
  factor: FactorOf,
  datum: Datum,
  moving: MovingLoad | undefined,
  sense: 1 | -1,
  floor: number,
): Peak {
  const stretches = stretchesOf(model, bay, factor, datum, sense);
  const standing = withoutRoaming(bay, stretches);
  const roaming_N = Math.max(0, ...model.roaming.map(({ action, load_N }) => load_N * factor(action)));
  if (moving === undefined || roaming_N === 0) return standing;
  if (sense < 0 && standing.value + roaming_N * moving.mostLift() <= floor) return standing;
  return withRoaming(moving, bay, sense, roaming_N, stretches, standing);
}

/** Places here run from the bay's left end. */
function withoutRoaming(bay: Bay, stretches: readonly Stretch[]): Peak {
  let worst: Peak = { value: 0, at_m: restingPlace(bay) };
  for (const { from, to, always, free } of stretches) {
    const peak = largestSum(always, free, 0, to - from, worst.value);
    if (peak.value > worst.value) worst = { value: peak.value, at_m: from + peak.at };
  }
  return worst;
}

const mostRounds = 20;

function withRoaming(
  moving: MovingLoad,
  bay: Bay,
  sense: 1 | -1,
  roaming_N: number,
  stretches: readonly Stretch[],
  start: Peak,
): Peak {
  let worst = start;
  let place = start.value > 0 ? start.at_m : restingPlace(bay);
  for (let round = 0; round < mostRounds; round++) {
    const stand = moving.worstStand(place, sense);
    if (stand.value <= 0) return worst;
    let best: Peak = { value: -Infinity, at_m: place };
    for (const piece of moving.shapeUnder(stand.at)) {
      const own = piece.movement.map((coefficient) => coefficient * sense * roaming_N);
      for (const { from, to, always, free } of stretches) {
        const [left, right] = [Math.max(from, piece.from), Math.min(to, piece.to)];
        if (right <= left) continue;
        const peak = largestSum(always, [...free, shifted(own, from)], left - from, right - from, best.value);
        if (peak.value > best.value) best = { value: peak.value, at_m: from + peak.at };
      }
    }
    const gained = best.value - worst.value;
    if (gained > 0) worst = best;
    if (gained <= 1e-9 * worst.value) return worst;
    place = best.at_m;
  }
  return worst;
}

function stretchesOf(model: Model, bay: Bay, factor: FactorOf, datum: Datum, sense: 1 | -1): Stretch[] {
  const { grid_m } = model.prepared;
  const stretches: Stretch[] = [];
  for (let i = bay.first; i < bay.end; i++) {
    const always = [0, 0, 0, 0, 0];
    const free: Polynomial[] = [];
    for (const unit of model.cases) {
      const share = factor(unit.action) * sense;
      if (share === 0) continue;
      const movement = movementOf(unit, i, datum);
      if (unit.always) addScaled(always, movement, share);
      else free.push(share === 1 ? movement : Array.from(movement, (coefficient) => coefficient * share));
    }
    const from = (grid_m[i] ?? 0) - bay.from_m;
    const to = (grid_m[i + 1] ?? 0) - bay.from_m;
    const { base, turning } = sortedSum(always, free, 0, to - from);
    stretches.push({ from, to, always: base, free: turning });
  }
  return stretches;
}

function movementOf(unit: UnitCase, interval: number, datum: Datum): Polynomial {
  return datum === 'bay' ? (unit.movement[interval] ?? [0]) : movementIn(unit.field, interval);
}

/** Where a bay moves most if nothing else is known: its middle, or its tip. */
function restingPlace(bay: Bay): number {
  const length = bay.to_m - bay.from_m;
  return { 'left-overhang': 0, span: length / 2, 'right-overhang': length }[bay.kind];
}

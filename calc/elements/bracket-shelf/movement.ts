import type { Bay } from '../../mechanics/bays.ts';
import { largestSum, sortedSum } from '../../mechanics/envelope.ts';
import { MovingLoad } from '../../mechanics/moving-load.ts';
import { addScaled, scaled, shifted, type Polynomial } from '../../mechanics/polynomial.ts';
import type { FactorOf, Peak } from './forces.ts';
import type { Model, UnitCase } from './model.ts';
import { movementIn } from '../../mechanics/beam-field.ts';

/** How movement is measured: from the straight line between a bay's supports, or from where the board began. */
export type Datum = 'bay' | 'start';

/** The largest movement of a bay, and whether down (1) or up. */
export interface Moved extends Peak {
  readonly sense: 1 | -1;
}

/** Movement of one bay from every load but the roaming one, interval by interval; what surely helps is in `always`. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly always: Polynomial;
  readonly free: readonly Polynomial[];
}

/** What is known of a bay before its movement is looked for. */
export interface Known {
  /** The board as it stands with nothing on it, where that is on other brackets than in the model. */
  readonly empty?: Model;
  /** No place of the bay moves more than this under a unit load, wherever it stands, m/N. */
  readonly reach_mpN?: number;
  /** For each set of factors, a movement already found: where the bay surely moves no more, no more is said than that. */
  readonly floors?: readonly number[];
}

/**
 * The largest movement of a bay, down or up, over every arrangement of the loads, for each of several sets of factors;
 * `value` is its size.
 *
 * A roaming load is moved to where it does most for the place that moves most, and the place is found again, until
 * neither changes: each of the two is exact, and the movement can only grow.
 */
export function largestMovements(
  model: Model,
  bay: Bay,
  factors: readonly FactorOf[],
  datum: Datum,
  { empty = model, reach_mpN = Infinity, floors = [] }: Known = {},
): Moved[] {
  const moving =
    model.roaming.length === 0
      ? undefined
      : new MovingLoad(model.prepared.beam, bay, model.influence, datum === 'start');
  return factors.map((factor, index) => {
    const sought = { model, bay, factor, datum, moving, empty, reach_mpN };
    const floor = floors[index] ?? 0;
    const down = oneWay(sought, 1, floor);
    const up = oneWay(sought, -1, Math.max(floor, down.value));
    const isUp = up.value > down.value;
    const { value, at_m } = isUp ? up : down;
    return { value, at_m: bay.from_m + at_m, sense: isUp ? -1 : 1 };
  });
}

/** A bay under one set of factors. */
interface Sought {
  readonly model: Model;
  readonly bay: Bay;
  readonly factor: FactorOf;
  readonly datum: Datum;
  readonly moving: MovingLoad | undefined;
  readonly empty: Model;
  readonly reach_mpN: number;
}

/** The largest movement in one sense; where it surely can't beat `floor`, no more is said than that. */
function oneWay(sought: Sought, sense: 1 | -1, floor: number): Peak {
  const { model, bay, factor, moving, reach_mpN } = sought;
  const stretches = stretchesOf(sought, sense);
  const standing = withoutRoaming(bay, stretches);
  const roaming_N = Math.max(0, ...model.roaming.map(({ action, load_N }) => load_N * factor(action)));
  if (moving === undefined || roaming_N === 0) return standing;
  const reach = sense > 0 ? reach_mpN : Math.min(reach_mpN, moving.mostLift());
  if (standing.value + roaming_N * reach <= floor) return standing;
  return withRoaming({ moving, sense, roaming_N, stretches }, standing);
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
const startsInBay = 8;

/** What a search with a roaming load looks at. */
interface Search {
  readonly moving: MovingLoad;
  readonly sense: 1 | -1;
  readonly roaming_N: number;
  readonly stretches: readonly Stretch[];
}

/**
 * The roaming load is tried standing over the place that moves, exactly; in other bays, where behind rigid brackets a few
 * stands are all that can matter; and climbing from several places of the bay, since the movement has more than one hill.
 */
function withRoaming(search: Search, start: Peak): Peak {
  const { moving, sense, roaming_N, stretches } = search;
  const length = moving.bay.to_m - moving.bay.from_m;
  let worst = start;
  const keep = (peak: Peak): void => {
    if (peak.value > worst.value) worst = peak;
  };
  if (moving.isRigid) {
    for (const stand of moving.farStands()) keep(peakUnder(search, stand, worst.value));
    if (sense < 0) return worst;
  }
  const ridge = scaled(moving.underLoad(), sense * roaming_N);
  for (const { from, to, always, free } of stretches) {
    const peak = largestSum(always, [...free, shifted(ridge, from)], 0, to - from, worst.value);
    keep({ value: peak.value, at_m: from + peak.at });
  }
  const where = moving.isRigid ? 'own-bay' : 'anywhere';
  const places = moving.isRigid
    ? [start.at_m, length / 3, (2 * length) / 3]
    : Array.from({ length: startsInBay + 1 }, (_, k) => (length * k) / startsInBay);
  const hills: Peak[] = [];
  for (const place of [worst.at_m, ...places]) {
    const hill = climbFrom(search, place, where, hills);
    hills.push(hill);
    keep(hill);
  }
  return worst;
}

/** Climbs one hill; a climb that comes close to the top of a known one, and no higher, is that hill again. */
function climbFrom(
  search: Search,
  start_m: number,
  where: 'anywhere' | 'own-bay',
  known: readonly Peak[],
): Peak {
  const { bay } = search.moving;
  const near_m = (bay.to_m - bay.from_m) / 100;
  let worst: Peak = { value: 0, at_m: start_m };
  let place = start_m;
  for (let round = 0; round < mostRounds; round++) {
    const stand = search.moving.worstStand(place, search.sense, where);
    if (stand.value <= 0) return worst;
    const best = peakUnder(search, stand.at, worst.value);
    const gained = best.value - worst.value;
    if (gained > 0) worst = best;
    if (gained <= 1e-8 * worst.value) return worst;
    place = best.at_m;
    if (known.some((top) => Math.abs(top.at_m - place) < near_m && top.value >= worst.value)) return worst;
  }
  return worst;
}

/** The place that moves most with the roaming load standing still; −Infinity where that certainly is no more than `floor`. */
function peakUnder({ moving, sense, roaming_N, stretches }: Search, stand_m: number, floor: number): Peak {
  let best: Peak = { value: -Infinity, at_m: 0 };
  for (const piece of moving.shapeUnder(stand_m)) {
    const own = scaled(piece.movement, sense * roaming_N);
    for (const { from, to, always, free } of stretches) {
      const [left, right] = [Math.max(from, piece.from), Math.min(to, piece.to)];
      if (right <= left) continue;
      const peak = largestSum(
        always,
        [...free, shifted(own, from)],
        left - from,
        right - from,
        Math.max(floor, best.value),
      );
      if (peak.value > best.value) best = { value: peak.value, at_m: from + peak.at };
    }
  }
  return best;
}

function stretchesOf({ model, bay, factor, datum, empty }: Sought, sense: 1 | -1): Stretch[] {
  const weightChange = empty === model || factor(null) !== 0 ? [] : [model, empty];
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
      else free.push(share === 1 ? movement : scaled(movement, share));
    }
    weightChange.forEach((each, k) => {
      const [own] = each.cases;
      if (own !== undefined) addScaled(always, movementOf(own, i, datum), k === 0 ? sense : -sense);
    });
    const from = (grid_m[i] ?? 0) - bay.from_m;
    const to = (grid_m[i + 1] ?? 0) - bay.from_m;
    const { base, turning } = sortedSum(always, free, 0, to - from);
    stretches.push({ from, to, always: base, free: turning });
  }
  return stretches;
}

/** Movement of one grid interval in a unit case. */
export function movementOf(unit: UnitCase, interval: number, datum: Datum): Polynomial {
  return datum === 'bay' ? (unit.movement[interval] ?? [0]) : movementIn(unit.field, interval);
}

/** Where a bay moves most if nothing else is known: its middle, or its tip. */
function restingPlace(bay: Bay): number {
  const length = bay.to_m - bay.from_m;
  return { 'left-overhang': 0, span: length / 2, 'right-overhang': length }[bay.kind];
}

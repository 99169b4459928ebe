import type { Bay } from '../../mechanics/bays.ts';
import { solveBeam, type BeamLoad, type PreparedBeam } from '../../mechanics/beam.ts';
import { movementIn, type BeamField } from '../../mechanics/beam-field.ts';
import { largestSum, shifted } from '../../mechanics/envelope.ts';
import { addScaled, largest, type Polynomial } from '../../mechanics/polynomial.ts';
import type { FactorOf, Peak } from './forces.ts';
import type { Model } from './model.ts';

/** How movement is measured: from the straight line between a bay's supports, or from where the board began. */
export type Datum = 'bay' | 'start';

/**
 * The largest movement of a bay, down or up, over every arrangement of the loads; `value` is its size.
 *
 * A roaming load is moved to where it does most for the place that moves most, and the place is found again, until
 * neither changes: each of the two is exact, and the movement can only grow.
 */
export function largestMovement(model: Model, bay: Bay, factor: FactorOf, datum: Datum): Peak {
  const down = movementOneWay(model, bay, factor, datum, 1);
  const up = movementOneWay(model, bay, factor, datum, -1);
  return up.value > down.value ? up : down;
}

interface Stretch {
  readonly from_m: number;
  readonly to_m: number;
  readonly always: number[];
  readonly free: readonly number[][];
}

function movementOneWay(model: Model, bay: Bay, factor: FactorOf, datum: Datum, sense: 1 | -1): Peak {
  const stretches = stretchesOf(model, bay, factor, datum, sense);
  let worst: Peak = { value: 0, at_m: restingPlace(bay) };
  for (const { from_m, to_m, always, free } of stretches) {
    const peak = largestSum(always, free, 0, to_m - from_m);
    if (peak.value > worst.value) worst = { value: peak.value, at_m: from_m + peak.at };
  }
  for (const { action, load_N } of model.roaming) {
    const load = load_N * factor(action);
    if (load > 0) worst = withRoaming(model, bay, datum, sense, load, stretches, worst);
  }
  return worst;
}

function withRoaming(
  model: Model,
  bay: Bay,
  datum: Datum,
  sense: 1 | -1,
  load_N: number,
  stretches: readonly Stretch[],
  start: Peak,
): Peak {
  let worst = start;
  let place = start.at_m;
  for (let round = 0; round < 12; round++) {
    const stand = worstStand(model.prepared, bay, datum, sense, place);
    if (stand.value <= 0) break;
    const prepared = withBreak(model.prepared, stand.at_m);
    const field = solveBeam(prepared, { lines: [], points: [{ at_m: stand.at_m, load_N }] });
    let best: Peak = { value: -Infinity, at_m: place };
    for (const { from_m, to_m, always, free } of stretches) {
      for (const [left, right] of pieces(from_m, to_m, stand.at_m)) {
        const own = relative(field, bay, datum, sense, intervalAt(prepared, left));
        const offset = left - from_m;
        const peak = largestSum(
          shifted(always, offset),
          [...free.map((each) => shifted(each, offset)), own],
          0,
          right - left,
        );
        if (peak.value > best.value) best = { value: peak.value, at_m: left + peak.at };
      }
    }
    if (best.value <= worst.value * (1 + 1e-9)) {
      if (best.value > worst.value) worst = best;
      break;
    }
    worst = best;
    place = best.at_m;
  }
  return worst;
}

/** A bay's movement without a roaming load, interval by interval. */
function stretchesOf(model: Model, bay: Bay, factor: FactorOf, datum: Datum, sense: 1 | -1): Stretch[] {
  const { grid_m } = model.prepared;
  const stretches: Stretch[] = [];
  for (let i = bay.first; i < bay.end; i++) {
    const always = [0, 0, 0, 0, 0];
    const free: number[][] = [];
    for (const unit of model.cases) {
      const share = factor(unit.action);
      if (share === 0) continue;
      const movement = relative(unit.field, bay, datum, sense, i);
      for (let k = 0; k < movement.length; k++) movement[k] = (movement[k] ?? 0) * share;
      if (unit.always) addScaled(always, movement, 1);
      else free.push(movement);
    }
    stretches.push({ from_m: grid_m[i] ?? 0, to_m: grid_m[i + 1] ?? 0, always, free });
  }
  return stretches;
}

/** Movement in an interval from the datum, as a polynomial of the distance from the interval's left end. */
function relative(field: BeamField, bay: Bay, datum: Datum, sense: 1 | -1, interval: number): number[] {
  const movement = movementIn(field, interval);
  if (datum === 'bay') {
    const at = (field.prepared.grid_m[interval] ?? 0) - bay.from_m;
    const [left, slope] = chord(field, bay);
    movement[0] = (movement[0] ?? 0) - left - slope * at;
    movement[1] = (movement[1] ?? 0) - slope;
  }
  if (sense < 0) for (let k = 0; k < movement.length; k++) movement[k] = -(movement[k] ?? 0);
  return movement;
}

function chord(field: BeamField, bay: Bay): readonly [number, number] {
  if (bay.kind === 'left-overhang') return [field.sunk_m[0] ?? 0, 0];
  const left = field.sunk_m[bay.leftSupport] ?? 0;
  if (bay.kind === 'right-overhang') return [left, 0];
  return [left, ((field.sunk_m[bay.leftSupport + 1] ?? 0) - left) / (bay.to_m - bay.from_m)];
}

/**
 * Where a unit load does most for the movement at one place: by reciprocity the line it moves along is the shape of the
 * board under a unit load at that place.
 */
function worstStand(prepared: PreparedBeam, bay: Bay, datum: Datum, sense: 1 | -1, place_m: number): Peak {
  const split = withBreak(prepared, place_m);
  const field = solveBeam(split, unitAt(split, bay, datum, place_m));
  let worst: Peak = { value: 0, at_m: place_m };
  for (let i = 0; i + 1 < split.grid_m.length; i++) {
    const movement: Polynomial = movementIn(field, i).map((coefficient) => coefficient * sense);
    const from = split.grid_m[i] ?? 0;
    const peak = largest(movement, 0, (split.grid_m[i + 1] ?? 0) - from);
    if (peak.value > worst.value) worst = { value: peak.value, at_m: from + peak.at };
  }
  return worst;
}

function unitAt({ beam }: PreparedBeam, bay: Bay, datum: Datum, place_m: number): BeamLoad {
  const points = [{ at_m: place_m, load_N: 1 }];
  if (datum === 'bay') {
    const left = beam.supports[bay.leftSupport]?.at_m;
    const right = beam.supports[bay.leftSupport + 1]?.at_m;
    if (bay.kind === 'span' && left !== undefined && right !== undefined) {
      const share = (place_m - left) / (right - left);
      points.push({ at_m: left, load_N: share - 1 }, { at_m: right, load_N: -share });
    } else {
      points.push({ at_m: bay.kind === 'left-overhang' ? bay.to_m : bay.from_m, load_N: -1 });
    }
  }
  return { lines: [], points };
}

/** The same beam with one more place on its grid. */
export function withBreak(prepared: PreparedBeam, place_m: number): PreparedBeam {
  const { grid_m, beam } = prepared;
  if (grid_m.includes(place_m)) return prepared;
  const places = Float64Array.from([...grid_m, place_m]).sort();
  return { ...prepared, grid_m: places, gridOfSupport: beam.supports.map(({ at_m }) => places.indexOf(at_m)) };
}

function intervalAt({ grid_m }: PreparedBeam, left_m: number): number {
  return grid_m.indexOf(left_m);
}

function pieces(from_m: number, to_m: number, cut_m: number): readonly (readonly [number, number])[] {
  if (cut_m <= from_m || cut_m >= to_m) return [[from_m, to_m]];
  return [
    [from_m, cut_m],
    [cut_m, to_m],
  ];
}

/** Where a bay moves most if nothing else is known: its middle, or its tip. */
function restingPlace(bay: Bay): number {
  if (bay.kind === 'left-overhang') return bay.from_m;
  return bay.kind === 'right-overhang' ? bay.to_m : (bay.from_m + bay.to_m) / 2;
}

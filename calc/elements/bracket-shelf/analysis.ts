import type { Analysis, Diagram } from '../../../shared/check-result.ts';
import { quantity, type Unit } from '../../../shared/quantity/index.ts';
import { movementIn } from '../../mechanics/beam-field.ts';
import type { BayInfluence } from '../../mechanics/influence.ts';
import { addScaled, valueAt, type Polynomial } from '../../mechanics/polynomial.ts';
import type { Context, Situation } from './context.ts';
import { longTermFactor, type Movements } from './movements.ts';
import type { Model, UnitCase } from './model.ts';
import type { Bay } from '../../mechanics/bays.ts';

/** Service values of the board: everything that can be there, unfactored, in its worst arrangement. */
export function analysisOf(context: Context, movements: Movements): Analysis {
  const { shelf, service } = context;
  const { board, system } = shelf;
  const q = (value: number, unit: Unit) => quantity(value, unit, system);
  const over = (pick: (situation: Situation) => number, sense: 1 | -1): number =>
    service.map(pick).reduce((worst, each) => (each * sense > worst * sense ? each : worst));
  return {
    supports: shelf.positions_m.map((position, i) => ({
      position: q(position, 'm'),
      reaction: {
        max: q(
          over(({ forces }) => forces.reactionMax_N[i] ?? 0, 1),
          'N',
        ),
        min: q(
          over(({ forces }) => forces.reactionMin_N[i] ?? 0, -1),
          'N',
        ),
        dead: q(service[0].solved.model.cases[0]?.field.reactions_N[i] ?? 0, 'N'),
      },
    })),
    moment: {
      max: q(
        over(({ forces }) => forces.sagging.value, 1),
        'N.m',
      ),
      min: q(
        over(({ forces }) => forces.hogging.value, -1),
        'N.m',
      ),
    },
    shear: {
      max: q(
        over(({ forces }) => forces.shear.value, 1),
        'N',
      ),
    },
    deflection: {
      live: q(movements.live.value, 'm'),
      longTerm: q(movements.longTerm.value, 'm'),
      bays: movements.bays.map((movement) => ({
        from: q(movement.bay.from_m, 'm'),
        to: q(movement.bay.to_m, 'm'),
        live: q(movement.live.value, 'm'),
        longTerm: q(movement.longTerm.value, 'm'),
        twist: q(movement.twistLive.value_m, 'm'),
      })),
    },
    stiffness: {
      EI: q(board.EI_Nm2, 'N.m2'),
      GA: board.GA_N === null ? null : q(board.GA_N, 'N'),
      GJ: q(board.twisting.GJ_Nm2, 'N.m2'),
    },
    diagram: diagramOf(context),
  };
}

const pointsInInterval = 6;

/** Sampled for drawing only; no number on the sheet comes from here. */
function diagramOf({ service, shelf }: Context): Diagram {
  const { model } = service[0].solved;
  const { grid_m } = model.prepared;
  const creep = longTermFactor(shelf.board.creep.factor);
  const roaming = standsOf(model);
  const diagram: { [Key in keyof Diagram]: number[] } = {
    at: [],
    momentMax: [],
    momentMin: [],
    shearMax: [],
    shearMin: [],
    settled: [],
  };
  for (const bay of model.bays) {
    for (let i = bay.first; i < bay.end; i++) {
      const from = grid_m[i] ?? 0;
      const length = (grid_m[i + 1] ?? 0) - from;
      const settled = [0, 0, 0, 0, 0];
      for (const unit of model.cases) addScaled(settled, movementIn(unit.field, i), creep(unit.action));
      for (let k = 0; k <= pointsInInterval; k++) {
        const t = (length * k) / pointsInInterval;
        const moment = extremes(model.cases, (unit) => valueAt(unit.moment[i] ?? [0], t));
        const shear = extremes(model.cases, (unit) => shearAt(unit.moment[i] ?? [0], t));
        const moving = roaming(bay, from + t);
        diagram.at.push(from + t);
        diagram.momentMax.push(moment[0] + moving.momentMax);
        diagram.momentMin.push(moment[1] + moving.momentMin);
        diagram.shearMax.push(shear[0] + moving.shearMax);
        diagram.shearMin.push(shear[1] + moving.shearMin);
        diagram.settled.push(valueAt(settled, t));
      }
    }
  }
  return diagram;
}

function extremes(cases: readonly UnitCase[], value: (unit: UnitCase) => number): [number, number] {
  let [most, least] = [0, 0];
  for (const unit of cases) {
    const each = value(unit);
    if (unit.always || each > 0) most += each;
    if (unit.always || each < 0) least += each;
  }
  return [most, least];
}

/** Shear is the slope of the moment. */
function shearAt(moment: Polynomial, t: number): number {
  return (moment[1] ?? 0) + 2 * (moment[2] ?? 0) * t;
}

const standsInBay = 4;

/** Moment and shear at a place from the heaviest roaming load on a few stands in every bay, and at the place itself. */
function standsOf({ roaming, influence }: Model) {
  const heaviest = Math.max(0, ...roaming.map(({ load_N }) => load_N));
  const stands = influence.flatMap((line) =>
    Array.from({ length: standsInBay + 1 }, (_, k) => {
      const s = ((line.bay.to_m - line.bay.from_m) * k) / standsInBay;
      return { line, at_m: line.bay.from_m + s, moments: line.moments.map((moment) => valueAt(moment, s)) };
    }),
  );
  return (bay: Bay, x_m: number) => {
    const worst = { momentMax: 0, momentMin: 0, shearMax: 0, shearMin: 0 };
    const own = influence.find((line) => line.bay === bay);
    const here =
      own === undefined
        ? []
        : [{ line: own, at_m: x_m, moments: own.moments.map((moment) => valueAt(moment, x_m - bay.from_m)) }];
    for (const stand of [...here, ...stands]) {
      const { moment, shearLeft, shearRight } = effectAt(bay, x_m, stand);
      worst.momentMax = Math.max(worst.momentMax, heaviest * moment);
      worst.momentMin = Math.min(worst.momentMin, heaviest * moment);
      worst.shearMax = Math.max(worst.shearMax, heaviest * shearLeft, heaviest * shearRight);
      worst.shearMin = Math.min(worst.shearMin, heaviest * shearLeft, heaviest * shearRight);
    }
    return worst;
  };
}

/** A unit load at a place, and its moments over the supports. */
interface Stand {
  readonly line: BayInfluence;
  readonly at_m: number;
  readonly moments: readonly number[];
}

/** What it does at `x_m`, shear on both sides of that. */
function effectAt(bay: Bay, x_m: number, { line, at_m, moments }: Stand) {
  const isHere = line.bay === bay;
  if (bay.kind !== 'span') {
    const towards = bay.kind === 'left-overhang' ? x_m - at_m : at_m - x_m;
    const acts = isHere && towards >= 0;
    const shear = acts ? (bay.kind === 'left-overhang' ? -1 : 1) : 0;
    return { moment: acts ? -towards : 0, shearLeft: shear, shearRight: shear };
  }
  const length = bay.to_m - bay.from_m;
  const x = x_m - bay.from_m;
  const a = at_m - bay.from_m;
  const left = moments[bay.leftSupport] ?? 0;
  const slope = ((moments[bay.leftSupport + 1] ?? 0) - left) / length;
  const across = left + slope * x;
  if (!isHere) return { moment: across, shearLeft: slope, shearRight: slope };
  const simple = x <= a ? (x * (length - a)) / length : (a * (length - x)) / length;
  const before = (length - a) / length;
  return {
    moment: simple + across,
    shearLeft: slope + (x <= a ? before : before - 1),
    shearRight: slope + (x < a ? before : before - 1),
  };
}

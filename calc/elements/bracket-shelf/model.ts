import { baysOf, type Bay } from '../../mechanics/bays.ts';
import { prepareBeam, solveBeam } from '../../mechanics/beam.ts';
import type { Beam, BeamLoad, PreparedBeam } from '../../mechanics/beam-model.ts';
import { momentIn, movementIn, shearIn, type BeamField } from '../../mechanics/beam-field.ts';
import { influenceOf, type BayInfluence } from '../../mechanics/influence.ts';
import { valueAt, type Polynomial } from '../../mechanics/polynomial.ts';
import type { Action, Shelf } from './shelf.ts';

/** One thing that is there or not as a whole: the board itself, a fixed load, a free load in one bay. */
export interface UnitCase {
  /** Null for the board's own weight. */
  readonly action: Action | null;
  readonly always: boolean;
  readonly load: BeamLoad;
  readonly field: BeamField;
  /** Moment, and movement from the line between the supports of its bay, in each grid interval. */
  readonly moment: readonly Polynomial[];
  readonly movement: readonly Polynomial[];
  /** Shear just left and right of each support. */
  readonly shearLeft: readonly number[];
  readonly shearRight: readonly number[];
}

/** A roaming load: one at a time, anywhere along the board. */
export interface Roaming {
  readonly action: Action;
  readonly load_N: number;
}

/** How stiff the brackets are as supports, N/m: all alike, or each its own; `Infinity` is rigid. */
export type Stiffness = number | readonly number[];

/** The shelf as a beam with every unit case solved. */
export interface Model {
  readonly stiffness: Stiffness;
  readonly prepared: PreparedBeam;
  readonly bays: readonly Bay[];
  readonly cases: readonly UnitCase[];
  readonly roaming: readonly Roaming[];
  /** Of a unit load in each bay; empty where nothing roams. */
  readonly influence: readonly BayInfluence[];
}

/** Solves every unit case of a shelf on brackets of some stiffness. */
export function modelOf(shelf: Shelf, stiffness: Stiffness): Model {
  const prepared = prepareBeam(beamOf(shelf, stiffness), breaksOf(shelf.actions));
  const bays = baysOf(prepared);
  const whole = { from_m: 0, to_m: shelf.length_m };
  const cases: UnitCase[] = [];
  const add = (action: Action | null, always: boolean, load: BeamLoad): void => {
    cases.push(unitCase(prepared, bays, action, always, load));
  };
  add(null, true, { lines: [{ ...whole, load_Npm: shelf.board.selfWeight_Npm }], points: [] });
  const roaming: Roaming[] = [];
  for (const action of shelf.actions) {
    const { load, free } = action;
    if (load.kind === 'roaming') {
      roaming.push({ action, load_N: load.load_N });
    } else if (load.kind === 'point') {
      add(action, !free, { lines: [], points: [load] });
    } else {
      for (const stretch of free ? bays : [whole]) {
        const from_m = Math.max(load.from_m, stretch.from_m);
        const to_m = Math.min(load.to_m, stretch.to_m);
        if (to_m > from_m)
          add(action, !free, { lines: [{ from_m, to_m, load_Npm: load.load_Npm }], points: [] });
      }
    }
  }
  return {
    stiffness,
    prepared,
    bays,
    cases,
    roaming,
    influence: roaming.length > 0 ? influenceOf(prepared, bays) : [],
  };
}

function unitCase(
  prepared: PreparedBeam,
  bays: readonly Bay[],
  action: Action | null,
  always: boolean,
  load: BeamLoad,
): UnitCase {
  const field = solveBeam(prepared, load);
  const { gridOfSupport, grid_m } = prepared;
  const shear = (interval: number, atEnd: boolean): number => {
    if (interval < 0 || interval > grid_m.length - 2) return 0;
    const width = (grid_m[interval + 1] ?? 0) - (grid_m[interval] ?? 0);
    return valueAt(shearIn(field, interval), atEnd ? width : 0);
  };
  const moment: Polynomial[] = [];
  const movement: Polynomial[] = [];
  for (const bay of bays) {
    const [level, slope] = lineOfBay(field, bay);
    for (let i = bay.first; i < bay.end; i++) {
      moment.push(momentIn(field, i));
      const from = movementIn(field, i);
      from[0] = (from[0] ?? 0) - level - slope * ((grid_m[i] ?? 0) - bay.from_m);
      from[1] = (from[1] ?? 0) - slope;
      movement.push(from);
    }
  }
  return {
    action,
    always,
    load,
    field,
    moment,
    movement,
    shearLeft: gridOfSupport.map((at) => shear(at - 1, true)),
    shearRight: gridOfSupport.map((at) => shear(at, false)),
  };
}

/** Height and slope of the straight line a bay's movement is measured from; level on an overhang. */
function lineOfBay({ sunk_m }: BeamField, bay: Bay): readonly [number, number] {
  if (bay.kind === 'left-overhang') return [sunk_m[0] ?? 0, 0];
  const left = sunk_m[bay.leftSupport] ?? 0;
  if (bay.kind === 'right-overhang') return [left, 0];
  return [left, ((sunk_m[bay.leftSupport + 1] ?? 0) - left) / (bay.to_m - bay.from_m)];
}

/** The board as a beam on its brackets. */
export function beamOf(shelf: Shelf, stiffness: Stiffness): Beam {
  const { positions_m } = shelf;
  const hinges = (shelf.document.board.joints ?? []).map((joint) => {
    const distances = positions_m.map((position) => Math.abs(position - joint));
    return distances.indexOf(Math.min(...distances));
  });
  return {
    length_m: shelf.length_m,
    EI_Nm2: shelf.board.EI_Nm2,
    GA_N: shelf.board.GA_N ?? Infinity,
    supports: positions_m.map((at_m, index) => ({
      at_m,
      stiffness_Npm: typeof stiffness === 'number' ? stiffness : (stiffness[index] ?? Infinity),
    })),
    hinges,
  };
}

/** Places where a load begins, ends or stands. */
export function breaksOf(actions: readonly Action[]): number[] {
  return actions.flatMap(({ load }) => {
    if (load.kind === 'line') return [load.from_m, load.to_m];
    return load.kind === 'point' ? [load.at_m] : [];
  });
}

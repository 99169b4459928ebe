import { showInCalculation, type Unit } from '../../../shared/quantity/index.ts';
import type { Bay } from '../../mechanics/bays.ts';
import { MovingLoad } from '../../mechanics/moving-load.ts';
import { valueAt } from '../../mechanics/polynomial.ts';
import type { ByLoad } from '../judged.ts';
import type { Situation } from './context.ts';
import { movingMoments, type FactorOf, type Peak } from './forces.ts';
import type { Model, UnitCase } from './model.ts';
import { movementOf } from './movement.ts';
import type { MovedOn } from './movements.ts';
import type { Action, Shelf } from './shelf.ts';

/** What each load adds to an effect where that is largest: of the board itself for null. */
export type LoadShares = ReadonlyMap<Action | null, number>;

/** The shares of the board itself, then of every load as the document has them. */
function inOrder({ actions }: Shelf, shares: LoadShares): number[] {
  return [null, ...actions].map((action) => shares.get(action) ?? 0);
}

/** What a check takes from the solver, under a name with a place in it. */
export function byLoadAt(
  shelf: Shelf,
  what: string,
  at_m: number,
  unit: Unit,
  shares: () => LoadShares,
): ByLoad {
  const place = showInCalculation(at_m, 'm', shelf.system);
  return { what: `${what} ${place}`, unit, shares: () => inOrder(shelf, shares()) };
}

/**
 * An effect of one place and sense, load by load: as `extremeOf` adds them, what is free and would help left out, and of
 * the roaming loads the one that asks most.
 *
 * @param ofCase its value in a unit case
 * @param ofRoaming its largest value under a unit roaming load of an action
 */
export function sharesOf(
  model: Model,
  factor: FactorOf,
  sense: 1 | -1,
  ofCase: (unit: UnitCase) => number,
  ofRoaming: (action: Action) => number,
): LoadShares {
  const shares = new Map<Action | null, number>();
  for (const unit of model.cases) {
    const value = factor(unit.action) * ofCase(unit);
    const added = unit.always || value * sense > 0 ? value : 0;
    shares.set(unit.action, (shares.get(unit.action) ?? 0) + added);
  }
  let worst: { readonly action: Action; readonly value: number } | undefined;
  for (const { action, load_N } of model.roaming) {
    const value = factor(action) * load_N * ofRoaming(action);
    if (value * sense > (worst?.value ?? 0) * sense) worst = { action, value };
  }
  if (worst !== undefined) shares.set(worst.action, worst.value);
  return shares;
}

/**
 * A bay's largest movement, load by load, each counted once; positive as the movement is.
 *
 * @param factor what the movement was looked for with: where it leaves the board's own weight out, that counts only as far
 * as it changes on fewer brackets
 */
export function sharesOfMovement(moved: MovedOn, index: number, factor: FactorOf): LoadShares {
  const { model, empty, datum, at_m, sense } = moved;
  const bay = model.bays[index];
  const { grid_m } = model.prepared;
  if (bay === undefined) throw new RangeError('every idea of the brackets has the same bays');
  const interval = intervalAt(model, bay, at_m);
  const from_m = at_m - (grid_m[interval] ?? 0);
  const moves = (unit: UnitCase): number => sense * valueAt(movementOf(unit, interval, datum), from_m);
  const shares = new Map(
    sharesOf(
      model,
      (action) => (factor(action) === 0 ? 0 : 1),
      1,
      moves,
      () => 0,
    ),
  );
  if (factor(null) === 0 && model !== empty) {
    const [here, there] = [model.cases[0], empty.cases[0]];
    if (here !== undefined && there !== undefined) shares.set(null, moves(here) - moves(there));
  }
  const heaviest = model.roaming.reduce<Model['roaming'][number] | undefined>((most, each) => {
    const used = each.load_N * factor(each.action);
    return used > (most === undefined ? 0 : most.load_N * factor(most.action)) ? each : most;
  }, undefined);
  if (heaviest !== undefined) {
    const moving = new MovingLoad(model.prepared.beam, bay, model.influence, datum === 'start');
    const { value } = moving.worstStand(at_m - bay.from_m, sense, 'anywhere');
    shares.set(heaviest.action, heaviest.load_N * value);
  }
  return shares;
}

/** The largest moment of a situation at a place, load by load: over a bracket hogging, between brackets sagging counted positive. */
export function sharesOfMoment({ solved, factor }: Situation, { value, at_m }: Peak): LoadShares {
  const { model, lines } = solved;
  const { supports } = model.prepared.beam;
  if (value < 0) {
    const support = supports.findIndex((each) => each.at_m === at_m);
    const over = ({ field }: UnitCase): number => -(field.moments_Nm[support] ?? 0);
    return sharesOf(model, factor, 1, over, () => -(lines.momentMin[support] ?? 0));
  }
  const { grid_m } = model.prepared;
  const index = model.bays.findIndex(
    ({ kind, from_m, to_m }) => kind === 'span' && at_m >= from_m && at_m <= to_m,
  );
  const bay = model.bays[index];
  if (bay === undefined)
    return sharesOf(
      model,
      factor,
      1,
      () => 0,
      () => 0,
    );
  const interval = intervalAt(model, bay, at_m);
  const line = model.influence[index];
  const moving = line === undefined ? [] : movingMoments(line, lines);
  const ofRoaming = Math.max(0, ...moving.map((moment) => valueAt(moment, at_m - bay.from_m)));
  const between = ({ moment }: UnitCase): number =>
    valueAt(moment[interval] ?? [0], at_m - (grid_m[interval] ?? 0));
  return sharesOf(model, factor, 1, between, () => ofRoaming);
}

/** The largest shear beside a bracket, on one side or the worse of both, load by load. */
export function sharesOfShear(
  { solved: { model, lines }, factor }: Situation,
  support: number,
  sides: readonly ('left' | 'right')[] = ['left', 'right'],
): LoadShares {
  const found = sides.flatMap((side) => {
    const [most, least] = lines.shear[support]?.[side] ?? [0, 0];
    const beside = (unit: UnitCase): number =>
      (side === 'left' ? unit.shearLeft : unit.shearRight)[support] ?? 0;
    return [
      sharesOf(model, factor, 1, beside, () => most),
      sharesOf(
        model,
        factor,
        1,
        (unit) => -beside(unit),
        () => -least,
      ),
    ];
  });
  return found.reduce((worst, each) => (sumOf(each) > sumOf(worst) ? each : worst));
}

/** The largest reaction of a bracket, load by load. */
export function sharesOfReaction(
  { solved: { model, lines }, factor }: Situation,
  support: number,
): LoadShares {
  const on = ({ field }: UnitCase): number => field.reactions_N[support] ?? 0;
  return sharesOf(model, factor, 1, on, () => lines.reactionMax[support] ?? 0);
}

/** All shares together. */
export function sumOf(shares: LoadShares): number {
  return [...shares.values()].reduce((sum, share) => sum + share, 0);
}

/** The grid interval of a bay that a place is in. */
function intervalAt({ prepared: { grid_m } }: Model, bay: Bay, at_m: number): number {
  let interval = bay.first;
  while (interval + 1 < bay.end && (grid_m[interval + 1] ?? 0) <= at_m) interval += 1;
  return interval;
}

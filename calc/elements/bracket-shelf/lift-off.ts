import { show } from '../../../shared/quantity/index.ts';
import { prepareBeam, solveSupports } from '../../mechanics/beam.ts';
import type { BeamLoad } from '../../mechanics/beam-model.ts';
import { largest } from '../../mechanics/polynomial.ts';
import { contextOf, type Context } from './context.ts';
import { beamOf, breaksOf, type Model } from './model.ts';
import type { Shelf } from './shelf.ts';

const mostStates = 6;

/**
 * A board that only rests on its brackets may lift off some of them, and then stands on the others. Every set of brackets
 * it can come to stand on is found, and the board is worked out on each of them as well as on all: the worse counts.
 */
export function liftOff(context: Context): {
  readonly context: Context;
  readonly warnings: readonly string[];
} {
  const { shelf, service, solved } = context;
  if (shelf.hold !== 'resting') return { context, warnings: [] };
  const [full] = service;
  const tolerance = 1e-9 * (shelf.board.selfWeight_Npm * shelf.length_m);
  const lifting = shelf.positions_m.flatMap((_, index) =>
    (full.forces.reactionMin_N[index] ?? 0) < -tolerance ? [index] : [],
  );
  if (lifting.length === 0) return { context, warnings: [] };
  const states = new Map<string, readonly number[]>();
  for (const index of lifting) {
    const state = standingOn(shelf, liftingLoad(full.solved.model, shelf, index));
    if (state !== null && state.length < shelf.positions_m.length && states.size < mostStates) {
      states.set(state.join(), state);
    }
  }
  const soft = shelf.board.EI_Nm2 / shelf.length_m ** 3 / 1e6;
  const stiffnesses = [...states.values()].map((state) =>
    shelf.positions_m.map((_, index) => (state.includes(index) ? Infinity : soft)),
  );
  const base = solved.map(({ model }) => model.stiffness);
  const places = lifting.map(
    (index) => `${index + 1} (at ${show(shelf.positions_m[index] ?? 0, 'm', shelf.system)})`,
  );
  return {
    context: contextOf(shelf, [base[0] ?? Infinity, ...base.slice(1), ...stiffnesses]),
    warnings: [
      `The board only rests on its brackets and lifts off ${places.length === 1 ? 'bracket' : 'brackets'} ${places.join(', ')} in some arrangement of the loads; it rocks and rattles there. It is worked out with and without ${places.length === 1 ? 'it' : 'them'}. Screws from the arms into the board stop it.`,
    ],
  };
}

/** The arrangement of the loads that lifts one bracket most. */
function liftingLoad(model: Model, shelf: Shelf, index: number): BeamLoad {
  const lines = [{ from_m: 0, to_m: shelf.length_m, load_Npm: shelf.board.selfWeight_Npm }];
  const points: { at_m: number; load_N: number }[] = [];
  for (const unit of model.cases) {
    if (unit.action === null) continue;
    if (!unit.always && (unit.field.reactions_N[index] ?? 0) >= 0) continue;
    lines.push(...unit.load.lines);
    points.push(...unit.load.points);
  }
  const heaviest = Math.max(0, ...model.roaming.map(({ load_N }) => load_N));
  let stand = { at_m: 0, value: 0 };
  for (const { bay, reactions } of model.influence) {
    const down = Array.from(reactions[index] ?? [0], (coefficient) => -coefficient);
    const peak = largest(down, 0, bay.to_m - bay.from_m);
    if (peak.value > stand.value) stand = { at_m: bay.from_m + peak.at, value: peak.value };
  }
  if (heaviest > 0 && stand.value > 0) points.push({ at_m: stand.at_m, load_N: heaviest });
  return { lines, points };
}

/**
 * The brackets a resting board stands on under one load, by active set: a bracket that would pull is let go, one that the
 * board sinks onto is taken up again. A set met twice ends the search. Null where fewer than two are left.
 */
function standingOn(shelf: Shelf, load: BeamLoad): readonly number[] | null {
  let standing = shelf.positions_m.map((_, index) => index);
  const met = new Set<string>();
  while (!met.has(standing.join())) {
    met.add(standing.join());
    if (standing.length < 2) return null;
    const soft = shelf.board.EI_Nm2 / shelf.length_m ** 3 / 1e6;
    const stiffness = shelf.positions_m.map((_, index) => (standing.includes(index) ? Infinity : soft));
    const prepared = prepareBeam(beamOf(shelf, stiffness), breaksOf(shelf.actions));
    const { reactions_N, sunk_m } = solveSupports(prepared, load);
    standing = shelf.positions_m.flatMap((_, index) => {
      const stays = standing.includes(index) ? (reactions_N[index] ?? 0) >= 0 : (sunk_m[index] ?? 0) > 0;
      return stays ? [index] : [];
    });
  }
  return standing.length < 2 ? null : standing;
}

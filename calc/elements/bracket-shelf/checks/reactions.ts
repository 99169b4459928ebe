import { show } from '../../../../shared/quantity/index.ts';
import type { Context, Situation } from '../context.ts';
import { extremeOf, type FactorOf, type Lines } from '../forces.ts';
import type { Model } from '../model.ts';
import type { Action, Shelf } from '../shelf.ts';

/** A reaction of one bracket, weighted by what a check makes of it. */
export interface WeightedReaction {
  readonly index: number;
  readonly weighted: number;
  readonly situation: Situation;
}

/** The largest reaction on any bracket, by weight. */
export function largestReaction(
  situations: readonly [Situation, ...Situation[]],
  weight: (reaction_N: number, index: number) => number = (reaction_N) => reaction_N,
): WeightedReaction {
  let worst: WeightedReaction = { index: 0, weighted: -Infinity, situation: situations[0] };
  for (const situation of situations) {
    situation.forces.reactionMax_N.forEach((reaction, index) => {
      const weighted = weight(reaction, index);
      if (weighted > worst.weighted) worst = { index, weighted, situation };
    });
  }
  return worst;
}

/**
 * The largest sum over the loads of (reaction of one bracket × a lever of the load): the couple a bracket carries, from
 * the same arrangement of the loads as its reaction.
 *
 * @param lever_m the lever of each action; of the board itself for null
 */
export function largestCouple(
  model: Model,
  lines: Lines,
  factor: FactorOf,
  index: number,
  lever_m: (action: Action | null) => number,
): number {
  return extremeCouple({ model, lines }, factor, index, lever_m, 1);
}

/** The smallest such sum: below 0 where the loads lift the arm. */
export function smallestCouple(
  model: Model,
  lines: Lines,
  factor: FactorOf,
  index: number,
  lever_m: (action: Action | null) => number,
): number {
  return extremeCouple({ model, lines }, factor, index, lever_m, -1);
}

function extremeCouple(
  { model, lines }: { readonly model: Model; readonly lines: Lines },
  factor: FactorOf,
  index: number,
  lever_m: (action: Action | null) => number,
  sense: 1 | -1,
): number {
  return extremeOf(
    model,
    factor,
    sense,
    ({ action, field }) => (field.reactions_N[index] ?? 0) * lever_m(action),
    (action) => {
      const lever = lever_m(action);
      return lever * ((lever * sense >= 0 ? lines.reactionMax : lines.reactionMin)[index] ?? 0);
    },
  );
}

/** The couple a bracket carries, the reaction of the same bracket, and the lever that goes with both. */
export interface Turn {
  readonly index: number;
  readonly couple_Nm: number;
  readonly reaction_N: number;
  readonly lever_m: number;
  readonly combination: string;
}

/** The largest couple one bracket carries about the wall finish. */
export function coupleOn({ shelf, service }: Context, index: number): Turn {
  const lever = leverFromWall(shelf);
  const turns = service.map(({ solved, factor, forces, combination }): Turn => {
    const couple_Nm = largestCouple(solved.model, solved.lines, factor, index, lever);
    const reaction_N = forces.reactionMax_N[index] ?? 0;
    const lever_m = reaction_N === 0 ? 0 : couple_Nm / reaction_N;
    return { index, couple_Nm, reaction_N, lever_m, combination: combination.name };
  });
  return turns.reduce((worst, each) => (each.couple_Nm > worst.couple_Nm ? each : worst));
}

/** The largest couple any bracket carries about the wall finish. */
export function worstCouple(context: Context): Turn {
  return context.shelf.positions_m
    .map((_, index) => coupleOn(context, index))
    .reduce((worst, each) => (each.couple_Nm > worst.couple_Nm ? each : worst));
}

/** Lever of a load about the wall finish. */
export function leverFromWall(shelf: Shelf): (action: Action | null) => number {
  return (action) => (action === null ? shelf.board.weightAt_m : action.eccentricity_m);
}

/** `bracket 2, at 32 in`. */
export function atBracket(shelf: Shelf, index: number): string {
  return `bracket ${index + 1}, at ${show(shelf.positions_m[index] ?? 0, 'm', shelf.system)}`;
}

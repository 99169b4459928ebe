import { show } from '../../../../shared/quantity/index.ts';
import { work, type Worked } from '../../../formula/step.ts';
import { couple } from '../../bracket-formulas.ts';
import type { ByLoad } from '../../judged.ts';
import type { Context, Situation } from '../context.ts';
import { extremeOf, type FactorOf, type Lines } from '../forces.ts';
import { byLoadAt, sharesOf, sumOf, type LoadShares } from '../load-shares.ts';
import type { Model, UnitCase } from '../model.ts';
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

/**
 * The largest such sum, or for sense −1 the smallest: of what lifts, so that what is always there and presses counts at 0.6
 * (ASCE 7 2.4.1, 0.6 D by analogy).
 */
export function extremeCouple(
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
    ({ action, field, always }) => {
      const each = (field.reactions_N[index] ?? 0) * lever_m(action);
      return sense === -1 && always ? heldDown(each) : each;
    },
    (action) => {
      const lever = lever_m(action);
      return lever * ((lever * sense >= 0 ? lines.reactionMax : lines.reactionMin)[index] ?? 0);
    },
  );
}

/** What is always there, as far as it counts against what lifts: what it presses down counts at 0.6. */
export function heldDown(presses: number): number {
  return presses > 0 ? 0.6 * presses : presses;
}

/** The couple a bracket carries, the reaction of the same bracket, and the lever that goes with both. */
export interface Turn {
  readonly index: number;
  readonly couple_Nm: number;
  readonly reaction_N: number;
  readonly lever_m: number;
  /** What each load brings of the force, what is always there held at 0.6 where it is lifted. */
  readonly shares: () => LoadShares;
  readonly combination: string;
  /** The loads lift the arm; couple and reaction are counted upward. */
  readonly isLifted: boolean;
}

/** A smaller couple comes of rounding. */
export const leastCouple_Nm = 1e-6;

/** The largest couple one bracket carries about the wall finish. */
export function coupleOn(context: Context, index: number): Turn {
  return largestTurn(turnsOn(context, index, 1));
}

/** The largest couple that lifts one bracket's arm; null where none does. */
export function liftingCoupleOn(context: Context, index: number): Turn | null {
  if (context.shelf.hold !== 'screwed') return null;
  const turn = largestTurn(turnsOn(context, index, -1));
  return turn.couple_Nm > leastCouple_Nm ? turn : null;
}

function turnsOn({ shelf, service }: Context, index: number, sense: 1 | -1): readonly [Turn, ...Turn[]] {
  const lever = leverFromWall(shelf);
  const turnIn = ({ solved: { model, lines }, factor, forces, combination }: Situation): Turn => {
    const couple_Nm = sense * extremeCouple({ model, lines }, factor, index, lever, sense);
    const reaction_N = sense * ((sense === 1 ? forces.reactionMax_N : forces.reactionMin_N)[index] ?? 0);
    return {
      index,
      couple_Nm,
      ...reactionAndLever(couple_Nm, reaction_N),
      shares: () => sharesOfTurn({ model, lines }, factor, index, sense),
      combination: combination.name,
      isLifted: sense === -1,
    };
  };
  const [first, ...rest] = service;
  return [turnIn(first), ...rest.map(turnIn)];
}

/** The force on a bracket that turns, load by load, up or down as it turns. */
function sharesOfTurn(
  { model, lines }: { readonly model: Model; readonly lines: Lines },
  factor: FactorOf,
  index: number,
  sense: 1 | -1,
): LoadShares {
  const force = ({ field, always }: UnitCase): number => {
    const presses = field.reactions_N[index] ?? 0;
    return sense * (sense === -1 && always ? heldDown(presses) : presses);
  };
  const most = sense * ((sense === 1 ? lines.reactionMax : lines.reactionMin)[index] ?? 0);
  return sharesOf(model, factor, 1, force, () => most);
}

/** The lever that makes a reaction the couple; loads that add up to nothing can still turn a bracket. */
export function reactionAndLever(
  couple_Nm: number,
  reaction_N: number,
): { readonly reaction_N: number; readonly lever_m: number } {
  const R = reaction_N === 0 ? 1e-9 : reaction_N;
  return { reaction_N: R, lever_m: couple_Nm / R };
}

/** The largest couple of several. */
export function largestTurn(turns: readonly [Turn, ...Turn[]]): Turn {
  return turns.reduce((worst, each) => (each.couple_Nm > worst.couple_Nm ? each : worst));
}

/** The largest couple any bracket carries about the wall finish. */
export function worstCouple(context: Context): Turn {
  const [first, ...rest] = context.shelf.positions_m.map((_, index) => coupleOn(context, index));
  return largestTurn([first ?? coupleOn(context, 0), ...rest]);
}

/** The largest couple that lifts any bracket; null where none does. */
export function worstLiftingCouple(context: Context): Turn | null {
  const [first, ...rest] = context.shelf.positions_m.flatMap(
    (_, index) => liftingCoupleOn(context, index) ?? [],
  );
  return first === undefined ? null : largestTurn([first, ...rest]);
}

/** The line of working of a couple. */
export function workCouple(shelf: Shelf, turn: Turn): Worked {
  const force_N = turn.isLifted ? sumOf(turn.shares()) : turn.reaction_N;
  const { reaction_N: R, lever_m: e_R } = reactionAndLever(turn.couple_Nm, force_N);
  return work(couple, { R, e_R }, shelf.system, coupleWords(shelf, turn, e_R));
}

/** What turns a bracket, load by load. */
export function turnByLoad(shelf: Shelf, { index, isLifted, shares }: Turn): ByLoad {
  const what = isLifted ? 'Lifts the bracket at' : 'On the bracket at';
  return byLoadAt(shelf, what, shelf.positions_m[index] ?? 0, 'N', shares);
}

/** What presses and what lifts may leave hardly any force, though they turn the bracket: its lever is longer than that of any load. */
function coupleWords(shelf: Shelf, { isLifted }: Turn, lever_m: number): string {
  const words = isLifted
    ? 'couple about the wall finish that lifts the bracket, what is always there held at 0.6'
    : couple.caption;
  const levers = [null, ...shelf.actions].map(leverFromWall(shelf));
  const isBetween = lever_m >= Math.min(...levers) - 1e-9 && lever_m <= Math.max(...levers) + 1e-9;
  return isBetween
    ? words
    : `${words}; each load at its own lever: e_R is that of what is left where some press and some lift`;
}

/** Lever of a load about the wall finish. */
export function leverFromWall(shelf: Shelf): (action: Action | null) => number {
  return (action) => (action === null ? shelf.board.weightAt_m : action.eccentricity_m);
}

/** `bracket 2, at 32 in`. */
export function atBracket(shelf: Shelf, index: number): string {
  return `bracket ${index + 1}, at ${show(shelf.positions_m[index] ?? 0, 'm', shelf.system)}`;
}

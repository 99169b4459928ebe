import type { BoardScrews } from '../board-screws.ts';
import type { Situation } from '../context.ts';
import { extremeOf } from '../forces.ts';
import type { Action, Shelf } from '../shelf.ts';
import { leverFromWall, smallestCouple } from './reactions.ts';

/** What the pull on the screws of a lifted board is worked out from. */
export type Prise = Readonly<Record<'n_s' | 'C_u' | 'x_f' | 'S_x' | 'C_t' | 'l_f' | 'S_l', number>>;

/** Screws nearer an end of the arm than this stand at it. */
export const least_m = 1e-4;

/**
 * What turns the board off one arm where it is lifted: about its back edge, at the wall, and about the tip of the arm.
 *
 * @param piece_N lift of one of two lengths of board that meet there, wherever on it what lifts it stands; 0 where none do
 */
export function priseOf(
  shelf: Shelf,
  situation: Situation,
  { places_m, count }: BoardScrews,
  index: number,
  piece_N: number,
): Prise {
  const { solved, factor } = situation;
  const tip_m = shelf.bearingLength_m;
  const lever = leverFromWall(shelf);
  const levers_m = [null, ...shelf.actions].map(lever);
  const lifted_Nm = -smallestCouple(solved.model, solved.lines, factor, index, lever);
  const fromWall = places_m.map((place) => Math.max(place, least_m));
  const fromTip = places_m.map((place) => Math.max(tip_m - place, least_m));
  const squares = (distances: readonly number[]): number => distances.reduce((sum, x) => sum + x * x, 0);
  return {
    n_s: count,
    C_u: Math.max(0, lifted_Nm, piece_N * Math.max(...levers_m)),
    x_f: Math.max(...fromWall),
    S_x: squares(fromWall),
    C_t: Math.max(coupleAboutTip(shelf, situation, index, true), piece_N * (tip_m - Math.min(...levers_m))),
    l_f: Math.max(...fromTip),
    S_l: squares(fromTip),
  };
}

/**
 * The largest couple that turns the board about the tip of an arm, at least 0; what is always there and holds the board down
 * counts at 0.6.
 *
 * @param withLift whether what lifts the board behind the tip counts, or only what stands in front of it
 */
export function coupleAboutTip(
  shelf: Shelf,
  { solved: { model, lines }, factor }: Situation,
  index: number,
  withLift: boolean,
): number {
  const lever = leverFromWall(shelf);
  const beyondTip = (action: Action | null): number => lever(action) - shelf.bearingLength_m;
  const couple_Nm = extremeOf(
    model,
    factor,
    1,
    ({ action, always, field }) => {
      const reaction_N = field.reactions_N[index] ?? 0;
      const couple = reaction_N * beyondTip(action);
      if (reaction_N < 0 && couple > 0 && !withLift) return 0;
      return always && couple < 0 ? 0.6 * couple : couple;
    },
    (action) => {
      const distance_m = beyondTip(action);
      if (distance_m >= 0) return distance_m * (lines.reactionMax[index] ?? 0);
      return withLift ? distance_m * (lines.reactionMin[index] ?? 0) : 0;
    },
  );
  return Math.max(0, couple_Nm);
}

import type { BoardPart } from './board-part.ts';
import type { Context, Situation } from './context.ts';

/** A part in a combination, and its resistance to bending. */
export interface Asked {
  readonly situation: Situation;
  readonly part: BoardPart;
  /** Where its resistance is not known one pascal, which puts the part before all of which it is. */
  readonly by_Pa: number;
  readonly isKnown: boolean;
}

/** Every part of the board in every combination. */
export function askedOf(context: Context): Asked[] {
  return context.situations.flatMap((situation) =>
    context.shelf.board.parts.map((part) => {
      const resistance = context.resist(part.material, 'bending', situation.combination.duration);
      return { situation, part, by_Pa: resistance.ok ? resistance.value_Pa : 1, isKnown: resistance.ok };
    }),
  );
}

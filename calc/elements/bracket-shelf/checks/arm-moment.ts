import type { Context } from '../context.ts';
import { extremeCouple, leverFromWall, reactionAndLever, type Turn } from './reactions.ts';

/** A moment in an arm, and the reaction of its bracket that goes with it. */
export interface ArmMoment {
  readonly couple_Nm: number;
  readonly reaction_N: number;
}

/**
 * The largest moment at a place in an arm, loaded or lifted as the turn says.
 *
 * @param spread_m mean lever of what is spread over the depth, its middle e from the wall finish
 * @param lever_m lever of what stands on a line e from there; a load that would relieve the place is left out
 */
export function largestOnArm(
  { shelf, service }: Context,
  { index, isLifted }: Pick<Turn, 'index' | 'isLifted'>,
  spread_m: (e: number) => number,
  lever_m: (e: number) => number,
): ArmMoment {
  const sense = isLifted ? -1 : 1;
  const from = leverFromWall(shelf);
  const couples = service.map(
    ({ solved, factor }) =>
      sense *
      extremeCouple(
        solved,
        factor,
        index,
        (action) => Math.max(0, (action === null || action.spread ? spread_m : lever_m)(from(action))),
        sense,
      ),
  );
  const reactions = service.map(
    ({ forces }) => sense * ((isLifted ? forces.reactionMin_N : forces.reactionMax_N)[index] ?? 0),
  );
  const couple_Nm = Math.max(0, ...couples);
  return { couple_Nm, ...reactionAndLever(couple_Nm, Math.max(...reactions)) };
}

/** The largest moment at x_m from the wall finish, of all that stands farther out. */
export function largestBeyond(
  context: Context,
  turn: Pick<Turn, 'index' | 'isLifted'>,
  x_m: number,
): ArmMoment {
  const d = context.shelf.depth_m;
  // (d − x)² / 2d where the middle of it is at mid-depth; a strip along the front edge draws it forward.
  return largestOnArm(
    context,
    turn,
    (e) => (x_m < d ? e - x_m + x_m ** 2 / (2 * d) : 0),
    (e) => e - x_m,
  );
}

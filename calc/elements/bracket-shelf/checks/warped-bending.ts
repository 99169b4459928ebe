import { listed } from '../../../../shared/words.ts';
import { work, type Worked } from '../../../formula/step.ts';
import {
  clampedShare,
  cornerDistance,
  cornerOmega,
  neutralDistance,
  warpedLever,
  warpedShare,
  warpedStress,
  warpLength,
} from '../../../mechanics/open-section-formulas.ts';
import { omegaAt, type Warp } from '../../../mechanics/open-section.ts';
import type { Corner } from '../../../mechanics/section.ts';
import { askedOf, type Asked } from '../asked.ts';
import type { BoardPart } from '../board-part.ts';
import type { Context, Situation } from '../context.ts';
import { largestHogging, largestSagging, sameLength_m, type FactorOf, type Peak } from '../forces.ts';
import { mostMoments, type MostOf } from '../most-moments.ts';
import type { Action, Shelf } from '../shelf.ts';

/** Where a part of a board with strips is bent most, twisting included. */
export interface WarpedPeak {
  /** The moments there, each times the distance its load counts at, N·m². */
  readonly peak: Peak;
  readonly corner: Corner;
  /** Length of the bay it is in; over a bracket, of the shortest bay, an overhang as half of one. */
  readonly bay_m: number;
  readonly isOverBracket: boolean;
}

/** A corner of a part in the bays of one length, or over the brackets. */
interface Spot extends Omit<WarpedPeak, 'peak'> {
  /** What each load counts at there, m. */
  readonly distances: ReadonlyMap<Action | null, number>;
}

/** A spot in one combination: what is looked for there, and what share of the resistance it surely uses no more than. */
export interface Place {
  readonly asked: Asked;
  readonly spot: Spot;
  readonly counted: FactorOf;
  readonly atMost: number;
  /** The same where the loads count at other distances. */
  readonly mostUsed: (counted: FactorOf) => number;
}

/**
 * The worst corner of all that are asked about. A load beside the twist axis bends the part on its side more than one on the
 * axis: what does not twist the parts bends them. Twisting relieves no corner. The places that could be bent most are worked
 * out first, and those that surely are bent less than the worst so far not at all.
 */
export function warpedPeak(
  context: Context,
  places: readonly Place[],
): { readonly asked: Asked; readonly warped: WarpedPeak } {
  const inOrder = [...places].sort((a, b) => b.atMost - a.atMost);
  const [first] = inOrder;
  if (first === undefined) throw new RangeError('a board has parts, and a code combinations');
  let worst: WarpedPeak = { ...first.spot, peak: { value: 0, at_m: 0 } };
  let [of, ratio] = [first.asked, -1];
  for (const { asked: each, spot, counted, atMost } of inOrder) {
    if (atMost <= ratio) break;
    const peak = peakAt(each.situation, spot, counted);
    const used = usedBy(context, each, peak);
    if (used > ratio) [worst, of, ratio] = [{ ...spot, peak }, each, used];
  }
  return { asked: of, warped: worst };
}

/** What is asked of the parts of a board as it bends, by bending and by the strip along an edge alike. */
export interface BentParts {
  readonly asked: readonly Asked[];
  /** Every corner of every part in every combination, over the brackets and in the bays of each length; null where none warps. */
  readonly places: readonly Place[] | null;
}

/** Everything asked of the parts of a board as it bends. */
export function bentParts(context: Context): BentParts {
  const { board } = context.shelf;
  const { warp } = board.twisting;
  const asked = askedOf(context);
  if (warp === null) return { asked, places: null };
  const spots = new Map(board.parts.map((part) => [part, spotsOf(context, warp, part)]));
  const most = new Map(context.solved.map((solved) => [solved, mostMoments(solved)]));
  const places = asked.flatMap((each) =>
    (spots.get(each.part) ?? []).map((spot) => placeOf(context, each, spot, most.get(each.situation.solved))),
  );
  return { asked, places };
}

/** The most of the moments times their distances at a spot. */
export function peakAt({ solved: { model, lines } }: Situation, spot: Spot, counted: FactorOf): Peak {
  return spot.isOverBracket
    ? largestHogging(model, lines, counted)
    : largestSagging(model, lines, counted, spot.bay_m);
}

/** Share of the resistance that the moments times their distances use. */
export function usedBy(context: Context, asked: Asked, peak: Peak): number {
  return Math.abs(peak.value) * stressPer(context, asked);
}

function placeOf(context: Context, asked: Asked, spot: Spot, most: MostOf | undefined): Place {
  const { factor } = asked.situation;
  const counted: FactorOf = (action) => factor(action) * (spot.distances.get(action) ?? 0);
  const per = stressPer(context, asked);
  const mostUsed = (by: FactorOf): number => (most?.(by, spot.isOverBracket) ?? Infinity) * per;
  return { asked, spot, counted, atMost: mostUsed(counted), mostUsed };
}

function spotsOf({ shelf, solved }: Context, warp: Warp, part: BoardPart): Spot[] {
  const { bays } = solved[0].model;
  const shortest_m = Math.min(
    ...bays.map(({ kind, from_m, to_m }) => (to_m - from_m) * (kind === 'span' ? 1 : 2)),
  );
  const lengths = bays.flatMap(({ kind, from_m, to_m }) => (kind === 'span' ? [to_m - from_m] : []));
  const different = lengths.filter(
    (length, index) => lengths.findIndex((each) => Math.abs(each - length) <= sameLength_m) === index,
  );
  const spot = (corner: Corner, bay_m: number, isOverBracket: boolean): Spot => {
    const c_n = neutralDistance.evaluate(neutralNumbers(shelf, corner));
    const share = shareOf(shelf, warp, bay_m, isOverBracket);
    const k_w = warpedLever.evaluate(leverNumbers(shelf, warp, part, corner, share));
    const distances = [null, ...shelf.actions].map(
      (action) => [action, cornerDistance.evaluate({ c_n, k_w, e_s: besideAxis(shelf, action) })] as const,
    );
    return { corner, bay_m, isOverBracket, distances: new Map(distances) };
  };
  return cornersOf(shelf, part).flatMap((corner) => [
    spot(corner, shortest_m, true),
    ...different.map((length) => spot(corner, length, false)),
  ]);
}

/** What a unit of the moments times their distances uses, 1/(N·m²). */
function stressPer({ shelf }: Context, { part, by_Pa }: Asked): number {
  return warpedStress.evaluate({ E_i: part.E_Pa, S_Mc: 1, EI_eff: shelf.board.EI_Nm2 }) / by_Pa;
}

/**
 * The stress, worked out.
 *
 * @param lesser what the distance of a load may be brought down to by, e_s in front of the twist axis; null where by nothing
 */
export function warpedSteps(
  { shelf }: Context,
  { factor }: Situation,
  part: BoardPart,
  warp: Warp,
  { peak, corner, bay_m, isOverBracket }: WarpedPeak,
  lesser: (e_s: number, c_w: number) => Worked | null = () => null,
): Worked[] {
  const { system, board } = shelf;
  const length = work(warpLength, lengthNumbers(shelf, warp, bay_m), system);
  const share = work(isOverBracket ? clampedShare : warpedShare, { u: length.value }, system);
  const acting = [null, ...shelf.actions].filter((action) => factor(action) > 0);
  const neutral = work(
    neutralDistance,
    neutralNumbers(shelf, corner),
    system,
    `${neutralDistance.caption}: worst corner of the ${part.name}`,
  );
  const omega = work(cornerOmega, warp.omegaFrom(part, corner), system);
  const lever = work(warpedLever, leverNumbers(shelf, warp, part, corner, share.value), system);
  const distances = sameLevers(shelf, acting).flatMap(({ e_s, names }) => {
    const distance = work(
      cornerDistance,
      { c_n: neutral.value, k_w: lever.value, e_s },
      system,
      `${cornerDistance.caption}, for ${listed(names)}`,
    );
    const brought = lesser(e_s, distance.value);
    return brought === null ? [distance] : [distance, brought];
  });
  const stress = work(
    warpedStress,
    { E_i: part.E_Pa, S_Mc: Math.abs(peak.value), EI_eff: board.EI_Nm2 },
    system,
    `bending stress at the worst corner of the ${part.name}, twisting included`,
  );
  return [length, share, neutral, omega, lever, ...distances, stress];
}

/** Loads by how far they stand in front of the twist axis: those that stand alike are one line. */
function sameLevers(shelf: Shelf, acting: readonly (Action | null)[]): { e_s: number; names: string[] }[] {
  const levers: { e_s: number; names: string[] }[] = [];
  for (const action of acting) {
    const e_s = besideAxis(shelf, action);
    const name = action === null ? 'the board itself' : action.name;
    const same = levers.find((each) => Math.abs(each.e_s - e_s) < sameLength_m);
    if (same === undefined) levers.push({ e_s, names: [name] });
    else same.names.push(name);
  }
  return levers;
}

/** Corners of a part from the centroid; of a layer that slides, its face from its own middle. */
function cornersOf({ board: { section, bonded } }: Shelf, part: BoardPart): Corner[] {
  if (!bonded) return [{ y_m: 0, z_m: part.height_m / 2 }];
  return [0, part.width_m].flatMap((dy) =>
    [0, part.height_m].map((dz) => ({
      y_m: part.y_m + dy - section.centroidY_m,
      z_m: part.z_m + dz - section.centroidZ_m,
    })),
  );
}

function lengthNumbers({ board }: Shelf, warp: Warp, bay_m: number) {
  return { L: bay_m, GJ: board.twisting.GJ_Nm2, EI_w: warp.EIw_Nm4 };
}

function shareOf(shelf: Shelf, warp: Warp, bay_m: number, isOverBracket: boolean): number {
  const u = warpLength.evaluate(lengthNumbers(shelf, warp, bay_m));
  return (isOverBracket ? clampedShare : warpedShare).evaluate({ u });
}

function neutralNumbers({ board: { section, bonded } }: Shelf, corner: Corner) {
  const EI_xy = bonded ? section.EIxy_Nm2 : 0;
  return { z_i: corner.z_m, y_i: corner.y_m, EI_xy, EI_y: section.EIy_Nm2 };
}

function leverNumbers({ board }: Shelf, warp: Warp, part: BoardPart, corner: Corner, r_w: number) {
  return { r_w, omega: omegaAt(warp, part, corner), EI_eff: board.EI_Nm2, EI_w: warp.EIw_Nm4 };
}

/** How far a load stands in front of the axis the board twists about; of null the board itself. */
export function besideAxis({ board: { twisting, weightAt_m } }: Shelf, action: Action | null): number {
  return (action?.eccentricity_m ?? weightAt_m) - twisting.axis_m;
}

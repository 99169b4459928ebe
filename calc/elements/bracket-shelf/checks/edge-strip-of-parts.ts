import { work, type Worked } from '../../../formula/step.ts';
import { lesserDistance, plateDistance, stripStressOfParts } from '../../../mechanics/edge-strip-formulas.ts';
import type { Warp } from '../../../mechanics/open-section.ts';
import { worstCorner, type Corner } from '../../../mechanics/section.ts';
import type { Asked } from '../asked.ts';
import type { BoardPart } from '../board-part.ts';
import type { BoardPlate } from '../board-plate.ts';
import type { Context, Situation } from '../context.ts';
import { edgeExcesses, type EdgeExcess } from '../edge-loads.ts';
import type { EdgePlate } from '../edge-plate.ts';
import { hoggingOver, type FactorOf, type Peak } from '../forces.ts';
import type { Shelf } from '../shelf.ts';
import { stressFactor, stressSteps } from './bending.ts';
import { momentAt, mostMoment, type Bent } from './edge-strip-plain.ts';
import { besideAxis, peakAt, usedBy, warpedSteps, type BentParts, type Place } from './warped-bending.ts';

type StripNumbers = Omit<Parameters<typeof stripStressOfParts.evaluate>[0], 'f_M'>;

/** A place that could be bent most, and shares of the resistance: what it surely uses no more than, and what it uses. */
interface Candidate {
  readonly atMost: number;
  readonly find: () => { readonly used: number; readonly bent: Bent };
}

/**
 * The worst place of a board of layers, or with a strip along its other edge. Above what the whole section has at the edge,
 * twisting included, stands what the plate has there by itself: a strip far from the edge takes none of that off.
 */
export function worstOfParts(
  context: Context,
  edgePlate: EdgePlate,
  plate: BoardPlate,
  { asked, places }: BentParts,
): Bent | null {
  const { warp } = context.shelf.board.twisting;
  const excesses = new Map(
    context.situations.map((situation) => [
      situation,
      edgeExcesses(context.shelf, edgePlate, situation).filter((excess) => amountOf(excess) > 0),
    ]),
  );
  const isHere = ({ part }: Asked): boolean => plate.parts.includes(part);
  const of = ({ situation }: Asked): readonly EdgeExcess[] => excesses.get(situation) ?? [];
  const candidates =
    warp === null || places === null
      ? asked
          .filter(isHere)
          .flatMap((each) => of(each).map((excess) => unwarped(context, plate, each, excess)))
      : places
          .filter((place) => isHere(place.asked))
          .flatMap((place) =>
            of(place.asked)
              .filter((excess) => isAt(context.shelf, plate, place, excess))
              .map((excess) => warped(context, plate, warp, place, excess)),
          );
  let worst: { readonly used: number; readonly bent: Bent } | null = null;
  for (const { atMost, find } of candidates.sort((a, b) => b.atMost - a.atMost)) {
    if (worst !== null && atMost <= worst.used) break;
    const found = find();
    if (worst === null || found.used > worst.used) worst = found;
  }
  return worst?.bent ?? null;
}

function amountOf({ roaming_N, others_N }: EdgeExcess): number {
  return roaming_N + others_N;
}

/**
 * Whether a corner is one at the edge, in a bay or over a bracket as the excess is. Over a bracket a tall strip bends the board
 * right beside it too.
 */
function isAt(
  { board }: Shelf,
  plate: BoardPlate,
  { asked, spot }: Place,
  { at, half, edge }: EdgeExcess,
): boolean {
  if ('support' in at !== spot.isOverBracket) return false;
  if (plate.neutral_m === null || ('support' in at && half !== edge)) return true;
  const { y_m, width_m } = asked.part;
  const side = y_m + (edge === 'front' ? width_m : 0) - board.section.centroidY_m;
  return Math.abs(spot.corner.y_m - side) < 1e-9;
}

function unwarped(context: Context, plate: BoardPlate, asked: Asked, excess: EdgeExcess): Candidate {
  const { situation, part, by_Pa } = asked;
  const { board } = context.shelf;
  const corner = worstCorner(board.section, part);
  const strip = numbersOf(context.shelf, plate, part, corner, excess);
  const used = (M_Nm: number): number =>
    stripStressOfParts.evaluate({ ...strip, f_M: M_Nm * stressFactor(context, part) }) / by_Pa;
  return {
    atMost: used(mostMoment(situation, excess)),
    find: () => {
      const M_Nm = momentAt(situation, excess);
      const stress = (): Worked[] => withStrip(context, strip, stressSteps(context, part, M_Nm));
      return { used: used(M_Nm), bent: { situation, part, excess, stress } };
    },
  };
}

/**
 * A load in the half of a bare edge bends the board there no more than if the strip at the other edge were not, so its distance
 * is the lesser of what twisting makes of it and what the plate by itself has.
 */
function warped(
  context: Context,
  plate: BoardPlate,
  warp: Warp,
  { asked, spot, mostUsed }: Place,
  excess: EdgeExcess,
): Candidate {
  const { situation, part, by_Pa } = asked;
  const { shelf } = context;
  const strip = numbersOf(shelf, plate, part, spot.corner, excess);
  const above = stripStressOfParts.evaluate({ ...strip, f_M: 0 }) / by_Pa;
  const { c_i, E_e, t } = strip;
  const alone = { EI_eff: shelf.board.EI_Nm2, c_i, E_e, b: plate.b_m, t };
  const c_p = plateDistance.evaluate(alone);
  const lesser = (e_s: number): boolean => isInHalf(shelf, excess, e_s);
  const brought: FactorOf = (action) => {
    const c_w = spot.distances.get(action) ?? 0;
    return situation.factor(action) * (lesser(besideAxis(shelf, action)) ? Math.min(c_w, c_p) : c_w);
  };
  return {
    atMost: mostUsed(brought) + above,
    find: () => {
      const { at } = excess;
      const peak =
        'support' in at ? overBracket(situation, brought, at.support) : peakAt(situation, spot, brought);
      const stress = (): Worked[] => {
        const { system } = shelf;
        const lines = warpedSteps(context, situation, part, warp, { ...spot, peak }, (e_s, c_w) =>
          lesser(e_s) && c_w > c_p ? work(lesserDistance, { c_w, c_p }, system) : null,
        );
        return withStrip(context, strip, [work(plateDistance, alone, system), ...lines]);
      };
      return { used: usedBy(context, asked, peak) + above, bent: { situation, part, excess, stress } };
    },
  };
}

/** Whether what stands so far in front of the twist axis is in the half of a bare edge. */
function isInHalf({ board, depth_m }: Shelf, { half, edge }: EdgeExcess, e_s: number): boolean {
  const y_m = board.twisting.axis_m + e_s;
  const off_m = half === 'front' ? depth_m - y_m : y_m;
  return half === edge && off_m <= depth_m / 2 + 1e-9;
}

function overBracket({ solved }: Situation, counted: FactorOf, support: number): Peak {
  const { model, lines } = solved;
  const value = Math.min(0, hoggingOver(model, lines, counted, support));
  return { value, at_m: model.prepared.beam.supports[support]?.at_m ?? 0 };
}

/** The stress of the whole section, worked out, and what the strip has above it. */
function withStrip({ shelf }: Context, strip: StripNumbers, lines: readonly Worked[]): Worked[] {
  return [...lines, work(stripStressOfParts, { ...strip, f_M: lines.at(-1)?.value ?? NaN }, shelf.system)];
}

function numbersOf(
  { board }: Shelf,
  plate: BoardPlate,
  part: BoardPart,
  corner: Corner,
  { roaming_N, others_N }: EdgeExcess,
): StripNumbers {
  const c_i =
    plate.neutral_m === null
      ? part.height_m / 2
      : Math.abs(corner.z_m + board.section.centroidZ_m - plate.neutral_m);
  return { E_i: part.E_Pa, c_i, m_r: roaming_N, m_f: others_N, E_e: plate.E_Pa, t: plate.t_m };
}

import { work, type Worked } from '../../../formula/step.ts';
import { skinAlong, skinTogether } from '../../../mechanics/box-formulas.ts';
import type { Asked } from '../asked.ts';
import { alike, BoxMembers, shortestBeside, type BoxPlace } from '../box-members.ts';
import type { Context, Situation } from '../context.ts';
import { hoggingOver, largestSagging, sameLength_m, type FactorOf, type Peak } from '../forces.ts';
import type { Action } from '../shelf.ts';
import { mostOnPatch } from './box-skin.ts';

/** Where a box is bent most: the moment with each load counted as often as the most bent member has it. */
export interface BoxPeak {
  readonly peak: Peak;
  /** The loads that count, and the upper skin bent by itself, worked out. */
  readonly steps: () => Worked[];
  /** On top of what the moment brings. */
  readonly alone_Pa: number;
}

/** A member in bays of one length or over one bracket. */
interface Spot {
  readonly place: BoxPlace;
  readonly support: number | null;
  readonly index: number;
  readonly counts: ReadonlyMap<Action | null, number>;
}

/**
 * The most bent place of a box. Its skins are too soft to share a load among all members: each counts as often as the member
 * under it, with the skins that work along with that, has more of it than the mean.
 *
 * @param per stress for each unit of moment
 */
export function boxPeak(
  context: Context,
  asked: readonly Asked[],
  per: (asked: Asked) => number,
): { readonly asked: Asked; readonly box: BoxPeak } | null {
  const members = BoxMembers.of(context.shelf);
  if (members === null) return null;
  const spots = spotsOf(context, members);
  let worst: { readonly asked: Asked; readonly box: BoxPeak } | null = null;
  let ratio = -1;
  for (const situation of context.situations) {
    const parts = asked.filter((each) => each.situation === situation);
    const acting = [null, ...context.shelf.actions].filter((action) => situation.factor(action) > 0);
    const onPatch = skinBentAlone(context, situation, members);
    for (const spot of spots) {
      const peak = peakAt(situation, spot);
      for (const each of parts) {
        const isBentAlone = each.part.name === 'top skin' && spot.support === null;
        const alone = isBentAlone ? onPatch : null;
        const used = (Math.abs(peak.value) * per(each) + (alone?.value ?? 0)) / each.by_Pa;
        if (used <= ratio) continue;
        ratio = used;
        const steps = (): Worked[] => [
          ...alike(acting, (action) => members.countOf(spot.index, action, spot.place)),
          ...(alone?.steps() ?? []),
        ];
        worst = { asked: each, box: { peak, steps, alone_Pa: alone?.value ?? 0 } };
      }
    }
  }
  return worst;
}

/** Members that no other one outdoes in every load. */
function spotsOf({ shelf, solved }: Context, members: BoxMembers): Spot[] {
  const { bays, prepared } = solved[0].model;
  const spans = bays.filter(({ kind }) => kind === 'span').map(({ from_m, to_m }) => to_m - from_m);
  const lengths = spans.filter(
    (length, k) => spans.findIndex((each) => Math.abs(each - length) <= sameLength_m) === k,
  );
  const over = prepared.beam.supports.map(({ at_m }) => shortestBeside(bays, at_m));
  const places = [
    ...lengths.map((bay_m) => ({ place: { bay_m, isOverBracket: false }, support: null })),
    ...over.flatMap((bay_m, support) =>
      bay_m === null ? [] : [{ place: { bay_m, isOverBracket: true }, support }],
    ),
  ];
  return places.flatMap(({ place, support }) => {
    const all = Array.from({ length: members.count }, (_, index): Spot => {
      const counts = [null, ...shelf.actions].map(
        (action) => [action, members.countOf(index, action, place).value] as const,
      );
      return { place, support, index, counts: new Map(counts) };
    });
    return all.filter((spot, k) => !all.some((other, n) => n !== k && outdoes(other, spot, n < k)));
  });
}

function outdoes(one: Spot, other: Spot, isFirst: boolean): boolean {
  const pairs = [...one.counts].map(([action, times]) => [times, other.counts.get(action) ?? 0] as const);
  return pairs.every(([a, b]) => a >= b) && (isFirst || pairs.some(([a, b]) => a > b));
}

function peakAt({ solved: { model, lines }, factor }: Situation, { place, support, counts }: Spot): Peak {
  const counted: FactorOf = (action) => factor(action) * (counts.get(action) ?? 1);
  if (support === null) return largestSagging(model, lines, counted, place.bay_m);
  const at_m = model.prepared.beam.supports[support]?.at_m ?? 0;
  return { value: Math.min(0, hoggingOver(model, lines, counted, support)), at_m };
}

/** The upper skin bent along the board by what stands on a patch between members. */
function skinBentAlone(
  context: Context,
  situation: Situation,
  members: BoxMembers,
): { readonly value: number; readonly steps: () => Worked[] } {
  const { system } = context.shelf;
  const patch = mostOnPatch(context, situation);
  const numbers = { m_P: patch?.value ?? 0, t: members.box.t, r_A: members.box.grain.ratio };
  const value = skinAlong.evaluate(numbers);
  return {
    value,
    steps: () => (patch === null || value === 0 ? [] : [patch, work(skinAlong, numbers, system)]),
  };
}

/** What the upper skin has in all, where it is bent by itself too. */
export function withSkinAlone({ shelf }: Context, { alone_Pa }: BoxPeak, stress: Worked): Worked[] {
  if (alone_Pa === 0) return [stress];
  return [stress, work(skinTogether, { f_M: stress.value, f_x: alone_Pa }, shelf.system)];
}

import type { Combination } from '../../codes/design-code.ts';
import { work, type Worked } from '../../formula/step.ts';
import { hullOf, type Point } from '../../mechanics/hull.ts';
import { topHolding } from './hold-formulas.ts';
import { loadDurations, type Overhang } from './overhang.ts';
import type { ScrewPull } from './top-screws.ts';
import { overturningMoment } from './tip-over-formulas.ts';
import { leverAbout, peopleOutside, topParts, type PeopleOutside } from './tipping-line.ts';

/** What tips a top over a line and what keeps it. */
export interface TippingMoments {
  readonly over: Worked;
  readonly keep: Worked;
  /** What keeps it without its screws. */
  readonly weightAlone_Nm: number;
  /** What of `over` is by people. */
  readonly byPeople_Nm: number;
  readonly combination: Combination;
  /** What its screws hold for as long as that; null without any. */
  readonly pull: ScrewPull | null;
  /** A corner on the line, and how far the line is turned from the length of the top, degrees. */
  readonly corner: Point;
  readonly slant: number;
}

/** Asked for at several places of one check. */
const known = new WeakMap<Overhang, readonly TippingMoments[]>();

/** The moments about every line that the top could tip over, in every combination: screws hold less for long. */
export function tippingMoments(overhang: Overhang): readonly TippingMoments[] {
  const held = known.get(overhang);
  if (held !== undefined) return held;
  const lines = tippingLines(hullOf(carryingPoints(overhang))).map((line) => partsAbout(overhang, line));
  const made = overhang.code.combinations(loadDurations(overhang)).flatMap((combination) => {
    const pull = overhang.screws?.pullUnder(combination.duration) ?? null;
    return lines.map((line) => about(overhang, { combination, pull }, line));
  });
  known.set(overhang, made);
  return made;
}

/** Whether the weight of the top alone does not hold it under everything that can stand on it: then its screws count. */
export function reliesOnScrews(overhang: Overhang): boolean {
  return overhang.screws !== null && looseShare(overhang) !== 1;
}

/**
 * How much of the people a screwed top bears with its screws loose, by its weight alone: all of them, a share, or null where
 * it would tip with nobody there. Somebody lighter than who is given may lean there too: that much counts with the screws
 * loose, so that nobody heavier makes anything better.
 */
export function looseShare(overhang: Overhang): number | null {
  let share = 1;
  for (const { over, weightAlone_Nm, byPeople_Nm } of tippingMoments(overhang)) {
    if (over.value <= weightAlone_Nm) continue;
    const room_Nm = weightAlone_Nm - (over.value - byPeople_Nm);
    if (room_Nm < 0) return null;
    share = Math.min(share, room_Nm / byPeople_Nm);
  }
  return share;
}

/** Asked for of every combination. */
const knownOnBase = new WeakMap<Overhang, { readonly share: number | null }>();

/**
 * The same of the base alone, without its props. They take nothing from the screws: how far the top moves with more than that
 * on it is told with the screws holding, as without the props. Loose, it would rise off its back rail and hang between its props.
 */
export function movingShare(overhang: Overhang): number | null {
  const held = knownOnBase.get(overhang);
  if (held !== undefined) return held.share;
  const share = overhang.screws === null ? 1 : looseShare({ ...overhang, props: [] });
  knownOnBase.set(overhang, { share });
  return share;
}

/**
 * Every line about which the top could tip: along each side of what carries it, and, since screws pull at single
 * places, about each corner at slants between its two sides.
 */
function tippingLines(corners: readonly Point[]): (readonly [Point, Point])[] {
  return corners.flatMap((corner, index) => {
    const before = corners[(index + corners.length - 1) % corners.length] ?? corner;
    const next = corners[(index + 1) % corners.length] ?? corner;
    const from = Math.atan2(corner[1] - before[1], corner[0] - before[0]);
    const to = Math.atan2(next[1] - corner[1], next[0] - corner[0]);
    const turn = (to - from + 2 * Math.PI) % (2 * Math.PI);
    return Array.from({ length: slants }, (_, k): readonly [Point, Point] => {
      const angle = from + (turn * (k + 1)) / slants;
      return [corner, [corner[0] + Math.cos(angle), corner[1] + Math.sin(angle)]];
    });
  });
}

/** Slants tried between two sides, the second of them included. */
const slants = 24;

/** The base from rail to rail, and the ends of the props. A bar bends with the top and carries nothing to the floor. */
function carryingPoints({ base, props }: Overhang): Point[] {
  const { from_m, to_m, back_m, front_m } = base;
  return [
    [from_m, back_m],
    [to_m, back_m],
    [to_m, front_m],
    [from_m, front_m],
    ...props.flatMap((prop): Point[] => (prop.kind === 'flat-bar' ? [] : [[prop.at, prop.to]])),
  ];
}

/** Screws pull as far as they are from the line, the farthest as hard as it may: lengths to be times its pull. */
function leverOfAll(levers: readonly number[]): number {
  const farthest = Math.max(0, ...levers);
  return farthest === 0 ? 0 : levers.reduce((sum, lever) => sum + lever ** 2, 0) / farthest;
}

/** What lies and stands outside a line and inside it, whatever the combination. */
interface AboutLine extends ReturnType<typeof topParts> {
  readonly people: PeopleOutside;
  /** The pulls of the screws, each for its length times the pull of one. */
  readonly screws_m: number;
  readonly corner: Point;
  readonly slant: number;
}

/** @param line two corners, which go round with the inside on their left */
function partsAbout(overhang: Overhang, [from, to]: readonly [Point, Point]): AboutLine {
  const { top, screws } = overhang;
  const lever = leverAbout(from, to);
  const levers = (screws?.places ?? []).map(({ x_m, y_m }) => Math.max(0, -lever([x_m, y_m])));
  return {
    ...topParts(top, lever),
    people: peopleOutside(overhang, lever),
    screws_m: leverOfAll(levers),
    corner: from,
    slant: Math.round((Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI),
  };
}

function about(
  { serving, person, system }: Overhang,
  { combination, pull }: Pick<TippingMoments, 'combination' | 'pull'>,
  { outside, inside, people, screws_m, corner, slant }: AboutLine,
): TippingMoments {
  const people_N = person === null ? 0 : combination.factor(person.duration) * people.count * person.load_N;
  const over = work(
    overturningMoment,
    {
      D_f: outside.weight_N,
      e_f: outside.lever_m,
      S_f:
        (serving === null ? 0 : combination.factor(serving.duration) * serving.pressure_Npm2) *
        outside.area_m2,
      e_S: outside.lever_m,
      P: people_N,
      e_P: people.lever_m,
    },
    system,
  );
  const Sigma_s = (pull?.pull_N ?? 0) * screws_m;
  const keep = work(topHolding, { D_r: inside.weight_N, e_r: inside.lever_m, Sigma_s }, system);
  return {
    over,
    keep,
    weightAlone_Nm: keep.value - Sigma_s,
    byPeople_Nm: people_N * people.lever_m,
    combination,
    pull,
    corner,
    slant,
  };
}

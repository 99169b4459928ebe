import type { Combination } from '../../codes/design-code.ts';
import type { EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import { walksOf, type Standing, type Walk } from './people.ts';
import type { Bound, TopModel } from './plate-model.ts';
import { servedOn, type Served } from './top-loads.ts';
import { movesWithScrews } from './top-tipping.ts';
import { trialOf, type Case, type Trial, type Worst } from './trial.ts';

/** What came of one combination. */
export interface Found {
  readonly combination: Combination;
  readonly hasPeople: boolean;
  readonly worst: ReadonlyMap<EffectName, Worst>;
  /** Bounds on which the top tips under some of the loads. */
  readonly tips: ReadonlySet<Bound>;
}

/** The same top on a coarse mesh, to find where people ask most of it, and on a fine one, to tell how much. */
export interface TopMeshes {
  readonly scout: TopModel;
  readonly fine: TopModel;
}

/** Longest step between places where a person is tried first, and how often it is halved around the worst. */
const firstStep_m = 0.16;
const halvings = 2;

/**
 * The worst of every effect over everywhere people can be, in one combination: on the coarse mesh they are moved along
 * every free edge in steps, and then closer around the worst places; the worst cases of each effect, and of the moments
 * near each prop, are worked out on the fine mesh.
 */
export function searchCombination(
  overhang: Overhang,
  { scout, fine }: TopMeshes,
  combination: Combination,
): Found {
  const trial = trialOf(overhang, fine);
  const { serving, person } = overhang;
  const hasServing = serving !== null && combination.factor(serving.duration) > 0;
  const hasPeople = person !== null && combination.factor(person.duration) > 0;
  const arrangements: readonly Served[] = hasServing ? servedOn(overhang) : ['nowhere'];
  const allServed = [...new Set<Served>([...arrangements, 'nowhere'])];
  trial.tryCases(allServed.map((served) => ({ served, people: [] })));
  if (hasPeople) {
    const walks = walksOf(overhang);
    const scouting = trialOf(overhang, scout);
    walkAbout(scouting, walks, allServed);
    for (const [bound, cases] of casesOf(scouting)) trial.tryCases(inOrder(cases), bound);
    settle(trial, walks, allServed);
  }
  return {
    combination,
    hasPeople,
    worst: withoutBrink(trial, movesWithScrews(overhang)),
    tips: new Set(trial.tips.keys()),
  };
}

/** People everywhere they can be, and what is served wherever it asks more then. */
function walkAbout(scouting: Trial, walks: readonly Walk[], allServed: readonly Served[]): void {
  const tryAt = (all: readonly Standing[], arrangements: readonly Served[]): void => {
    const cases = all.flatMap((people) => arrangements.map((served) => ({ served, people })));
    scouting.tryCases(inOrder(cases));
  };
  const first = allServed.slice(0, 1);
  tryAt(
    walks.flatMap((walk) => placesOf(walk).map((place) => walk.at(place))),
    first,
  );
  for (let step = firstStep_m / 2, round = 0; round < halvings; round++, step /= 2) {
    tryAt(
      worstPeople(scouting).flatMap((people) => beside(walks, people, step)),
      first,
    );
  }
  tryAt(worstPeople(scouting), allServed);
}

/** The coarse mesh tells of some effects, beside a corner above all, only roughly: their places are found on the fine one. */
function settle(trial: Trial, walks: readonly Walk[], allServed: readonly Served[]): void {
  for (let step = firstStep_m / 4, round = 0; round < halvings; round++, step /= 2) {
    for (const [bound, worst] of trial.onBound) {
      const cases = [...worst]
        .filter(([name]) => ['along', 'across', 'rail'].includes(name) || / (?:span|end) /.test(name))
        .flatMap(([, { served, people }]) => [
          ...beside(walks, people, step).map((next) => ({ served, people: next })),
          ...allServed.map((other) => ({ served: other, people })),
        ]);
      trial.tryCases(inOrder(cases), bound);
    }
  }
}

/** Along the edges, one person first: what touches the top changes little from one case to the next. */
function inOrder(cases: readonly Case[]): Case[] {
  const key = ({ people: [first], people }: Case): number[] => [
    people.length,
    first?.y_m ?? 0,
    first?.x_m ?? 0,
  ];
  return [...cases].sort((one, other) => {
    const [a, b] = [key(one), key(other)];
    const k = a.findIndex((value, index) => value !== b[index]);
    return (a[k] ?? 0) - (b[k] ?? 0);
  });
}

/** The places a step before and after some people, on every walk they are on. */
function beside(walks: readonly Walk[], people: Standing, step: number): Standing[] {
  return walks.flatMap((walk) => {
    const place = placeOn(walk, people);
    if (place === null) return [];
    return [place - step, place + step]
      .filter((next) => next > walk.from_m && next < walk.to_m)
      .map((next) => walk.at(next));
  });
}

/** Where people were at the worst of any effect; lift and screws follow the others. */
function worstPeople({ onBound }: Trial): Standing[] {
  const all = [...onBound.values()]
    .flatMap((worst) => [...worst])
    .filter(([name]) => name !== 'lift' && name !== 'screw')
    .map(([, { people }]) => people);
  return all.filter(
    (people, index) => people.length > 0 && all.findIndex((other) => isSame(other, people)) === index,
  );
}

/** The cases that are the worst of some effect with as many people, or tip the top, on each bound. */
function casesOf({ cases, tips }: Trial): [Bound, Case[]][] {
  return [...cases].map(([bound, worst]) => {
    const tipping = tips.get(bound);
    const all = [...worst.values(), ...(tipping === undefined ? [] : [tipping])];
    return [bound, all.map(({ served, people }) => ({ served, people }))];
  });
}

/** Both ends, even steps between, and the stops. */
function placesOf({ from_m, to_m, stops_m }: Walk): number[] {
  const steps = Math.max(1, Math.ceil((to_m - from_m) / firstStep_m));
  const even = Array.from({ length: steps + 1 }, (_, k) => from_m + ((to_m - from_m) * k) / steps);
  return [...even, ...stops_m.filter((at) => at > from_m && at < to_m)];
}

/** Where on a walk some people are; null where they are not on it. */
function placeOn(walk: Walk, people: Standing): number | null {
  const [spot] = people;
  const [start] = walk.at(walk.from_m);
  if (spot === undefined || start === undefined || people.length !== walk.at(walk.from_m).length) return null;
  const isAlongX = walk.along === 'x';
  const off = isAlongX ? spot.y_m - start.y_m : spot.x_m - start.x_m;
  if (Math.abs(off) > 1e-9) return null;
  return walk.from_m + (isAlongX ? spot.x_m - start.x_m : spot.y_m - start.y_m);
}

/**
 * The worst of every effect on all bounds. Where a top tips on one bound, its movements there grow without end towards the
 * brink, and none of them is the largest: they are left to the bound on which it stands, or to the screws where the base alone
 * needs them.
 */
function withoutBrink({ onBound, tips }: Trial, isOnScrews: boolean): Map<EffectName, Worst> {
  const standing = [...onBound.keys()].filter((bound) => !tips.has(bound));
  const all = new Map<EffectName, Worst>();
  onBound.forEach((effects, bound) => {
    const atBrink = standing.length > 0 && (tips.has(bound) || (isOnScrews && bound === 'screws-loose'));
    effects.forEach((effect, name) => {
      if (atBrink && (name === 'lift' || name.includes('edge '))) return;
      if (effect.value > (all.get(name)?.value ?? -Infinity)) all.set(name, effect);
    });
  });
  return all;
}

function isSame(a: Standing, b: Standing): boolean {
  return (
    a.length === b.length && a.every((spot, index) => spot.x_m === b[index]?.x_m && spot.y_m === b[index].y_m)
  );
}

import type { Combination } from '../../codes/design-code.ts';
import type { EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import { walksOf, type Standing, type Walk } from './people.ts';
import type { Bound, TopModel } from './plate-model.ts';
import { servedOn, type Served } from './top-loads.ts';
import { movingShare } from './top-tipping.ts';
import { trialOf, type Case, type Trial, type Worst } from './trial.ts';
import { addsTo, variantsOf } from './variants.ts';
import { beside, firstPlaces, ontoLines } from './walk-places.ts';

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

/** Steps about the worst places: on the coarse mesh one after the other, and at last on the fine one. */
const steps_m = [0.08, 0.04];
const lastStep_m = 0.02;
/** How often people are moved to the next line of the fine mesh from where they ask most. */
const roundsOnLines = 3;

/**
 * The worst of every effect over everywhere people can be, in one combination: on the coarse mesh they are moved along
 * every free edge from line to line, and then closer around the worst places; the worst cases of each effect, and of the
 * moments near each prop, are worked out on the fine mesh.
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
    walkAbout(scouting, walks, scout, allServed);
    for (const [bound, cases] of casesOf(scouting)) trial.tryCases(inOrder(cases), bound);
    settle(trial, walks, fine, allServed);
  }
  return {
    combination,
    hasPeople,
    worst: withoutBrink(
      [...effectsOf(trial), ...inOtherWays(overhang, fine, trial, hasPeople ? walksOf(overhang) : [])],
      new Set(trial.tips.keys()),
      movingShare(overhang),
    ),
    tips: new Set(trial.tips.keys()),
  };
}

/** The worst of some effects on one bound. */
interface OnBound {
  readonly bound: Bound;
  readonly effects: readonly (readonly [EffectName, Worst])[];
}

function effectsOf({ onBound }: Trial): OnBound[] {
  return [...onBound].map(([bound, effects]) => ({ bound, effects: [...effects] }));
}

/** The worst cases of each bound, tried where screws do not give way and where rails bend. */
function inOtherWays(
  overhang: Overhang,
  fine: TopModel,
  { byPeople, onBound }: Trial,
  walks: readonly Walk[],
): OnBound[] {
  return variantsOf(overhang, fine).flatMap((each) => {
    const { bound, variant, screw_N } = each;
    const pull_N = onBound.get(bound)?.get('screw')?.value ?? 0;
    if (variant === 'firm-screws' && pull_N < (1 - fullness) * screw_N) return [];
    const trial = trialOf(overhang, { ...fine, bounds: [each] }, variant);
    const worst = (byPeople.get(bound) ?? []).flatMap((effects) => [...effects.values()]);
    trial.tryCases(inOrder(worst.map(({ served, people }) => ({ served, people }))));
    for (const step of variant === 'bent-rails' ? bentSteps_m : []) {
      const most = [...(trial.onBound.get(bound) ?? [])].filter(([name]) => name.includes('edge '));
      const next = most.flatMap(([, { served, people }]) =>
        beside(walks, people, step).map((others) => ({ served, people: others })),
      );
      trial.tryCases(inOrder(next));
    }
    return effectsOf(trial).map(({ effects }) => ({
      bound,
      effects: effects.filter(([name]) => addsTo[variant](name)),
    }));
  });
}

/** Share by which a screw may be from full for rounding's sake. */
const fullness = 1e-6;

/** Steps about the places where people move a top most whose rails bend. */
const bentSteps_m = [0.16, 0.08];

/** People everywhere they can be, and what is served wherever it asks more then. */
function walkAbout(
  scouting: Trial,
  walks: readonly Walk[],
  { plate: { mesh } }: TopModel,
  allServed: readonly Served[],
): void {
  const tryAt = (all: readonly Standing[], arrangements: readonly Served[]): void => {
    const cases = all.flatMap((people) => arrangements.map((served) => ({ served, people })));
    scouting.tryCases(inOrder(cases));
  };
  const first = allServed.slice(0, 1);
  tryAt(
    walks.flatMap((walk) => firstPlaces(walk, mesh).map((place) => walk.at(place))),
    first,
  );
  for (const step of steps_m) {
    tryAt(
      worstPeople(scouting).flatMap((people) => beside(walks, people, step)),
      first,
    );
  }
  tryAt(worstPeople(scouting), allServed);
}

/** Effects that change most from one place to the next. */
const sharpest = ['along', 'across', 'rail', 'rolling'] as const;

/**
 * The coarse mesh tells of some effects only roughly, and of moments at its own lines: their places are found on the fine
 * one. From the worst with one person, and from the worst with two, people are moved to where they stand on its lines.
 */
function settle(
  trial: Trial,
  walks: readonly Walk[],
  { plate: { mesh } }: TopModel,
  allServed: readonly Served[],
): void {
  for (let round = 0; round < roundsOnLines; round++) {
    for (const [bound, byPeople] of trial.byPeople) {
      const cases = byPeople
        .slice(1)
        .flatMap((worst) => sharpest.flatMap((name) => worst.get(name) ?? []))
        .flatMap(({ served, people }) =>
          ontoLines(walks, people, mesh).map((next) => ({ served, people: next })),
        );
      trial.tryCases(inOrder(cases), bound);
    }
  }
  for (const [bound, worst] of trial.onBound) {
    const cases = [...worst]
      .filter(([name]) => sharpest.some((each) => each === name) || / (?:span|end) /.test(name))
      .flatMap(([, { served, people }]) => [
        ...beside(walks, people, lastStep_m).map((next) => ({ served, people: next })),
        ...allServed.map((other) => ({ served: other, people })),
      ]);
    trial.tryCases(inOrder(cases), bound);
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
function casesOf({ byPeople, tips }: Trial): [Bound, Case[]][] {
  return [...byPeople].map(([bound, worst]) => {
    const tipping = tips.get(bound);
    const all = [...worst.flatMap((each) => [...each.values()]), ...(tipping === undefined ? [] : [tipping])];
    return [bound, all.map(({ served, people }) => ({ served, people }))];
  });
}

/**
 * The worst of every effect on all bounds. Where a top tips on one bound, its movements there grow without end towards the
 * brink, and none of them is the largest: they are left to the bound on which it stands, or to the screws where more people
 * are on loose ones than the base alone bears.
 *
 * @param moving how much of the people that is; null where it bears none
 */
function withoutBrink(
  found: readonly OnBound[],
  tips: ReadonlySet<Bound>,
  moving: number | null,
): Map<EffectName, Worst> {
  const isStanding = found.some(({ bound }) => !tips.has(bound));
  const all = new Map<EffectName, Worst>();
  for (const { bound, effects } of found) {
    for (const [name, effect] of effects) {
      const isBeyond = bound === 'screws-loose' && effect.share > (moving ?? 0);
      const atBrink = isStanding && (tips.has(bound) || isBeyond);
      if (atBrink && (name === 'lift' || name.includes('edge '))) continue;
      if (effect.value > (all.get(name)?.value ?? -Infinity)) all.set(name, effect);
    }
  }
  return all;
}

function isSame(a: Standing, b: Standing): boolean {
  return (
    a.length === b.length && a.every((spot, index) => spot.x_m === b[index]?.x_m && spot.y_m === b[index].y_m)
  );
}

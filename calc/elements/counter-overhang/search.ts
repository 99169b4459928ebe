import { fieldUnder } from '../../mechanics/plate/free-plate.ts';
import { nearestLine, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import { resultantOf, type PlateLoad, type Resultant } from '../../mechanics/plate/plate-load.ts';
import {
  fieldOfStanding,
  type PreparedLoad,
  type Stander,
  type Standing as PlateStanding,
} from '../../mechanics/plate/standing.ts';
import type { HeldPlate } from '../../mechanics/plate/supports.ts';
import type { Combination } from '../../codes/design-code.ts';
import {
  edgeEffects,
  forceEffects,
  liftEffect,
  momentEffects,
  type Effect,
  type EffectName,
} from './effects.ts';
import type { Overhang } from './overhang.ts';
import { freeEdges, walksOf, type Standing, type Walk } from './people.ts';
import type { Bound, RingSide, TopModel } from './plate-model.ts';

/** The worst of one effect, and what stood on the top then. */
export interface Worst extends Effect {
  readonly side: RingSide;
  readonly bound: Bound;
  readonly people: Standing;
  /** Where what is served stood. */
  readonly served: Served;
}

export type Served = 'nowhere' | 'overhangs' | 'everywhere';

/** What came of one combination. */
export interface Found {
  readonly combination: Combination;
  readonly hasPeople: boolean;
  readonly worst: ReadonlyMap<EffectName, Worst>;
  /** Bounds on which the top tips under some of the loads. */
  readonly tips: ReadonlySet<Bound>;
}

interface Case {
  readonly served: Served;
  readonly people: Standing;
}

/** Longest step between places where a person is tried first, and how often it is halved around the worst. */
const firstStep_m = 0.16;
const halvings = 2;

/**
 * The worst of every effect over everywhere people can be, in one combination: they are moved along every free edge in
 * steps, and then closer around the worst places.
 */
export function searchCombination(overhang: Overhang, model: TopModel, combination: Combination): Found {
  const bench = benchOf(overhang, model);
  const { serving, person } = overhang;
  const hasServing = serving !== null && combination.factor(serving.duration) > 0;
  const hasPeople = person !== null && combination.factor(person.duration) > 0;
  const arrangements: readonly Served[] = hasServing ? ['overhangs', 'everywhere'] : ['nowhere'];
  const [first = 'nowhere'] = arrangements;
  bench.tryAll({ served: 'nowhere', people: [] });
  for (const served of arrangements) bench.tryAll({ served, people: [] });
  if (hasPeople) {
    const walks = walksOf(overhang);
    for (const walk of walks) {
      for (const place of placesOf(walk, model.plate.mesh))
        bench.tryAll({ served: first, people: walk.at(place) });
    }
    refine(bench, walks, first);
    for (const people of bench.worstPeople()) {
      for (const served of [...arrangements, 'nowhere' as const]) bench.tryAll({ served, people });
    }
  }
  return { combination, hasPeople, worst: withoutBrink(bench), tips: bench.tips };
}

/**
 * Both ends, the stops, and steps between, on which somebody stands on the nearest line of the mesh: there a moment is read
 * at its peak, and it is the same from either end.
 */
function placesOf(walk: Walk, mesh: PlateMesh): number[] {
  const { along, from_m, to_m, stops_m } = walk;
  const lines = along === 'x' ? mesh.x_m : mesh.y_m;
  const spots = walk.at(0).map(({ x_m, y_m }) => (along === 'x' ? x_m : y_m));
  const steps = Math.max(1, Math.ceil((to_m - from_m) / firstStep_m));
  const onLines = Array.from({ length: steps + 1 }, (_, k) => from_m + ((to_m - from_m) * k) / steps).flatMap(
    (even) => spots.map((spot) => nearestLine(lines, even + spot) - spot),
  );
  return [from_m, ...[...onLines, ...stops_m].filter((at) => at > from_m && at < to_m), to_m];
}

function refine(bench: Bench, walks: readonly Walk[], served: Served): void {
  for (let step = firstStep_m / 2, round = 0; round < halvings; round++, step /= 2) {
    for (const people of bench.worstPeople()) {
      for (const walk of walks) {
        const place = placeOn(walk, people);
        if (place === null) continue;
        for (const next of [place - step, place + step]) {
          if (next > walk.from_m && next < walk.to_m) bench.tryAll({ served, people: walk.at(next) });
        }
      }
    }
  }
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
 * brink, and none of them is the largest: they are left to the bound on which it stands.
 */
function withoutBrink({ onBound, tips }: Bench): Map<EffectName, Worst> {
  const standing = [...onBound.keys()].filter((bound) => !tips.has(bound));
  const all = new Map<EffectName, Worst>();
  onBound.forEach((effects, bound) => {
    const atBrink = standing.length > 0 && tips.has(bound);
    effects.forEach((effect, name) => {
      if (atBrink && (name === 'lift' || name.startsWith('edge '))) return;
      if (effect.value > (all.get(name)?.value ?? -Infinity)) all.set(name, effect);
    });
  });
  return all;
}

/** Share by which two values may differ for rounding's sake. */
const alike = 1e-7;

interface Bench {
  readonly onBound: ReadonlyMap<Bound, Map<EffectName, Worst>>;
  readonly tips: Set<Bound>;
  tryAll(each: Case): void;
  worstPeople(): Standing[];
}

interface Stand {
  readonly bound: Bound;
  readonly stander: Stander;
  readonly index: number;
  /** Movements under the top's own weight alone; null where it tips. */
  readonly own: Float64Array | null;
}

function benchOf(overhang: Overhang, model: TopModel): Bench {
  const { plate, bounds } = model;
  const edges = freeEdges(overhang);
  const base = preparedLoads(overhang, model);
  const own = base('nowhere');
  const stands = bounds.map(({ bound, held, stander }, index): Stand => {
    const standing = stander.stand(own);
    return { bound, stander, index, own: settledField(overhang, held, own, standing) };
  });
  const onBound = new Map(bounds.map(({ bound }) => [bound, new Map<EffectName, Worst>()]));
  const tips = new Set<Bound>();
  const tried = new Set<string>();
  const offMiddle_m = ({ people }: Case): number =>
    people.length === 0
      ? -1
      : Math.abs(people.reduce((sum, { x_m }) => sum + x_m, 0) / people.length - overhang.top.length_m / 2);
  /** Of places that ask the same but for rounding the one nearest to the middle counts, whichever was tried first. */
  const isMore = (value: number, each: Case, most: Worst): boolean =>
    Math.abs(value - most.value) > alike * Math.abs(most.value)
      ? value > most.value
      : offMiddle_m(each) < offMiddle_m(most) - 1e-9;
  const keep = (effects: ReadonlyMap<EffectName, Effect>, bound: Bound, each: Case): void => {
    const worst = onBound.get(bound);
    effects.forEach((effect, name) => {
      const most = worst?.get(name);
      if (most === undefined || isMore(effect.value, each, most))
        worst?.set(name, { ...effect, side: model.side, bound, ...each });
    });
  };
  return {
    onBound,
    tips,
    tryAll(each) {
      const key = `${each.served} ${each.people.map(({ x_m, y_m }) => `${Math.round(x_m * 1e5)} ${Math.round(y_m * 1e5)}`).join(' ')}`;
      if (tried.has(key)) return;
      tried.add(key);
      const load = together(base(each.served), peopleLoad(overhang, model, each.people));
      for (const stand of stands) {
        const condensed = bounds[stand.index];
        if (condensed === undefined) continue;
        const standing = stand.stander.stand(load);
        const field = settledField(overhang, condensed.held, load, standing);
        if (field === null || stand.own === null || !standing.stands) {
          tips.add(stand.bound);
          continue;
        }
        keep(edgeEffects(overhang, plate.mesh, edges, field, stand.own), stand.bound, each);
        keep(new Map([['lift', liftEffect(plate.mesh, overhang, field)]]), stand.bound, each);
        keep(
          forceEffects(overhang, condensed.held.supports, condensed, standing.forces_N),
          stand.bound,
          each,
        );
        keep(momentEffects(overhang, model, field), stand.bound, each);
      }
    },
    worstPeople() {
      const all = [...onBound.values()]
        .flatMap((worst) => [...worst])
        .filter(([name]) => name !== 'lift' && name !== 'screw')
        .map(([, { people }]) => people);
      return all.filter(
        (people, index) => people.length > 0 && all.findIndex((other) => isSame(other, people)) === index,
      );
    },
  };
}

/** Movements of a top that stands; null where it tips, or moves so far that it is as good as tipped. */
export function settledField(
  { top }: Overhang,
  held: HeldPlate,
  load: PreparedLoad,
  standing: PlateStanding,
): Float64Array | null {
  if (!standing.stands) return null;
  const field = fieldOfStanding(held, load, standing);
  const far = top.depth_m / 4;
  for (let dof = 0; dof < field.length; dof += 4) if (!(Math.abs(field[dof] ?? NaN) < far)) return null;
  return field;
}

function isSame(a: Standing, b: Standing): boolean {
  return (
    a.length === b.length && a.every((spot, index) => spot.x_m === b[index]?.x_m && spot.y_m === b[index].y_m)
  );
}

/** Own weight with what is served, each arrangement solved once. */
function preparedLoads(overhang: Overhang, { plate }: TopModel): (served: Served) => PreparedLoad {
  const held = new Map<Served, PreparedLoad>();
  return (served) => {
    const known = held.get(served);
    if (known !== undefined) return known;
    const loads = [ownWeight(overhang), ...servedLoads(overhang, served)];
    const made = { field: fieldUnder(plate, loads), resultant: resultantOf(loads) };
    held.set(served, made);
    return made;
  };
}

/** The top's own weight. */
export function ownWeight({ top }: Overhang): PlateLoad {
  const { length_m, depth_m, weight_N } = top;
  return { kind: 'patch', fromX_m: 0, toX_m: length_m, fromY_m: 0, toY_m: depth_m, load_N: weight_N };
}

/** What is served: on the whole top, or on what stands out past the base alone. */
export function servedLoads({ top, base, serving }: Overhang, served: Served): PlateLoad[] {
  if (serving === null || served === 'nowhere') return [];
  const { length_m, depth_m } = top;
  const patches =
    served === 'everywhere'
      ? [[0, length_m, 0, depth_m] as const]
      : ([
          [0, length_m, base.front_m, depth_m],
          [0, length_m, 0, base.back_m],
          [0, base.from_m, base.back_m, base.front_m],
          [base.to_m, length_m, base.back_m, base.front_m],
        ] as const);
  return patches
    .filter(([fromX, toX, fromY, toY]) => toX - fromX > 1e-6 && toY - fromY > 1e-6)
    .map(([fromX_m, toX_m, fromY_m, toY_m]) => ({
      kind: 'patch',
      fromX_m,
      toX_m,
      fromY_m,
      toY_m,
      load_N: serving.pressure_Npm2 * (toX_m - fromX_m) * (toY_m - fromY_m),
    }));
}

/** People on their squares; null where there are none. */
export function peopleLoad({ person }: Overhang, { plate }: TopModel, people: Standing): PreparedLoad | null {
  if (person === null || people.length === 0) return null;
  const half = person.patch_m / 2;
  const loads = people.map(({ x_m, y_m }): PlateLoad => ({
    kind: 'patch',
    fromX_m: x_m - half,
    toX_m: x_m + half,
    fromY_m: y_m - half,
    toY_m: y_m + half,
    load_N: person.load_N,
  }));
  return { field: fieldUnder(plate, loads), resultant: resultantOf(loads) };
}

/** Two loads at once. */
export function together(a: PreparedLoad, b: PreparedLoad | null, share = 1): PreparedLoad {
  if (b === null) return a;
  const resultant: Resultant = [
    a.resultant[0] + share * b.resultant[0],
    a.resultant[1] + share * b.resultant[1],
    a.resultant[2] + share * b.resultant[2],
  ];
  return { field: a.field.map((value, k) => value + share * (b.field[k] ?? 0)), resultant };
}

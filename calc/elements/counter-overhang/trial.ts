import {
  fieldOfStanding,
  type PreparedLoad,
  type Standing as PlateStanding,
} from '../../mechanics/plate/standing.ts';
import type { PlateMesh } from '../../mechanics/plate/mesh.ts';
import type { HeldPlate } from '../../mechanics/plate/supports.ts';
import {
  edgeEffects,
  forceEffects,
  liftEffect,
  momentEffects,
  type Effect,
  type EffectName,
} from './effects.ts';
import type { Overhang } from './overhang.ts';
import { freeEdges, type FreeEdge, type Standing } from './people.ts';
import type { Bound, RingSide, TopModel } from './plate-model.ts';
import type { VariantName } from './variants.ts';
import { evenLoads, peopleLoads, placeOf, together, type Served } from './top-loads.ts';

/** Who and what is on the top. */
export interface Case {
  readonly served: Served;
  readonly people: Standing;
}

/** The worst of one effect, and what stood on the top then. */
export interface Worst extends Effect, Case {
  readonly side: RingSide;
  readonly bound: Bound;
  /** In which other way than on its bound the top stood then. */
  readonly variant?: VariantName;
}

/** A top on which one case after another is tried, and the worst of every effect kept. */
export interface Trial {
  readonly onBound: ReadonlyMap<Bound, ReadonlyMap<EffectName, Worst>>;
  /** The worst cases of every effect with nobody, with one person and with two. */
  readonly cases: ReadonlyMap<Bound, ReadonlyMap<string, Worst>>;
  /** The first case under which the top tips on a bound. */
  readonly tips: ReadonlyMap<Bound, Case>;
  /** Tries cases on one bound, or on all; those that are like each other best follow one another. */
  tryCases(cases: readonly Case[], bound?: Bound): void;
}

/** Share by which two values may differ for rounding's sake. */
const alike = 1e-7;

/** @param variant in which other way than on its bounds the top of the model stands */
export function trialOf(overhang: Overhang, model: TopModel, variant?: VariantName): Trial {
  const { plate, bounds } = model;
  const edges = freeEdges(overhang);
  const even = evenLoads(overhang, model);
  const { own } = even;
  const ownFields = new Map(
    bounds.map(({ bound, held, stander }) => [bound, settledField(overhang, held, own, stander.stand(own))]),
  );
  const onBound = new Map(bounds.map(({ bound }) => [bound, new Map<EffectName, Worst>()]));
  const cases = new Map(bounds.map(({ bound }) => [bound, new Map<string, Worst>()]));
  const tips = new Map<Bound, Case>();
  const tried = new Set<string>();
  const way = { side: model.side, ...(variant !== undefined && { variant }) };
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
    const raise = <Key>(worst: Map<Key, Worst> | undefined, key: Key, effect: Effect): void => {
      const most = worst?.get(key);
      if (most === undefined || isMore(effect.value, each, most))
        worst?.set(key, { ...effect, ...way, bound, ...each });
    };
    effects.forEach((effect, name) => {
      raise(onBound.get(bound), name, effect);
      raise(cases.get(bound), `${name} ${each.people.length}`, effect);
    });
  };
  const loadsOf = (cases: readonly Case[]): ((each: Case) => PreparedLoad) => {
    const arrangements = [...new Map(cases.map(({ people }) => [placesOf(people), people]))];
    const loads = peopleLoads(
      overhang,
      model,
      arrangements.map(([, people]) => people),
    );
    const byPlaces = new Map(arrangements.map(([places], index) => [places, loads[index] ?? null]));
    return ({ served, people }) => together(even.all(served), byPlaces.get(placesOf(people)) ?? null);
  };
  return {
    onBound,
    cases,
    tips,
    tryCases(all, only) {
      const fresh = bounds.flatMap((held) => {
        const { bound } = held;
        if (only !== undefined && only !== bound) return [];
        return all.flatMap((each) => {
          const key = `${bound} ${keyOf(each)}`;
          if (tried.has(key)) return [];
          tried.add(key);
          return [{ held, each }];
        });
      });
      const loads = loadsOf(fresh.map(({ each }) => each));
      for (const { held, each } of fresh) {
        const load = loads(each);
        const { bound, stander } = held;
        const standing = stander.stand(load);
        const field = settledField(overhang, held.held, load, standing);
        const before = ownFields.get(bound) ?? null;
        if (field === null || before === null || !standing.stands) {
          if (!tips.has(bound)) tips.set(bound, each);
          continue;
        }
        keep(edgeEffects(overhang, plate.mesh, edges, field, before), bound, each);
        if (overhang.top.finish !== null) keep(wholeEdges(overhang, plate.mesh, edges, field), bound, each);
        keep(new Map([['lift', liftEffect(plate.mesh, overhang, field)]]), bound, each);
        keep(forceEffects(overhang, held.held.supports, held, standing.forces_N), bound, each);
        keep(momentEffects(overhang, model, field), bound, each);
      }
    },
  };
}

/** Movements of the edges, the weight of the top included: tile or stone is bent by that too. */
function wholeEdges(
  overhang: Overhang,
  mesh: PlateMesh,
  edges: readonly FreeEdge[],
  field: Float64Array,
): Map<EffectName, Effect> {
  const all = edgeEffects(overhang, mesh, edges, field, new Float64Array(field.length));
  const moved = edges.map(({ name }): [EffectName, Effect | undefined] => [
    `whole edge ${name}`,
    all.get(`edge ${name}`),
  ]);
  return new Map(moved.flatMap(([name, effect]) => (effect === undefined ? [] : [[name, effect]])));
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

function keyOf({ served, people }: Case): string {
  return `${served} ${placesOf(people)}`;
}

function placesOf(people: Standing): string {
  return people.map(placeOf).join(' ');
}

import type { PreparedLoad, Standing as PlateStanding } from '../../mechanics/plate/standing.ts';
import { fieldOfStanding } from '../../mechanics/plate/standing-field.ts';
import type { HeldPlate } from '../../mechanics/plate/supports.ts';
import { edgeEffects, edgeNodesOf, type EdgeNodes } from './edge-effects.ts';
import { forceEffects, liftEffect, momentEffects, type Effect, type EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import { freeEdges, type Standing } from './people.ts';
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
  /** How much of the people stood there. */
  readonly share: number;
  /** In which other way than on its bound the top stood then. */
  readonly variant?: VariantName;
  /** Of a movement: what bending alone is of it, and what share shear adds to that. */
  readonly sheared?: { readonly bent_m: number; readonly share: number };
}

/** A top on which one case after another is tried, and the worst of every effect kept. */
export interface Trial {
  readonly onBound: ReadonlyMap<Bound, ReadonlyMap<EffectName, Worst>>;
  /** The worst of every effect with nobody, with one person and with two. */
  readonly byPeople: ReadonlyMap<Bound, readonly ReadonlyMap<EffectName, Worst>[]>;
  /** The first case under which the top tips on a bound. */
  readonly tips: ReadonlyMap<Bound, Case>;
  /** Tries cases on one bound, or on all; those that are like each other best follow one another. */
  tryCases(cases: readonly Case[], bound?: Bound): void;
}

type Effects = ReadonlyMap<EffectName, Effect>;

/** Share by which two values may differ for rounding's sake. */
const alike = 1e-7;

/** @param variant in which other way than on its bounds the top of the model stands */
export function trialOf(overhang: Overhang, model: TopModel, variant?: VariantName): Trial {
  const { plate, bounds } = model;
  const edges = edgeNodesOf(overhang, plate.mesh, freeEdges(overhang));
  const even = evenLoads(overhang, model);
  const { own } = even;
  const ownStates = new Map(
    bounds.map((on) => {
      const standing = on.stander.stand(own);
      const field = settledField(overhang, on.held, own, standing);
      return [on.bound, { field, isUnscrewed: pullsNone(on, standing) }];
    }),
  );
  /** Where no screw pulls, under the own weight and under a case: a top with loose screws stands no other way. */
  const unscrewed = new Map<string, Effects>();
  const onBound = new Map(bounds.map(({ bound }) => [bound, new Map<EffectName, Worst>()]));
  const byPeople = new Map(
    bounds.map(({ bound }) => [bound, [0, 1, 2].map(() => new Map<EffectName, Worst>())]),
  );
  const tips = new Map<Bound, Case>();
  const tried = new Set<string>();
  const way = { side: model.side, ...(variant !== undefined && { variant }) };
  /** The load and then the movements of one case after another. */
  const room = new Float64Array(own.field.length);
  const keep = (effects: Effects, { bound, share }: TopModel['bounds'][number], each: Case): void => {
    const kept = [onBound.get(bound), byPeople.get(bound)?.[each.people.length]];
    for (const [name, effect] of effects) {
      for (const worst of kept) {
        const most = worst?.get(name);
        if (most === undefined || isMore(overhang, effect.value, each, most))
          worst?.set(name, { ...effect, ...way, bound, share, ...each });
      }
    }
  };
  const loadsOf = (cases: readonly Case[]): ((each: Case, share: number) => PreparedLoad) => {
    const arrangements = [...new Map(cases.map(({ people }) => [placesOf(people), people]))];
    const loads = peopleLoads(
      overhang,
      model,
      arrangements.map(([, people]) => people),
    );
    const byPlaces = new Map(arrangements.map(([places], index) => [places, loads[index] ?? null]));
    return ({ served, people }, share) =>
      together(even.all(served), byPlaces.get(placesOf(people)) ?? null, share, room);
  };
  return {
    onBound,
    byPeople,
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
        const { bound, share, stander } = held;
        const known = bound === 'screws-loose' && share === 1 ? unscrewed.get(keyOf(each)) : undefined;
        if (known !== undefined) {
          keep(known, held, each);
          continue;
        }
        const load = loads(each, share);
        const standing = stander.stand(load);
        const field = settledField(overhang, held.held, load, standing, room);
        const { field: before = null, isUnscrewed = false } = ownStates.get(bound) ?? {};
        if (field === null || before === null || !standing.stands) {
          if (!tips.has(bound)) tips.set(bound, each);
          continue;
        }
        const effects: Effects = new Map([
          ...edgeEffects(edges, field, before),
          ...(overhang.top.finish === null ? [] : wholeEdges(edges, field)),
          ['lift', liftEffect(plate.mesh, overhang, field)],
          ...forceEffects(overhang, held.held.supports, held, standing.forces_N),
          ...momentEffects(overhang, model, field),
        ]);
        keep(effects, held, each);
        if (!isUnscrewed || !pullsNone(held, standing)) continue;
        unscrewed.set(keyOf(each), new Map([...effects].filter(([name]) => name !== 'screw')));
      }
    },
  };
}

/** Whether a top has screws that hold, and none of them pulls. */
function pullsNone({ bound, carriers }: TopModel['bounds'][number], standing: PlateStanding): boolean {
  if (bound !== 'screws-hold' || !standing.stands) return false;
  return carriers.every(({ kind }, index) => kind !== 'screw' || standing.forces_N[index] === 0);
}

/** How far people are from the middle of a top, m; less than nothing where there is nobody. */
function offMiddle({ top }: Overhang, { people }: Case): number {
  if (people.length === 0) return -1;
  return Math.abs(people.reduce((sum, { x_m }) => sum + x_m, 0) / people.length - top.length_m / 2);
}

/** Of places that ask the same but for rounding the one nearest to the middle counts, whichever was tried first. */
function isMore(overhang: Overhang, value: number, each: Case, most: Worst): boolean {
  return Math.abs(value - most.value) > alike * Math.abs(most.value)
    ? value > most.value
    : offMiddle(overhang, each) < offMiddle(overhang, most) - 1e-9;
}

/** Movements of the edges, the weight of the top included: tile or stone is bent by that too. */
function wholeEdges(edges: readonly EdgeNodes[], field: Float64Array): Map<EffectName, Effect> {
  const all = edgeEffects(edges, field, null);
  return new Map(
    edges.flatMap(({ name }): [EffectName, Effect][] => {
      const effect = all.get(`edge ${name}`);
      return effect === undefined ? [] : [[`whole edge ${name}`, effect]];
    }),
  );
}

/**
 * Movements of a top that stands; null where it tips, or moves so far that it is as good as tipped.
 *
 * @param room where the movements are put; a place of their own where none is given
 */
export function settledField(
  { top }: Overhang,
  held: HeldPlate,
  load: PreparedLoad,
  standing: PlateStanding,
  room?: Float64Array,
): Float64Array | null {
  if (!standing.stands) return null;
  const field = fieldOfStanding(held, load, standing, room);
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

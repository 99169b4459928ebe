import { fieldsUnder, type FreePlate } from '../../mechanics/plate/free-plate.ts';
import { resultantOf, type PlateLoad, type Resultant } from '../../mechanics/plate/plate-load.ts';
import type { PreparedLoad } from '../../mechanics/plate/standing.ts';
import type { Overhang, Person } from './overhang.ts';
import { freeEdges, type FreeEdge, type Spot, type Standing } from './people.ts';
import type { TopModel } from './plate-model.ts';

type Edge = FreeEdge['name'];

/** Where what is served stands: of a top that stands out on several sides, on one of them too, and everywhere but there. */
export type Served = 'nowhere' | 'overhangs' | 'everywhere' | `${Edge} overhang` | `all but ${Edge}`;

/** Every way in which something can be served on a top. */
export function servedOn(overhang: Overhang): readonly Served[] {
  if (overhang.serving === null) return ['nowhere'];
  const edges = freeEdges(overhang);
  const apart =
    edges.length < 2 ? [] : edges.flatMap(({ name }) => [`${name} overhang`, `all but ${name}`] as const);
  return ['overhangs', 'everywhere', ...apart];
}

type Rectangle = readonly [fromX_m: number, toX_m: number, fromY_m: number, toY_m: number];

/** What is loaded. */
function rectanglesOf({ top, base }: Overhang, served: Served): readonly Rectangle[] {
  const { length_m, depth_m } = top;
  const { from_m, to_m, back_m, front_m } = base;
  const beyond: Readonly<Record<Edge, Rectangle>> = {
    stool: [0, length_m, front_m, depth_m],
    back: [0, length_m, 0, back_m],
    left: [0, from_m, 0, depth_m],
    right: [to_m, length_m, 0, depth_m],
  };
  switch (served) {
    case 'nowhere':
      return [];
    case 'everywhere':
      return [[0, length_m, 0, depth_m]];
    case 'overhangs':
      return [beyond.stool, beyond.back, [0, from_m, back_m, front_m], [to_m, length_m, back_m, front_m]];
    case 'stool overhang':
      return [beyond.stool];
    case 'back overhang':
      return [beyond.back];
    case 'left overhang':
      return [beyond.left];
    case 'right overhang':
      return [beyond.right];
    case 'all but stool':
      return [[0, length_m, 0, front_m]];
    case 'all but back':
      return [[0, length_m, back_m, depth_m]];
    case 'all but left':
      return [[from_m, length_m, 0, depth_m]];
    case 'all but right':
      return [[0, to_m, 0, depth_m]];
  }
}

/** The top's own weight. */
export function ownWeight({ top }: Overhang): PlateLoad {
  const { length_m, depth_m, weight_N } = top;
  return { kind: 'patch', fromX_m: 0, toX_m: length_m, fromY_m: 0, toY_m: depth_m, load_N: weight_N };
}

/** What is served, as loads. */
export function servedLoads(overhang: Overhang, served: Served): PlateLoad[] {
  const { serving } = overhang;
  if (serving === null) return [];
  return rectanglesOf(overhang, served)
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

/** Somebody on their square. */
export function personLoad({ patch_m, load_N }: Person, { x_m, y_m }: Spot): PlateLoad {
  const half = patch_m / 2;
  return {
    kind: 'patch',
    fromX_m: x_m - half,
    toX_m: x_m + half,
    fromY_m: y_m - half,
    toY_m: y_m + half,
    load_N,
  };
}

/** Movements of a top under one person, by where they are: the same places come back on either bound, and in pairs. */
const underOne = new WeakMap<FreePlate, Map<string, Float64Array>>();

/** People on their squares, one arrangement of them after another; null where there is nobody. */
export function peopleLoads(
  { person }: Overhang,
  { plate }: TopModel,
  arrangements: readonly Standing[],
): (PreparedLoad | null)[] {
  if (person === null) return arrangements.map(() => null);
  const loadOf = (spot: Spot): PlateLoad => personLoad(person, spot);
  const held = underOne.get(plate) ?? new Map<string, Float64Array>();
  underOne.set(plate, held);
  const fresh = new Map(arrangements.flat().map((spot) => [placeOf(spot), spot]));
  for (const place of held.keys()) fresh.delete(place);
  const fields = fieldsUnder(
    plate,
    [...fresh.values()].map((spot) => [loadOf(spot)]),
  );
  [...fresh.keys()].forEach((place, index) => {
    const field = fields[index];
    if (field !== undefined) held.set(place, field);
  });
  return arrangements.map((people) =>
    people.reduce<PreparedLoad | null>((others, spot) => {
      const field = held.get(placeOf(spot));
      if (field === undefined) return others;
      return together({ field, resultant: resultantOf([loadOf(spot)]) }, others);
    }, null),
  );
}

/** Where somebody is, to a hundredth of a millimetre. */
export function placeOf({ x_m, y_m }: Spot): string {
  return `${Math.round(x_m * 1e5)} ${Math.round(y_m * 1e5)}`;
}

/**
 * Two loads at once.
 *
 * @param room where the field of both is put; a place of its own where none is given
 */
export function together(
  a: PreparedLoad,
  b: PreparedLoad | null,
  share = 1,
  room?: Float64Array,
): PreparedLoad {
  if (b === null) return a;
  const resultant: Resultant = [
    a.resultant[0] + share * b.resultant[0],
    a.resultant[1] + share * b.resultant[1],
    a.resultant[2] + share * b.resultant[2],
  ];
  const field = room ?? new Float64Array(a.field.length);
  for (let k = 0; k < field.length; k++) field[k] = (a.field[k] ?? 0) + share * (b.field[k] ?? 0);
  return { field, resultant };
}

/** Loads that cover a top, solved on its springs. */
export interface EvenLoads {
  readonly own: PreparedLoad;
  /** What is served alone; null where nothing is. */
  alone(served: Served): PreparedLoad | null;
  /** Own weight with what is served. */
  all(served: Served): PreparedLoad;
}

/** Every combination and every field begins with them. */
const known = new WeakMap<FreePlate, EvenLoads>();

/** Own weight and what is served on a top, solved together. */
export function evenLoads(overhang: Overhang, model: TopModel): EvenLoads {
  const held = known.get(model.plate);
  if (held !== undefined) return held;
  const arrangements = servedOn(overhang)
    .map((served) => [served, servedLoads(overhang, served)] as const)
    .filter(([, loads]) => loads.length > 0);
  const each = [[ownWeight(overhang)], ...arrangements.map(([, loads]) => loads)];
  const [own, ...alone] = fieldsUnder(model.plate, each).map((field, index): PreparedLoad => ({
    field,
    resultant: resultantOf(each[index] ?? []),
  }));
  if (own === undefined) throw new RangeError('a top has a weight');
  const byServed = new Map(arrangements.map(([served], index) => [served, alone[index] ?? null]));
  const all = new Map([...byServed].map(([served, load]) => [served, together(own, load)]));
  const made: EvenLoads = {
    own,
    alone: (served) => byServed.get(served) ?? null,
    all: (served) => all.get(served) ?? own,
  };
  known.set(model.plate, made);
  return made;
}

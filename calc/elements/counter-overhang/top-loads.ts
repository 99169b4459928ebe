import { fieldsUnder, fieldUnder } from '../../mechanics/plate/free-plate.ts';
import { resultantOf, type PlateLoad, type Resultant } from '../../mechanics/plate/plate-load.ts';
import type { PreparedLoad } from '../../mechanics/plate/standing.ts';
import type { Overhang } from './overhang.ts';
import type { Standing } from './people.ts';
import type { TopModel } from './plate-model.ts';

/** Where what is served stands. */
export type Served = 'nowhere' | 'overhangs' | 'everywhere';

/** The top's own weight. */
function ownWeight({ top }: Overhang): PlateLoad {
  const { length_m, depth_m, weight_N } = top;
  return { kind: 'patch', fromX_m: 0, toX_m: length_m, fromY_m: 0, toY_m: depth_m, load_N: weight_N };
}

/** What is served: on the whole top, or on what stands out past the base alone. */
function servedLoads({ top, base, serving }: Overhang, served: Served): PlateLoad[] {
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

/** People on their squares, one arrangement of them after another; null where there is nobody. */
export function peopleLoads(
  { person }: Overhang,
  { plate }: TopModel,
  arrangements: readonly Standing[],
): (PreparedLoad | null)[] {
  if (person === null) return arrangements.map(() => null);
  const half = person.patch_m / 2;
  const loads = arrangements.map((people) =>
    people.map(({ x_m, y_m }): PlateLoad => ({
      kind: 'patch',
      fromX_m: x_m - half,
      toX_m: x_m + half,
      fromY_m: y_m - half,
      toY_m: y_m + half,
      load_N: person.load_N,
    })),
  );
  const fields = fieldsUnder(
    plate,
    loads.filter((each) => each.length > 0),
  );
  let next = 0;
  return loads.map((each) => {
    const field = each.length > 0 ? fields[next++] : undefined;
    return field === undefined ? null : { field, resultant: resultantOf(each) };
  });
}

/** Two loads at once. */
export function together(a: PreparedLoad, b: PreparedLoad | null, share = 1): PreparedLoad {
  if (b === null) return a;
  const resultant: Resultant = [
    a.resultant[0] + share * b.resultant[0],
    a.resultant[1] + share * b.resultant[1],
    a.resultant[2] + share * b.resultant[2],
  ];
  const field = new Float64Array(a.field.length);
  for (let k = 0; k < field.length; k++) field[k] = (a.field[k] ?? 0) + share * (b.field[k] ?? 0);
  return { field, resultant };
}

/** Loads that cover a top, solved on its springs. */
export interface EvenLoads {
  readonly own: PreparedLoad;
  /** What is served alone; null where nothing is. */
  readonly alone: Readonly<Record<Served, PreparedLoad | null>>;
  /** Own weight with what is served. */
  readonly all: Readonly<Record<Served, PreparedLoad>>;
}

/** Every combination and every field begins with them. */
const known = new WeakMap<TopModel, EvenLoads>();

/** Own weight and what is served on a top, each arrangement solved once. */
export function evenLoads(overhang: Overhang, model: TopModel): EvenLoads {
  const held = known.get(model);
  if (held !== undefined) return held;
  const prepared = (loads: readonly PlateLoad[]): PreparedLoad => ({
    field: fieldUnder(model.plate, loads),
    resultant: resultantOf(loads),
  });
  const own = prepared([ownWeight(overhang)]);
  const servedAlone = (served: Served): PreparedLoad | null => {
    const loads = servedLoads(overhang, served);
    return loads.length === 0 ? null : prepared(loads);
  };
  const overhangs = servedAlone('overhangs');
  const everywhere = servedAlone('everywhere');
  const made: EvenLoads = {
    own,
    alone: { nowhere: null, overhangs, everywhere },
    all: { nowhere: own, overhangs: together(own, overhangs), everywhere: together(own, everywhere) },
  };
  known.set(model, made);
  return made;
}

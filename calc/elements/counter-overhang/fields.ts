import type { TopField } from '../../../shared/check-result.ts';
import { quantity } from '../../../shared/quantity/index.ts';
import { estimatedError } from '../../mechanics/plate/moment-error.ts';
import { nodeOf } from '../../mechanics/plate/mesh.ts';
import { averagedMoment, momentsOf } from '../../mechanics/plate/moments.ts';
import { plateBendingStress } from '../../mechanics/plate-formulas.ts';
import { allowedBy } from '../allowed-by.ts';
import { governingAcross, type Analysed, type Searched } from './analysed.ts';
import { onOneSheet, type Overhang } from './overhang.ts';
import { freeEdges } from './people.ts';
import type { TopModel } from './plate-model.ts';
import { fieldUnderWorst } from './standing-worst.ts';
import type { Worst } from './trial.ts';

/** What differs from place to place on a top, each as it is where its worst is found. */
export interface TopFields {
  /** Movement down, its own weight included, where an edge moves most for what it may. */
  readonly movement: TopField | null;
  /** Size of the stress across the grain, averaged over one thickness, where the check of it finds most asked. */
  readonly acrossGrain: TopField | null;
}

/** Works out movement and stress at every crossing of the mesh, once for the worst of each; none of a top that tips. */
export function fieldsOf(overhang: Overhang, analysed: Analysed): TopFields {
  if (analysed.isLost) return { movement: null, acrossGrain: null };
  const { soft } = analysed;
  const moved = movedMost(overhang, soft);
  const strained = governingAcross(overhang, analysed);
  return {
    movement: moved === undefined ? null : stateOf(overhang, soft, moved, movements),
    acrossGrain:
      strained === undefined ? null : stateOf(overhang, strained.searched, strained.worst, stresses),
  };
}

/** The edge that moves most for what it may; where there is no limit the one that moves most. */
function movedMost(overhang: Overhang, { worst }: Searched): Worst | undefined {
  const { limits, top } = overhang;
  const asked = [limits.live, ...(top.finish === null ? [] : [top.finish.limit])];
  const edges = freeEdges(overhang).flatMap(({ name, out_m }) => {
    const moved = worst.get(`edge ${name}`);
    if (moved === undefined) return [];
    const least_m = Math.min(...asked.map((limit) => allowedBy(limit, 2 * out_m) ?? Infinity));
    return [{ moved, used: moved.value / (least_m < Infinity ? least_m : 1) }];
  });
  const [first, ...rest] = edges;
  return first === undefined ? undefined : rest.reduce((a, b) => (b.used > a.used ? b : a), first).moved;
}

/** The larger of what the mesh may be off by in the two; null of a top that tips. */
export function meshErrorOf({ movement, acrossGrain }: TopFields): number | null {
  const errors = [movement, acrossGrain].flatMap((each) => each?.meshError ?? []);
  return errors.length === 0 ? null : Math.max(...errors);
}

type Values = (
  overhang: Overhang,
  model: TopModel,
  field: Float64Array,
  worst: Worst,
) => Pick<TopField, 'values' | 'unit'>;

const movements: Values = (_overhang, { plate }, field, { sheared }) => ({
  unit: 'm',
  values: overNodes(plate.mesh, (node) => (1 + (sheared?.share ?? 0)) * (field[4 * node] ?? 0)),
});

const stresses: Values = ({ top }, { plate }, field) => {
  const moments = momentsOf(plate, field);
  const way = top.isAlong ? 'y' : 'x';
  return {
    unit: 'Pa',
    values: overNodes(plate.mesh, (_, place) => {
      const m = Math.abs(averagedMoment(moments, way, place, top.thickness_m));
      return plateBendingStress.evaluate(onOneSheet(top, m));
    }),
  };
};

function stateOf(overhang: Overhang, { models }: Searched, worst: Worst, valuesOf: Values): TopField | null {
  const model = models[worst.side];
  const found = fieldUnderWorst(overhang, model, worst);
  if (found === null) return null;
  const { field } = found;
  const { mesh } = model.plate;
  const q = (value: number) => quantity(value, 'm', overhang.system);
  return {
    x_m: [...mesh.x_m],
    y_m: [...mesh.y_m],
    ...valuesOf(overhang, model, field, worst),
    people: worst.people.map(({ x_m, y_m }) => ({ x: q(x_m), y: q(y_m) })),
    meshError: estimatedError(model.plate, field),
  };
}

/** Row by row from the back edge, each row from the left end. */
function overNodes(
  mesh: TopModel['plate']['mesh'],
  valueAt: (node: number, place: readonly [number, number]) => number,
): number[] {
  return mesh.y_m.flatMap((_, j) => mesh.x_m.map((__, i) => valueAt(nodeOf(mesh, i, j), [i, j])));
}

import { averagedMoment, momentsOf, type PlateMoments } from '../../mechanics/plate/moments.ts';
import { nodeOf, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import type { PlateStiffness } from '../../mechanics/plate/stiffness.ts';
import { largestLineForce } from '../../mechanics/plate/line-force.ts';
import type { Overhang } from './overhang.ts';
import { usual } from './usual.ts';
import type { FreeEdge } from './people.ts';
import type { TopModel } from './plate-model.ts';
import { railEffects, type RailEffectName } from './rail-effects.ts';

/** How large something is, and where on the top. */
export interface Effect {
  readonly value: number;
  readonly x_m: number;
  readonly y_m: number;
}

export type EffectName =
  | 'along'
  | 'across'
  | 'rail'
  | 'rolling'
  | 'lift'
  | 'screw'
  | `${'' | 'whole '}edge ${FreeEdge['name']}`
  | `bar ${number}`
  | `prop ${number}`
  | `prop couple ${number}`
  | RailEffectName
  | `rail on line ${number}`
  | `${'along' | 'across'} near prop ${number}`;

/**
 * Moments along and across the grain for each width, a peak averaged over one thickness, all over the top and near each
 * prop that presses on a point; and curvature of the bars.
 */
export function momentEffects(
  { top, props, person }: Overhang,
  { plate }: TopModel,
  field: Float64Array,
): Map<EffectName, Effect> {
  const moments = momentsOf(plate, field);
  const effects = new Map<EffectName, Effect>();
  const around_m = person?.patch_m ?? usual.patch_m;
  for (const way of ['x', 'y'] as const) {
    const name = (way === 'x') === top.isAlong ? 'along' : 'across';
    effects.set(name, peakOf(moments, way, top.thickness_m));
    props.forEach(({ kind, at, to }, index) => {
      if (kind === 'flat-bar') return;
      const near = { x_m: at, y_m: to, around_m };
      effects.set(`${name} near prop ${index}`, peakOf(moments, way, top.thickness_m, near));
    });
  }
  props.forEach((prop, index) => {
    if (prop.kind === 'flat-bar') effects.set(`bar ${index}`, curvatureOf(moments, plate.stiffness, prop));
  });
  return effects;
}

/** A square of a top, by its middle and half its side. */
interface Around {
  readonly x_m: number;
  readonly y_m: number;
  readonly around_m: number;
}

function peakOf(moments: PlateMoments, way: 'x' | 'y', width_m: number, near?: Around): Effect {
  const { mesh } = moments;
  const values = way === 'x' ? moments.x_Nmpm : moments.y_Nmpm;
  const isIn = (lines: readonly number[], k: number, middle_m: number | undefined): boolean =>
    near === undefined || Math.abs((lines[k] ?? 0) - (middle_m ?? 0)) <= near.around_m;
  const columns = [...mesh.x_m.keys()].filter((i) => isIn(mesh.x_m, i, near?.x_m));
  const rows = [...mesh.y_m.keys()].filter((j) => isIn(mesh.y_m, j, near?.y_m));
  const raw = (i: number, j: number): number => Math.abs(values[nodeOf(mesh, i, j)] ?? 0);
  let most = 0;
  for (const i of columns) for (const j of rows) most = Math.max(most, raw(i, j));
  let peak: Effect = { value: 0, x_m: 0, y_m: 0 };
  for (const i of columns) {
    for (const j of rows) {
      if (raw(i, j) < worthAveraging * most) continue;
      const value = Math.abs(averagedMoment(moments, way, [i, j], width_m));
      if (value > peak.value) peak = { value, x_m: mesh.x_m[i] ?? 0, y_m: mesh.y_m[j] ?? 0 };
    }
  }
  return peak;
}

/** A place with less than this share of the raw peak has no higher average. */
const worthAveraging = 0.4;

/** Largest curvature of the top along a bar, 1/m. */
function curvatureOf(
  { mesh, x_Nmpm, y_Nmpm }: PlateMoments,
  { Dx_Nm, Dy_Nm, D1_Nm }: PlateStiffness,
  bar: { readonly at: number; readonly from: number; readonly to: number },
): Effect {
  const i = mesh.x_m.reduce(
    (best, x, k) => (Math.abs(x - bar.at) < Math.abs((mesh.x_m[best] ?? 0) - bar.at) ? k : best),
    0,
  );
  let peak: Effect = { value: 0, x_m: bar.at, y_m: bar.from };
  mesh.y_m.forEach((y_m, j) => {
    if (y_m < bar.from - 1e-6 || y_m > bar.to + 1e-6) return;
    const node = nodeOf(mesh, i, j);
    const value = Math.abs(
      (Dx_Nm * (y_Nmpm[node] ?? 0) - D1_Nm * (x_Nmpm[node] ?? 0)) / (Dx_Nm * Dy_Nm - D1_Nm ** 2),
    );
    if (value > peak.value) peak = { value, x_m: bar.at, y_m };
  });
  return peak;
}

/**
 * Largest movement along each free edge, down; `before` is taken off. A corner that stands out past two sides of the base
 * belongs to the side past which it stands out farther.
 */
export function edgeEffects(
  { base }: Pick<Overhang, 'base'>,
  mesh: PlateMesh,
  edges: readonly FreeEdge[],
  field: Float64Array,
  before: Float64Array,
): Map<EffectName, Effect> {
  const effects = new Map<EffectName, Effect>();
  const [lastX, lastY] = [mesh.x_m.length - 1, mesh.y_m.length - 1];
  const outOf = (name: FreeEdge['name']): number => edges.find((each) => each.name === name)?.out_m ?? 0;
  for (const { name, out_m } of edges) {
    const isAlongX = name === 'stool' || name === 'back';
    const lines = isAlongX ? mesh.x_m : mesh.y_m;
    const [from_m, to_m] = isAlongX ? [base.from_m, base.to_m] : [base.back_m, base.front_m];
    const [first, last] = isAlongX ? (['left', 'right'] as const) : (['back', 'stool'] as const);
    /** Along the stool edge and the back where both stand out alike. */
    const isOwn = (other: FreeEdge['name']): boolean =>
      isAlongX ? out_m >= outOf(other) - 1e-6 : out_m > outOf(other) + 1e-6;
    const [startsBefore, endsBeyond] = [isOwn(first), isOwn(last)];
    let worst: Effect = { value: 0, x_m: 0, y_m: 0 };
    lines.forEach((line, k) => {
      if (line < from_m - 1e-6 && !startsBefore) return;
      if (line > to_m + 1e-6 && !endsBeyond) return;
      const [i, j] = isAlongX ? [k, name === 'stool' ? lastY : 0] : [name === 'right' ? lastX : 0, k];
      const dof = 4 * nodeOf(mesh, i, j);
      const moved = (field[dof] ?? 0) - (before[dof] ?? 0);
      const value = isAlongX ? Math.abs(moved) : Math.max(0, moved);
      if (value > worst.value) worst = { value, x_m: mesh.x_m[i] ?? 0, y_m: mesh.y_m[j] ?? 0 };
    });
    effects.set(`edge ${name}`, worst);
  }
  return effects;
}

/** How far the top rises off its base, at the farthest. */
export function liftEffect(mesh: PlateMesh, { base }: Overhang, field: Float64Array): Effect {
  let lift: Effect = { value: 0, x_m: 0, y_m: 0 };
  mesh.x_m.forEach((x_m, i) => {
    if (x_m < base.from_m - 1e-6 || x_m > base.to_m + 1e-6) return;
    mesh.y_m.forEach((y_m, j) => {
      if (y_m < base.back_m - 1e-6 || y_m > base.front_m + 1e-6) return;
      const value = -(field[4 * nodeOf(mesh, i, j)] ?? 0);
      if (value > lift.value) lift = { value, x_m, y_m };
    });
  });
  return lift;
}

/**
 * Force on the rails for each length, where it is largest over the width that somebody takes up, on those along the staves
 * too; pulls of the screws, loads on the props, and what each span of the front rail carries.
 */
export function forceEffects(
  overhang: Overhang,
  supports: readonly { readonly x_m: number; readonly y_m: number }[],
  { carriers, lines }: Pick<TopModel['bounds'][number], 'carriers' | 'lines'>,
  forces_N: Float64Array,
): Map<EffectName, Effect> {
  const { top, base, person } = overhang;
  const effects = new Map<EffectName, Effect>();
  const raise = (
    name: EffectName,
    value: number,
    { x_m, y_m }: { x_m: number; y_m: number },
    adds = false,
  ): void => {
    const held = effects.get(name);
    if (adds) effects.set(name, { value: (held?.value ?? 0) + value, x_m, y_m });
    else if (held === undefined || value > held.value) effects.set(name, { value, x_m, y_m });
  };
  supports.forEach((support, index) => {
    const force = forces_N[index] ?? 0;
    const carrier = carriers[index];
    if (carrier === undefined) return;
    if (carrier.kind === 'screw') raise('screw', force, support);
    else if (carrier.kind === 'prop') {
      raise(`prop ${carrier.index}`, force, support, true);
      raise(`prop couple ${carrier.index}`, force * (support.y_m - base.front_m), support, true);
    }
  });
  railEffects(overhang, supports, carriers, forces_N).forEach((effect, name) => effects.set(name, effect));
  lines.forEach(({ runs, parts }, index) => {
    const { force_Npm, support } = largestLineForce(parts, forces_N, person?.patch_m ?? usual.patch_m);
    const place = supports[support];
    if (place === undefined) return;
    raise('rail', force_Npm, place);
    if ((runs === 'x') === top.isAlong) raise('rolling', force_Npm, place);
    raise(`rail on line ${index}`, force_Npm, place);
  });
  return effects;
}

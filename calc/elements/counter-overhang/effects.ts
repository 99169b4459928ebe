import { averagedMoment, momentsOf, type PlateMoments } from '../../mechanics/plate/moments.ts';
import { nodeOf, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import { largestLineForce } from '../../mechanics/plate/line-force.ts';
import { barCurvature } from './bar-curvature.ts';
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
    if (prop.kind === 'flat-bar') effects.set(`bar ${index}`, barCurvature(plate.mesh, field, prop));
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
  const [fromI, toI] = linesNear(mesh.x_m, near?.x_m, near?.around_m);
  const [fromJ, toJ] = linesNear(mesh.y_m, near?.y_m, near?.around_m);
  let most = 0;
  for (let i = fromI; i < toI; i++)
    for (let j = fromJ; j < toJ; j++) most = Math.max(most, Math.abs(values[nodeOf(mesh, i, j)] ?? 0));
  let peak: Effect = { value: 0, x_m: 0, y_m: 0 };
  for (let i = fromI; i < toI; i++) {
    for (let j = fromJ; j < toJ; j++) {
      if (Math.abs(values[nodeOf(mesh, i, j)] ?? 0) < worthAveraging * most) continue;
      const value = Math.abs(averagedMoment(moments, way, [i, j], width_m));
      if (value > peak.value) peak = { value, x_m: mesh.x_m[i] ?? 0, y_m: mesh.y_m[j] ?? 0 };
    }
  }
  return peak;
}

/** Numbers of the first line within reach of a place, and of the first one beyond it; all lines about no place. */
function linesNear(
  lines: readonly number[],
  middle_m = 0,
  reach_m = Infinity,
): readonly [from: number, to: number] {
  let from = 0;
  let to = lines.length;
  while (from < to && Math.abs((lines[from] ?? 0) - middle_m) > reach_m) from++;
  while (to > from && Math.abs((lines[to - 1] ?? 0) - middle_m) > reach_m) to--;
  return [from, to];
}

/** A place with less than this share of the raw peak has no higher average. */
const worthAveraging = 0.4;

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
  supports.forEach((support, index) => {
    const force = forces_N[index] ?? 0;
    const carrier = carriers[index];
    if (carrier === undefined) return;
    if (carrier.kind === 'screw') raise(effects, 'screw', force, support);
    else if (carrier.kind === 'prop') {
      add(effects, `prop ${carrier.index}`, force, support);
      add(effects, `prop couple ${carrier.index}`, force * (support.y_m - base.front_m), support);
    }
  });
  railEffects(overhang, supports, carriers, forces_N).forEach((effect, name) => effects.set(name, effect));
  lines.forEach(({ runs, parts }, index) => {
    const { force_Npm, support } = largestLineForce(parts, forces_N, person?.patch_m ?? usual.patch_m);
    const place = supports[support];
    if (place === undefined) return;
    raise(effects, 'rail', force_Npm, place);
    if ((runs === 'x') === top.isAlong) raise(effects, 'rolling', force_Npm, place);
    raise(effects, `rail on line ${index}`, force_Npm, place);
  });
  return effects;
}

type Effects = Map<EffectName, Effect>;

function raise(effects: Effects, name: EffectName, value: number, { x_m, y_m }: Omit<Effect, 'value'>): void {
  if (value > (effects.get(name)?.value ?? -Infinity)) effects.set(name, { value, x_m, y_m });
}

function add(effects: Effects, name: EffectName, value: number, { x_m, y_m }: Omit<Effect, 'value'>): void {
  effects.set(name, { value: (effects.get(name)?.value ?? 0) + value, x_m, y_m });
}

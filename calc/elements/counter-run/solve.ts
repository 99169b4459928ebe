import type { Combination } from '../../codes/design-code.ts';
import {
  addedLoads,
  freePlate,
  heldPlate,
  lineSupports,
  momentsOf,
  plateMesh,
  preparedLoad,
  standerOf,
  fieldOfStanding,
  averagedMoment,
  nodeOf,
  type PlateLoad,
  type PlateMesh,
  type FreePlate,
  largestLineForce,
  linePartsOf,
  type LinePart,
  type LinePlace,
  type PreparedLoad,
  type Stander,
  type HeldPlate,
} from '../../mechanics/plate/index.ts';
import { usual } from '../counter-overhang/usual.ts';
import { railForces, railGive, type RailForces } from './rails.ts';
import type { Run } from './run.ts';
import { spotsOf, type Spot } from './spots.ts';

/** One arrangement of loads, solved. */
export interface State {
  readonly combination: Combination;
  readonly spot: Spot | null;
  readonly field: Float64Array;
  /** Largest movement down. */
  readonly movement_m: number;
  /** Largest moments for each width along the span and across it, averaged over one thickness. */
  readonly alongSpan_N: number;
  readonly acrossSpan_N: number;
  /**
   * Largest force on a side, or on a rail that nobody stands over, for each length, averaged over the width that somebody
   * stands on.
   */
  readonly end_Npm: number;
  /** The same on a side and on a rail, whoever stands over it: what presses on the panels there. */
  readonly onSide_Npm: number;
  readonly onRail_Npm: number;
  /** All that the sides and the rails carry of the panels. */
  readonly carried_N: number;
  /** What each rail carries. */
  readonly rails: readonly RailForces[];
}

/** A rail as a line of supports. */
interface RailLine {
  readonly edge: 'front' | 'back';
  readonly places: readonly { readonly support: number; readonly x_m: number }[];
  readonly parts: readonly LinePart[];
}

/** Panels on their supports, ready for loads. */
export interface Model {
  readonly mesh: PlateMesh;
  readonly plate: FreePlate;
  readonly held: HeldPlate;
  readonly ends: readonly (readonly LinePart[])[];
  readonly rails: readonly RailLine[];
  readonly stander: Stander;
  readonly dead: PreparedLoad;
  readonly serving: PreparedLoad | null;
}

/**
 * Lays the panels on the cabinet sides and their rails.
 *
 * @param finer how much finer the mesh is than usual, each way
 */
export function modelOf(run: Run, finer = 1): Model {
  const { span_m, depth_m, thickness_m, panel, isAlong } = run;
  const grain = panel.soft;
  const [Dx_Nm, Dy_Nm] = isAlong ? [grain.along_Nm, grain.across_Nm] : [grain.across_Nm, grain.along_Nm];
  // Somebody stands in the middle, at the edges and beside what carries the panels: moments and forces peak there.
  const sharp = (whole_m: number) => ({ stops_m: [whole_m / 2], near_m: [0, whole_m / 2, whole_m] });
  const [x, y] = [sharp(span_m), sharp(depth_m)];
  const mesh = plateMesh({ length_m: span_m, depth_m, thickness_m, x, y }, finer);
  const plate = freePlate(mesh, { Dx_Nm, Dy_Nm, D1_Nm: grain.coupling_Nm, Dxy_Nm: grain.twisting_Nm });
  const stiffness_Npm2 = (panel.softAcross_Pa * usual.railThickness_m) / thickness_m;
  const endAt = (at_m: number): LinePlace[] =>
    lineSupports(mesh, { along: 'y', at_m, from_m: 0, to_m: depth_m, stiffness_Npm2 });
  const [left, right] = [endAt(0), endAt(span_m)];
  const supports = [...left, ...right];
  const rails = run.rails.map((edge): RailLine => {
    const at_m = edge === 'back' ? 0 : depth_m;
    const line = lineSupports(mesh, { along: 'x', at_m, from_m: 0, to_m: span_m, stiffness_Npm2 });
    const inner = line.filter(({ x_m }) => x_m > 1e-9 && x_m < span_m - 1e-9);
    const places = inner.map(({ x_m }, index) => ({ x_m, support: supports.length + index }));
    supports.push(...inner);
    const parts = inner.map(({ length_m }, index) => ({ length_m, support: places[index]?.support ?? -1 }));
    return { edge, places, parts: linePartsOf(parts) };
  });
  const { rail } = run;
  const shared = rails.flatMap(({ places }) =>
    rail === null
      ? []
      : [
          {
            supports: places.map(({ support }) => support),
            give_mpN: railGive(
              rail,
              places.map(({ x_m }) => x_m),
            ),
          },
        ],
  );
  const held = heldPlate(plate, supports, shared);
  const even = (pressure: number): PlateLoad => ({
    ...{ kind: 'patch', fromX_m: 0, toX_m: span_m, fromY_m: 0, toY_m: depth_m },
    load_N: pressure * span_m * depth_m,
  });
  return {
    ...{ mesh, plate, held, rails },
    ends: [left, right].map((end, which) =>
      linePartsOf(end.map(({ length_m }, index) => ({ length_m, support: which * left.length + index }))),
    ),
    stander: standerOf(held),
    dead: preparedLoad(plate, [even(run.dead_Npm2)]),
    serving: run.serving === null ? null : preparedLoad(plate, [even(run.serving.pressure_Npm2)]),
  };
}

/** Every arrangement of a combination: nobody there, and somebody at each place. */
export function statesOf(run: Run, model: Model, combination: Combination): State[] {
  const { serving, person } = run;
  const served = serving !== null && combination.factor(serving.duration) > 0 ? model.serving : null;
  const base = served !== null ? addedLoads(model.dead, served) : model.dead;
  const isThere = person !== null && combination.factor(person.duration) > 0;
  const spots = isThere ? spotsOf(run) : [];
  return [null, ...spots].map((spot) => stateOf(run, model, combination, base, spot));
}

function stateOf(
  run: Run,
  model: Model,
  combination: Combination,
  base: PreparedLoad,
  spot: Spot | null,
): State {
  const half = (run.person?.patch_m ?? 0) / 2;
  const load =
    spot === null || run.person === null
      ? base
      : addedLoads(
          base,
          preparedLoad(model.plate, [
            {
              ...{ kind: 'patch', fromX_m: spot.x_m - half, toX_m: spot.x_m + half },
              ...{ fromY_m: spot.y_m - half, toY_m: spot.y_m + half, load_N: run.person.load_N },
            },
          ]),
        );
  const field = settled(model, load);
  const { mesh } = model;
  const moments = momentsOf(model.plate, field.field);
  let [alongSpan_N, acrossSpan_N] = [0, 0];
  mesh.x_m.forEach((_, i) => {
    mesh.y_m.forEach((__, j) => {
      alongSpan_N = Math.max(alongSpan_N, Math.abs(averagedMoment(moments, 'x', [i, j], run.thickness_m)));
      acrossSpan_N = Math.max(acrossSpan_N, Math.abs(averagedMoment(moments, 'y', [i, j], run.thickness_m)));
    });
  });
  const width_m = run.person?.patch_m ?? usual.patch_m;
  const most = (lines: readonly (readonly LinePart[])[]): number =>
    Math.max(0, ...lines.map((line) => largestLineForce(line, field.forces_N, width_m).force_Npm));
  const onSide_Npm = most(model.ends);
  const clear = model.rails.filter(({ edge }) => !isOver(run, spot, edge));
  const end_Npm = Math.max(onSide_Npm, most(clear.map(({ parts }) => parts)));
  return {
    combination,
    spot,
    field: field.field,
    movement_m: mostOf(model, 'all', field.field),
    alongSpan_N,
    acrossSpan_N,
    end_Npm,
    onSide_Npm,
    onRail_Npm: most(model.rails.map(({ parts }) => parts)),
    carried_N: field.forces_N.reduce((sum, each) => sum + each, 0),
    rails: railsOf(run, model, field.forces_N),
  };
}

/** Whether somebody stands over a rail, or nearer to it than the panels are thick: that adds no shear (NDS 3.4.3.1). */
function isOver({ depth_m, thickness_m, person }: Run, spot: Spot | null, edge: 'front' | 'back'): boolean {
  if (spot === null || person === null) return false;
  const away_m = edge === 'back' ? spot.y_m : depth_m - spot.y_m;
  return away_m < person.patch_m / 2 + thickness_m - 1e-9;
}

function railsOf({ rail }: Run, { rails }: Model, forces_N: Float64Array): RailForces[] {
  if (rail === null) return [];
  return rails.map(({ edge, places }) =>
    railForces(
      rail,
      edge,
      places.map(({ support, x_m }) => ({ x_m, force_N: forces_N[support] ?? 0 })),
    ),
  );
}

/** Panels so soft that they would slip off their sides. */
export class TooSoft extends Error {}

/** Movements and forces under a load; a panel between two sides always stands. */
export function settled(
  model: Model,
  load: PreparedLoad,
): { readonly field: Float64Array; readonly forces_N: Float64Array } {
  const standing = model.stander.stand(load);
  if (!standing.stands) throw new TooSoft('panels that move by their own length');
  return { field: fieldOfStanding(model.held, load, standing), forces_N: standing.forces_N };
}

/** Movement of everything, or of the panels beyond the rails on both sides of them. */
export type Moving = 'all' | 'beyond-rails';

/** The largest movement down, beyond rails either way, of one field or from one to another. */
export function mostOf({ mesh }: Model, of: Moving, field: Float64Array, before?: Float64Array): number {
  const last = mesh.y_m.length - 1;
  const depth_m = mesh.y_m[last] ?? 1;
  const movedAt = (i: number, j: number): number => {
    const dof = 4 * nodeOf(mesh, i, j);
    return (field[dof] ?? 0) - (before?.[dof] ?? 0);
  };
  let most = 0;
  mesh.x_m.forEach((_, i) => {
    const [back, front] = of === 'all' ? [0, 0] : [movedAt(i, 0), movedAt(i, last)];
    mesh.y_m.forEach((y_m, j) => {
      const ofRails = back + ((front - back) * y_m) / depth_m;
      const moved = movedAt(i, j) - ofRails;
      most = Math.max(most, of === 'all' ? moved : Math.abs(moved));
    });
  });
  return most;
}

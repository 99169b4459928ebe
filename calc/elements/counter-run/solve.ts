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
import type { Run } from './run.ts';

/** Where somebody stands; the middle of the square under the feet. */
interface Spot {
  readonly words: string;
  readonly x_m: number;
  readonly y_m: number;
}

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
  /** Largest force on an end for each length, averaged over the width that somebody stands on. */
  readonly end_Npm: number;
}

/** Panels on their supports, ready for loads. */
export interface Model {
  readonly mesh: PlateMesh;
  readonly plate: FreePlate;
  readonly held: HeldPlate;
  readonly ends: readonly (readonly LinePart[])[];
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
  const x = { stops_m: [span_m / 2], near_m: [] };
  const y = { stops_m: [depth_m / 2], near_m: [] };
  const mesh = plateMesh({ length_m: span_m, depth_m, thickness_m, x, y }, finer);
  const plate = freePlate(mesh, { Dx_Nm, Dy_Nm, D1_Nm: grain.coupling_Nm, Dxy_Nm: grain.twisting_Nm });
  const stiffness_Npm2 = (panel.softAcross_Pa * usual.railThickness_m) / thickness_m;
  const endAt = (at_m: number): LinePlace[] =>
    lineSupports(mesh, { along: 'y', at_m, from_m: 0, to_m: depth_m, stiffness_Npm2 });
  const [left, right] = [endAt(0), endAt(span_m)];
  const rails = run.rails.flatMap((rail) =>
    lineSupports(mesh, {
      along: 'x',
      at_m: rail === 'back' ? 0 : depth_m,
      from_m: 0,
      to_m: span_m,
      stiffness_Npm2,
    }),
  );
  const inner = rails.filter(({ x_m }) => x_m > 1e-9 && x_m < span_m - 1e-9);
  const held = heldPlate(plate, [...left, ...right, ...inner]);
  const even = (pressure: number): PlateLoad => ({
    ...{ kind: 'patch', fromX_m: 0, toX_m: span_m, fromY_m: 0, toY_m: depth_m },
    load_N: pressure * span_m * depth_m,
  });
  return {
    ...{ mesh, plate, held },
    ends: [left, right].map((end, which) =>
      linePartsOf(end.map(({ length_m }, index) => ({ length_m, support: which * left.length + index }))),
    ),
    stander: standerOf(held),
    dead: preparedLoad(plate, [even(run.dead_Npm2)]),
    serving: run.serving === null ? null : preparedLoad(plate, [even(run.serving.pressure_Npm2)]),
  };
}

/** The places where somebody asks most of the panels: the middle of each free long edge, and of the whole. */
function spotsOf({ span_m, depth_m, thickness_m, person, rails }: Run): Spot[] {
  if (person === null) return [];
  const half = person.patch_m / 2;
  const middle = span_m / 2;
  /** What stands nearer to a support than the panel is thick adds no shear (NDS 3.4.3.1). */
  const beside = Math.min(half + thickness_m, middle);
  return [
    ...(rails.includes('front')
      ? []
      : [{ words: 'in the middle of the front edge', x_m: middle, y_m: depth_m - half }]),
    ...(rails.includes('back') ? [] : [{ words: 'in the middle of the back edge', x_m: middle, y_m: half }]),
    { words: 'in the middle', x_m: middle, y_m: depth_m / 2 },
    {
      words: 'on the front edge beside a cabinet side',
      x_m: beside,
      y_m: depth_m - half,
    },
    { words: 'on the back edge beside a cabinet side', x_m: beside, y_m: half },
  ];
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
  const end_Npm = Math.max(
    ...model.ends.map((end) => largestLineForce(end, field.forces_N, width_m).force_Npm),
  );
  return {
    combination,
    spot,
    field: field.field,
    movement_m: mostOf(model, field.field),
    alongSpan_N,
    acrossSpan_N,
    end_Npm,
  };
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

/** The largest movement down. */
export function mostOf({ mesh }: Model, field: Float64Array): number {
  let most = 0;
  mesh.x_m.forEach((_, i) => {
    mesh.y_m.forEach((__, j) => (most = Math.max(most, field[4 * nodeOf(mesh, i, j)] ?? 0)));
  });
  return most;
}

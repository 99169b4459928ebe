import type { Duration } from '../../../shared/check-document/index.ts';
import { freePlate, type FreePlate } from '../../mechanics/plate/free-plate.ts';
import { nearestLine, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import { linePartsOf, type LinePart } from '../../mechanics/plate/line-force.ts';
import { standerOf, type Stander } from '../../mechanics/plate/standing.ts';
import type { PlateBeam } from '../../mechanics/plate/stiffness.ts';
import {
  heldPlate,
  withSupports,
  type HeldPlate,
  type PlateSupport,
} from '../../mechanics/plate/supports.ts';
import { barStiffness_Nm2 } from './bar.ts';
import { looseShare } from './top-tipping.ts';
import type { Overhang } from './overhang.ts';
import { closest_m, propStops } from './top-mesh.ts';

/** Screws that hold to their strength, and screws that are loose. */
export type Bound = 'screws-hold' | 'screws-loose';

/** What a place of support belongs to. */
export type Carrier =
  | {
      readonly kind: 'back' | 'front' | 'panel';
      readonly length_m: number;
      /** Of a place on a rail where a panel ends: how much of the panel it stands for too. */
      readonly ofPanel_m?: number;
    }
  | { readonly kind: 'screw'; readonly index: number }
  | { readonly kind: 'prop'; readonly index: number };

/** Which side of the growth rings is across the grain: the top is worked out on both, and the worse counts. */
export type RingSide = 'stiff' | 'soft';

/** The top on its base, ready for loads. */
export interface TopModel {
  readonly side: RingSide;
  readonly plate: FreePlate;
  readonly bounds: readonly {
    readonly bound: Bound;
    /** How much of the people stands on it: see `looseShare`. */
    readonly share: number;
    readonly held: HeldPlate;
    /** One for all loads: each begins where the last ended. */
    readonly stander: Stander;
    readonly carriers: readonly Carrier[];
    /** Rails and panels, each a line of supports. */
    readonly lines: readonly SupportedLine[];
  }[];
}

/** A rail, which runs along x, or a panel, which runs along y. */
export interface SupportedLine {
  readonly runs: 'x' | 'y';
  readonly parts: readonly LinePart[];
}

interface Place extends PlateSupport {
  readonly carrier: Carrier;
}

/**
 * Makes a plate of a top, with its bars, on its rails, panels, props and screws, which hold what they do for a moment.
 *
 * @param mesh with lines through all of them
 */
export function topModel(overhang: Overhang, side: RingSide, mesh: PlateMesh): TopModel {
  const { top, props, screws } = overhang;
  const grain = top.wood[side];
  const [Dx_Nm, Dy_Nm] = top.isAlong ? [grain.along_Nm, grain.across_Nm] : [grain.across_Nm, grain.along_Nm];
  const bars = props.flatMap((prop): PlateBeam[] =>
    prop.kind === 'flat-bar'
      ? [{ along: 'y', at_m: prop.at, from_m: prop.from, to_m: prop.to, EI_Nm2: barStiffness_Nm2(prop) }]
      : [],
  );
  const plate = freePlate(mesh, { Dx_Nm, Dy_Nm, D1_Nm: grain.coupling_Nm, Dxy_Nm: grain.twisting_Nm }, bars);
  const places = [...linePlaces(overhang, mesh), ...propPlaces(overhang), ...screwPlaces(overhang)];
  const held = heldPlate(plate, places);
  const isScrew = (index: number): boolean => places[index]?.carrier.kind === 'screw';
  const unscrewed = screws === null ? held : withSupports(held, (_, index) => !isScrew(index));
  const loose = {
    bound: 'screws-loose' as const,
    share: 1,
    held: unscrewed,
    stander: standerOf(unscrewed),
    ...carriersOf(places.filter((_, index) => !isScrew(index))),
  };
  if (screws === null) return { side, plate, bounds: [loose] };
  const all = {
    bound: 'screws-hold' as const,
    share: 1,
    held,
    stander: standerOf(held),
    ...carriersOf(places),
  };
  // A top that its weight does not even hold with nobody there is held by its screws or not at all.
  const share = looseShare(overhang);
  return { side, plate, bounds: share === null ? [all] : [all, { ...loose, share }] };
}

/** The same top whose screws hold for as long as a combination lasts; nothing is solved anew. */
export function heldFor(model: TopModel, { screws }: Overhang, duration: Duration): TopModel {
  if (screws === null) return model;
  const most_N = screws.pullUnder(duration).pull_N;
  const bounds = model.bounds.map((each) => {
    if (each.bound === 'screws-loose') return each;
    const supports = each.held.supports.map((support, index) =>
      each.carriers[index]?.kind === 'screw' ? { ...support, most_N } : support,
    );
    const held = { ...each.held, supports };
    return { ...each, held, stander: standerOf(held) };
  });
  return { ...model, bounds };
}

/** Each line from end to end. What a rail and a panel carry where they meet counts in full for the rail, and for the panel by its length. */
function carriersOf(places: readonly Place[]): Pick<TopModel['bounds'][number], 'carriers' | 'lines'> {
  const lines = new Map<string, { support: number; length_m: number; share: number; at_m: number }[]>();
  const put = (name: string, support: number, length_m: number, at_m: number, share = 1): void => {
    const line = lines.get(name) ?? [];
    line.push({ support, length_m, share, at_m });
    lines.set(name, line);
  };
  places.forEach(({ carrier, x_m, y_m }, support) => {
    if (carrier.kind === 'screw' || carrier.kind === 'prop') return;
    const { kind, length_m, ofPanel_m } = carrier;
    if (kind === 'panel') put(`panel ${x_m}`, support, length_m, y_m);
    else put(kind, support, length_m, x_m);
    if (ofPanel_m !== undefined)
      put(`panel ${x_m}`, support, ofPanel_m, y_m, ofPanel_m / (ofPanel_m + length_m));
  });
  return {
    carriers: places.map(({ carrier }) => carrier),
    lines: [...lines].map(([name, line]) => ({
      runs: name.startsWith('panel') ? 'y' : 'x',
      parts: linePartsOf(line.sort((a, b) => a.at_m - b.at_m)),
    })),
  };
}

/** Rails along back and face, and the panels between them, at every line of the mesh that crosses them. */
function linePlaces({ top, base }: Overhang, mesh: PlateMesh): Place[] {
  const { from_m, to_m, back_m, front_m, panels_m } = base;
  const xs = within(mesh.x_m, from_m, to_m);
  const ys = within(mesh.y_m, back_m, front_m);
  // A rail is as stiff, for each length, as the wood of the top above it.
  const stiffness_Npm2 = (top.wood.softAcross_Pa * base.railThickness_m) / top.thickness_m;
  const place = (
    x_m: number,
    y_m: number,
    length_m: number,
    kind: 'back' | 'front' | 'panel',
    ofPanel_m?: number,
  ): Place => ({
    x_m,
    y_m,
    sense: 'push',
    give_mpN: 1 / (stiffness_Npm2 * (length_m + (ofPanel_m ?? 0))),
    most_N: Infinity,
    carrier: { kind, length_m, ...(ofPanel_m !== undefined && { ofPanel_m }) },
  });
  const panels = new Set(panels_m.map((panel) => nearestLine(mesh.x_m, panel)));
  const rail = (kind: 'back' | 'front', y_m: number, half_m: number): Place[] =>
    xs.map((x, i) => place(x, y_m, share(xs, i), kind, panels.has(x) ? half_m : undefined));
  return [
    ...rail('back', ys[0] ?? back_m, share(ys, 0)),
    ...rail('front', ys[ys.length - 1] ?? front_m, share(ys, ys.length - 1)),
    ...[...panels].flatMap((x) => ys.slice(1, -1).map((y, j) => place(x, y, share(ys, j + 1), 'panel'))),
  ];
}

function within(lines: readonly number[], from: number, to: number): number[] {
  return lines.filter((line) => line >= from - closest_m && line <= to + closest_m);
}

/** The length of line that a place on it stands for. */
function share(lines: readonly number[], index: number): number {
  const here = lines[index] ?? 0;
  return ((lines[index + 1] ?? here) - (lines[index - 1] ?? here)) / 2;
}

/** How far a prop gives whose maker says nothing, under a hundredth of what a person weighs: next to nothing. */
export const stiffGive_mpN = 2e-7;

function propPlaces({ props, base, top }: Overhang): Place[] {
  return props.flatMap((prop, index): Place[] => {
    if (prop.kind === 'flat-bar') return [];
    const give_mpN =
      prop.kind !== 'leg' &&
      prop.gives !== undefined &&
      prop.gives > 0 &&
      prop.allowable !== undefined &&
      prop.allowable > 0
        ? prop.gives / prop.allowable
        : stiffGive_mpN;
    const ends = propStops(prop, base.front_m);
    return ends.map((y_m) => ({
      x_m: Math.min(prop.at, top.length_m),
      y_m: Math.min(y_m, top.depth_m),
      sense: 'push',
      // Halfway along, an arm that is held at the base gives a third or so of what its end does.
      give_mpN: y_m === prop.to ? give_mpN : Math.max(give_mpN / 3, stiffGive_mpN),
      most_N: Infinity,
      carrier: { kind: 'prop', index },
    }));
  });
}

/** Screws hold the most under the shortest load: for longer ones see `heldFor`. */
const shortest: Duration = 'impact';

function screwPlaces({ screws }: Overhang): Place[] {
  const pull_N = screws?.pullUnder(shortest).pull_N ?? 0;
  if (screws === null || pull_N <= 0) return [];
  return screws.places.map(({ x_m, y_m }, index) => ({
    x_m,
    y_m,
    sense: 'pull',
    give_mpN: screws.give_mpN,
    most_N: pull_N,
    carrier: { kind: 'screw', index },
  }));
}

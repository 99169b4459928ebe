import type { Overhang } from './overhang.ts';
import { stoolSpacing_m } from './usual.ts';

/** The middle of the square somebody presses on. */
export interface Spot {
  readonly x_m: number;
  readonly y_m: number;
}

/** Where people are: one, or two side by side. */
export type Standing = readonly Spot[];

/** An edge of the top that stands out past the base. */
export interface FreeEdge {
  readonly name: 'stool' | 'back' | 'left' | 'right';
  readonly out_m: number;
}

const least_m = 0.01;

/** The edges that stand out past the base. */
export function freeEdges({ top, base }: Overhang): FreeEdge[] {
  const edges: FreeEdge[] = [
    { name: 'stool', out_m: top.depth_m - base.front_m },
    { name: 'back', out_m: base.back_m },
    { name: 'left', out_m: base.from_m },
    { name: 'right', out_m: top.length_m - base.to_m },
  ];
  return edges.filter(({ out_m }) => out_m > least_m);
}

/** A line along which one person or two can be moved: places are the middle of what they take up. */
export interface Walk {
  readonly along: 'x' | 'y';
  readonly from_m: number;
  readonly to_m: number;
  /** Places where somebody comes to what carries the top, or has just stepped off it. */
  readonly stops_m: readonly number[];
  at(place_m: number): Standing;
}

/**
 * Every line along which people are moved: the stool edge and each free edge from corner to corner, the ends of the overhang
 * itself, and two people side by side where two stools fit. Where props carry the edge, somebody who leans in right above the
 * front rail leaves it more.
 */
export function walksOf(overhang: Overhang): Walk[] {
  const { top, base, props, person } = overhang;
  if (person === null) return [];
  const { length_m, depth_m } = top;
  const half = person.patch_m / 2;
  const inside = (place: number, whole: number): number => Math.min(Math.max(place, half), whole - half);
  if (person.at_m !== null) {
    const x_m = inside(person.at_m, length_m);
    return [{ along: 'x', from_m: x_m, to_m: x_m, stops_m: [], at: () => [{ x_m, y_m: depth_m - half }] }];
  }
  const names = freeEdges(overhang).map(({ name }) => name);
  const hasStools = names.includes('stool');
  const alongX = (y_m: number, spots: readonly number[]): Walk => ({
    along: 'x',
    from_m: half + Math.max(0, ...spots.map((spot) => -spot)),
    to_m: length_m - half - Math.max(0, ...spots),
    stops_m: [...props.map(({ at }) => at), ...base.panels_m, base.from_m, base.to_m].flatMap((at) =>
      spots.map((spot) => at - spot),
    ),
    at: (place) => spots.map((spot) => ({ x_m: place + spot, y_m })),
  });
  const alongY = (x_m: number, isFree: boolean, spots: readonly number[] = [0]): Walk => ({
    along: 'y',
    from_m: isFree ? half + Math.max(0, ...spots.map((spot) => -spot)) : inside(base.front_m, depth_m),
    to_m: depth_m - half - Math.max(0, ...spots),
    stops_m: [
      ...[base.front_m, base.front_m + person.patch_m, base.back_m, base.back_m - person.patch_m],
      ...props.map(({ to }) => to),
    ].flatMap((at) => spots.map((spot) => at - spot)),
    at: (place) => spots.map((spot) => ({ x_m, y_m: place + spot })),
  });
  const pair = [-stoolSpacing_m / 2, stoolSpacing_m / 2];
  const hasEndPair = depth_m >= 2 * stoolSpacing_m;
  const carriesEdge = props.some(({ kind }) => kind !== 'flat-bar');
  const isEnd = (name: 'left' | 'right'): boolean => names.includes(name);
  return [
    // Where nothing stands out on the stool side people still lean there, on the rail.
    alongX(depth_m - half, [0]),
    ...(person.isPair ? [alongX(depth_m - half, pair)] : []),
    ...(hasStools && carriesEdge ? [alongX(inside(base.front_m, depth_m), [0])] : []),
    ...(names.includes('back') ? [alongX(half, [0])] : []),
    ...(names.includes('back') && person.isPair ? [alongX(half, pair)] : []),
    ...(isEnd('left') && hasEndPair ? [alongY(half, true, pair)] : []),
    ...(isEnd('right') && hasEndPair ? [alongY(length_m - half, true, pair)] : []),
    ...(isEnd('left') || hasStools ? [alongY(half, isEnd('left'))] : []),
    ...(isEnd('right') || hasStools ? [alongY(length_m - half, isEnd('right'))] : []),
  ];
}

import type { Run } from './run.ts';

/** Where somebody stands; the middle of the square under the feet. */
export interface Spot {
  readonly words: string;
  readonly x_m: number;
  readonly y_m: number;
}

/** Places tried between one where somebody asks much and the middle, as shares of the way. */
const steps = [0.12, 0.25, 0.4, 0.6, 0.8];

/**
 * The places where somebody asks most of the panels and their rails: along each long edge and beside each rail, along the
 * middle both ways, and beside a cabinet side. Left and right are alike; where back and front lie on the same, so are they,
 * and the front is looked at.
 */
export function spotsOf({ span_m, depth_m, thickness_m, person, rails }: Run): Spot[] {
  if (person === null) return [];
  const half = person.patch_m / 2;
  const middle = { x_m: span_m / 2, y_m: depth_m / 2 };
  /** What stands nearer to a support than the panel is thick adds no shear (NDS 3.4.3.1). */
  const beside = Math.min(half + thickness_m, middle.x_m);
  const onTheWay = (from: number, to: number): number[] => steps.map((step) => from + step * (to - from));
  // On a long span a cabinet side is felt no further than about the depth.
  const along = [middle.x_m, beside + depth_m].flatMap((to) =>
    to <= middle.x_m ? onTheWay(beside, to) : [],
  );
  const edges = [
    { edge: 'front', y_m: depth_m - half, besideRail: Math.max(depth_m - half - thickness_m, middle.y_m) },
    { edge: 'back', y_m: half, besideRail: Math.min(half + thickness_m, middle.y_m) },
  ] as const;
  const unlike = rails.length === 1 ? edges : edges.slice(0, 1);
  return [
    ...unlike.flatMap(({ edge, y_m, besideRail }) => [
      { words: `in the middle of the ${edge} edge`, x_m: middle.x_m, y_m },
      { words: `on the ${edge} edge beside a cabinet side`, x_m: beside, y_m },
      // A rail's end carries most of somebody who stands a quarter or so along it: nearer, the cabinet side takes them. On the
      // way along an edge without a rail the panels are bent most across the span, upward.
      ...along.map((x_m) => ({ words: `on the ${edge} edge, on the way to its middle`, x_m, y_m })),
      ...(rails.includes(edge)
        ? [
            { words: `beside the ${edge} rail`, x_m: middle.x_m, y_m: besideRail },
            // A rail that bends is stiffer toward its ends and takes more there.
            ...along.map((x_m) => ({
              words: `beside the ${edge} rail, toward a cabinet side`,
              ...{ x_m, y_m: besideRail },
            })),
          ]
        : []),
      ...onTheWay(y_m, middle.y_m).flatMap((at) => [
        { words: `midway between the cabinet sides, toward the ${edge} edge`, x_m: middle.x_m, y_m: at },
        { words: `beside a cabinet side, toward the ${edge} edge`, x_m: beside, y_m: at },
      ]),
    ]),
    { words: 'in the middle', ...middle },
    { words: 'beside a cabinet side, in the middle of the depth', x_m: beside, y_m: middle.y_m },
    // On rails that give, the stiffer cabinet side draws load to itself.
    ...(rails.length === 0
      ? []
      : along.map((x_m) => ({
          words: 'in the middle of the depth, toward a cabinet side',
          ...{ x_m, y_m: middle.y_m },
        }))),
  ];
}

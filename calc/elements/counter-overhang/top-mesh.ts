import { gradedLines, type Fineness, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import type { Overhang, Prop } from './overhang.ts';
import { usual } from './usual.ts';

/** A coarse mesh with lines through everything that carries the top: enough to find where people ask most of it. */
export function scoutMesh(overhang: Overhang, finer: number): PlateMesh {
  const { from_m, to_m } = overhang.base;
  const even = { largest_m: longerSide(overhang) / 10 / finer, near: [] };
  const corners = [from_m, to_m].map((at_m) => ({ at_m, size_m: cornerCell_m / finer, growth: 1 }));
  return meshOf(overhang, { ...even, near: corners }, even);
}

/** Lines through everything that carries the top, closer along the rail on the stool side, and closest at the props. */
export function fineMesh(overhang: Overhang, finer: number): PlateMesh {
  const { top, base, props } = overhang;
  const { length_m, depth_m, thickness_m } = top;
  const largest_m = Math.min(longerSide(overhang) / 16, widest_m) / finer;
  const points = props.filter(({ kind }) => kind !== 'flat-bar');
  const ends = [base.from_m, base.to_m];
  /** Whether the top stands out past an end: the panel there carries most at its own ends, and cells beside it are smaller. */
  const isOut = (at: number): boolean => at > 0.02 && at < length_m - 0.02;
  const beside = { size_m: Math.max(thickness_m, depth_m / 40) / finer };
  // A prop presses on a point: moments turn far more sharply there than along a rail, and calm down sooner.
  const atProp = { size_m: beside.size_m / 6, growth: 1 };
  return meshOf(
    overhang,
    {
      largest_m,
      near: [
        ...ends.filter(isOut).map((at_m) => ({ at_m, ...beside })),
        ...ends.map((at_m) => ({ at_m, size_m: cornerCell_m / (isOut(at_m) ? 2 : 1) / finer })),
        ...points.map(({ at }) => ({ at_m: at, ...atProp })),
        ...underPeople([base.from_m, length_m - base.to_m], length_m, finer),
      ],
    },
    {
      largest_m,
      near: [
        { at_m: base.front_m, ...beside },
        ...(standsOut([...ends, base.back_m], [0, length_m, 0]) ? [{ at_m: base.back_m, ...beside }] : []),
        ...points.map(({ to }) => ({ at_m: to, ...atProp })),
        ...underPeople([base.back_m, depth_m - base.front_m], depth_m, finer),
      ],
    },
  );
}

/** Whether an end or the back stands out: somebody there presses hardest on a back corner of the base. */
function standsOut(faces: readonly number[], edges: readonly number[]): boolean {
  return faces.some((face, index) => Math.abs(face - (edges[index] ?? face)) > 0.02);
}

/** Along an edge that stands out, and midway to it, cells are half as wide as somebody takes up: moments peak under them. */
function underPeople(
  [first, last]: readonly [number, number],
  whole_m: number,
  finer: number,
): Fineness['near'] {
  const size_m = usual.patch_m / 2 / finer;
  return [...(first > 0.02 ? [0, first / 2] : []), ...(last > 0.02 ? [whole_m - last / 2, whole_m] : [])].map(
    (at_m) => ({ at_m, size_m }),
  );
}

function meshOf({ top, base, props }: Overhang, alongX: Fineness, alongY: Fineness): PlateMesh {
  const xs = [base.from_m, base.to_m, ...base.panels_m, ...props.map(({ at }) => at)];
  const ys = [base.back_m, base.front_m, ...props.flatMap((prop) => propStops(prop, base.front_m))];
  return {
    x_m: gradedLines(top.length_m, xs, alongX, closest_m),
    y_m: gradedLines(top.depth_m, ys, alongY, closest_m),
  };
}

const longerSide = ({ top }: Overhang): number => Math.max(top.length_m, top.depth_m);

/** Where a prop begins or presses, from the back edge. */
export function propStops(prop: Prop, front_m: number): number[] {
  if (prop.kind === 'flat-bar') return [prop.from, prop.to];
  return prop.kind === 'leg' ? [prop.to] : [(front_m + prop.to) / 2, prop.to];
}

/** However long the top: under somebody in the middle of it moments peak over little more than they take up. */
const widest_m = 1.125 * usual.patch_m;

/** At a corner of the base a cell is half as wide as what the force on the rail is averaged over. */
const cornerCell_m = usual.patch_m / 2;

/** Lines nearer to each other are one. */
export const closest_m = 0.004;

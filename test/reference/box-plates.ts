import { shelf, type Load } from '../calc/elements/documents.ts';
import { finiteStrip, type Plate, type StripLoad } from './finite-strip.ts';

/*
 * Hollow boxes of one wood, bent by a hand, by a line of load along their front edge and by an even load, in one bay: against thin
 * orthotropic plates that meet along lines (finite-strip.ts). Wood Handbook FPL-GTR-282 (2021), Tables 5-1 and 5-2 (memory): E_T/E_L,
 * the lesser of G_LR/E_L and G_LT/E_L, ν_LT. Members are plates on their middle lines; over a member a skin is stiff across.
 */
export const woods = {
  'sugar-maple': { along: 1, across: 0.065, shear: 0.063, poisson: 0.476 },
  'western-hemlock': { along: 1, across: 0.031, shear: 0.032, poisson: 0.423 },
} as const;
const patch = 4;

export interface Box {
  readonly wood: keyof typeof woods;
  readonly skin: number;
  readonly thickness: number;
  readonly frame: number;
  readonly depth: number;
  readonly members: number;
  readonly length: number;
}
export type Kind = 'hand' | 'line' | 'even';

const middlesOf = ({ frame, depth, members }: Box): number[] =>
  Array.from({ length: members }, (_, i) => frame / 2 + ((depth - frame) * i) / (members - 1));
const sorted = (places: readonly number[]): number[] =>
  [...places].sort((a, b) => a - b).filter((at, i, all) => i === 0 || at - (all[i - 1] ?? 0) > 1e-6);

/** A box as plates, its lines of nodes across, and a load of a pound on them. */
export function plates(box: Box, length: number, kind: Kind) {
  const { wood, skin, thickness, frame, depth } = box;
  const [middles, up] = [middlesOf(box), (thickness - skin) / 2];
  const stops = sorted([
    0,
    depth,
    depth - patch,
    ...middles.flatMap((y) => [y - frame / 2, y, y + frame / 2]),
  ]);
  const pieces = stops.slice(1).map((to, i) => ({ from: stops[i] ?? 0, to }));
  const flat = [-up, up].flatMap((z) =>
    pieces.map(({ from, to }): Plate => {
      const strips = Math.ceil((to - from) / 0.8);
      return { from: [from, z], to: [to, z], thickness: skin, strips };
    }),
  );
  const upright = middles.map((y): Plate => ({ from: [y, -up], to: [y, up], thickness: frame, strips: 4 }));
  const lines = sorted(
    pieces.flatMap(({ from, to }) => {
      const n = Math.ceil((to - from) / 0.8);
      return Array.from({ length: n + 1 }, (_, k) => from + ((to - from) * k) / n);
    }),
  );
  /** What stands from a place to the front, put on the lines of nodes. */
  const over = (from: number): { readonly y: number; readonly share: number }[] => {
    const on = lines.filter((y) => y >= from - 1e-6);
    return on.map((y, i) => {
      const wide = ((on[i + 1] ?? y) - (on[i - 1] ?? y)) / 2;
      return { y, share: wide / (depth - from) };
    });
  };
  const at = (y: number) => [y, up] as const;
  const loads: StripLoad[] =
    kind === 'line'
      ? [{ at: at(middles.at(-1) ?? 0), perLength: 1 / length }]
      : over(kind === 'hand' ? depth - patch : 0).map(({ y, share }) =>
          kind === 'hand' ? { at: at(y), point: share, patch } : { at: at(y), perLength: share / length },
        );
  const solve = (on: readonly StripLoad[]) => finiteStrip([...flat, ...upright], length, on, woods[wood], 41);
  return { solve, loads, lines, up, middles };
}

/** A box in bays, with so many pounds on it. */
export function boxOf(box: Box, kind: Kind, pounds: number, bays = 1) {
  const { wood, skin, thickness, frame, depth, members } = box;
  const length = bays * box.length;
  const load: Load =
    kind === 'hand'
      ? { kind: 'roaming', amount: `${pounds} lbf`, duration: 'seven-days' }
      : {
          ...{ kind: 'line', amount: `${(12 * pounds) / length} lbf/ft`, duration: 'permanent' },
          ...{ arrangement: 'fixed', ...(kind === 'line' && { eccentricity: `${depth - frame / 2} in` }) },
        };
  return shelf({
    board: {
      ...{ material: wood, length: `${length} in`, depth: `${depth} in`, thickness: `${thickness} in` },
      box: { skin: `${skin} in`, frame: `${frame} in`, members },
    },
    brackets: {
      positions: Array.from({ length: bays + 1 }, (_, k) => `${k * box.length} in`),
      arm: `${depth} in`,
    },
    loads: [load],
  });
}

const sizes = [
  [0.25, 2, 0.75, 8],
  [0.25, 2, 0.75, 11.25],
  [0.375, 2, 0.75, 10],
  [0.5, 2.5, 1, 8],
  [0.75, 3, 0.75, 8],
] as const;
export const boxes = sizes.flatMap(([skin, thickness, frame, depth], k) =>
  [2, 3, 5].flatMap((members) =>
    [24, 48].map((length): Box => {
      const wood = (k + members) % 2 === 0 ? 'sugar-maple' : 'western-hemlock';
      return { wood, skin, thickness, frame, depth, members, length };
    }),
  ),
);
export const named = (box: Box) =>
  [
    `${box.wood} ${box.depth} × ${box.thickness} in, skins ${box.skin} in, ${box.members} members of ${box.frame} in, ${box.length} in`,
    box,
  ] as const;

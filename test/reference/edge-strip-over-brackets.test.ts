import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { line, psi, shelf, type Load } from '../calc/elements/documents.ts';
import { finiteStrip, type Plate } from './finite-strip.ts';
import { foldedBoard, type Bent, type FoldedBoard } from './folded-board.ts';

/*
 * Boards with strips along their edges over brackets and past the last of them, a hand leaning anywhere on the front edge: against
 * flat shells that meet along lines (folded-board.ts). Wood Handbook FPL-GTR-282 (2021), Tables 5-1, 5-2 and 5-3b (memory):
 * E_T/E_L, the lesser of G_LR/E_L and G_LT/E_L, ν_LT; black locust 2.05 Mpsi, ponderosa pine 1.29.
 */
const woods = {
  'sugar-maple': { E: 1, across: 0.065, shear: 0.063, poisson: 0.476 },
  'western-hemlock': { E: 1, across: 0.031, shear: 0.032, poisson: 0.423 },
  'ponderosa-pine': { E: 1, across: 0.083, shear: 0.115, poisson: 0.4 },
} as const;
const [t, patch] = [0.75, 4];

interface Case {
  readonly wood: keyof typeof woods;
  readonly depth: number;
  readonly rail?: number;
  readonly nosing?: number;
  /** Another wood of the strips, and how much stiffer. */
  readonly strips?: readonly [string, number];
  readonly brackets: readonly number[];
  readonly length: number;
  /** Cells along it: brackets stand on lines between them. */
  readonly cells: number;
}

/** Wide from the front edge to the middle of the rail or the back edge. */
const wideOf = ({ depth, rail, nosing }: Case): number =>
  depth + (rail === undefined ? 0 : t / 2) + (nosing === undefined ? 0 : t / 2);

function folded(each: Case): FoldedBoard {
  const { wood, depth, rail, nosing, strips, brackets, length, cells } = each;
  const wide = wideOf(each);
  const to = wide - patch - 0.5;
  const n = Math.ceil((to - t) / 1.2);
  const between = Array.from({ length: n }, (_, k) => t + ((to - t) * (k + 1)) / n);
  const loaded = Array.from({ length: 5 }, (_, k) => to + ((patch + 0.5 - t) * (k + 1)) / 5);
  const lines = [0, t / 2, t, ...between, ...loaded, wide - t / 2, wide];
  const [stiffer, quarters] = [strips?.[1] ?? 1, [0.25, 0.5, 0.75, 1]];
  const upright = (line: number, height: number | undefined, up: 1 | -1) =>
    height === undefined
      ? []
      : [{ line, stiffer, z: [(-up * t) / 2, ...quarters.map((share) => up * share * (height - t / 2))] }];
  return {
    ...{ length, cells, thickness: t, lines, wood: woods[wood] },
    upright: [...upright(0, rail, 1), ...upright(lines.length - 1, nosing, -1)],
    // An inner bracket only pushes; what stands out past one lifts the board off another, whose screws hold it.
    brackets: brackets.map((at, index) => ({
      ...{ at, to: (rail === undefined ? 0 : t / 2) + depth },
      pulls: at === 0 || index === brackets.length - 1 || brackets[brackets.length - 1] !== length,
    })),
  };
}

/** Bent by a pound of a hand, its middle so far along the front edge. */
function byHand(each: Case): (x: number) => Bent {
  const [wide, solve] = [wideOf(each), foldedBoard(folded(each))];
  return (x) => solve({ x: [x - patch / 2, x + patch / 2], y: [wide - patch, wide], load: 1 });
}
function mostAnywhere(each: Case): number {
  const at = byHand(each);
  const places = Array.from(
    { length: Math.floor((each.length - patch) / 2) + 1 },
    (_, k) => patch / 2 + 2 * k,
  );
  return Math.max(...places.map((x) => at(x).board));
}

/** What a pound of a hand adds to the stress of the strip, where much else stands on the board already. */
function perPound({ wood, depth, rail, nosing, strips, brackets, length }: Case, heavy: Load[] = []): number {
  const strip = (height: number, flush: 'top' | 'bottom') => ({
    ...{ height: `${height} in`, thickness: `${t} in`, flush },
    ...(strips && { material: strips[0] }),
  });
  const found = (pounds: number): number => {
    const hand: Load = { kind: 'roaming', amount: `${pounds} lbf`, duration: 'seven-days' };
    const document = shelf({
      board: {
        ...{ material: wood, thickness: `${t} in`, length: `${length} in`, depth: `${depth} in` },
        ...(rail !== undefined && { rail: strip(rail, 'bottom') }),
        ...(nosing !== undefined && { nosing: strip(nosing, 'top') }),
      },
      brackets: { positions: brackets.map((at) => `${at} in`), arm: `${depth} in` },
      loads: [...heavy, hand],
    });
    const { checks } = check(document, { waysOut: false });
    return checks.find(({ id }) => id === 'edge-strip')?.demand?.value ?? NaN;
  };
  const [more, less] = heavy.length === 0 ? [3000, 2000] : [60, 10];
  return (found(more) - found(less)) / (more - less) / psi;
}

describe('flat shells that meet along lines', () => {
  it.each([
    [24, 11.25, undefined],
    [24, 11.25, 3],
    [48, 8, 1.5],
  ] as const)('are finite strips in one bay: %d × %d in, rail %s', (length, depth, rail) => {
    const one: Case = {
      wood: 'sugar-maple',
      depth,
      ...(rail && { rail }),
      brackets: [0, length],
      length,
      cells: length / 0.75,
    };
    const wide = wideOf(one);
    const flat = [
      [0, wide - patch, Math.ceil(wide - patch)],
      [wide - patch, wide, 16],
    ].map(([from = 0, to = 0, strips = 1]): Plate => ({
      from: [from, 0],
      to: [to, 0],
      thickness: t,
      strips,
    }));
    const upright =
      rail === undefined
        ? []
        : [rail - t / 2, -t / 2].map((z): Plate => ({
            from: [0, 0],
            to: [0, z],
            thickness: t,
            strips: z > 0 ? 4 : 1,
          }));
    const loads = Array.from({ length: 17 }, (_, i) => ({
      at: [wide - patch + i / 4, 0] as const,
      ...{ point: i === 0 || i === 16 ? 1 / 32 : 1 / 16, patch },
    }));
    const { E_T, ...others } = { E_T: 0.065, along: 1, shear: 0.063, poisson: 0.476 };
    const exact = finiteStrip([...flat, ...upright], length, loads, { ...others, across: E_T }, 61);
    // Over the last thickness, as the shells have it.
    const faces = [0, 0.25, 0.5, 0.75].map((off) => exact.face(wide - off, 0));
    const mean = faces.reduce((sum, each, k) => sum + (k === 0 || k === 3 ? each / 6 : each / 3), 0);
    const ratio = byHand(one)(length / 2).board / mean;
    expect(ratio).toBeGreaterThan(0.985);
    expect(ratio).toBeLessThan(1.015);
  });
});

const railed: readonly Case[] = [
  { wood: 'sugar-maple', depth: 11.25, rail: 3, brackets: [0, 24, 48], length: 48, cells: 64 },
  { wood: 'sugar-maple', depth: 8, rail: 1.5, brackets: [0, 24, 48], length: 48, cells: 64 },
  { wood: 'western-hemlock', depth: 11.25, rail: 3, brackets: [0, 24, 48], length: 48, cells: 64 },
  { wood: 'ponderosa-pine', depth: 11.25, rail: 3, brackets: [0, 16, 32, 48], length: 48, cells: 60 },
  { wood: 'sugar-maple', depth: 11.25, rail: 3, brackets: [8, 32], length: 32, cells: 44 },
  { wood: 'sugar-maple', depth: 8, rail: 1.5, brackets: [12, 36], length: 36, cells: 48 },
  { wood: 'western-hemlock', depth: 11.25, rail: 3, brackets: [12, 36], length: 36, cells: 48 },
  { wood: 'ponderosa-pine', depth: 11.25, rail: 1.5, brackets: [6, 30], length: 36, cells: 48 },
];
const named = (each: Case) =>
  [
    `${each.wood} ${each.depth} in, rail ${each.rail ?? '-'}, nosing ${each.nosing ?? '-'}, brackets at ${each.brackets.join(', ')} of ${each.length} in`,
    each,
  ] as const;

describe('the bare front edge of a board with a rail behind, over several brackets and past the last', () => {
  it.each(railed.map(named))('%s: a hand anywhere on it', (_, each) => {
    const ratio = perPound(each) / mostAnywhere(each);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.5);
  });

  it.each(railed.slice(0, 3).map(named))('%s: a hand beside the inner bracket, over it', (_, each) => {
    const at = byHand(each);
    const exact = Math.max(...[3, 5, 7, 10].map((off) => at(24 - off).over(24)));
    const ratio = perPound(each, [line('600 lbf/ft')]) / exact;
    expect(ratio).toBeGreaterThan(0.97);
    expect(ratio).toBeLessThan(1.6);
  });
});

/*
 * A nosing as strong as the board is bent more than the board beside it, and judged so. Of a stronger wood it is not: what bends
 * the board is what counts. On what stands out further than the board is deep, with a nosing of 4 in, the check has 0.8
 * of the truth.
 */
const locust = ['black-locust', 2.05 / 1.29] as const;
const nosed: readonly Case[] = [
  {
    wood: 'ponderosa-pine',
    depth: 11.25,
    nosing: 3,
    brackets: [12, 36],
    length: 36,
    cells: 48,
    strips: locust,
  },
  {
    wood: 'ponderosa-pine',
    depth: 11.25,
    rail: 3,
    nosing: 3,
    brackets: [12, 36],
    length: 36,
    cells: 48,
    strips: locust,
  },
  { wood: 'ponderosa-pine', depth: 18, nosing: 3, brackets: [12, 36], length: 36, cells: 48, strips: locust },
  {
    wood: 'ponderosa-pine',
    depth: 8,
    rail: 3,
    nosing: 3,
    brackets: [6, 30],
    length: 30,
    cells: 40,
    strips: locust,
  },
  {
    wood: 'ponderosa-pine',
    depth: 11.25,
    rail: 3,
    nosing: 3,
    brackets: [0, 24, 48],
    length: 48,
    cells: 64,
    strips: locust,
  },
];

describe('the board beside a tall nosing of a stronger wood', () => {
  it.each(nosed.map(named))('%s: a hand anywhere on its edge', (_, each) => {
    const ratio = perPound(each) / mostAnywhere(each);
    expect(ratio).toBeGreaterThan(0.97);
    expect(ratio).toBeLessThan(1.6);
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import type { BracketShelfInput } from '../../shared/check-document/index.ts';
import { judge, line, psi, shelf, type Load } from '../calc/elements/documents.ts';
import { finiteStrip, type Plate, type StripLoad } from './finite-strip.ts';
import { levyMoments } from './levy-plate.ts';

/*
 * Boards of layers, and with strips along their edges, bent by what stands beside an edge or on a spot: against Levy's plate
 * (levy-plate.ts) and thin orthotropic plates that meet along lines (finite-strip.ts). Wood Handbook FPL-GTR-282 (2021), Tables
 * 5-1, 5-2 and 5-3b (memory): E_T/E_L, the lesser of G_LR/E_L and G_LT/E_L, ν_LT, stiffness in Mpsi. A patch of 4 × 4 in lies
 * wholly on the board.
 */
const woods = {
  'sugar-maple': { E_T: 0.065, G: 0.063, nu: 0.476, E: 1.83 },
  'western-hemlock': { E_T: 0.031, G: 0.032, nu: 0.423, E: 1.63 },
  'ponderosa-pine': { E_T: 0.083, G: 0.115, nu: 0.4, E: 1.29 },
} as const;
type Wood = keyof typeof woods;
type BoardInput = BracketShelfInput['board'];
const [t, patch] = [0.75, 4];

/** A strip 3/4 in thick; its height. */
interface Built {
  readonly rail?: number;
  readonly nosing?: number;
}

function strips({ rail, nosing }: Built): Partial<BoardInput> {
  const strip = (height: number, flush: 'top' | 'bottom') => ({
    height: `${height} in`,
    thickness: `${t} in`,
    flush,
  });
  return {
    ...(rail === undefined ? {} : { rail: strip(rail, 'bottom') }),
    ...(nosing === undefined ? {} : { nosing: strip(nosing, 'top') }),
  };
}

/** Bending of the most bent place that any check finds for each pound, where much stands on the board already. */
function perPound(board: Partial<BoardInput>, length: number, loads: (pounds: number) => Load[]): number {
  const most = (pounds: number): number => {
    const document = shelf({
      board: { thickness: `${t} in`, ...board, length: `${length} in` },
      brackets: { positions: ['0 in', `${length} in`], arm: board.depth ?? '10 in' },
      loads: loads(pounds),
    });
    const found = check(document, { waysOut: false }).checks;
    return Math.max(
      ...found
        .filter(({ id }) => id === 'bending' || id === 'edge-strip')
        .map(({ demand }) => demand?.value ?? NaN),
    );
  };
  return (most(3000) - most(2000)) / 1000 / psi;
}
const hand = (pounds: number): Load[] => [
  { kind: 'roaming', amount: `${pounds} lbf`, duration: 'seven-days' },
];
const thing = (at: number, y: number) => (pounds: number) => [
  {
    ...{ kind: 'point', amount: `${pounds} lbf`, at: `${at} in`, eccentricity: `${y.toFixed(3)} in` },
    ...{ duration: 'permanent', arrangement: 'fixed' },
  } as Load,
];

/**
 * The most bent place by finite strips for each pound, of the board and at the far edges of its strips.
 *
 * @param y middle of a patch from the wall; null of a line of load along the front edge
 */
function byStrips(
  wood: Wood,
  length: number,
  depth: number,
  built: Built,
  y: number | null,
): { readonly board: number; readonly all: number } {
  const { rail = 0, nosing = 0 } = built;
  const [y0, y1] = [rail ? t / 2 : 0, depth + (rail ? t : 0) + (nosing ? t / 2 : 0)];
  const middle = Math.min(Math.max(y ?? y1, y0 + patch / 2), y1 - patch / 2);
  const stops = [y0, middle - patch / 2, middle + patch / 2, y1];
  const flat = stops.slice(1).flatMap((to, i): Plate[] => {
    const from = stops[i] ?? 0;
    if (to - from < 1e-6) return [];
    return [{ from: [from, 0], to: [to, 0], thickness: t, strips: i === 1 ? 8 : Math.ceil(to - from) }];
  });
  const upright = [
    [y0, rail, 1],
    [y1, nosing, -1],
  ] as const;
  const plates = upright.flatMap(([at, height, sense]): Plate[] =>
    height === 0
      ? []
      : [
          { from: [at, 0], to: [at, sense * (height - t / 2)], thickness: t, strips: 4 },
          { from: [at, 0], to: [at, (-sense * t) / 2], thickness: t, strips: 1 },
        ],
  );
  const loads =
    y === null
      ? [{ at: [y1, 0] as const, perLength: 1 / length }]
      : Array.from({ length: 9 }, (_, i): StripLoad => ({
          at: [middle - patch / 2 + (patch * i) / 8, 0],
          ...{ point: i === 0 || i === 8 ? 1 / 16 : 1 / 8, patch },
        }));
  const { E_T, G, nu } = woods[wood];
  const pine = { along: 1, across: E_T, shear: G, poisson: nu };
  const found = finiteStrip([...flat, ...plates], length, loads, pine, 61);
  const lines = flat.flatMap(({ from, to, strips: n }) =>
    Array.from({ length: n + 1 }, (_, i) => from[0] + ((to[0] - from[0]) * i) / n),
  );
  const board = Math.max(...lines.map((at) => found.face(at, 0)));
  const tips = upright
    .filter(([, height]) => height > 0)
    .map(([at, height, sense]) => Math.abs(found.stress(at, sense * (height - t / 2))));
  return { board, all: Math.max(board, ...tips) };
}

const sizes = [16, 24, 48].flatMap((length) => [8, 11.25].map((depth) => [length, depth] as const));
const all = (Object.keys(woods) as Wood[]).flatMap((wood) => sizes.map((size) => [wood, ...size] as const));
const inches = (depth: number): string => `${depth} in`;

describe('finite strips', () => {
  it.each(all)('are Levy’s plate where the board is plain: %s, %d × %d in', (wood, length, depth) => {
    const { E_T, G, nu } = woods[wood];
    const whole = 1 - nu ** 2 * E_T;
    const plate = { length, depth, Dx: 1 / whole, Dy: E_T / whole, D1: (nu * E_T) / whole, Dxy: G };
    const { m } = levyMoments(plate, { along: patch, from: depth - patch, to: depth });
    const exact = (6 * Math.max(...m)) / t ** 2;
    expect(Math.abs(byStrips(wood, length, depth, {}, depth).board / exact - 1)).toBeLessThan(0.006);
  });
});

describe('the bare front edge of a board with a rail at the back', () => {
  const rails = [1.5, 3].flatMap((rail) => all.map((board) => [...board, rail] as const));

  it.each(rails)('%s, %d × %d in, rail %d in: a hand', (wood, length, depth, rail) => {
    const { board } = byStrips(wood, length, depth, { rail }, depth + t);
    const found = perPound({ material: wood, depth: inches(depth), ...strips({ rail }) }, length, hand);
    expect(found / board).toBeGreaterThan(1);
    // The plate by itself is up to 1.35 over, and a low rail in a long bay is bent more than the board.
    expect(found / board).toBeLessThan(1.55);
  });

  it.each(rails)('%s, %d × %d in, rail %d in: a line of load along it', (wood, length, depth, rail) => {
    const { all: exact } = byStrips(wood, length, depth, { rail }, null);
    const along = (pounds: number): Load[] => [
      line(`${(12 * pounds) / length} lbf/ft`, { eccentricity: `${depth + t} in` }),
    ];
    const found = perPound({ material: wood, depth: inches(depth), ...strips({ rail }) }, length, along);
    expect(found / exact).toBeGreaterThan(0.97);
    // A low rail in a long bay is bent more than the board there, and judged so by the check of bending.
    expect(found / exact).toBeLessThan(1.45);
  });
});

describe('a thing that stands somewhere on a board with strips', () => {
  const boards = [
    ['sugar-maple', 24, 11.25],
    ['western-hemlock', 24, 11.25],
    ['ponderosa-pine', 36, 18],
  ] as const;
  const built: readonly Built[] = [
    { rail: 3 },
    { nosing: 1.5 },
    { rail: 3, nosing: 1.5 },
    { rail: 3, nosing: 3 },
  ];
  const places = boards.flatMap((board) =>
    built.flatMap((each) => [0.2, 0.35, 0.65, 0.9].map((share) => [...board, share, each] as const)),
  );

  it.each(places)('%s, %d × %d in, its middle at %d of the depth, %o', (wood, length, depth, share, each) => {
    const y = share * (depth + (each.rail ? t : 0) + (each.nosing ? t : 0));
    const exact = byStrips(wood, length, depth, each, y).all;
    const board = { material: wood, depth: inches(depth), ...strips(each) };
    const found = perPound(board, length, thing(length / 2, y));
    expect(found / exact).toBeGreaterThan(0.97);
    expect(found / exact).toBeLessThan(1.65);
  });
});

describe('a board of layers', () => {
  /** Layers from the top down, glued or sliding: stress for each pound of a hand, by Levy's plate of all layers. */
  const byLevy = (
    layers: readonly (readonly [Wood, number])[],
    glued: boolean,
    [length, depth]: readonly [number, number],
  ): number[] => {
    let z = layers.reduce((sum, [, thick]) => sum + thick, 0);
    const placed = layers.map(([wood, thick]) => ({ ...woods[wood], thick, z: (z -= thick) + thick / 2 }));
    /** Σ S (t³ / 12 + t z²) about the axis of that stiffness. */
    const sum = (stiffness: (layer: (typeof placed)[number]) => number) => {
      const total = (of: (layer: (typeof placed)[number]) => number): number =>
        placed.reduce((all, layer) => all + stiffness(layer) * of(layer), 0);
      const axis = total((layer) => layer.thick * layer.z) / total((layer) => layer.thick);
      const D = total((layer) => layer.thick ** 3 / 12 + (glued ? layer.thick * (layer.z - axis) ** 2 : 0));
      return { axis, D };
    };
    const whole = ({ nu, E_T }: (typeof placed)[number]): number => 1 - nu ** 2 * E_T;
    const along = sum((layer) => layer.E / whole(layer));
    const Dy = sum((layer) => (layer.E * layer.E_T) / whole(layer)).D;
    const D1 = sum((layer) => (layer.nu * layer.E * layer.E_T) / whole(layer)).D;
    const Dxy = sum((layer) => layer.E * layer.G).D;
    const load = { along: patch, from: depth - patch, to: depth };
    const m = Math.max(...levyMoments({ length, depth, Dx: along.D, Dy, D1, Dxy }, load).m);
    return placed.map(({ E, thick, z: at }) => {
      const lever = glued ? Math.abs(at - along.axis) + thick / 2 : thick / 2;
      return (m * E * lever) / along.D;
    });
  };
  const boardOf = (layers: readonly (readonly [Wood, number])[], glued: boolean, depth: number) => ({
    depth: inches(depth),
    layers: layers.map(([material, thickness]) => ({
      material,
      thickness: `${thickness} in`,
      ...{ basis: 'clear-wood' as const, appearance: 'small-knots' as const },
    })),
    bond: glued ? ('structural' as const) : ('none' as const),
  });
  const cases = [
    [
      'two alike',
      [
        ['sugar-maple', 0.375],
        ['sugar-maple', 0.375],
      ],
    ],
    [
      'hard on soft',
      [
        ['sugar-maple', 0.25],
        ['ponderosa-pine', 0.5],
      ],
    ],
    [
      'soft between hard',
      [
        ['sugar-maple', 0.25],
        ['ponderosa-pine', 0.25],
        ['sugar-maple', 0.25],
      ],
    ],
    [
      'soft in twist on stiff',
      [
        ['western-hemlock', 0.375],
        ['ponderosa-pine', 0.375],
      ],
    ],
  ] as const satisfies readonly (readonly [string, readonly (readonly [Wood, number])[]])[];
  const layered = cases.flatMap(([name, layers]) =>
    [true, false].flatMap((glued) =>
      sizes.map((size) => [name, glued ? 'glued' : 'sliding', ...size, layers] as const),
    ),
  );

  it.each(layered)('%s, %s, %d × %d in: a hand on the front edge', (_, bond, length, depth, layers) => {
    const exact = byLevy(layers, bond === 'glued', [length, depth]);
    const document = (pounds: number) =>
      shelf({
        board: { ...boardOf(layers, bond === 'glued', depth), length: inches(length), thickness: inches(t) },
        brackets: { positions: ['0 in', inches(length)], arm: inches(depth) },
        loads: hand(pounds),
      });
    /** The layer that bears least of it is judged: which one, the check says. */
    const found = (pounds: number) => {
      const { checks } = check(document(pounds), { waysOut: false });
      const { title = '', demand } = checks.find(({ id }) => id === 'edge-strip') ?? {};
      return { layer: Number(/layer (\d)/.exec(title)?.[1]) - 1, stress: (demand?.value ?? NaN) / psi };
    };
    const [more, less] = [found(3000), found(2000)];
    expect(exact[more.layer]).toBeCloseTo(exact[less.layer] ?? NaN, 9);
    const ratio = (more.stress - less.stress) / 1000 / (exact[more.layer] ?? NaN);
    expect(ratio).toBeGreaterThan(1);
    // Western hemlock is the softest in twist: a plain board of it is judged as hard.
    expect(ratio).toBeLessThan(1.6);
  });

  it('glued of one wood is bent as one piece of it; with a rail behind no less, as they are taken to twist one by one', () => {
    const loads: Load[] = [...hand(50), line('20 lbf/ft')];
    const two = boardOf(cases[0][1], true, 10);
    const bent = (board: Partial<BoardInput>): number => judge(shelf({ board, loads }), 'edge-strip').demand;
    expect(bent(two) / bent({ depth: '10 in' })).toBeCloseTo(1, 6);
    const railed =
      bent({ ...two, ...strips({ rail: 3 }) }) / bent({ depth: '10 in', ...strips({ rail: 3 }) });
    expect(railed).toBeGreaterThan(0.999);
    expect(railed).toBeLessThan(1.45);
  });
});

describe('a strip no taller than the board', () => {
  it('is board: 9 in and a lipping of 1 in are bent as 10 in, front or back', () => {
    const lipping = { height: '3/4 in', thickness: '1 in', flush: 'bottom' } as const;
    const loads: Load[] = [...hand(60), line('20 lbf/ft')];
    const bent = (board: Partial<BoardInput>): number => judge(shelf({ board, loads }), 'edge-strip').demand;
    const whole = bent({ depth: '10 in' });
    expect(bent({ depth: '9 in', nosing: lipping }) / whole).toBeCloseTo(1, 6);
    expect(bent({ depth: '9 in', rail: lipping }) / whole).toBeCloseTo(1, 6);
  });
});

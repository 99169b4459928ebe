import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import type { CounterRunInput } from '../../shared/check-document/index.ts';
import { loosePlate, type Answer, type Feet, type Rail } from './loose-plate.ts';

/*
 * Counter runs against a plate of rectangles on springs and beams of their own (loose-plate.ts), somebody of 300 lbf on 4 × 4 in tried
 * at places of a grid that has nothing to do with those the check tries. Stiffness along and across and density: OSB/3 by EN
 * 12369-1, MDF by EN 622-5, plywood by the Architectural Woodwork Standards with a tenth across (memory). What the check
 * says it takes is taken here: ν 0.2, E / 16 for twisting, the give of what the panels lie on. Rails of sugar maple with small
 * knots: Wood Handbook FPL-GTR-282 (2021), Tables 5-1 and 5-3b (memory), 1.1 × 0.9 × 1.83 Mpsi and 0.063 of it in shear, 705 kg/m³.
 */
const [inch, poundForce, psf, g] = [0.0254, 4.4482216, 47.88026, 9.80665];
const [E_rail, G_rail, density] = [1.1 * 0.9 * 1.83e6 * 6894.757, 0.063, 705];
const panels = {
  'osb-3': { along: 4930e6, across: 1980e6, density: 633 },
  mdf: { along: 2100e6, across: 2100e6, density: 800 },
  plywood: { along: 6550e6, across: 655e6, density: 672 },
} as const;
type Panel = keyof typeof panels;

interface Case {
  readonly panel: Panel;
  readonly grain: 'along' | 'across';
  /** In inches, as all else. */
  readonly thick: number;
  readonly sheets?: number;
  readonly size: readonly [span: number, depth: number];
  readonly rails: 'none' | 'front' | 'back' | 'both';
  readonly rail?: readonly [thickness: number, height: number];
  readonly cells: readonly [number, number];
}

const cases: readonly Case[] = [
  { panel: 'plywood', grain: 'along', thick: 0.75, size: [24, 25], rails: 'none', cells: [32, 32] },
  { panel: 'osb-3', grain: 'across', thick: 0.75, size: [60, 12], rails: 'none', cells: [60, 16] },
  { panel: 'mdf', grain: 'along', thick: 0.75, size: [12, 40], rails: 'none', cells: [16, 48] },
  {
    panel: 'mdf',
    grain: 'along',
    thick: 0.75,
    size: [60, 12],
    rails: 'front',
    rail: [0.75, 3.5],
    cells: [60, 16],
  },
  {
    panel: 'osb-3',
    grain: 'across',
    thick: 0.75,
    size: [36, 24],
    rails: 'back',
    rail: [1.5, 3.5],
    cells: [42, 28],
  },
  {
    panel: 'osb-3',
    grain: 'across',
    thick: 0.75,
    size: [36, 8],
    rails: 'both',
    rail: [0.75, 1.5],
    cells: [60, 14],
  },
  {
    panel: 'osb-3',
    grain: 'across',
    thick: 0.75,
    size: [110, 12],
    rails: 'both',
    rail: [0.75, 5.5],
    cells: [100, 14],
  },
  {
    panel: 'osb-3',
    grain: 'along',
    thick: 0.75,
    size: [48, 25],
    rails: 'both',
    rail: [0.75, 2.5],
    cells: [56, 30],
  },
  {
    panel: 'plywood',
    grain: 'along',
    thick: 1.5,
    sheets: 2,
    size: [30, 25],
    rails: 'both',
    rail: [0.75, 3.5],
    cells: [32, 26],
  },
];

function documentOf({
  panel,
  grain,
  thick,
  sheets = 1,
  size: [span, depth],
  rails,
  rail,
}: Case): CounterRunInput {
  return {
    ...{ schema: 1, element: 'counter-run', rails, opening: `${span} in`, depth: `${depth} in` },
    substrate: { material: panel, thickness: `${thick} in`, grain, sheets },
    ...(rail && {
      rail: { thickness: `${rail[0]} in`, height: `${rail[1]} in`, material: 'sugar-maple', seat: '3/4 in' },
    }),
    loads: [
      { kind: 'area', amount: '10 psf' },
      { kind: 'person', amount: '300 lbf' },
    ],
  };
}

function plateOf({ panel, grain, thick, sheets = 1, size, rails, rail, cells }: Case) {
  const { along, across, density: heavy } = panels[panel];
  const sheet = (thick * inch) / sheets;
  const D = (E: number): number => (sheets * E * sheet ** 3) / 12 / (1 - 0.2 ** 2 * (across / along));
  const [x, y] = grain === 'along' ? [along, across] : [across, along];
  const [b, h] = (rail ?? [1, 1]).map((each) => each * inch) as [number, number];
  const railAt = (edge: Rail['edge']): Rail => ({
    ...{ edge, EI: (E_rail * b * h ** 3) / 12, GA: (5 / 6) * G_rail * E_rail * b * h },
    ...{ past: 0.375 * inch, weight: density * g * b * h },
  });
  return {
    ...{ span: size[0] * inch, depth: size[1] * inch, thickness: thick * inch, cells },
    D: { x: D(x), y: D(y), one: 0.2 * D(across), xy: (sheets * (along / 16) * sheet ** 3) / 12 },
    stiffness: (across * 0.75) / thick,
    rails: (['front', 'back'] as const).filter((edge) => rails === edge || rails === 'both').map(railAt),
    even: 10 * psf + heavy * g * thick * inch,
  };
}

interface Asked {
  readonly along: number;
  readonly across: number;
  readonly shear: number;
  readonly added: number;
  readonly between: number;
  readonly railMoment: number;
  readonly railEnd: number;
}

/** The most that is asked anywhere of a grid of places: from side to middle, which is all there is, and from back to front. */
function mostAsked(each: Case): Asked {
  const plate = plateOf(each);
  const { span, depth, thickness, rails } = plate;
  const solve = loosePlate(plate);
  const side = 4 * inch;
  const beside = side / 2 + thickness;
  const between = (from: number, to: number, n: number): number[] =>
    Array.from({ length: n + 1 }, (_, k) => from + ((to - from) * k) / n);
  const near = Math.min(span / 2, beside + 0.75 * depth);
  const xs = [...between(beside, near, 5), ...(near < span / 2 ? between(near, span / 2, 3).slice(1) : [])];
  const ys = [side / 2, ...between(beside, depth - beside, 4), depth - side / 2];
  const alike = rails.length !== 1;
  const places = xs.flatMap((x) => ys.filter((y) => !alike || y <= depth / 2 + 1e-9).map((y) => ({ x, y })));
  const calm = solve(null);
  const asked = places.map(({ x, y }): Asked => {
    const feet: Feet = { x, y, side, load: 300 * poundForce };
    const found = solve(feet);
    const clear = rails.flatMap(({ edge }, k) =>
      (edge === 'back' ? y : depth - y) < beside - 1e-9 ? [] : [found.onRail(k, side)],
    );
    return {
      ...{ along: found.along, across: found.across, shear: Math.max(found.onSides(side), ...clear) },
      added: most(found, (down, i, j) => down - (calm.down[i]?.[j] ?? NaN)),
      between: most(found, (down, i, j, line) => {
        const beyond = (of: readonly number[]) =>
          (of[0] ?? NaN) + (((of.at(-1) ?? NaN) - (of[0] ?? NaN)) * j) / (line.length - 1);
        const before = calm.down[i] ?? [];
        return Math.abs(down - beyond(line) - ((before[j] ?? NaN) - beyond(before)));
      }),
      railMoment: Math.max(0, ...found.rails.map(({ moment }) => moment)),
      railEnd: Math.max(0, ...found.rails.map(({ end }) => end)),
    };
  });
  const worst = (pick: keyof Asked): number => Math.max(...asked.map((one) => one[pick]));
  return {
    ...{ along: worst('along'), across: worst('across'), shear: worst('shear'), added: worst('added') },
    ...{ between: worst('between'), railMoment: worst('railMoment'), railEnd: worst('railEnd') },
  };
}

function most(
  { down }: Answer,
  value: (down: number, i: number, j: number, line: readonly number[]) => number,
): number {
  return Math.max(...down.flatMap((line, i) => line.map((each, j) => value(each, i, j, line))));
}

describe('the plate on springs itself', () => {
  it('is a strip where it is narrow: P L³ / 48 EI and 5 q L⁴ / 384 EI (AISC Manual, Table 3-23), a rail beside it P L³ / 48 EI + P L / 4 GA', () => {
    const [span, depth, load] = [0.8, 0.06, 100];
    const strip = {
      ...{ span, depth, thickness: 0.02, cells: [40, 4] as const, stiffness: 1e9, even: 500 },
      D: { x: 1000, y: 100, one: 0, xy: 50 },
    };
    const rail = { EI: 500, GA: 2e5, past: 0.01, weight: 0 };
    const feet: Feet = { x: span / 2, y: depth / 2, side: 0.04, load };
    const middle = (each: Answer): number => each.down[20]?.[2] ?? NaN;
    const even = (5 * 500 * span ** 4) / (384 * 1000);
    const bare = loosePlate({ ...strip, rails: [] });
    expect(middle(bare(null)) / even).toBeCloseTo(1, 2);
    expect(
      (middle(bare(feet)) - middle(bare(null))) / ((load * span ** 3) / (48 * 1000 * depth)),
    ).toBeCloseTo(1, 1);
    expect(bare(null).along / ((500 * span ** 2) / 8)).toBeCloseTo(1, 2);
    // So soft between two rails that they take all of it but what lies next to the sides.
    const soft = { ...strip, D: { x: 1, y: 1e4, one: 0, xy: 1 } };
    const both = loosePlate({
      ...soft,
      rails: (['front', 'back'] as const).map((edge) => ({ edge, ...rail })),
    });
    const [L, half] = [span + 2 * rail.past, load / 2];
    const alone = (half * L ** 3) / (48 * rail.EI) + (half * L) / (4 * rail.GA);
    const added = middle(both(feet)) - middle(both(null));
    expect(added / alone).toBeGreaterThan(0.97);
    expect(added / alone).toBeLessThan(1.03);
    const moments = [both(feet), both(null)].map(({ rails }) => rails[0]?.moment ?? NaN);
    expect(((moments[0] ?? NaN) - (moments[1] ?? NaN)) / ((half * L) / 4)).toBeGreaterThan(0.93);
    expect(((moments[0] ?? NaN) - (moments[1] ?? NaN)) / ((half * L) / 4)).toBeLessThan(1.0);
  });
});

describe('a counter run against plates, beams and springs of their own', () => {
  it.each(
    cases.map(
      (each) =>
        [`${each.panel} ${each.grain}, ${each.size.join(' × ')} in, rails ${each.rails}`, each] as const,
    ),
  )(
    '%s: what somebody asks of panels and rails anywhere',
    (_, each) => {
      const found = Object.fromEntries(
        check(documentOf(each)).checks.map(({ id, demand }) => [id, demand?.value ?? NaN]),
      );
      const asked = mostAsked(each);
      const [thick, sheets = 1] = [each.thick * inch, each.sheets];
      const [b, h] = (each.rail ?? [1, 1]).map((one) => one * inch) as [number, number];
      const [along, across] =
        each.grain === 'along' ? (['along', 'across'] as const) : (['across', 'along'] as const);
      /** Stress by hand: 6 m / t² of each sheet, 3 v / 2 t, 6 M / b h², 3 V / 2 b h. */
      const bent = (moment: number): number => (6 * moment * sheets) / thick ** 2;
      const ratios = [
        ['bending along the span', found[`bending-${along}`], bent(asked.along), 0.97, 1.12],
        ['bending across it', found[`bending-${across}`], bent(asked.across), 0.96, 1.12],
        ['shear', found['shear'], (1.5 * asked.shear) / thick, 0.96, 1.09],
        ['movement', found['deflection-live'], asked.added, 0.985, 1.015],
        ...(each.rail === undefined
          ? []
          : ([
              ['bending of a rail', found['rail-bending'], (6 * asked.railMoment) / (b * h ** 2), 0.98, 1.02],
              ['shear of a rail', found['rail-shear'], (1.5 * asked.railEnd) / (b * h), 0.97, 1.03],
            ] as const)),
        ...(each.rails === 'both'
          ? ([
              ['movement between the rails', found['between-rails-live'], asked.between, 0.98, 1.02],
            ] as const)
          : []),
      ] as const;
      for (const [name, ours, theirs, least, largest] of ratios) {
        expect((ours ?? NaN) / theirs, name).toBeGreaterThan(least);
        expect((ours ?? NaN) / theirs, name).toBeLessThan(largest);
      }
    },
    30_000,
  );
});

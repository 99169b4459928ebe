import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { bareCounter as bare, mapleWeight_lbf } from './counter-documents.ts';
import { inch, poundForce, psi } from './documents.ts';
import { errorPaths } from './error-paths.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { startChecks } from '../../../server/start-checks.ts';

const start: CounterOverhangInput = startChecks['counter-overhang'];
const outcome = (document: CounterOverhangInput, id: string) =>
  check(document).checks.find((each) => each.id === id);

/** Legs under the top, 34 in from its back edge. */
const legsAt = (places: readonly number[]): NonNullable<CounterOverhangInput['props']> =>
  places.map((at) => ({ kind: 'leg', at: `${at} in`, to: '34 in', allowable: '900 lbf' }));

describe('other builds of the top', () => {
  const { appearance: _, ...wood } = bare.top;
  const legs = legsAt([2, 36, 70]);
  const panel = (more: Partial<CounterOverhangInput['top']>): CounterOverhangInput => ({
    ...bare,
    top: { ...wood, build: 'panel', material: 'mdf', thickness: '1-1/2 in', sheets: 2, ...more },
    props: legs,
  });
  const moved = (document: CounterOverhangInput) => check(document).analysis.plate.tip?.movement.value ?? NaN;

  it('a plank bends as staves do', () => {
    const staves: CounterOverhangInput = { ...bare, props: legs };
    const plank: CounterOverhangInput = { ...staves, top: { ...bare.top, build: 'solid-plank' } };
    expect(moved(plank)).toBe(moved(staves));
  });

  it('two loose sheets move four times as far as the same glued, rails aside: 2 (t/2)³ to t³', () => {
    const ratio = moved(panel({})) / moved(panel({ bond: 'structural' }));
    expect(Math.abs(ratio / 4 - 1)).toBeLessThan(0.03);
  });

  it('a panel alike both ways does not care which way it lies', () => {
    const [along, across] = (['along', 'across'] as const).map((staves) =>
      panel({ staves, bond: 'structural' }),
    );
    if (along === undefined || across === undefined) throw new Error('two');
    expect(moved(along) / moved(across)).toBeCloseTo(1, 6);
    expect(check(along).analysis.plate.acrossGrain?.value).toBeCloseTo(
      check(across).analysis.plate.alongGrain?.value ?? NaN,
      0,
    );
  });

  it('a panel with nothing printed across it can not be vouched for', () => {
    expect(outcome(panel({ material: 'plywood' }), 'bending-across')?.outcome).toBe('cannot-say');
  });

  it('stone on a panel weighs what it weighs: 3/4 in of 2800 kg/m³ over 12 × 72 in, 6 in past the foot', () => {
    const stone = { kind: 'natural-stone' as const, thickness: '3/4 in' };
    const plain = check({ ...panel({}), props: [] }).analysis.tipOver.overturning.value;
    const covered = check({ ...panel({ finish: stone }), props: [] }).analysis.tipOver.overturning.value;
    const weight = 2800 * 9.80665 * 0.75 * 12 * 72 * inch ** 3;
    expect((covered - plain) / (weight * 6 * inch)).toBeCloseTo(1, 6);
  });

  it('and is kept as still as is asked under it: L/720 of twice the overhang (Dimension Stone Design Manual), L/360 under tile (ANSI A108.01)', () => {
    for (const [kind, n] of [
      ['natural-stone', 720],
      ['ceramic-tile', 360],
    ] as const) {
      const covered = panel({ finish: { kind, thickness: '3/8 in' } });
      for (const id of ['deflection-live', 'deflection-serving', 'deflection-long-term'])
        expect((outcome(covered, id)?.capacity?.value ?? NaN) / inch).toBeCloseTo(24 / n, 9);
    }
  });

  it('whatever the user asks of it besides: the stricter of both limits counts', () => {
    const covered = panel({ finish: { kind: 'natural-stone', thickness: '3/8 in' } });
    for (const [limits, n] of [
      [{ live: '1/4 in', longTerm: 'L/240' }, 720],
      [{ live: 'none', longTerm: 'none' }, 720],
      [{ live: 'L/1000', longTerm: 'L/1000' }, 1000],
    ] as const)
      for (const id of ['deflection-live', 'deflection-long-term'])
        expect((outcome({ ...covered, limits }, id)?.capacity?.value ?? NaN) / inch).toBeCloseTo(24 / n, 9);
  });

  it('and under everything together: its weight too, which moves it twice as far over the years (NDS 3.5.2, K_cr 2)', () => {
    const covered: CounterOverhangInput = {
      ...panel({
        ...{ material: 'birch-plywood', thickness: '1-7/8 in' },
        finish: { kind: 'natural-stone', thickness: '3/4 in' },
      }),
      ...{ loads: [{ kind: 'area', amount: '0 psf' }], limits: { live: '1 in' }, props: [] },
    };
    const together = outcome(covered, 'deflection-together');
    const moved = together?.demand?.value ?? NaN;
    expect((outcome(covered, 'deflection-long-term')?.demand?.value ?? NaN) / moved).toBeCloseTo(2, 3);
    expect((together?.capacity?.value ?? NaN) / inch).toBeCloseTo(24 / 720, 9);
    expect(outcome({ ...covered, top: panel({}).top }, 'deflection-together')).toBeUndefined();
  });

  it('tells what only a panel has, and what a panel has not', () => {
    expect(errorPaths({ ...bare, top: { ...bare.top, sheets: 2, bond: 'none' } })).toEqual([
      '/top/sheets',
      '/top/bond',
    ]);
    expect(errorPaths(panel({ appearance: 'knotty' }))).toEqual(['/top/appearance']);
    expect(errorPaths(panel({ sheets: 1.5 }))).toEqual(['/top/sheets']);
    expect(errorPaths(panel({ material: 'sugar-mapel' }))).toEqual(['/top/material']);
    expect(errorPaths(panel({ material: 'birch-plywood', sheets: 1 }))).toEqual(['/top/thickness']);
  });
});

describe('a counter overhang by hand', () => {
  it('tips about its foot under two people: 2 × 250 lbf, 10 in out, against 0.6 of its dead load', () => {
    const held = outcome(bare, 'tip-over');
    const served = (10 / 144) * 72 * 12 * 6;
    const weight = mapleWeight_lbf(72, 36, 1.5);
    const over = 5000 + served + (weight / 3) * 6;
    expect(held?.outcome).toBe('does-not-hold');
    expect((held?.demand?.value ?? 0) / (poundForce * inch) / over).toBeCloseTo(1, 3);
    expect(
      (held?.capacity?.value ?? 0) / (poundForce * inch) / (0.6 * (160 * 12 + (weight * 2 * 12) / 3)),
    ).toBeCloseTo(1, 3);
  });

  it('is not held over its back by fasteners along its back', () => {
    // By hand, lbf and in: the pivot is the line of the fasteners, so that the weight behind and above it is all there is.
    const top = mapleWeight_lbf(48, 72, 1.5);
    const document: CounterOverhangInput = {
      ...bare,
      top: { ...bare.top, depth: '48 in' },
      base: {
        ...{ from: '0 in', to: '72 in', back: '12 in', front: '36 in', foot: '36 in', height: '34 in' },
        ...{ weight: '60 lbf', weightAt: '24 in', heldToFloor: true, anchorPull: '600 lbf' },
      },
      loads: [{ kind: 'person', amount: '250 lbf', patch: '4 in' }],
    };
    const rest = 0.6 * (60 * 12 + top * 0.75 * 18);
    const over = 500 * 10 + top * 0.25 * 6;
    const found = check(document).checks.find(({ id }) => id === 'tip-over');
    expect(found?.where).toContain('back side');
    expect(found?.ratio).toBeCloseTo(over / rest, 2);
    expect(found?.note).toContain('do not hold it on this side');
  });

  it('refuses a foot in front of its face, a bracket where there is no base, a screw that comes out of the top', () => {
    expect(errorPaths({ ...bare, base: { ...bare.base, foot: '30 in' } })).toEqual(['/base/foot']);
    const short = { ...bare.base, from: '16 in', to: '56 in' };
    const bracket = { kind: 'bracket' as const, at: '4 in', to: '34 in', allowable: '300 lbf' };
    expect(errorPaths({ ...bare, base: short, props: [bracket] })).toEqual(['/props/0/at']);
    const screws = { length: '4 in', at: [['20 in', '2 in'] as [string, string]] };
    expect(errorPaths({ ...bare, screws })).toEqual(['/screws/length']);
  });

  it('moves no more for being drawn in by a reveal of half an inch', () => {
    const live = (from: string, to: string): number => {
      const document: CounterOverhangInput = {
        ...start,
        base: { ...start.base, from, to, panels: [from, to] },
        screws: {
          ...start.screws,
          at: [
            ['3 in', '2 in'],
            ['36 in', '2 in'],
            ['69 in', '2 in'],
          ],
          length: '1-3/4 in',
        },
        limits: { live: 'L/60' },
      };
      return check(document).checks.find(({ id }) => id === 'deflection-live')?.ratio ?? NaN;
    };
    expect(live('1/2 in', '71-1/2 in') / live('0 in', '72 in')).toBeLessThan(1.2);
  });

  it('tips about the side where its fasteners into the floor help least, though another is asked more of without them', () => {
    // By hand, lbf and in: a top of 112 x 37 x 1-1/2, its base 72 x 24, two people at the right end or at the stool side.
    const top = mapleWeight_lbf(112, 37, 1.5);
    const right = {
      over: 250 * (38 + 14) + ((top * 40) / 112) * 20,
      rest: 0.6 * (300 * 36 + ((top * 72) / 112) * 36),
    };
    const stool = {
      over: 250 * (11 + 11) + ((top * 13) / 37) * 6.5,
      rest: 0.6 * (300 * 16 + ((top * 24) / 37) * 12),
    };
    expect(right.over / right.rest).toBeGreaterThan(stool.over / stool.rest);
    expect(right.over / (right.rest + 200 * 24)).toBeLessThan(stool.over / (stool.rest + 80 * 24));
    const document: CounterOverhangInput = {
      ...bare,
      top: { ...bare.top, length: '112 in', depth: '37 in' },
      base: {
        ...{ from: '0 in', to: '72 in', back: '0 in', front: '24 in', foot: '24 in', height: '34 in' },
        ...{
          weight: '300 lbf',
          weightAt: '8 in',
          heldToFloor: true,
          anchorPull: '80 lbf',
          anchorPullFront: '120 lbf',
        },
      },
      loads: [{ kind: 'person', amount: '250 lbf', patch: '4 in' }],
    };
    const found = check(document).checks.find(({ id }) => id === 'tip-over');
    expect(found?.outcome).toBe('does-not-hold');
    expect(found?.ratio).toBeCloseTo(stool.over / (stool.rest + 80 * 24), 3);
  });

  it('is held over an end by fasteners that pull by their distance from it: T L / 3', () => {
    // By hand, lbf and in: a base of 72 x 24, two people 38 and 14 in past its right end, 40 in of the top with them.
    const top = mapleWeight_lbf(112, 24, 1.5);
    const over = 250 * (38 + 14) + ((top * 40) / 112) * 20;
    const rest = 0.6 * (300 * 36 + ((top * 72) / 112) * 36);
    // 13 fasteners at the middles of 13 equal lengths, each good for 200 / 13 lbf; the farthest pulls in full.
    const places = Array.from({ length: 13 }, (_, k) => (72 * (k + 0.5)) / 13);
    const pulls = (200 / 13) * (places.reduce((sum, x) => sum + x ** 2, 0) / Math.max(...places));
    const document: CounterOverhangInput = {
      ...bare,
      top: { ...bare.top, length: '112 in', depth: '24 in' },
      base: {
        ...bare.base,
        ...{ weight: '300 lbf', weightAt: '12 in', heldToFloor: true },
        ...{ anchorPull: '80 lbf', anchorPullFront: '120 lbf' },
      },
      loads: [{ kind: 'person', amount: '250 lbf', patch: '4 in' }],
    };
    const found = outcome(document, 'tip-over');
    expect(found?.where).toContain('right side');
    expect(found?.ratio).toBeCloseTo(over / (rest + 200 * 24), 3);
    expect(found?.ratio).toBeGreaterThan(over / (rest + pulls));
    expect(pulls / (200 * 24)).toBeLessThan(1.05);
    expect(found?.note).toContain('a third of its length');
  });

  it('turns about its own feet under a push, with legs under the top and without', () => {
    // By hand, lbf and in: 100 lbf at 34-1/2 + 2 in; 350 lbf 6 in from the feet at 24 in; a third of the top outside them.
    const weight = mapleWeight_lbf(72, 36, 2);
    const over = 100 * 36.5 + (weight / 3) * 6;
    const rest = 0.6 * (350 * 6 + ((weight * 2) / 3) * 12);
    const document: CounterOverhangInput = {
      ...bare,
      top: { ...bare.top, thickness: '2 in' },
      base: { ...bare.base, weight: '350 lbf', weightAt: '18 in' },
    };
    for (const at of [[], [1, 24, 48, 71]]) {
      const found = outcome({ ...document, props: legsAt(at) }, 'tip-over-push');
      expect(found?.outcome).toBe('does-not-hold');
      expect(found?.ratio).toBeCloseTo(over / rest, 3);
      // With legs, the top could bear on its back and on them alone: 16 of 34 of it, 24 in from the feet. No less is asked.
      expect(over / rest).toBeGreaterThan((100 * 36.5) / (0.6 * (350 * 6 + ((weight * 16) / 34) * 24)));
    }
  });

  it('is turned by the people whom legs do not carry: those past the line from the last leg to the corner of its base', () => {
    // Two people at (70, 34) and (46, 34) in, both 10 in from the feet at 24 in; a third of the top 6 in from them.
    const document: CounterOverhangInput = {
      ...bare,
      base: { ...bare.base, push: '0 lbf' },
      loads: [{ kind: 'person', amount: '250 lbf' }],
    };
    const dead = (mapleWeight_lbf(72, 36, 1.5) / 3) * 6;
    const over = (at: readonly number[]) =>
      (outcome({ ...document, props: legsAt(at) }, 'tip-over')?.demand?.value ?? NaN) / (poundForce * inch);
    expect(over([4, 8]) / (5000 + dead)).toBeCloseTo(1, 3);
    expect(over([4, 8, 64, 68]) / (2500 + dead)).toBeCloseTo(1, 3);
    expect(over([2, 70]) / dead).toBeCloseTo(1, 3);
  });

  it('is turned by somebody between its face and the legs as if on the rail past a recess: 3 in', () => {
    const document: CounterOverhangInput = {
      ...bare,
      base: { ...bare.base, foot: '21 in' },
      loads: [{ kind: 'person', amount: '250 lbf' }],
      props: legsAt([2, 70]),
    };
    const over = 500 * 3 + ((mapleWeight_lbf(72, 36, 1.5) * 15) / 36) * 7.5;
    expect((outcome(document, 'tip-over')?.demand?.value ?? NaN) / (poundForce * inch) / over).toBeCloseTo(
      1,
      3,
    );
  });

  it('tips off its base without screws, and says so instead of a stress', () => {
    expect(outcome(bare, 'hold-down')?.outcome).toBe('does-not-hold');
    expect(outcome(bare, 'bending-across')?.outcome).toBe('cannot-say');
    expect(check(bare).analysis.plate.acrossGrain).toBeNull();
  });

  it('takes black maple for sugar maple across the grain: 670 psi, 5 % exclusion, over 2.3, seven days', () => {
    const screws = {
      length: '2 in',
      through: '3/4 in',
      at: [
        ['3 in', '1 in'],
        ['24 in', '1 in'],
        ['48 in', '1 in'],
        ['69 in', '1 in'],
      ],
    } satisfies CounterOverhangInput['screws'];
    const across = outcome({ ...bare, screws }, 'bending-across');
    expect((across?.capacity?.value ?? 0) / 6894.757293168).toBeCloseTo(
      (670 * (1 - 1.645 * 0.25) * 1.25) / 2.3,
      0,
    );
    expect(across?.outcome).toBe('does-not-hold');
    expect(across?.note).toContain('Black maple stands in');
  });
});

describe('a top that stands out at the back', () => {
  it('has two people there too, as its mirror image has on the stool side', () => {
    const at = (y: string) =>
      ['3 in', '15 in', '27 in', '45 in', '57 in', '69 in'].map((x): [string, string] => [x, y]);
    const facing = (back: string, front: string, screwLine: string): CounterOverhangInput => ({
      ...bare,
      top: { ...bare.top, depth: '30 in', thickness: '2-1/2 in' },
      base: { ...bare.base, back, front, foot: front, panels: ['0 in', '72 in'] },
      screws: { fastener: 'wood-screw-12', length: '2-1/4 in', through: '3/4 in', at: at(screwLine) },
    });
    const [stool, back] = [facing('0 in', '22 in', '2 in'), facing('8 in', '30 in', '28 in')].map(
      (document) => outcome(document, 'bending-across'),
    );
    expect(stool?.where).toContain('two people');
    expect((back?.ratio ?? NaN) / (stool?.ratio ?? NaN)).toBeGreaterThan(0.98);
    expect((back?.ratio ?? NaN) / (stool?.ratio ?? NaN)).toBeLessThan(1.02);
  });
});

describe('a flat bar on edge under the top', () => {
  it('may turn over: AISC 360 F11.2(c), from memory, 1.9 E / (L d / t²) / 1.67 for 1/5 × 3 in, 32 in long', () => {
    const bar = { kind: 'flat-bar', from: '2 in', to: '34 in', metal: 'a36' } as const;
    const capacity = (width: string, thickness: string): number => {
      const props = ['10 in', '36 in', '62 in'].map((at) => ({ ...bar, at, width, thickness }));
      return (outcome({ ...start, props }, 'prop')?.capacity?.value ?? NaN) / psi;
    };
    expect(capacity('0.2 in', '3 in')).toBeCloseTo((1.9 * 29e6) / ((32 * 3) / 0.2 ** 2) / 1.67, 1);
    expect(capacity('3 in', '1/2 in')).toBeCloseTo(0.6 * 36e3, 6);
  });

  it('carries no more than all that stands out, about the rail, and most of it where it is the stiffer by far', () => {
    // By hand, lbf and in: two people at 10 in, 10 psf and a third of the top at 6 in. Steel 1/4 x 3 in: S = b d² / 6.
    const over = 500 * 10 + ((10 / 144) * 72 * 12 + mapleWeight_lbf(72, 36, 1.5) / 3) * 6;
    const props = ['10 in', '36 in', '62 in'].map((at) => ({
      ...({ kind: 'flat-bar', at, from: '4 in', to: '34 in' } as const),
      ...{ width: '1/4 in', thickness: '3 in' },
    }));
    const moment =
      ((outcome({ ...start, props }, 'prop')?.demand?.value ?? NaN) / psi) * ((0.25 * 3 ** 2) / 6);
    expect(moment / over).toBeGreaterThan(0.4);
    expect(moment / over).toBeLessThan(1);
  });
});

describe('bad input', () => {
  const { top, base } = bare;
  it.each([
    ['base outside the top', { ...bare, base: { ...base, front: '40 in' } }, '/base/front'],
    [
      'a prop beyond the edge',
      { ...bare, props: [{ kind: 'leg', at: '10 in', to: '40 in' }] },
      '/props/0/to',
    ],
    [
      'a bar past the end of the base, where no rail carries it',
      {
        ...bare,
        base: { ...base, from: '12 in' },
        props: [
          {
            ...{ kind: 'flat-bar', at: '6 in', from: '12 in', to: '34 in' },
            ...{ width: '2 in', thickness: '1/2 in' },
          },
        ],
      },
      '/props/0/at',
    ],
    ['a screw in the air', { ...bare, screws: { length: '2 in', at: [['10 in', '30 in']] } }, '/screws/at/0'],
    ['no thickness', { ...bare, top: { ...top, thickness: '0 in' } }, '/top/thickness'],
    ['a top of 10 m', { ...bare, top: { ...top, length: '10 m' } }, '/top/length'],
    ['a top 1 mm thick', { ...bare, top: { ...top, thickness: '1 mm' } }, '/top/thickness'],
    ['no base', { ...bare, base: undefined }, '/base'],
    ['an unknown wood', { ...bare, top: { ...top, material: 'marzipan' } }, '/top/material'],
  ])('%s', (_what, document, path) => {
    expect(errorPaths(document)).toContain(path);
  });
});

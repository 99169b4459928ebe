import { describe, expect, it } from 'vitest';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { counter, mapleWeight_lbf } from './counter-documents.ts';
import { inch, judge, poundForce } from './documents.ts';
import { maple } from './maple.ts';

/*
 * A top of 72 x 36 in on a base 24 in deep, three fasteners along its back at 2 in, somebody of 250 lbf in the middle of the
 * stool edge: the fasteners pull at 22 in from the face of the base, 24 in of the top lie behind it. By hand, lbf and in.
 */
type Screws = NonNullable<CounterOverhangInput['screws']>;
const [fasteners, lever] = [3, 22];
const weight = 0.6 * ((mapleWeight_lbf(72, 36, 1.5) * 24) / 36) * 12;

/** What one fastener adds to what keeps the top on its base, lbf, in a dry or in a wet room. */
function pull_lbf(screws: Omit<Screws, 'at'>, moisture: 'dry' | 'wet'): number {
  const { capacity, where } = judge(
    counter({
      conditions: { moisture },
      screws: {
        ...screws,
        at: [
          ['12 in', '2 in'],
          ['36 in', '2 in'],
          ['60 in', '2 in'],
        ],
      },
      loads: [{ kind: 'person', amount: '250 lbf', at: '36 in', duration: 'seven-days' }],
    }),
    'hold-down',
  );
  expect(where).toContain('a line along the top');
  return (capacity / (poundForce * inch) - weight) / (fasteners * lever);
}

/** 3/4 in in the top, C_D 1.25 for seven days (NDS 2018 Table 2.3.2). */
const length = 0.75 * 1.25;
const G = maple.gravity;

describe('fasteners up into the top in a wet room', () => {
  it.each([
    // NDS 2018 12.2-3: 1380 G^2.5 D, an 8d common nail of 0.131 in (Table L4); Table 11.3.3: withdrawal of nails 0.25.
    ['a nail', 'common-nail-8d', 1380 * G ** 2.5 * 0.131, 0.25],
    // NDS 2018 12.2-2: 2850 G² D, a #6 wood screw of 0.138 in (Table L3); Table 11.3.3: withdrawal of screws 0.7.
    ['a wood screw', 'wood-screw-6', 2850 * G ** 2 * 0.138, 0.7],
  ])('%s holds by its own factor of Table 11.3.3', (_, fastener, perInch, wet) => {
    const screws = { fastener, length: '1-1/2 in', through: '3/4 in', cleat: 'sugar-maple' };
    const dry = pull_lbf(screws, 'dry');
    expect(dry / (perInch * length)).toBeCloseTo(1, 3);
    expect(pull_lbf(screws, 'wet') / dry).toBeCloseTo(wet, 3);
  });

  it('a lag screw by that of screws, its tip of 5/32 in left out', () => {
    // NDS 2018 12.2-1: 1800 G^1.5 D^0.75; Table L2: a 1/4 in lag screw 1-1/2 in long.
    const screws = { fastener: 'lag-screw-1/4', length: '1-1/2 in', through: '3/4 in', cleat: 'sugar-maple' };
    const dry = pull_lbf(screws, 'dry');
    expect(dry / (1800 * G ** 1.5 * 0.25 ** 0.75 * (0.75 - 5 / 32) * 1.25)).toBeCloseTo(1, 3);
    expect(pull_lbf(screws, 'wet') / dry).toBeCloseTo(0.7, 3);
  });
});

describe('screws that hold what is served for good', () => {
  /* 30 psf on 20 in past a base 20 in deep, two screws 18 in behind its face, their heads in maple rails of 3/4 in. */
  const served = { kind: 'area', amount: '30 psf', duration: 'permanent' } as const;
  const top = { staves: 'across', depth: '40 in', thickness: '2-1/2 in' } as const;
  const held = (...people: NonNullable<CounterOverhangInput['loads']>) =>
    judge(
      counter({
        top,
        base: { front: '20 in', foot: '20 in', weightAt: '10 in', weight: '2000 lbf' },
        screws: {
          ...{ fastener: 'wood-screw-8', length: '1-1/2 in', through: '3/4 in', cleat: 'sugar-maple' },
          at: [3, 69].map((x): [string, string] => [`${x} in`, '2 in']),
        },
        loads: [served, ...people],
      }),
      'hold-down',
    );
  // By hand, lbf and in: NDS 2018 12.2-2, 0.164 in (Table L3) and 3/4 in of thread; C_D 0.9 (Table 2.3.2) whoever else comes.
  const half = mapleWeight_lbf(72, 40, 2.5) / 2;
  const over = half * 10 + (30 / 144) * 72 * 20 * 10;
  const keep = 0.6 * half * 10 + 2 * 18 * 2850 * G ** 2 * 0.164 * 0.75 * 0.9;
  const person = { kind: 'person', duration: 'ten-minutes' } as const;

  it.each([
    ['nobody', []],
    ['somebody of no weight', [{ ...person, amount: '0 lbf' }]],
    ['somebody light for ten minutes', [{ ...person, amount: '20 lbf' }]],
  ])('are judged at the factor of what is served with %s at the edge', (_, people) => {
    const { ratio } = held(...people);
    expect(ratio).toBeCloseTo(over / keep, 3);
  });

  it('are judged with somebody heavy at the factor of those: C_D 1.6', () => {
    const { ratio } = held({ ...person, amount: '250 lbf' });
    const more = 2 * 18 * 2850 * G ** 2 * 0.164 * 0.75 * (1.6 - 0.9);
    // Two people, each on a square of 4 in flush with the edge.
    expect(ratio).toBeCloseTo((over + 500 * 18) / (keep + more), 3);
  });
});

describe('screws whose heads are let through sooner', () => {
  // What a screw is allowed is a fifth of what it bears in tests (NDS commentary to 12.2, memory): it goes on clamping the top.
  it('clamp the top as hard: the stress across its staves is that of the same screws in a hard rail', () => {
    const stress = (cleat: string) =>
      judge(
        counter({
          screws: {
            ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in', cleat },
            at: [1, 23].flatMap((y) =>
              [1, 10, 19, 28, 36, 44, 53, 62, 71].map((x): [string, string] => [`${x} in`, `${y} in`]),
            ),
          },
          loads: [{ kind: 'person', amount: '250 lbf' }],
        }),
        'bending-across',
      );
    const [soft, hard] = [stress('eastern-white-pine'), stress('sugar-maple')];
    expect(soft.where).toContain('screws holding whatever pulls at them');
    expect(soft.demand / hard.demand).toBeCloseTo(1, 6);
  });

  /* Two rows of them beside either rail; the rails of maple, 5 in high, carry themselves from panel to panel. */
  const twoRows = (cleat: string, railHeight: { height: string; material: string } | object) =>
    counter({
      base: { panels: ['0 in', '36 in', '72 in'], rail: { thickness: '3/4 in', ...railHeight } },
      screws: {
        ...{ fastener: 'wood-screw-10', length: '2 in', through: '3/4 in', cleat },
        at: [2, 22].flatMap((y) =>
          [1, 10, 19, 28, 36, 44, 53, 62, 71].map((x): [string, string] => [`${x} in`, `${y} in`]),
        ),
      },
      loads: [{ kind: 'person', amount: '250 lbf' }],
    });
  it.each([
    ['rails that do not bend', {}, ['bending-across', 'shear', 'bearing']],
    [
      'rails that bend',
      { height: '5 in', material: 'sugar-maple' },
      ['bending-across', 'shear', 'bearing', 'rail', 'rail-shear'],
    ],
  ] as const)('ask as much of the top and of %s', (_, rail, ids) => {
    for (const id of ids) {
      const [soft, hard] = ['eastern-white-pine', 'sugar-maple'].map(
        (cleat) => judge(twoRows(cleat, rail), id).demand,
      );
      expect((soft ?? NaN) / (hard ?? NaN), id).toBeCloseTo(1, 6);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import type { TopField } from '../../../shared/check-result.ts';
import { counter } from './counter-documents.ts';
import { inch, judge } from './documents.ts';

const most = (field: TopField | null): number => Math.max(...(field?.values ?? [NaN]));

/*
 * 60 psf that stays for good and somebody of 12 lbf for a moment. C_D is 0.9 and, across the grain, 1.6 (NDS Table 2.3.2):
 * unless somebody adds three quarters to the stress, more is asked of the wood without them.
 */
const screws: CounterOverhangInput['screws'] = {
  ...{ fastener: 'wood-screw-12', length: '2-1/4 in', through: '3/4 in', cleat: 'sugar-maple' },
  at: ['3 in', '30 in', '57 in'].flatMap((x) => ['6 in', '20 in'].map((y): [string, string] => [x, y])),
};
const served: CounterOverhangInput = counter({
  screws,
  top: { length: '60 in', depth: '30 in', thickness: '2 in' },
  base: { to: '60 in', front: '22 in', foot: '22 in', heldToFloor: true, anchorPull: '900 lbf' },
  loads: [
    { kind: 'area', amount: '60 psf', duration: 'permanent' },
    { kind: 'person', amount: '12 lbf', duration: 'impact' },
  ],
});

it('the picture of the stress across the grain, and who stands there, are those of its check: not of a larger stress that is borne longer', () => {
  const { plate } = check(served).analysis;
  const { demand, where } = judge(served, 'bending-across');
  expect(where).toContain('nobody there');
  expect(plate.person.at).toEqual([]);
  expect(plate.fields.acrossGrain?.people).toEqual([]);
  expect(most(plate.fields.acrossGrain) / demand).toBeCloseTo(1, 6);
  expect(plate.acrossGrain?.value ?? NaN).toBeGreaterThan(1.05 * demand);
});

describe('a corner', () => {
  /** 12 in past the left end of its base, and an inch and a half past the stool side or flush with it. */
  const ended = (depth: string) =>
    counter({
      top: { depth, thickness: '2 in' },
      base: { from: '12 in', to: '72 in', panels: ['12 in', '42 in', '72 in'] },
      screws: {
        ...{ fastener: 'wood-screw-12', length: '2-1/4 in', through: '3/4 in', cleat: 'sugar-maple' },
        at: ['14 in', '42 in', '70 in'].flatMap((x) =>
          ['3 in', '21 in'].map((y): [string, string] => [x, y]),
        ),
      },
    });

  it('that stands out an inch and a half past one side and 12 in past the other is held to twice 12 in: L/360 (IBC Table 1604.3, footnote i)', () => {
    const [corner, flush] = ['25-1/2 in', '24 in'].map((depth) => judge(ended(depth), 'deflection-serving'));
    expect(corner?.where).toMatch(/^left edge, at 0 in along/);
    expect((corner?.capacity ?? NaN) / ((24 * inch) / 360)).toBeCloseTo(1, 9);
    // An inch and a half more of 24 changes little.
    const more = (corner?.ratio ?? NaN) / (flush?.ratio ?? NaN);
    expect(more).toBeGreaterThan(0.9);
    expect(more).toBeLessThan(1.15);
  });
});

it('the picture of the movement is of whoever moves an edge nearest to its limit, though another edge moves more', () => {
  // 12 in out over brackets that give on the stool side, 6 in at the back: of L/360 the back may move half as much.
  const braced = counter({
    top: { depth: '40 in', thickness: '2 in' },
    base: { back: '6 in', front: '28 in', foot: '28 in', weightAt: '16 in' },
    screws,
    props: ['4 in', '36 in', '68 in'].map((at) => ({
      ...{ kind: 'bracket', at, to: '39 in', allowable: '100 lbf', gives: '0.03 in' },
    })),
    loads: [{ kind: 'person', amount: '60 lbf', duration: 'seven-days' }],
    limits: { live: 'L/360' },
  });
  const { plate } = check(braced).analysis;
  expect(plate.tip?.at.y.shown).toBe('40 in');
  expect(judge(braced, 'deflection-live').where).toMatch(/^back edge/);
  expect(plate.fields.movement?.people.map(({ y }) => y.shown)).toEqual(['2 in', '2 in']);
});

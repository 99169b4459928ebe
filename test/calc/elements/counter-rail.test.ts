import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { counter, mapleWeight_lbf } from './counter-documents.ts';
import type { CounterOverhangInput } from '../../../shared/check-document/index.ts';
import { inch, judge, poundForce, psi } from './documents.ts';
import { maple } from './maple.ts';

/*
 * A top of 96 x 36 in with its staves from back to front, on rails at 0 and at 30 in: each inch of its length is a beam of its
 * own that hangs out 6 in, and presses on the front rail with q × 36 × 18 / 30 (moments about the back rail).
 */
const serving_psf = 50;
const onPanels = (...panels: string[]) =>
  counter({
    top: { length: '96 in', staves: 'across' },
    base: {
      ...{ to: '96 in', front: '30 in', foot: '30 in', panels },
      rail: { thickness: '3/4 in', height: '3-1/2 in', material: 'sugar-maple' },
    },
    loads: [{ kind: 'area', amount: `${serving_psf} psf`, duration: 'ten-years' }],
  });
const onRail_lbfpin = ((serving_psf / 144 + mapleWeight_lbf(96, 36, 1.5) / (96 * 36)) * 36 * 18) / 30;
/** Of 3/4 x 3-1/2 in: b h² / 6. */
const modulus_in3 = (0.75 * 3.5 ** 2) / 6;

describe('the front rail', () => {
  it('carries most where nothing is served past the back: q 22 × 11 / 8 and the top itself, 14 in out on both sides', () => {
    const [serving, own] = [5 / 144, mapleWeight_lbf(96, 36, 1.5) / (96 * 36)];
    const onRail = (serving * 22 * 11) / 8 + (own * 36 * 4) / 8;
    const balanced = counter({
      top: { length: '96 in', staves: 'across' },
      base: {
        ...{ to: '96 in', back: '14 in', front: '22 in', foot: '22 in', weightAt: '18 in', panels: ['0 in'] },
        rail: { thickness: '3/4 in', height: '3-1/2 in', material: 'sugar-maple' },
      },
      loads: [{ kind: 'area', amount: '5 psf', duration: 'ten-years' }],
    });
    const { demand, where } = judge(balanced, 'rail');
    expect(where).toContain('everywhere but past the back');
    expect(demand / psi / ((onRail * 96 * 96) / modulus_in3)).toBeGreaterThan(0.95);
    expect(demand / psi / ((onRail * 96 * 96) / modulus_in3)).toBeLessThan(1.02);
  });

  it('is leaned on where the top ends flush with it: two people anywhere ask no less than one who stays', () => {
    const flush = (at?: string) =>
      judge(
        counter({
          top: { length: '96 in', thickness: '2 in' },
          base: {
            ...{ from: '12 in', to: '96 in', front: '36 in', foot: '36 in', panels: ['12 in', '96 in'] },
            rail: { thickness: '1-1/2 in', height: '5-1/2 in', material: 'yellow-poplar' },
          },
          loads: [{ kind: 'person', amount: '250 lbf', ...(at !== undefined && { at }) }],
        }),
        'rail',
      );
    // Between panels 84 in apart, 250 lbf in the middle: P L / 4, and the top beside it.
    const alone = (250 * 84) / 4 / ((1.5 * 5.5 ** 2) / 6);
    expect(flush().demand / psi).toBeGreaterThan(alone);
    expect(flush().demand).toBeGreaterThan(1.2 * flush('54 in').demand);
    expect(flush().where).toContain('two people');
  });

  it('is leaned on over legs that carry the edge: somebody right above it leaves it all, P L / 4', () => {
    const onLegs = counter({
      base: {
        panels: ['0 in', '72 in'],
        rail: { thickness: '3/4 in', height: '5-1/2 in', material: 'yellow-poplar' },
      },
      props: [2, 25, 47, 70].map((at) => ({
        kind: 'leg',
        at: `${at} in`,
        to: '34 in',
        allowable: '900 lbf',
      })),
      loads: [{ kind: 'person', amount: '250 lbf' }],
    });
    const { demand, where } = judge(onLegs, 'rail');
    // Between panels 72 in apart, in the middle (AISC Manual Table 3-23); of the top itself half of 24 and half of 10 in.
    const load = 250 + (mapleWeight_lbf(72, 36, 1.5) * (12 + 5)) / 36;
    const alone = (load * 72) / 4 / ((0.75 * 5.5 ** 2) / 6);
    expect(demand / psi / alone).toBeGreaterThan(0.97);
    expect(demand / psi / alone).toBeLessThan(1.06);
    expect(where).toContain('24 in from the back edge');
  });

  it('past its last panel is an arm with all its load at the end: P a (AISC Manual Table 3-23, cantilever)', () => {
    for (const panel of ['0 in', '96 in']) {
      const moment = onRail_lbfpin * 96 * 96;
      const bent = judge(onPanels(panel), 'rail').demand / psi;
      // The one panel takes what stands over it and close beside it: less than a twentieth of 96 in.
      expect(bent / (moment / modulus_in3)).toBeGreaterThan(0.95);
      expect(bent / (moment / modulus_in3)).toBeLessThan(1);
    }
  });

  it('is judged on an arm of 28 in and not on a span of 40 in that carries more: P a is 784, P L / 4 is 400', () => {
    const document = onPanels('28 in', '68 in');
    const { demand, where, note } = judge(document, 'rail');
    expect(where).toMatch(/^from (?:0 in to 28 in|68 in to 96 in)/);
    expect(note).toContain('at its free end');
    const moment = onRail_lbfpin * 28 * 28;
    // A panel takes part of what is beside it: less than a quarter of what is on the arm.
    expect((demand / psi) * modulus_in3).toBeGreaterThan(0.75 * moment);
    expect((demand / psi) * modulus_in3).toBeLessThan(moment);
    const [arm] = check(document).analysis.plate.railLine;
    expect(demand / (((arm?.load.value ?? NaN) * 28 * inch) / (modulus_in3 * inch ** 3))).toBeCloseTo(1, 6);
  });

  it('is judged on the span where the arms are short: P L / 4 (AISC Manual Table 3-23, simple beam)', () => {
    const { demand, where, note } = judge(onPanels('16 in', '80 in'), 'rail');
    expect(where).toMatch(/^from 16 in to 80 in/);
    expect(note).toContain('in its middle');
    const moment = (onRail_lbfpin * 64 * 64) / 4;
    expect((demand / psi) * modulus_in3).toBeGreaterThan(0.8 * moment);
    expect((demand / psi) * modulus_in3).toBeLessThan(moment);
  });

  it('is not vouched for where no panel carries it', () => {
    const { outcome, ratio, note } = judge(onPanels(), 'rail');
    expect(outcome).toBe('cannot-say');
    expect(ratio).toBeNull();
    expect(note).toContain('what carries the rails is not known');
  });
});

describe('stretches of a front rail', () => {
  it('are each judged by their own stability: a long one may be too slender though a short one is bent more (NDS 3.3.3)', () => {
    // 1/2 by 9 in. The span of 40 in: l_e = 2.06 × 40 = 82.4 in, R_B = √(82.4 × 9 / 0.25) = 54.5: over 50. The arms of 28 in,
    // bent twice as much: 57.7 in and 45.6.
    const document = onPanels('28 in', '68 in');
    const rail = { thickness: '1/2 in', height: '9 in', material: 'sugar-maple' };
    const found = check({ ...document, base: { ...document.base, rail } }).checks.find(
      ({ id }) => id === 'rail',
    );
    expect(found?.where).toMatch(/^from 28 in to 68 in/);
    expect(found?.outcome).toBe('does-not-hold');
    expect(found?.note).toContain('more than 50 is not permitted');
  });
});

describe('a rail, by hand', () => {
  const stubby = { thickness: '2 in', height: '1-1/2 in', material: 'sugar-maple' } as const;
  const withRail = (document: CounterOverhangInput, rail: CounterOverhangInput['base']['rail']) => ({
    ...document,
    base: { ...document.base, ...(rail !== undefined && { rail }) },
  });

  it('is as strong as under its longest load where that asks most: a light knock lends it nothing', () => {
    // Wider than high: no C_L. C_D of ten years 1.0, of impact 2.0 (NDS Table 2.3.2).
    const served = withRail(onPanels('0 in', '48 in', '96 in'), stubby);
    const knock = { kind: 'person', amount: '1 lbf', duration: 'impact' } as const;
    const knocked = judge({ ...served, loads: [...(served.loads ?? []), knock] }, 'rail');
    expect(knocked.capacity / psi / maple.bending_psi).toBeCloseTo(1, 3);
    expect(knocked.demand / judge(served, 'rail').demand).toBeCloseTo(1, 3);
  });

  it('is sheared at its ends by half of what it carries: 1.5 (w L / 2) / (b d) (NDS 3.4.2)', () => {
    const { demand, capacity, where } = judge(onPanels('0 in', '96 in'), 'rail-shear');
    const byHand = (1.5 * onRail_lbfpin * (96 / 2)) / (0.75 * 3.5);
    // Each end panel takes a strip of the top over it and close beside it: less than a tenth of 48 in.
    expect(demand / psi / byHand).toBeGreaterThan(0.9);
    expect(demand / psi / byHand).toBeLessThan(1);
    expect(capacity / psi / maple.shear_psi).toBeCloseTo(1, 3);
    expect(where).toMatch(/^from 0 in to 96 in/);
  });

  it('past its last panel is sheared by all that it carries', () => {
    const { demand } = judge(onPanels('0 in'), 'rail-shear');
    const byHand = (1.5 * onRail_lbfpin * 96) / (0.75 * 3.5);
    expect(demand / psi / byHand).toBeGreaterThan(0.95);
    expect(demand / psi / byHand).toBeLessThan(1);
  });

  it('along the back is asked for as much as along the front, where the top stands out there instead', () => {
    const front = onPanels('16 in', '80 in');
    const back = {
      ...front,
      base: { ...front.base, back: '6 in', front: '36 in', foot: '36 in', weightAt: '20 in' },
    };
    for (const id of ['rail', 'rail-shear']) {
      const [one, other] = [judge(front, id), judge(back, id)];
      expect(other.demand / one.demand, id).toBeCloseTo(1, 3);
      expect(other.where, id).toMatch(/^back rail, from /);
    }
  });

  it('has its strength worked out on the sheet, from the wood: 9 400 psi of green maple (Wood Handbook, Table 5-3b)', () => {
    const document = withRail(onPanels('0 in', '96 in'), stubby);
    const { worksheet, provenance } = check({ ...document, top: { ...document.top, material: 'red-oak' } });
    const rails = worksheet.sections.find(({ title }) => title === 'The rails');
    const [strength] = rails?.steps.filter(({ symbol }) => symbol === 'F_b') ?? [];
    expect((strength?.result.value ?? NaN) / psi / maple.bending_psi).toBeCloseTo(1, 3);
    expect(provenance.values.some(({ what }) => what.startsWith('Sugar maple'))).toBe(true);
  });
});

describe('a rail under flat bars', () => {
  const bar = { kind: 'flat-bar', from: '6 in', to: '35 in', width: '2 in', metal: 'a36' } as const;
  const under = (at: string, thickness: string) => ({
    ...onPanels('16 in', '80 in'),
    props: [{ ...bar, at, thickness }],
  });
  const load_lbf = (document: CounterOverhangInput, stretch: number): number =>
    (check(document).analysis.plate.railLine[stretch]?.load.value ?? NaN) / poundForce;

  it('is notched to their thickness: P L / 4 on 2-1/2 of 3-1/2 in (NDS 3.1.2, net section)', () => {
    const document = under('48 in', '1 in');
    const { demand, where, note } = judge(document, 'rail');
    expect(where).toMatch(/^from 16 in to 80 in/);
    expect(demand / psi / ((load_lbf(document, 1) * 64) / 4 / ((0.75 * 2.5 ** 2) / 6))).toBeCloseTo(1, 3);
    expect(note).toContain('Notched for a bar');
  });

  it('past its last panel bears the shear of 2-1/2 × (2-1/2 / 3-1/2)² in (NDS 3.4.3.2(a), Eq. 3.4-3, memory)', () => {
    const document = {
      ...onPanels('48 in', '96 in'),
      props: [{ ...bar, at: '12 in', thickness: '1 in' }],
    };
    const { demand, where } = judge(document, 'rail-shear');
    expect(where).toMatch(/^from 0 in to 48 in/);
    const byHand = (1.5 * load_lbf(document, 0)) / (0.75 * 2.5 * (2.5 / 3.5) ** 2);
    expect(demand / psi / byHand).toBeCloseTo(1, 3);
  });

  it('is whole in a stretch where none lies', () => {
    const document = under('6 in', '1 in');
    const { demand } = judge(document, 'rail');
    expect(demand / psi / ((load_lbf(document, 1) * 64) / 4 / modulus_in3)).toBeCloseTo(1, 3);
  });

  it('is cut through by one as thick as it is high', () => {
    for (const id of ['rail', 'rail-shear'])
      expect(check(under('48 in', '3-1/2 in')).checks.find((each) => each.id === id)?.outcome).toBe(
        'does-not-hold',
      );
  });
});

describe('rails of softer wood than the top', () => {
  it('are pressed on no harder than they bear: 220 psi of green white pine / 1.67 × 1.5 (Wood Handbook, Table 5-3b; D245)', () => {
    const loads = [{ kind: 'area', amount: '50 psf', duration: 'ten-years' }] as const;
    const on = (material?: string) =>
      judge(
        counter({
          base: { rail: { thickness: '3/4 in', ...(material !== undefined && { material }) } },
          loads: [...loads],
          screws: {
            ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in' },
            at: [12, 36, 60].map((x) => [`${x} in`, '2 in']),
          },
        }),
        'bearing',
      );
    expect(on('eastern-white-pine').capacity / psi).toBeCloseTo((220 / 1.67) * 1.5, 1);
    expect(on('white-oak').capacity).toBe(on().capacity);
    expect(on().capacity / psi).toBeCloseTo(maple.bearing_psi, 1);
  });

  it('cannot be vouched for where the wood of the rail has no strength: none is printed for green European beech', () => {
    const base = { rail: { thickness: '3/4 in', material: 'European beech' } };
    const screws = {
      ...{ fastener: 'wood-screw-14', length: '2 in', through: '3/4 in' },
      at: [12, 36, 60].map((x): [string, string] => [`${x} in`, '2 in']),
    };
    const { outcome, note } = judge(counter({ base, screws }), 'bearing');
    expect(outcome).toBe('cannot-say');
    expect(note).toBe('No strength of the wood of the rail can be worked out.');
  });
});

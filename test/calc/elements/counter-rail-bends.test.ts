import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { counter, mapleWeight_lbf } from './counter-documents.ts';
import { judge, psi } from './documents.ts';
import { maple } from './maple.ts';

/*
 * Staves 3/4 in thick from back to front, 36 in, over rails at 0 and 30 in: each inch of the length is a beam of its own. The
 * rail under the stool side, 1-1/2 × 5-1/2 in of maple, spans 96 in from panel to panel, and the edge goes down by 36 / 30 of
 * what it sags in the middle: 5 w L⁴ / 384 EI + w L² / 8 κGA (AISC Manual Table 3-23; Wood Handbook, chapter 9), w = q × 36 ×
 * 18 / 30. A strip by itself rises at its end: q a (4 a² L − L³ + 3 a³) / 24 EI (Table 3-23, overhang, uniform load).
 */
const onRail = (panels: string[], height?: string) =>
  counter({
    top: { length: '96 in', staves: 'across', appearance: 'small-knots', thickness: '3/4 in' },
    base: {
      ...{ to: '96 in', front: '30 in', foot: '30 in', panels },
      rail: { thickness: '1-1/2 in', ...(height !== undefined && { height, material: 'sugar-maple' }) },
    },
    loads: [{ kind: 'area', amount: '30 psf', duration: 'ten-years', sustained: 1 }],
  });
const [E_psi, G_psi] = [maple.E_Pa / psi, maple.G_Pa / psi];
const [EI_rail, GA_rail] = [(E_psi * 1.5 * 5.5 ** 3) / 12, (5 / 6) * G_psi * 1.5 * 5.5];
const edge_in = (q: number, span: number): number => {
  const w = (q * 36 * 18) / 30;
  const sag = (5 * w * span ** 4) / (384 * EI_rail) + (w * span ** 2) / 8 / GA_rail;
  const rise = (q * 6 * (4 * 36 * 30 - 30 ** 3 + 3 * 6 ** 3)) / (24 * ((E_psi * 0.75 ** 3) / 12));
  return 1.2 * sag + rise;
};
const inch = 0.0254;

describe('a rail of a given height between panels', () => {
  it('sags, and the edge with it: a little less than by hand, since the top helps', () => {
    const { demand, where } = judge(onRail(['0 in', '96 in'], '5-1/2 in'), 'deflection-serving');
    const ratio = demand / inch / edge_in(30 / 144, 96);
    expect(ratio).toBeGreaterThan(0.94);
    expect(ratio).toBeLessThan(1.01);
    expect(where).toContain('rails bending');
  });

  it('creeps with the top: 1.5 times what stays, weight and all (NDS 3.5.2)', () => {
    const { demand } = judge(onRail(['0 in', '96 in'], '5-1/2 in'), 'deflection-long-term');
    const own = mapleWeight_lbf(96, 36, 0.75) / (96 * 36);
    const ratio = demand / inch / (1.5 * edge_in(30 / 144 + own, 96));
    expect(ratio).toBeGreaterThan(0.94);
    expect(ratio).toBeLessThan(1.01);
  });

  it('sags far less between panels half as far apart, and not at all where its height is not known', () => {
    const moved = (panels: string[], height?: string) =>
      judge(onRail(panels, height), 'deflection-live').demand;
    const [far, near] = [moved(['0 in', '96 in'], '5-1/2 in'), moved(['0 in', '48 in', '96 in'], '5-1/2 in')];
    expect(near / far).toBeLessThan(0.3);
    expect(moved(['0 in', '96 in']) / far).toBeLessThan(0.3);
  });

  it('holds no less of the top than a rail twice as high', () => {
    const moved = (height: string) => check(onRail(['0 in', '96 in'], height)).analysis.plate.tip;
    expect(moved('4 in')?.movement.value).toBeGreaterThan((moved('8 in')?.movement.value ?? NaN) * 2);
  });
});

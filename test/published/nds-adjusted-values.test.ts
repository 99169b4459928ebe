import { describe, expect, it } from 'vitest';
import type { Duration } from '../../shared/check-document/index.ts';
import { inch, psi } from '../calc/elements/documents.ts';
import { allowable_psi, materialOf, refusal } from '../calc/codes/requests.ts';
import { ndsAsd } from '../../calc/codes/nds-asd/index.ts';

/*
 * NDS 2018 and its Supplement, Tables 2.3.2, 2.3.3, 4A and 4B and the factors printed with them, worked by hand. The
 * reference values of Douglas Fir-Larch No.2 are F_b 900, F_v 180, F_c⟂ 625 psi, E 1.6 Mpsi (Table 4A).
 */
const twoByTen = { thickness_m: 1.5 * inch, width_m: 9.25 * inch };
const graded = { basis: 'graded', material: 'Douglas Fir-Larch', grade: 'No.2', ...twoByTen } as const;

describe('a graded 2 × 10, Douglas Fir-Larch No.2', () => {
  it('laid flat as a shelf: F_b 900 × C_F 1.1 × C_fu 1.2 × C_D', () => {
    const flat = materialOf({ ...graded, use: 'flat' });
    const expected: [Duration, number][] = [
      ['permanent', 0.9],
      ['ten-years', 1.0],
      ['two-months', 1.15],
      ['seven-days', 1.25],
      ['ten-minutes', 1.6],
      ['impact', 2.0],
    ];
    for (const [duration, C_D] of expected) {
      expect(allowable_psi(flat, 'bending', duration)).toBeCloseTo(900 * 1.1 * 1.2 * C_D, 6);
      expect(allowable_psi(flat, 'shear', duration)).toBeCloseTo(180 * C_D, 6);
      expect(allowable_psi(flat, 'bearing', duration)).toBeCloseTo(625, 6);
    }
  });

  it('on edge: no flat use factor', () => {
    expect(allowable_psi(materialOf({ ...graded, use: 'edge' }), 'bending', 'ten-years')).toBeCloseTo(
      900 * 1.1,
      6,
    );
  });

  it('wet: C_M 1 for bending where F_b C_F ≤ 1150 psi, 0.97 shear, 0.67 bearing, 0.9 stiffness', () => {
    const wet = materialOf({ ...graded, moisture: 'wet' });
    expect(allowable_psi(wet, 'bending', 'ten-years')).toBeCloseTo(900 * 1.1 * 1.2, 6);
    expect(allowable_psi(wet, 'shear', 'ten-years')).toBeCloseTo(180 * 0.97, 6);
    expect(allowable_psi(wet, 'bearing', 'ten-years')).toBeCloseTo(625 * 0.67, 6);
    expect(wet.E_Pa / psi).toBeCloseTo(1.03 * 1.6e6 * 0.9, 3);
  });

  it('wet, Select Structural: F_b C_F = 1650 psi is above 1150, so C_M 0.85', () => {
    const wet = materialOf({ ...graded, grade: 'SS', moisture: 'wet' });
    expect(allowable_psi(wet, 'bending', 'ten-years')).toBeCloseTo(1500 * 1.1 * 1.2 * 0.85, 6);
  });

  it('warm and hot, Table 2.3.3: strengths 0.8 and 0.7 dry, 0.7 and 0.5 wet; stiffness 0.9', () => {
    const at = (temperature: 'warm' | 'hot', moisture: 'dry' | 'wet') =>
      materialOf({ ...graded, temperature, moisture });
    expect(allowable_psi(at('warm', 'dry'), 'shear', 'ten-years')).toBeCloseTo(180 * 0.8, 6);
    expect(allowable_psi(at('hot', 'dry'), 'shear', 'ten-years')).toBeCloseTo(180 * 0.7, 6);
    expect(allowable_psi(at('warm', 'wet'), 'bearing', 'ten-years')).toBeCloseTo(625 * 0.67 * 0.7, 6);
    expect(allowable_psi(at('hot', 'wet'), 'bearing', 'ten-years')).toBeCloseTo(625 * 0.67 * 0.5, 6);
    expect(at('warm', 'dry').E_Pa / psi).toBeCloseTo(1.03 * 1.6e6 * 0.9, 3);
    expect(at('hot', 'wet').E_Pa / psi).toBeCloseTo(1.03 * 1.6e6 * 0.9 * 0.9, 3);
  });

  it('stiffness without shear: 1.03 E (NDS Appendix F, EI true over apparent)', () => {
    expect(materialOf(graded).E_Pa / psi).toBeCloseTo(1.03 * 1.6e6, 3);
  });
});

describe('size and flat use factors (Supplement, Table 4A adjustment factors)', () => {
  /** Dressed width in inches, C_F of No.2, C_fu: 2 in and 3 in thick; then for 4 in thick. */
  const rows: [number, number, number, number, number][] = [
    [1.5, 1.5, 1.0, 1.5, 1.0],
    [3.5, 1.5, 1.1, 1.5, 1.0],
    [4.5, 1.4, 1.1, 1.4, 1.05],
    [5.5, 1.3, 1.15, 1.3, 1.05],
    [7.25, 1.2, 1.15, 1.3, 1.05],
    [9.25, 1.1, 1.2, 1.2, 1.1],
    [11.25, 1.0, 1.2, 1.1, 1.1],
    [13.25, 0.9, 1.2, 1.0, 1.1],
  ];
  it.each(rows)('%d in wide', (width, thinC_F, thinC_fu, thickC_F, thickC_fu) => {
    const of = (thickness: number) =>
      allowable_psi(
        materialOf({ ...graded, thickness_m: thickness * inch, width_m: width * inch }),
        'bending',
        'ten-years',
      );
    expect(of(1.5)).toBeCloseTo(900 * thinC_F * thinC_fu, 6);
    expect(of(2.5)).toBeCloseTo(900 * thinC_F * thinC_fu, 6);
    if (width >= 3.5) expect(of(3.5)).toBeCloseTo(900 * thickC_F * thickC_fu, 6);
  });

  it('Southern Pine (Table 4B) has the size inside its values: No.2 2 × 10 F_b 800, 2 × 8 925', () => {
    const pine = { ...graded, material: 'Southern Pine' };
    expect(allowable_psi(materialOf(pine), 'bending', 'ten-years')).toBeCloseTo(800 * 1.2, 6);
    expect(allowable_psi(materialOf({ ...pine, width_m: 7.25 * inch }), 'bending', 'ten-years')).toBeCloseTo(
      925 * 1.15,
      6,
    );
  });
});

describe('what the tables are not for', () => {
  it.each([0.75, 1, 1.25, 4])('%d in thick lumber is refused', (thickness) => {
    expect(refusal({ ...graded, thickness_m: thickness * inch }).map(({ path }) => path)).toEqual([
      '/board/basis',
    ]);
  });

  it('tension across the grain has no value', () => {
    expect(materialOf(graded).resistance('tension-across', 'ten-years').ok).toBe(false);
  });
});

describe('load duration', () => {
  it('combinations take the shortest load in them, and the weight alone is permanent (NDS 2.3.2)', () => {
    const found = ndsAsd.combinations(['seven-days', 'permanent']);
    expect(found.map(({ duration }) => duration)).toEqual(['permanent', 'permanent', 'seven-days']);
    const [weight, contents, hand] = found;
    expect(weight?.factor('permanent')).toBe(0);
    expect([contents?.factor('permanent'), contents?.factor('seven-days')]).toEqual([1, 0]);
    expect([hand?.factor('permanent'), hand?.factor('seven-days')]).toEqual([1, 1]);
  });

  it('connections: never above 1.6 (Table 2.3.2, footnote 2)', () => {
    expect(ndsAsd.connectionDuration('impact')).toBe(1.6);
    expect(ndsAsd.connectionDuration('seven-days')).toBe(1.25);
  });
});

describe('creep (NDS 3.5.2; EN 1995-1-1 Table 3.2, service class 1, 1 + k_def where NDS is silent)', () => {
  it.each([
    ['seasoned lumber, dry', { ...graded }, 1.5],
    ['lumber, wet', { ...graded, moisture: 'wet' as const }, 2.0],
    ['an appearance board, dry', { material: 'sugar-maple' }, 1.5],
    ['an appearance board, wet', { material: 'sugar-maple', moisture: 'wet' as const }, 2.0],
    ['plywood', { material: 'plywood' }, 2.0],
    ['OSB', { material: 'osb' }, 2.5],
    ['MDF', { material: 'mdf' }, 3.25],
    ['particleboard', { material: 'particleboard' }, 3.25],
  ])('%s: %o → %d', (_, request, factor) => {
    expect(materialOf(request).creep.factor).toBe(factor);
  });
});

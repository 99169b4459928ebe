import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { foot, inch, judge, line, poundForce, psi, shelf } from './documents.ts';
import { maple, mapleBoard } from './maple.ts';

/* Boards that are not one piece of clear wood. Statics as for the plain shelf: span 32 in, overhangs 8 in, all loaded. */
const [L, a] = [32 * inch, 8 * inch];
const perFoot = poundForce / foot;
const sag = (w: number): number => w * (L ** 2 / 8 - a ** 2 / 2);
const shear = (w: number): number => (w * L) / 2;
const load = [line('30 lbf/ft')];

describe('panels', () => {
  const panel = (material: string) => ({ material, basis: 'panel', appearance: undefined }) as const;
  const loadsFor = (duration: 'permanent' | 'ten-years') => [line('30 lbf/ft', { duration })];

  it('MDF over 19 to 30 mm (EN 622-5: 18 MPa): f_k k_mod / (1.3 × 1.5), k_mod 0.20 and 0.40 (EN 1995-1-1 Table 3.1)', () => {
    const found = (duration: 'permanent' | 'ten-years') =>
      judge(shelf({ board: panel('mdf'), loads: loadsFor(duration) }), 'bending').capacity / 1e6;
    expect(found('permanent')).toBeCloseTo((18 * 0.2) / (1.3 * 1.5), 9);
    const both = [...loadsFor('ten-years')];
    const ratio = judge(shelf({ board: panel('mdf'), loads: both }), 'bending');
    const w = 30 * perFoot + 800 * 9.80665 * 10 * inch * 0.75 * inch;
    expect(ratio.demand / (sag(w) / mapleBoard(10, 0.75).S)).toBeCloseTo(1, 9);
    expect(ratio.capacity / 1e6).toBeCloseTo((18 * 0.4) / (1.3 * 1.5), 9);
  });

  it('in a thickness of which there is none: names those there are, OSB/3 of 6 to 25 mm (EN 12369-1:2001, Table 2, from memory)', () => {
    const document = {
      ...shelf({ board: { ...panel('osb-3'), thickness: '50 mm' } }),
      units: 'metric',
    } as const;
    expect(() => check(document)).toThrow(/50 mm thick\. It takes 6 mm to 25 mm, or another panel/);
  });

  it('plywood: a mean of 33.72 MPa (Wood Handbook Table 12-1), 20 % variation, k_mod 0.60, γ_M 1.2', () => {
    const found = judge(shelf({ board: panel('plywood'), loads: load }), 'bending');
    expect(found.capacity / 1e6).toBeCloseTo((33.72 * (1 - 1.645 * 0.2) * 0.6) / (1.2 * 1.5), 6);
  });

  it('movement of MDF over the years: 3.25 times the first, by stiffness 2 100 MPa', () => {
    const found = check(shelf({ board: panel('mdf'), loads: load })).analysis.deflection.bays[1];
    const w = 30 * perFoot + 800 * 9.80665 * 10 * inch * 0.75 * inch;
    const EI = (2100e6 * 10 * inch * (0.75 * inch) ** 3) / 12;
    const first = (5 * w * L ** 4) / (384 * EI) - (w * a * a * L * L) / (16 * EI);
    expect((found?.longTerm.value ?? NaN) / (3.25 * first)).toBeCloseTo(1, 9);
  });

  it('a wet or a warm room is refused', () => {
    for (const conditions of [{ moisture: 'wet' }, { temperature: 'warm' }] as const) {
      expect(() => check(shelf({ board: panel('mdf'), conditions }))).toThrow();
    }
  });
});

describe('a graded 2 × 10', () => {
  const graded = {
    material: 'Douglas Fir-Larch',
    basis: 'graded',
    grade: 'No.2',
    appearance: undefined,
    depth: '9-1/4 in',
    thickness: '1-1/2 in',
  } as const;

  it('bending by Supplement Table 4A; weight from its specific gravity 0.50', () => {
    const found = judge(shelf({ board: graded, loads: load }), 'bending');
    const weights = [0.5 * 1000, 0.5 * 1000 * 1.12].map(
      (density) => density * 9.80665 * 9.25 * 1.5 * inch ** 2,
    );
    const S = (9.25 * inch * (1.5 * inch) ** 2) / 6;
    const [light = 0, heavy = 0] = weights.map((own) => sag(30 * perFoot + own) / S);
    expect(found.demand).toBeGreaterThanOrEqual(light);
    expect(found.demand).toBeLessThanOrEqual(heavy * 1.001);
    expect(found.capacity / psi).toBeCloseTo(900 * 1.1 * 1.2 * 0.9, 6);
  });

  it('a 3/4 in board of it is refused, with the field named', () => {
    expect(() => check(shelf({ board: { ...graded, thickness: '3/4 in' } }))).toThrow(/\/board\/basis|thick/);
  });
});

describe('layers that slide on each other', () => {
  it('share moment and shear by their own stiffness: a thick and a thin one', () => {
    const document = shelf({
      board: { thickness: '3/4 in', layers: [{ thickness: '1/2 in' }, { thickness: '1/4 in' }] },
      loads: load,
    });
    const w = 30 * perFoot + mapleBoard(10, 0.75).weight_Npm;
    const [thick, thin] = [0.5 ** 3, 0.25 ** 3];
    const share = thick / (thick + thin);
    const bent = (sag(w) * share) / mapleBoard(10, 0.5).S;
    expect(judge(document, 'bending').demand / bent).toBeCloseTo(1, 9);
    expect(judge(document, 'shear').demand / ((1.5 * shear(w) * share) / mapleBoard(10, 0.5).A)).toBeCloseTo(
      1,
      9,
    );
    expect(check(document).checks.map(({ id }) => id)).not.toContain('glue-line');
  });
});

describe('glue lines', () => {
  it('two bonded halves: 1.5 V / A at the joint in the middle', () => {
    const layers = [{ thickness: '3/8 in' }, { thickness: '3/8 in' }];
    const document = shelf({ board: { layers, bond: 'structural' }, loads: load });
    const w = 30 * perFoot + mapleBoard(10, 0.75).weight_Npm;
    const found = judge(document, 'glue-line');
    expect(found.demand / ((1.5 * shear(w)) / mapleBoard(10, 0.75).A)).toBeCloseTo(1, 9);
    expect(found.capacity / psi).toBeCloseTo(maple.shear_psi * 0.9, 6);
    expect(found.note).toMatch(/structural wood glue/i);
  });

  it('a hollow box: V Q / I over the frame, of which the middle one of three members has up to 4-1/2 of 10 in', () => {
    const document = shelf({
      board: { thickness: '2 in', box: { skin: '1/2 in', frame: '1 in', members: 3 } },
      loads: load,
    });
    const area = (10 * 2 - (10 - 3) * 1) * inch ** 2;
    const w = 30 * perFoot + maple.density_kgm3 * 9.80665 * area;
    const I = (10 * 2 ** 3 - 7 * 1 ** 3) / 12;
    const q = (shear(w) * (10 * 0.5 * 0.75)) / I / inch;
    const found = judge(document, 'glue-line').demand / (q / (3 * inch));
    // 1 in of member and two halves of gaps of 3-1/2 in, each a third of the frame; skins and box take some of it off.
    expect(found).toBeLessThanOrEqual((3 * 4.5) / 10);
    expect(found).toBeGreaterThan(1.2);
  });
});

describe('a board in two lengths over the middle bracket', () => {
  it('is two simple spans: wL²/8 in each and 2 × wL/2 on the bracket', () => {
    const document = shelf({
      board: { joints: ['24 in'] },
      brackets: { positions: ['0 in', '24 in', '48 in'] },
      loads: load,
    });
    const { analysis } = check(document);
    const w = 30 * perFoot + mapleBoard(10, 0.75).weight_Npm;
    expect(analysis.moment.max.value / ((w * (24 * inch) ** 2) / 8)).toBeCloseTo(1, 9);
    expect(Math.abs(analysis.moment.min.value)).toBeLessThan(1e-9);
    expect((analysis.supports[1]?.reaction.max.value ?? NaN) / (w * 24 * inch)).toBeCloseTo(1, 9);
  });
});

describe('an L: board and nosing of one wood', () => {
  it('is checked at the back corner of the board about inclined axes, not by M y / I', () => {
    const document = shelf({
      board: {
        depth: '9-1/4 in',
        nosing: {
          material: 'sugar-maple',
          appearance: 'small-knots',
          height: '1-1/2 in',
          thickness: '3/4 in',
          flush: 'top',
        },
      },
      brackets: { arm: '9 in' },
      loads: load,
    });
    const parts = [
      { b: 9.25, h: 0.75, y: 4.625, z: 1.125 },
      { b: 0.75, h: 1.5, y: 9.625, z: 0.75 },
    ];
    const A = parts.reduce((sum, p) => sum + p.b * p.h, 0);
    const [y0, z0] = [
      parts.reduce((sum, p) => sum + p.b * p.h * p.y, 0) / A,
      parts.reduce((sum, p) => sum + p.b * p.h * p.z, 0) / A,
    ];
    const Ix = parts.reduce((sum, p) => sum + (p.b * p.h ** 3) / 12 + p.b * p.h * (p.z - z0) ** 2, 0);
    const Iy = parts.reduce((sum, p) => sum + (p.h * p.b ** 3) / 12 + p.b * p.h * (p.y - y0) ** 2, 0);
    const Ixy = parts.reduce((sum, p) => sum + p.b * p.h * (p.y - y0) * (p.z - z0), 0);
    const corners = [
      [0, 0.75],
      [0, 1.5],
      [9.25, 0.75],
      [9.25, 0],
      [10, 0],
      [10, 1.5],
    ] as const;
    const per = Math.max(
      ...corners.map(([y, z]) => Math.abs(Iy * (z - z0) - Ixy * (y - y0)) / (Ix * Iy - Ixy ** 2)),
    );
    const w = 30 * perFoot + maple.density_kgm3 * 9.80665 * A * inch ** 2;
    const found = judge(document, 'bending');
    expect(found.demand / (sag(w) * (per / inch ** 3))).toBeCloseTo(1, 9);
    expect(
      check(document).analysis.stiffness.EI.value / (maple.E_Pa * (Ix - Ixy ** 2 / Iy) * inch ** 4),
    ).toBeCloseTo(1, 9);
  });
});

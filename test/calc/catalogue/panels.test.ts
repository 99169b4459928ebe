import { describe, expect, it } from 'vitest';
import { findPanel, findSpecies, panels, type Panel } from '../../../calc/catalogue/index.ts';

const inch = 0.0254;
const psi = 6894.757293168;

function panel(name: string, thickness_m: number): Panel {
  const found = findPanel(name, thickness_m);
  if (!found.ok) throw new Error(`${name}: ${found.reason}`);
  return found.row;
}

describe('finding a panel', () => {
  it('finds every row by each of its names, at its own thicknesses', () => {
    for (const row of panels) {
      const middle_m = Number.isFinite(row.thicknessTo_m)
        ? (row.thicknessFrom_m + row.thicknessTo_m) / 2
        : 0.05;
      for (const name of [row.id, row.name, ...row.otherNames]) expect(panel(name, middle_m), name).toBe(row);
    }
  });

  it.each([
    ['plywood', 0.75 * inch, 'plywood'],
    ['Plywood, softwood', 0.018, 'plywood'],
    ['birch plywood', 0.018, 'birch-plywood'],
    ['MDF', 0.75 * inch, 'mdf'],
    ['particle board', 0.018, 'particleboard'],
    ['chipboard', 0.018, 'particleboard'],
    ['OSB', 0.018, 'osb'],
    ['hardboard', 0.006, 'hardboard'],
  ])('"%s" %d m thick is %s', (name, thickness_m, id) => {
    expect(panel(name, thickness_m).id).toBe(id);
  });

  it('gives a thickness where two rows meet to the thinner one ("over 12 to 19 mm", EN 622-5)', () => {
    expect(panel('MDF', 0.019).along.bending_Pa).toBeCloseTo(20e6, 3);
    expect(panel('MDF', 0.0191).along.bending_Pa).toBeCloseTo(18e6, 3);
    // EN 300: 6 to 10, over 10 and under 18, 18 to 25 mm.
    expect(panel('OSB/3 minimum', 0.018).along.bending_Pa).toBeCloseTo(18e6, 3);
  });

  it('tells a name it does not know from a thickness it has no row for', () => {
    expect(findPanel('birch plywood', 0.015)).toEqual({
      ok: false,
      reason: 'no-such-thickness',
      name: 'Birch plywood, all birch veneers',
      nearest: [],
      thicknesses: [
        { from_m: 0.0115, to_m: 0.0125 },
        { from_m: 0.0171, to_m: 0.0185 },
        { from_m: 0.0229, to_m: 0.0245 },
      ],
    });
    const misspelled = findPanel('particalboard', 0.018);
    expect(misspelled).toMatchObject({ ok: false, reason: 'unknown-name' });
    expect(!misspelled.ok && misspelled.nearest).toContain('Particleboard, furniture grade');
    expect(findPanel('MDF', NaN)).toMatchObject({ reason: 'no-such-thickness' });
  });

  it('has rows of one panel that meet at most at their ends', () => {
    for (const row of panels) {
      for (const other of panels) {
        if (row === other || row.id !== other.id || other.thicknessFrom_m < row.thicknessFrom_m) continue;
        expect(other.thicknessFrom_m, row.id).toBeGreaterThanOrEqual(row.thicknessTo_m);
      }
    }
  });
});

describe('panels as published', () => {
  // Wood Handbook Table 12-1, low ends: particleboard 2.76 GPa, 15.17 MPa; OSB 4.41, 21.8; hardboard 3.10, 31.02; MDF 3.59, 35.85.
  it.each([
    ['particleboard-mean', 2.76, 15.17],
    ['osb', 4.41, 21.8],
    ['hardboard', 3.1, 31.02],
    ['mdf-mean', 3.59, 35.85],
  ])('%s is at the low end of Wood Handbook Table 12-1, a mean', (id, stiffness_GPa, bending_MPa) => {
    const row = panel(id, 0.012);
    expect(row.along.modulusOfElasticity_Pa / 1e9).toBeCloseTo(stiffness_GPa, 6);
    expect(row.along.bending_Pa / 1e6).toBeCloseTo(bending_MPa, 6);
    expect(row.strengthKind).toBe('mean');
  });

  // APA Panel Design Specification / Design Capacities for OSB (2008), Table A: EI lbf·in² and F_b S lbf·in a foot of width, along
  // and across; F_s (Ib/Q) lbf a foot, from memory. Tolerance 0.5 %: the stored stresses are rounded.
  it.each([
    ['osb-24/0', 3 / 8, 60_000, 300, 11_000, 97, 130],
    ['osb-24/16', 7 / 16, 78_000, 385, 16_000, 115, 150],
    ['osb-32/16', 15 / 32, 115_000, 445, 25_000, 165, 165],
    ['osb-32/16', 1 / 2, 115_000, 445, 25_000, 165, 165],
    ['osb-40/20', 19 / 32, 225_000, 750, 56_000, 270, 205],
    ['osb-40/20', 5 / 8, 225_000, 750, 56_000, 270, 205],
    ['osb-48/24', 23 / 32, 400_000, 1000, 91_500, 405, 250],
    ['osb-48/24', 3 / 4, 400_000, 1000, 91_500, 405, 250],
    ['osb-floor-24', 23 / 32, 300_000, 770, 80_500, 385, 250],
  ])('%s, %d in, gives back its published capacities', (id, t_in, EI, FbS, EIacross, FbSacross, shear) => {
    const row = panel(id, t_in * inch);
    const I_in4 = (12 * t_in ** 3) / 12;
    const S_in3 = (12 * t_in ** 2) / 6;
    const near = (value: number, published: number) => {
      expect(value / published).toBeGreaterThan(0.995);
      expect(value / published).toBeLessThan(1.005);
    };
    near((row.along.modulusOfElasticity_Pa / psi) * I_in4, EI);
    near((row.along.bending_Pa / psi) * S_in3, FbS);
    near(((row.across?.modulusOfElasticity_Pa ?? NaN) / psi) * I_in4, EIacross);
    near(((row.across?.bending_Pa ?? NaN) / psi) * S_in3, FbSacross);
    near(((row.shear_Pa ?? NaN) / psi) * ((2 / 3) * 12 * t_in), shear);
    expect(row.strengthKind).toBe('allowable');
  });

  // Architectural Woodwork Standards, edition 1 (2009), shelf table: longest simple span at L/144, printed to whole inches.
  it.each([
    ['plywood', 0.75, 40, 40],
    ['plywood', 0.75, 50, 37],
    ['northern red oak', 0.75, 40, 49],
    ['northern red oak', 0.75, 50, 46],
    ['northern red oak', 1, 40, 66],
    ['northern red oak', 1, 50, 61],
  ])('%s %d in under %d psf spans %d in', (name, t_in, load_psf, printed_in) => {
    const found = findSpecies(name);
    const E_psi =
      (found.ok
        ? found.row.dry.modulusOfElasticity_Pa
        : panel(name, t_in * inch).along.modulusOfElasticity_Pa) / psi;
    const span_in = Math.cbrt((384 * E_psi * t_in ** 3) / 12 / (5 * 144 * (load_psf / 144)));
    expect(Math.abs(span_in - printed_in)).toBeLessThan(0.8);
  });
});

describe('panels as panels', () => {
  it.each(panels.map((row) => [`${row.id} from ${(row.thicknessFrom_m * 1e3).toFixed(1)} mm`, row] as const))(
    '%s: values are those of a wood panel',
    (_, row) => {
      expect(row.density_kgm3).toBeGreaterThan(400);
      expect(row.density_kgm3).toBeLessThan(1300);
      expect(row.along.modulusOfElasticity_Pa).toBeGreaterThan(1e9);
      expect(row.along.modulusOfElasticity_Pa).toBeLessThan(12e9);
      expect(row.along.bending_Pa).toBeLessThan(60e6);
      if (row.across !== null) {
        expect(row.across.modulusOfElasticity_Pa).toBeLessThanOrEqual(row.along.modulusOfElasticity_Pa);
        expect(row.across.bending_Pa).toBeLessThanOrEqual(row.along.bending_Pa);
      }
      if (row.shear_Pa !== null) expect(row.shear_Pa).toBeLessThan(row.along.bending_Pa / 5);
      expect(row.shearBasis === null).toBe(row.shear_Pa === null);
      expect(row.bearingBasis === null).toBe(row.compressionPerp_Pa === null);
    },
  );

  it('is no stronger or stiffer in a thicker row of the same fibreboard, particleboard or OSB minimum', () => {
    for (const row of panels.filter(({ strengthKind }) => strengthKind === 'minimum requirement')) {
      for (const thicker of panels) {
        if (thicker.id !== row.id || thicker.thicknessFrom_m <= row.thicknessFrom_m) continue;
        expect(thicker.along.bending_Pa).toBeLessThanOrEqual(row.along.bending_Pa);
        expect(thicker.along.modulusOfElasticity_Pa).toBeLessThanOrEqual(row.along.modulusOfElasticity_Pa);
      }
    }
  });

  it('has an allowable stress well under the mean of the same board: kinds are never mixed', () => {
    const mean = panel('osb', 0.0119);
    const allowable = panel('osb-32/16', 0.0119);
    expect(allowable.along.bending_Pa).toBeLessThan(mean.along.bending_Pa / 2);
  });
});

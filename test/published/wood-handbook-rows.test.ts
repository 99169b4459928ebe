import { describe, expect, it } from 'vitest';
import { findSpecies, type ClearStrength, type Species } from '../../calc/catalogue/index.ts';

/*
 * Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021): Table 5-3b (inch-pound), Table 5-3a (metric) and Table 5-1.
 * The numbers below were set down from memory of the printed tables, not from the catalogue's own files.
 */

const psi = 6894.757293168;

function speciesOf(name: string): Species {
  const found = findSpecies(name);
  if (!found.ok) throw new Error(`${name} is in no row`);
  return found.row;
}

function printedOf(strength: ClearStrength | null) {
  if (strength === null) throw new Error('no values at this moisture');
  const asPrinted = (pascals: number | null): number | null =>
    pascals === null ? null : Math.round(pascals / psi);
  return [
    strength.specificGravity,
    asPrinted(strength.modulusOfRupture_Pa),
    Math.round(strength.modulusOfElasticity_Pa / psi / 1e4) / 100,
    asPrinted(strength.compressionPerp_Pa),
    asPrinted(strength.shear_Pa),
    asPrinted(strength.tensionPerp_Pa),
  ];
}

/** Specific gravity, bending psi, stiffness Mpsi, compression across psi, shear psi, tension across psi: green, then 12 %. */
const table53b: [string, (number | null)[], (number | null)[]][] = [
  ['sugar maple', [0.56, 9400, 1.55, 640, 1460, null], [0.63, 15800, 1.83, 1470, 2330, null]],
  ['red maple', [0.49, 7700, 1.39, 400, 1150, null], [0.54, 13400, 1.64, 1000, 1850, null]],
  ['black maple', [0.52, 7900, 1.33, 600, 1130, 720], [0.57, 13300, 1.62, 1020, 1820, 670]],
  ['northern red oak', [0.56, 8300, 1.35, 610, 1210, 750], [0.63, 14300, 1.82, 1010, 1780, 800]],
  ['white oak', [0.6, 8300, 1.25, 670, 1250, 770], [0.68, 15200, 1.78, 1070, 2000, 800]],
  ['black walnut', [0.51, 9500, 1.42, 490, 1220, 570], [0.55, 14600, 1.68, 1010, 1370, 690]],
  ['black cherry', [0.47, 8000, 1.31, 360, 1130, 570], [0.5, 12300, 1.49, 690, 1700, 560]],
  ['yellow-poplar', [0.4, 6000, 1.22, 270, 790, 510], [0.42, 10100, 1.58, 500, 1190, 540]],
  ['American basswood', [0.32, 5000, 1.04, 170, 600, 280], [0.37, 8700, 1.46, 370, 990, 350]],
  ['coast Douglas-fir', [0.45, 7700, 1.56, 380, 900, 300], [0.48, 12400, 1.95, 800, 1130, 340]],
  ['eastern white pine', [0.34, 4900, 0.99, 220, 680, 250], [0.35, 8600, 1.24, 440, 900, 310]],
  ['ponderosa pine', [0.38, 5100, 1.0, 280, 700, 310], [0.4, 9400, 1.29, 580, 1130, 420]],
  ['western redcedar', [0.31, 5200, 0.94, 240, 770, 230], [0.32, 7500, 1.11, 460, 990, 220]],
  ['loblolly pine', [0.47, 7300, 1.4, 390, 860, 260], [0.51, 12800, 1.79, 790, 1390, 470]],
];

describe('species as the Wood Handbook prints them, Table 5-3b', () => {
  it.each(table53b)('%s', (name, green, dry) => {
    const row = speciesOf(name);
    expect(printedOf(row.green)).toEqual(green);
    expect(printedOf(row.dry)).toEqual(dry);
    expect(row.source).toContain('Table 5-3b');
    expect(row.dryMoisture_percent).toBe(12);
  });
});

/** Bending kPa, stiffness MPa, shear kPa: green, then 12 %. */
const table53a: [string, number[], number[]][] = [
  ['sugar maple', [65_000, 10_700, 10_100], [109_000, 12_600, 16_100]],
  ['northern red oak', [57_000, 9_300, 8_300], [99_000, 12_500, 12_300]],
  ['white oak', [57_000, 8_600, 8_600], [105_000, 12_300, 13_800]],
  ['black walnut', [66_000, 9_800, 8_400], [101_000, 11_600, 9_400]],
  ['yellow-poplar', [41_000, 8_400, 5_400], [70_000, 10_900, 8_200]],
  ['eastern white pine', [34_000, 6_800, 4_700], [59_000, 8_500, 6_200]],
];

/** The metric table is rounded on its own, bending to 1,000 kPa, stiffness and shear to 100: half of that and a little. */
const rounding = [600, 60, 60];

describe('the conversion to SI, against the metric printing, Table 5-3a', () => {
  it.each(table53a)('%s', (name, green, dry) => {
    const row = speciesOf(name);
    const metric = (strength: ClearStrength | null): number[] => [
      (strength?.modulusOfRupture_Pa ?? NaN) / 1e3,
      (strength?.modulusOfElasticity_Pa ?? NaN) / 1e6,
      (strength?.shear_Pa ?? NaN) / 1e3,
    ];
    const values = [...metric(row.green), ...metric(row.dry)];
    [...green, ...dry].forEach((printed, at) => {
      expect(Math.abs((values[at] ?? NaN) - printed)).toBeLessThan(rounding[at % 3] ?? NaN);
    });
  });
});

describe('elastic ratios, Table 5-1', () => {
  it.each([
    ['sugar maple', 0.065, 0.132, 0.111, 0.063],
    ['coast Douglas-fir', 0.05, 0.068, 0.064, 0.078],
    ['Sitka spruce', 0.043, 0.078, 0.064, 0.061],
    ['yellow-poplar', 0.043, 0.092, 0.075, 0.069],
  ])('%s', (name, tangential, radial, shearRadial, shearTangential) => {
    const { elastic } = speciesOf(name);
    expect(elastic).toMatchObject({
      ET_over_EL: tangential,
      ER_over_EL: radial,
      GLR_over_EL: shearRadial,
      GLT_over_EL: shearTangential,
    });
  });

  it('prints no LT shear ratio for white oak, and none is invented', () => {
    expect(speciesOf('white oak').elastic?.GLT_over_EL).toBeNull();
  });

  it.each([
    ['yellow birch', 0.017],
    ['black walnut', 0.021],
    ['yellow-poplar', 0.011],
    ['coast Douglas-fir', 0.007],
    ['Sitka spruce', 0.003],
  ])('%s: shear that rolls the fibres, G_RT / E_L (memory)', (name, rolling) => {
    expect(speciesOf(name).elastic?.GRT_over_EL).toBe(rolling);
  });

  it('prints none of that for sugar maple, and none is invented', () => {
    expect(speciesOf('sugar maple').elastic?.GRT_over_EL).toBeNull();
  });
});

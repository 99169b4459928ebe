import { describe, expect, it } from 'vitest';
import { readCriteria } from '../../../calc/catalogue/criteria.ts';
import { readDensities } from '../../../calc/catalogue/densities.ts';
import { readFasteners } from '../../../calc/catalogue/fasteners.ts';
import { readGradedLumber } from '../../../calc/catalogue/graded-lumber-row.ts';
import { readFramingWoods } from '../../../calc/catalogue/framing-woods.ts';
import { readMetals } from '../../../calc/catalogue/metals.ts';
import { NameIndex } from '../../../calc/catalogue/name-index.ts';
import { readPanels } from '../../../calc/catalogue/panel-row.ts';
import { readSpecies } from '../../../calc/catalogue/species-row.ts';
import { tableText } from '../../../calc/catalogue/table.ts';
import { readThings } from '../../../calc/catalogue/things.ts';
import { changedTable } from './changed-table.ts';

const corrupted = (file: string, line: number, heading: string, cell: string): string =>
  changedTable(file, heading, cell, (each) => each === line);

describe('a corrupted table is refused, naming file, line and column', () => {
  it.each([
    ['green_bending_psi', '9,400', /species\.csv, line 3, column green_bending_psi: "9,400" is not a number/],
    ['green_bending_psi', 'nine', /species\.csv, line 3, column green_bending_psi: "nine" is not a number/],
    ['green_bending_psi', '-9400', /species\.csv, line 3, column green_bending_psi/],
    ['dry_bending_psi', '', /species\.csv, line 3, column dry_bending_psi: is empty/],
    ['dry_bending_psi', '0', /species\.csv, line 3, column dry_bending_psi: is not above zero/],
    ['dry_elasticity_Mpsi', '1e99', /species\.csv, line 3, column dry_elasticity_Mpsi/],
    ['dry_specific_gravity', '0.5.6', /species\.csv, line 3, column dry_specific_gravity/],
    ['group', 'palm', /species\.csv, line 3, column group: is neither hardwood nor softwood/],
    ['elastic', 'no-such-wood', /species\.csv, line 3, column elastic: is in no row of the elastic ratios/],
    ['likely', 'perhaps', /species\.csv, line 3, column likely/],
    ['source', '', /species\.csv, line 3, column source: is empty/],
    ['provenance', '', /species\.csv, line 3, column provenance: is empty/],
    ['id', 'Black Ash', /species\.csv, line 3, column id/],
  ])('species, %s "%s"', (heading, cell, message) => {
    expect(() => readSpecies(corrupted('species.csv', 3, heading, cell), 'species.csv')).toThrow(message);
  });

  it('a column that nobody asked for, and one that is missing', () => {
    const [headings = '', ...rows] = tableText('densities.csv').trimEnd().split('\n');
    const widened = [`${headings},colour`, ...rows.map((row) => `${row},red`)].join('\n');
    expect(() => readDensities(widened, 'densities.csv')).toThrow(/densities\.csv, line 2/);
    const renamed = [headings.replace('low_kgm3', 'lowest_kgm3'), ...rows].join('\n');
    expect(() => readDensities(renamed, 'densities.csv')).toThrow(/densities\.csv, line 2, column low_kgm3/);
  });

  it('a density whose low end is over its high end', () => {
    const text = corrupted('densities.csv', 2, 'low_kgm3', '9999');
    expect(() => readDensities(text, 'densities.csv')).toThrow(/line 2, column high_kgm3/);
  });

  it('a screw thicker at its root than at its shank', () => {
    const text = corrupted('fasteners.csv', 2, 'root_in', '0.2');
    expect(() => readFasteners(text, 'fasteners.csv')).toThrow(/line 2, column root_in/);
  });

  it('a metal that yields above the stress at which it breaks', () => {
    const text = corrupted('metals.csv', 2, 'yield_ksi', '60');
    expect(() => readMetals(text, 'metals.csv')).toThrow(/metals\.csv, line 2, column yield_ksi/);
  });

  it('a limit whose number is not the one in its words', () => {
    const text = corrupted('criteria.csv', 2, 'span_divisor', '300');
    expect(() => readCriteria(text, 'criteria.csv')).toThrow(/criteria\.csv, line 2, column span_divisor/);
  });

  it('a framing wood without a specific gravity', () => {
    const text = corrupted('framing-woods.csv', 2, 'specific_gravity', '');
    expect(() => readFramingWoods(text, 'framing-woods.csv')).toThrow(/line 2, column specific_gravity/);
  });

  it('lumber whose widths run backwards', () => {
    const text = corrupted('graded-lumber.csv', 2, 'nominal_to', '1');
    expect(() => readGradedLumber(text, 'graded-lumber.csv')).toThrow(/line 2, column nominal_to/);
  });

  it('a panel without a name, and one with half of its values across', () => {
    const named = [{ id: 'plywood', name: 'Plywood', family: 'plywood' as const, other_names: [] }];
    const nameless = tableText('panels.csv').split('\n').slice(0, 3).join('\n');
    expect(() => readPanels(nameless, 'panels.csv', named)).toThrow(/line 3, column id/);
    const half = corrupted('panels.csv', 2, 'across_bending_MPa', '5').split('\n').slice(0, 2).join('\n');
    expect(() => readPanels(half, 'panels.csv', named)).toThrow(/line 2, column across_bending_MPa/);
  });

  it.each([
    ['density', 'moon-rock', /line 2, column density: is in no row/],
    ['wall_mm', '', /line 2, column wall_mm: is not what a disc has/],
    ['depth_mm', '10', /line 2, column depth_mm: is not what a disc has/],
    ['fill', '0.5', /line 2, column fill_density: is empty, and the thing is not/],
    ['fill', '1.5', /line 2, column fill/],
  ])('a thing, %s "%s"', (heading, cell, message) => {
    expect(() => readThings(corrupted('contents.csv', 2, heading, cell), 'contents.csv')).toThrow(message);
  });

  it('two rows that share a name', () => {
    const rows = [
      { id: 'a', name: 'Red pine', otherNames: [] },
      { id: 'b', name: 'Norway pine', otherNames: ['red-pine'] },
    ];
    expect(() => new NameIndex(rows, 'woods')).toThrow(/woods: "red-pine" names both a and b/);
  });
});

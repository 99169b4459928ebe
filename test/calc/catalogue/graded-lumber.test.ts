import { describe, expect, it } from 'vitest';
import {
  combinations,
  findCombination,
  findFramingWood,
  findGradedLumber,
  gradedLumber,
  type GradedLumber,
} from '../../../calc/catalogue/index.ts';

const psi = 6894.757293168;

function lumber(combination: string, grade: string, width_in: number): GradedLumber {
  const found = findGradedLumber(combination, grade, width_in);
  if (!found.ok) throw new Error(`${combination} ${grade} ${width_in}: ${found.reason}`);
  return found.row;
}

describe('graded lumber as the NDS Supplement 2018 prints it', () => {
  // Tables 4A and 4B, from memory: F_b, F_v, F_c perp psi, E Mpsi, G.
  it.each([
    ['Douglas Fir-Larch', 'No.2', 8, [900, 180, 625, 1.6, 0.5]],
    ['Douglas Fir-Larch', 'Select Structural', 8, [1500, 180, 625, 1.9, 0.5]],
    ['Hem-Fir', 'No.2', 8, [850, 150, 405, 1.3, 0.43]],
    ['Spruce-Pine-Fir', 'No.1/No.2', 8, [875, 135, 425, 1.4, 0.42]],
    ['Southern Pine', 'No.2', 4, [1100, 175, 565, 1.4, 0.55]],
    ['Southern Pine', 'No.2', 8, [925, 175, 565, 1.4, 0.55]],
    ['Southern Pine', 'No.1', 12, [1000, 175, 565, 1.6, 0.55]],
  ] as const)('%s %s, %d in', (combination, grade, width_in, printed) => {
    const row = lumber(combination, grade, width_in);
    expect([
      Math.round(row.bending_Pa / psi),
      Math.round(row.shear_Pa / psi),
      Math.round(row.compressionPerp_Pa / psi),
      Number((row.modulusOfElasticity_Pa / psi / 1e6).toFixed(2)),
      row.specificGravity,
    ]).toEqual(printed);
  });

  it('uses the lower of two readings of Spruce-Pine-Fir Select Structural bending, and says so', () => {
    const row = lumber('SPF', 'SS', 6);
    expect(row.bending_Pa / psi).toBeCloseTo(1150, 6);
    expect(row.provenance).toContain('1250');
  });
});

describe('finding graded lumber', () => {
  it.each([
    'No.2',
    'No. 2',
    'no 2',
    '#2',
    '2',
    'NO.2',
    'number 2',
    'Grade 2',
    '2&btr',
    'No. 2 and better',
    '#2 & BTR',
  ])('takes "%s" for No.2', (grade) => {
    expect(lumber('Hem-Fir', grade, 6).grade).toBe('No.2');
    expect(lumber('SPF', grade, 6).grade).toBe('No.1/No.2');
  });

  it('keeps No.1 & better apart from No.1', () => {
    expect(lumber('DF-L', 'No.1 & Btr', 6).grade).toBe('No.1&Btr');
    expect(lumber('DF-L', '#1 and better', 6).grade).toBe('No.1&Btr');
    expect(lumber('DF-L', '#1', 6).grade).toBe('No.1');
    expect(findGradedLumber('SPF', 'No.1 & Btr', 6)).toMatchObject({ ok: false, reason: 'no-such-grade' });
  });

  it('finds stud lumber under its joint row, and not wider than 6 in (Table 4A)', () => {
    expect(lumber('southern pine', 'Stud', 4).grade).toBe('No.3 and Stud');
    expect(lumber('SPF', 'stud', 6).grade).toBe('Stud');
    expect(findGradedLumber('SPF', 'stud', 8)).toMatchObject({ ok: false, reason: 'no-such-width' });
  });

  it('says which of the three it does not know', () => {
    const misspelled = findGradedLumber('Spruse Pine Fir', 'No.2', 8);
    expect(misspelled).toMatchObject({ ok: false, reason: 'unknown-name' });
    expect(!misspelled.ok && misspelled.nearest[0]).toBe('Spruce-Pine-Fir');
    expect(findGradedLumber('SPF', 'Prime', 8)).toMatchObject({
      reason: 'no-such-grade',
      combination: 'Spruce-Pine-Fir',
    });
    expect(findGradedLumber('Southern Pine', 'No.2', 14)).toMatchObject({
      reason: 'no-such-width',
      grade: 'No.2',
      widths: [
        { from_in: 2, to_in: 4 },
        { from_in: 5, to_in: 6 },
        { from_in: 8, to_in: 8 },
        { from_in: 10, to_in: 10 },
        { from_in: 12, to_in: 12 },
      ],
    });
    expect(findGradedLumber('SPF', 'No.2', 1)).toMatchObject({ reason: 'no-such-width' });
    expect(findGradedLumber('SPF', 'No.2', NaN)).toMatchObject({ reason: 'no-such-width' });
    expect(findGradedLumber('SPF', '', 8)).toMatchObject({ reason: 'no-such-grade' });
  });

  it('finds every row, and one row only, by what it says of itself', () => {
    expect(new Set(gradedLumber.map((row) => row.id)).size).toBe(gradedLumber.length);
    for (const row of gradedLumber) {
      expect(lumber(row.combination, row.grade, row.nominalWidthFrom_in)).toBe(row);
      const rivals = gradedLumber.filter(
        (other) =>
          other.combination === row.combination &&
          other.grade === row.grade &&
          other.nominalWidthFrom_in <= row.nominalWidthTo_in &&
          row.nominalWidthFrom_in <= other.nominalWidthTo_in,
      );
      expect(rivals).toEqual([row]);
    }
  });

  it('finds each combination by each of its names', () => {
    for (const row of combinations) {
      for (const name of [row.id, row.name, ...row.otherNames]) {
        expect(findCombination(name)).toEqual({ ok: true, row });
      }
    }
  });
});

describe('graded lumber as lumber', () => {
  it('is no stronger in a lower grade, nor stiffer', () => {
    const ladder = ['SS', 'No.1&Btr', 'No.1', 'No.1/No.2', 'No.2', 'No.3', 'No.3 and Stud'];
    for (const higher of gradedLumber) {
      for (const lower of gradedLumber) {
        const sameSize =
          higher.combination === lower.combination &&
          higher.nominalWidthFrom_in === lower.nominalWidthFrom_in;
        const below = ladder.indexOf(lower.grade) > ladder.indexOf(higher.grade);
        if (!sameSize || !below || higher.grade === 'Stud' || lower.grade === 'Stud') continue;
        expect(lower.bending_Pa, `${lower.id} under ${higher.id}`).toBeLessThanOrEqual(higher.bending_Pa);
        expect(lower.modulusOfElasticity_Pa).toBeLessThanOrEqual(higher.modulusOfElasticity_Pa);
      }
    }
  });

  it('loses bending strength with width in Table 4B, where the size factor is inside', () => {
    for (const row of gradedLumber.filter(({ table }) => table === '4B')) {
      for (const wider of gradedLumber) {
        if (wider.table !== '4B' || wider.grade !== row.grade) continue;
        if (wider.nominalWidthFrom_in <= row.nominalWidthTo_in) continue;
        expect(wider.bending_Pa).toBeLessThan(row.bending_Pa);
      }
    }
  });

  it('has the specific gravity that Table 12.3.3A assigns to the same wood', () => {
    for (const row of gradedLumber) {
      const assigned = findFramingWood(row.combination);
      expect(assigned.ok && assigned.row.specificGravity, row.combination).toBe(row.specificGravity);
    }
  });

  // Residential Structural Design Guide (HUD), density table, lb/ft3 at about 10 % moisture by a rougher rule (1.1 G): 6 %.
  it.each([
    ['Spruce-Pine-Fir', 29],
    ['Spruce-Pine-Fir (South)', 25],
    ['Southern Pine', 38],
    ['Douglas Fir-Larch', 34],
    ['Hem-Fir', 30],
  ])('%s weighs about %d lb/ft3', (combination, printed_pcf) => {
    for (const row of gradedLumber.filter((each) => each.combination === combination)) {
      expect(row.density_kgm3 / (printed_pcf * 16.01846)).toBeGreaterThan(0.94);
      expect(row.density_kgm3 / (printed_pcf * 16.01846)).toBeLessThan(1.06);
    }
  });
});

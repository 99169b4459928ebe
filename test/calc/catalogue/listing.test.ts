import { describe, expect, it } from 'vitest';
import {
  catalogueListing,
  criteria,
  findFramingWood,
  framingWoods,
  species,
} from '../../../calc/catalogue/index.ts';

const listing = catalogueListing();
const tables = Object.entries(listing) as [string, readonly object[]][];

function everything(value: unknown): unknown[] {
  if (typeof value !== 'object' || value === null) return [value];
  return [value, ...Object.values(value).flatMap(everything)];
}

describe('the listing of the catalogue', () => {
  it('survives JSON unchanged', () => {
    expect(JSON.parse(JSON.stringify(listing))).toEqual(listing);
  });

  it.each(tables)('%s: every row says where it is from', (_, rows) => {
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      expect(row).toHaveProperty('source', expect.stringMatching(/./));
      expect(row).toHaveProperty('provenance', expect.stringMatching(/read|memory|taken from the rows/));
    }
  });

  it('holds no number that is not one', () => {
    for (const value of everything(listing)) {
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    }
  });

  it('names a standard, a book or common practice as a source, no web site', () => {
    for (const value of everything(listing)) {
      if (typeof value === 'string')
        expect(value).not.toMatch(/https?:|www\.|\.(?:com|org|net|py|js|json)\b|@/);
    }
  });

  it('is frozen through and through', () => {
    for (const value of everything(listing)) {
      if (typeof value === 'object' && value !== null) expect(Object.isFrozen(value)).toBe(true);
    }
    expect(() => Object.assign(species[0]?.dry ?? {}, { modulusOfRupture_Pa: 1 })).toThrow(TypeError);
    expect(Object.isFrozen(species)).toBe(true);
  });

  it('includes the wood that is not known', () => {
    expect(listing.species.map(({ id }) => id)).toContain('not-sure');
  });
});

describe('published limits', () => {
  // IBC 2021 Table 1604.3; AWS 2009 section 10; ANSI/KCMA A161.1 5.1: from memory.
  it.each([
    ['ibc-floor-live', 360, null],
    ['ibc-floor-total', 240, null],
    ['woodwork-shelf-deflection', 144, null],
    ['woodwork-shelf-books', null, 2394.0],
    ['kitchen-shelf-load', null, 718.2],
    ['kitchen-shelf-deflection', 192, null],
    ['tile-substrate', 360, null],
    ['stone-substrate', 720, null],
  ])('%s', (id, divisor, load_Npm2) => {
    const row = criteria.find((each) => each.id === id);
    expect(row?.spanDivisor).toBe(divisor);
    if (load_Npm2 === null) expect(row?.load_Npm2).toBeNull();
    else expect(row?.load_Npm2 ?? NaN).toBeCloseTo(load_Npm2, 0);
  });

  it('have an id each', () => {
    expect(new Set(criteria.map(({ id }) => id)).size).toBe(criteria.length);
  });
});

describe('framing woods, NDS 2018 Table 12.3.3A (from memory)', () => {
  it.each([
    ['Douglas Fir-Larch', 0.5],
    ['Hem-Fir', 0.43],
    ['Spruce-Pine-Fir', 0.42],
    ['SPF', 0.42],
    ['spruce-pine-fir-south', 0.36],
    ['Southern Pine', 0.55],
    ['Northern Species', 0.35],
    ['Red Maple', 0.58],
    ['White Oak', 0.73],
  ])('%s %d', (name, specificGravity) => {
    const found = findFramingWood(name);
    expect(found.ok && found.row.specificGravity).toBe(specificGravity);
  });

  it('lie in the range the connection tables cover, 0.31 to 0.73 (Tables 12.2A to C)', () => {
    for (const row of framingWoods) {
      expect(row.specificGravity).toBeGreaterThanOrEqual(0.31);
      expect(row.specificGravity).toBeLessThanOrEqual(0.73);
      for (const name of [row.id, row.name, ...row.otherNames])
        expect(findFramingWood(name)).toEqual({ ok: true, row });
    }
  });
});

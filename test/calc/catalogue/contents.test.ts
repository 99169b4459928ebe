import { describe, expect, it } from 'vitest';
import { densities, findDensity, findThing, things, type Thing } from '../../../calc/catalogue/index.ts';

function thing(name: string): Thing {
  const found = findThing(name);
  if (!found.ok) throw new Error(`${name} is in no row`);
  return found.row;
}

/** Rough weight by the plainest geometry, kg: good enough to tell whether sizes and densities go together. */
function roughWeight(row: Thing): number {
  const { diameter_m: d, wall_m: t, height_m: h, width_m: w, depth_m: p } = row;
  const inside = row.fill * (row.fillDensity_kgm3 ?? 0);
  if (row.shape === 'block') return (w ?? NaN) * (h ?? NaN) * (p ?? NaN) * row.density_kgm3;
  if (d === null || t === null || h === null) return NaN;
  if (row.shape === 'disc') return (Math.PI / 4) * d ** 2 * t * row.density_kgm3;
  if (row.shape === 'bowl') return Math.PI * (d ** 2 / 4 + h ** 2) * t * row.density_kgm3;
  const shell = (Math.PI * d * h + (Math.PI / 4) * d ** 2) * t;
  return shell * row.density_kgm3 + (Math.PI / 4) * (d - 2 * t) ** 2 * (h - t) * inside;
}

describe('what stands on shelves', () => {
  // Kitchen-scale weights, kg: common practice, no source.
  it.each([
    ['dinner plate', 0.5, 1],
    ['side plate', 0.25, 0.6],
    ['soup bowl', 0.3, 0.7],
    ['mug', 0.25, 0.5],
    ['drinking glass', 0.15, 0.4],
    ['wine glass', 0.1, 0.3],
    ['bottle of wine', 1.1, 1.6],
    ['tin of food', 0.4, 0.75],
    ['hardback book', 0.6, 1.4],
    ['paperback', 0.2, 0.7],
    ['cookbook', 1.2, 2.5],
    ['storage jar of flour', 1.3, 2.5],
    ['cast-iron pan', 2, 4],
    ['stock pot', 1.5, 3.5],
    ['plant in a pot', 3, 8],
    ['cutting board', 1, 3],
    ['record in its sleeve', 0.2, 0.4],
    ['basket of linen', 3, 10],
  ])('a %s weighs between %d and %d kg', (name, least_kg, most_kg) => {
    expect(roughWeight(thing(name))).toBeGreaterThan(least_kg);
    expect(roughWeight(thing(name))).toBeLessThan(most_kg);
  });

  it('finds every thing by each of its names', () => {
    for (const row of things) {
      for (const name of [row.id, row.name, ...row.otherNames]) expect(thing(name), name).toBe(row);
    }
    const missing = findThing('diner plate');
    expect(!missing.ok && missing.nearest[0]).toBe('Dinner plate');
  });

  it('has a wall that leaves room inside, and takes the high density of its material', () => {
    for (const row of things) {
      if (row.diameter_m !== null) expect(2 * (row.wall_m ?? NaN)).toBeLessThan(row.diameter_m);
      const material = densities.find(({ id }) => id === row.densityId);
      expect(row.density_kgm3).toBe(material?.high_kgm3);
    }
  });
});

describe('densities', () => {
  it('are positive, in order and none heavier than copper', () => {
    for (const row of densities) {
      expect(row.low_kgm3).toBeGreaterThan(100);
      expect(row.low_kgm3).toBeLessThanOrEqual(row.high_kgm3);
      expect(row.high_kgm3).toBeLessThan(9000);
    }
  });

  // EN 572-1 soda-lime glass 2500; EN 1991-1-1 Table A.4 steel 77 to 78.5 kN/m³; water 1000: from memory.
  it.each([
    ['glass', 2500],
    ['steel', 7850],
    ['water', 1000],
    ['aluminum', 2700],
    ['granite', 2700],
  ])('%s spans %d kg/m³', (name, value) => {
    const found = findDensity(name);
    if (!found.ok) throw new Error(`${name} is in no row`);
    expect(found.row.low_kgm3).toBeLessThanOrEqual(value);
    expect(found.row.high_kgm3).toBeGreaterThanOrEqual(value);
  });

  it('finds every density by each of its names', () => {
    for (const row of densities) {
      for (const name of [row.id, row.name, ...row.otherNames])
        expect(findDensity(name)).toEqual({ ok: true, row });
    }
  });
});

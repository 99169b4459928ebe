import { describe, expect, it } from 'vitest';
import {
  fasteners,
  findFastener,
  findMetal,
  metals,
  type Fastener,
  type Metal,
} from '../../../calc/catalogue/index.ts';

const inch = 0.0254;
const psi = 6894.757293168;

function fastener(name: string): Fastener {
  const found = findFastener(name);
  if (!found.ok) throw new Error(`${name} is in no row`);
  return found.row;
}

function metal(name: string): Metal {
  const found = findMetal(name);
  if (!found.ok) throw new Error(`${name} is in no row`);
  return found.row;
}

describe('fasteners as the NDS 2018 prints them, Appendix L and Table I1 (from memory)', () => {
  it.each([
    ['#6', 0.138, 0.113, 100_000],
    ['#8', 0.164, 0.131, 90_000],
    ['#10', 0.19, 0.152, 80_000],
    ['#12', 0.216, 0.171, 80_000],
    ['#14', 0.242, 0.196, 70_000],
    ['lag-screw-1/4', 0.25, 0.173, 70_000],
    ['lag-screw-5/16', 0.3125, 0.227, 60_000],
    ['lag-screw-3/8', 0.375, 0.265, 45_000],
    ['lag-screw-1/2', 0.5, 0.371, 45_000],
    ['common-nail-8d', 0.131, 0.131, 100_000],
    ['common-nail-10d', 0.148, 0.148, 90_000],
    ['common-nail-16d', 0.162, 0.162, 90_000],
  ])('%s', (name, diameter_in, root_in, yield_psi) => {
    const row = fastener(name);
    expect(row.diameter_m).toBeCloseTo(diameter_in * inch, 9);
    expect(row.rootDiameter_m).toBeCloseTo(root_in * inch, 9);
    expect(row.bendingYield_Pa / psi).toBeCloseTo(yield_psi, 3);
  });

  it('gives a tapered tip to lag screws only: 5/32 in at 1/4 in (Table L2)', () => {
    expect(fastener('1/4 in lag screw').tip_m).toBeCloseTo((5 / 32) * inch, 9);
    for (const row of fasteners) expect(row.tip_m === null, row.id).toBe(row.kind !== 'lag-screw');
  });

  it('bends at less stress the thicker it is, and its head is wider than its shank', () => {
    for (const row of fasteners) {
      expect(row.headDiameter_m ?? NaN).toBeGreaterThan(1.4 * row.diameter_m);
      for (const thicker of fasteners) {
        if (thicker.kind !== row.kind || thicker.diameter_m <= row.diameter_m) continue;
        expect(thicker.bendingYield_Pa).toBeLessThanOrEqual(row.bendingYield_Pa);
      }
    }
  });

  it.each([
    ['wood-screw-10', 'wood-screw-10'],
    ['#10 wood screw', 'wood-screw-10'],
    ['wood screw #10', 'wood-screw-10'],
    ['No. 10', 'wood-screw-10'],
    ['1/4 lag', 'lag-screw-1/4'],
    ['lag screw 1/4', 'lag-screw-1/4'],
    ['1/4 in lag bolt', 'lag-screw-1/4'],
    ['10d', 'common-nail-10d'],
    ['10d common nail', 'common-nail-10d'],
  ])('"%s" is %s', (name, id) => {
    expect(fastener(name).id).toBe(id);
  });

  it('does not take a size it has no row for: it offers the nearest', () => {
    const found = findFastener('#11 wood screw');
    expect(found.ok).toBe(false);
    expect(!found.ok && found.nearest.length).toBeGreaterThan(0);
    expect(findFastener('lag screw 14').ok).toBe(false);
  });
});

describe('metals', () => {
  // ASTM A36 36 ksi (248 MPa), E 29,000 ksi (AISC 360); EN 10025 S235 235 MPa, E 210 GPa (EN 1993-1-1 3.2.6); from memory.
  it.each([
    ['a36', 248.2, 199.9],
    ['S235', 235, 210],
    ['S275', 275, 210],
    ['6061-T6', 241.3, 69.6],
  ])('%s', (name, yield_MPa, stiffness_GPa) => {
    expect((metal(name).yield_Pa ?? NaN) / 1e6).toBeCloseTo(yield_MPa, 1);
    expect((metal(name).modulusOfElasticity_Pa ?? NaN) / 1e9).toBeCloseTo(stiffness_GPa, 1);
  });

  it.each([
    ['steel', 'a36'],
    ['mild steel', 'a36'],
    ['aluminum', 'aluminium-6063-t5'],
    ['cast iron', 'cast-iron-20'],
    ['stainless steel', 'stainless-304'],
  ])('"%s" alone is the weakest of its sort on the shelf, %s', (name, id) => {
    expect(metal(name).id).toBe(id);
    const { kind, ultimate_Pa } = metal(name);
    if (kind === 'steel') return;
    for (const other of metals.filter((row) => row.kind === kind)) {
      expect(ultimate_Pa).toBeLessThanOrEqual(other.ultimate_Pa);
    }
  });

  it('has no yield point for grey cast iron, and one under the ultimate strength for the rest', () => {
    for (const row of metals) {
      expect(row.yield_Pa === null, row.id).toBe(row.kind === 'cast-iron');
      if (row.yield_Pa !== null) expect(row.yield_Pa).toBeLessThan(row.ultimate_Pa);
      expect(row.density_kgm3).toBeGreaterThan(2600);
      expect(row.density_kgm3).toBeLessThan(9000);
    }
  });
});

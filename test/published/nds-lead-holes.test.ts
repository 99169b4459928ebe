import { describe, expect, it } from 'vitest';
import { findFastener } from '../../calc/catalogue/index.ts';
import { leadHole, type LeadHole } from '../../calc/standards/nds-2018/12.1-holes.ts';
import { inch } from './values/units.ts';

/**
 * NDS 2018 12.1.4.2 (lag screws: clearance hole of the shank's diameter; for the thread 65-85 % of it where G > 0.6, 60-75 %
 * where 0.5 < G <= 0.6, 40-70 % where G <= 0.5), 12.1.5.2 and 12.1.5.3 (wood screws: about 90 % of the root where G > 0.6,
 * about 70 % where 0.5 < G <= 0.6, none needed at or below; for the shank its own diameter where G > 0.6, about 7/8 of it
 * otherwise), 12.1.6.2 (nails: at most 90 % of the diameter where G > 0.6, 75 % otherwise). The words of the clauses are from
 * memory; diameters are those of NDS Appendix L, Tables L2 to L4: 1/4 in lag 0.250; no. 10 screw 0.190, root 0.152; no. 8
 * root 0.131; 16d nail 0.162.
 */
const printed: readonly (readonly [string, number, number, number, number, boolean, string])[] = [
  ['lag-screw-1/4', 0.63, 0.65 * 0.25, 0.85 * 0.25, 0.25, true, 'NDS 12.1.4'],
  ['lag-screw-1/4', 0.6, 0.6 * 0.25, 0.75 * 0.25, 0.25, true, 'NDS 12.1.4'],
  ['lag-screw-1/4', 0.5, 0.4 * 0.25, 0.7 * 0.25, 0.25, true, 'NDS 12.1.4'],
  ['wood-screw-10', 0.61, 0.9 * 0.152, 0.9 * 0.152, 0.19, true, 'NDS 12.1.5'],
  ['wood-screw-10', 0.55, 0.7 * 0.152, 0.7 * 0.152, (7 / 8) * 0.19, true, 'NDS 12.1.5'],
  ['wood-screw-10', 0.42, 0.7 * 0.152, 0.7 * 0.152, (7 / 8) * 0.19, false, 'NDS 12.1.5'],
  ['wood-screw-8', 0.63, 0.9 * 0.131, 0.9 * 0.131, 0.164, true, 'NDS 12.1.5'],
  ['common-nail-16d', 0.67, 0.9 * 0.162, 0.9 * 0.162, 0, false, 'NDS 12.1.6'],
  ['common-nail-16d', 0.6, 0.75 * 0.162, 0.75 * 0.162, 0, false, 'NDS 12.1.6'],
];

function holeFor(id: string, G: number): LeadHole {
  const found = findFastener(id);
  if (!found.ok) throw new Error(id);
  return leadHole(found.row, G);
}

describe('lead holes', () => {
  it.each(printed)('of a %s in wood of G %d', (id, G, from_in, to_in, shank_in, isNeeded, clause) => {
    const hole = holeFor(id, G);
    expect(hole.thread.from_m / inch).toBeCloseTo(from_in, 6);
    expect(hole.thread.to_m / inch).toBeCloseTo(to_in, 6);
    expect(hole.shank_m / inch).toBeCloseTo(shank_in, 6);
    expect(hole.isNeeded).toBe(isNeeded);
    expect(hole.clause).toBe(clause);
  });
});

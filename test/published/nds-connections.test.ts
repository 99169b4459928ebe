import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findFastener, type Fastener } from '../../calc/catalogue/index.ts';
import type { Fixing, Ground } from '../../calc/elements/fixing/fixing.ts';
import { referenceLateralOf, tipOf, withdrawalOf } from '../../calc/elements/fixing/values.ts';
import { inch, poundForce } from './values/units.ts';

/**
 * Values printed in the NDS 2018: withdrawal in Tables 12.2A, 12.2B and 12.2C (lbf for each inch of thread), lateral in
 * Tables 12K (lag screws, steel plate of ASTM A653), 12L (wood screws) and 12N (common nails). Read in open copies and
 * copies. The tables are for no gap: the general dowel equations must come down to them.
 */
const rows = readFileSync(new URL('./tables/nds-connections.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [
      table = '',
      fastener = '',
      side = '',
      side_in = '',
      G = '',
      what = '',
      printed = '',
      rounded = '',
    ] = line.split(',');
    return {
      table,
      fastener,
      side,
      side_in: Number(side_in),
      G: Number(G),
      what,
      printed: Number(printed),
      rounded: Number(rounded),
    };
  });

function named(name: string): Fastener {
  const found = findFastener(name);
  if (!found.ok) throw new Error(`no fastener ${name}`);
  return found.row;
}

type Wood = Extract<Ground, { kind: 'wood' }>;

/** A fastener through a plate with no gap: 8 D of a lag's thread without its tip, 10 D of a screw or nail. */
function throughPlate(
  fastener: Fastener,
  side_m: number,
  G: number,
  angle_deg: 0 | 90,
): Fixing & { ground: Wood } {
  const D = fastener.diameter_m;
  const penetration_m = fastener.kind === 'lag-screw' ? 8 * D + tipOf(fastener) : 10 * D;
  const ground: Wood = {
    kind: 'wood',
    G,
    angle_deg,
    grain: 'side',
    depth_m: 1,
    width_m: 1.5 * inch,
    E_Pa: 1e10,
  };
  return {
    system: 'inch-pound',
    plate: { height_m: 0.2, width_m: 0.03, thickness_m: side_m },
    fastener,
    allowable: null,
    length_m: side_m + penetration_m,
    thread_m: penetration_m,
    heights_m: [0.1],
    driven: 'straight',
    perHeight: 1,
    across_m: 0,
    gap_m: 0,
    ground,
    blockingHeight_m: null,
    moisture: 'dry',
    temperature: 'ordinary',
    coveringBearing_Pa: null,
  };
}

describe('withdrawal, NDS 2018 Tables 12.2A, 12.2B, 12.2C', () => {
  it.each(rows.filter(({ what }) => what === 'W'))('$table: $fastener in G $G: $printed lbf/in', (row) => {
    const fastener = named(row.fastener);
    const fixing = throughPlate(fastener, inch / 8, row.G, 0);
    const tip = fastener.kind === 'lag-screw' ? tipOf(fastener) : 0;
    const perInch = (withdrawalOf(fixing, fastener, fixing.ground, 1).value / (fixing.thread_m - tip)) * inch;
    expect(Math.abs(perInch / poundForce - row.printed)).toBeLessThanOrEqual(0.5 * row.rounded + 0.01);
  });
});

describe('lateral through a steel plate, NDS 2018 Table 12K, printed to 10 lbf', () => {
  it.each(rows.filter(({ table }) => table === '12K'))(
    '$fastener, plate $side_in in, G $G, $what: $printed lbf',
    (row) => {
      const fastener = named(row.fastener);
      const angle = row.what === 'perpendicular' ? 90 : 0;
      const fixing = throughPlate(fastener, row.side_in * inch, row.G, angle);
      const Z = referenceLateralOf(fixing, fastener, fixing.ground).value / poundForce;
      expect(Math.abs(Z - row.printed)).toBeLessThanOrEqual(0.5 * row.rounded + 0.05);
    },
  );
});

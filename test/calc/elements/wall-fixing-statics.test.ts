import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { inch, line, poundForce, psi, shelf } from './documents.ts';
import { answer } from './wall-fixing-documents.ts';

/*
 * Plates by hand statics, what stands behind them, and what is said of it. Forces in lbf, lengths in inches; printed values
 * of the NDS 2018 by its table.
 */
const lbf = (quantity: { readonly value: number } | null): number => (quantity?.value ?? NaN) / poundForce;
const inPsi = (quantity: { readonly value: number } | null): number => (quantity?.value ?? NaN) / psi;

/**
 * Pull on the highest of screws like springs behind a rigid plate whose lower end can only push: the push is sought that
 * leaves the plate either on the wall or without a push.
 */
function pullOnSprings(heights: readonly number[], C: number, N: number): number {
  const n = heights.length;
  const middle = heights.reduce((sum, z) => sum + z, 0) / n;
  const spread = heights.reduce((sum, z) => sum + (z - middle) ** 2, 0);
  // The plate moves out by w at the middle of the screws and turns by t, under a push R at the lower end.
  const stand = (R: number) => ({ w: (N + R) / n, t: spread > 0 ? (C - R * middle) / spread : 0 });
  const end = (R: number): number => stand(R).w - stand(R).t * middle;
  let [low, high] = [0, 1e6];
  // Off the wall where no push is needed to keep its end out of it.
  if (end(0) >= 0) high = 0;
  for (let round = 0; round < 200; round++) {
    const R = (low + high) / 2;
    if (end(R) < 0) low = R;
    else high = R;
  }
  const { w, t } = stand(high);
  return Math.max(...heights.map((z) => w + t * (z - middle)));
}

describe('a pull and a couple on one plate', () => {
  const of = (heights: readonly number[], C: number, N: number): number =>
    lbf(
      answer({
        screws: { heights: heights.map((z) => `${z} in`) },
        loads: [{ couple: `${C} lbf.in`, pull: `${N} lbf`, duration: 'ten-years' }],
      }).row.tension,
    );

  it('the pull lifts the plate off the wall: two screws 2 in apart alone hold both, N / 2 + C / 2', () => {
    expect(of([7, 5], 40, 300)).toBeCloseTo(150 + 20, 9);
  });

  it('the couple presses the lower end on the wall: moments about it, of 7² + 5², and nothing more to hold', () => {
    expect(of([7, 5], 400, 300)).toBeCloseTo(((400 + 300 * 6) * 7) / 74, 9);
  });

  it('on one row of screws the pull is theirs, and the couple on their height', () => {
    expect(of([5], 400, 100)).toBeCloseTo(100 + 400 / 5, 9);
    expect(of([5], 0, 100)).toBeCloseTo(100, 9);
  });

  it('is what a rigid plate on springs comes to that can only push with its lower end', () => {
    const heights = fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 2, maxLength: 5 });
    const forces = fc.integer({ min: 0, max: 400 });
    fc.assert(
      fc.property(heights, forces, forces, (at, C, N) => {
        fc.pre(C + N > 0);
        expect(of(at, C, N)).toBeCloseTo(pullOnSprings(at, C, N), 5);
      }),
      { numRuns: 100 },
    );
  });

  it('on a covering that crushes: a row at 7 in under 400 lbf·in and 100 lbf, 200 lbf an inch of toe a', () => {
    const { row } = answer({
      screws: { heights: ['7 in'] },
      wall: {
        coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
        bearing: { allowable: '100 psi', source: 'a test' },
      },
      loads: [{ couple: '400 lbf.in', pull: '100 lbf', duration: 'ten-years' }],
    });
    const a = 7 - Math.sqrt(49 - (2 * 400) / 200);
    expect(lbf(row.tension)).toBeCloseTo(200 * a + 100, 5);
  });
});

describe('a plate that reaches below its blocking', () => {
  const C = 400;
  const on = (blockingHeight: string | undefined, heights = ['7 in', '5 in']) =>
    answer({
      screws: { heights },
      wall: { framing: 'blocking', blockingHeight },
      loads: [{ couple: `${C} lbf.in`, duration: 'ten-years' }],
    });

  it('turns about the lower edge of 3-1/2 in, its screws 1/4 in thick and 1-1/2 diameters under the upper edge', () => {
    const edge = 7 + 1.5 / 4 - 3.5;
    const [z_1, z_2] = [7 - edge, 5 - edge];
    const { row, result } = on('3-1/2 in');
    expect(lbf(row.tension)).toBeCloseTo((C * z_1) / (z_1 ** 2 + z_2 ** 2), 9);
    expect(result.assumptions.join(' ')).toContain('3-7/8 in above the lower end of the plate');
  });

  it('turns about its own lower end on blocking that reaches past it', () => {
    const { row, result } = on('7-1/2 in');
    expect(lbf(row.tension)).toBeCloseTo((C * 7) / 74, 9);
    expect(result.assumptions.join(' ')).not.toContain('nothing solid');
  });

  it('blocking of no given height is a 2×4 laid flat for this as well', () => {
    const flat = { framing: 'blocking', studDepth: undefined } as const;
    const loads = [{ couple: `${C} lbf.in`, duration: 'ten-years' as const }];
    const edge = 7 + 1.5 / 4 - 3.5;
    const { row } = answer({ screws: { heights: ['7 in'] }, wall: flat, loads });
    expect(lbf(row.tension)).toBeCloseTo(C / (7 - edge), 9);
  });

  it('blocking of no given height that a 2×4 is too low for is taken as high as its screws want: 4 diameters below them', () => {
    const wall = { framing: 'blocking', studDepth: undefined } as const;
    const loads = [{ couple: `${C} lbf.in`, duration: 'ten-years' as const }];
    const { row, named } = answer({ screws: { heights: ['7 in', '3 in'] }, wall, loads });
    expect(lbf(row.tension)).toBeCloseTo((C * 5) / (5 ** 2 + 1 ** 2), 9);
    expect(named('on-blocking').outcome).toBe('cannot-say');
  });

  it('a covering of 100 psi is crushed from that edge on: a = z − √(z² − 2C / f b)', () => {
    const { row } = answer({
      screws: { heights: ['7 in'] },
      wall: {
        framing: 'blocking',
        blockingHeight: '3-1/2 in',
        coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
        bearing: { allowable: '100 psi', source: 'a test' },
      },
      loads: [{ couple: `${C} lbf.in`, duration: 'ten-years' }],
    });
    const z = 3.5 - 1.5 / 4;
    const a = z - Math.sqrt(z ** 2 - (2 * C) / 200);
    expect(lbf(row.tension)).toBeCloseTo(200 * a, 5);
  });

  it('blocking and sheathing are not checked themselves, and what they have to hold is said', () => {
    const loads = [{ shear: '60 lbf', couple: `${C} lbf.in`, duration: 'ten-years' as const }];
    for (const framing of ['blocking', 'sheathing'] as const) {
      const [warning, ...others] = answer({ wall: { framing }, loads }).result.warnings;
      expect(others).toEqual([]);
      expect(warning).toContain(`The ${framing} itself and its own fixing`);
      expect(warning).toContain('60 lbf');
      expect(warning).toContain('400 lbf');
    }
    expect(answer({ loads }).result.warnings).toEqual([]);
  });

  it('nor are metal studs, whatever a report says of the screws in them', () => {
    const allowable = { tension: '200 lbf', shear: '200 lbf', report: 'report of the screw' };
    const { result } = answer({
      screws: { fastener: 'listed', allowable },
      wall: { framing: 'metal-stud', species: undefined },
    });
    const warning = result.warnings.find((each) => each.startsWith('The metal studs themselves'));
    expect(warning).toContain('60 lbf');
    expect(warning).toContain('400 lbf');
  });
});

describe('a shelf whose plates stand on blocking, held by screws of a report', () => {
  it('says what the blocking has to hold, and what to look up in the report', () => {
    const allowable = { tension: '200 lbf', shear: '200 lbf', report: 'report of the screw' };
    const { warnings } = check(
      shelf({
        brackets: {
          plate: { height: '8 in', width: '1-1/4 in', thickness: '1/4 in' },
          screws: { fastener: 'listed', length: '3 in', heights: ['7 in', '5 in'], allowable },
        },
        loads: [line('20 lbf/ft')],
        wall: { framing: 'blocking', species: 'spruce-pine-fir', blockingHeight: '5-1/2 in' },
      }),
    );
    expect(warnings.some((each) => each.startsWith('The blocking itself'))).toBe(true);
    expect(warnings.some((each) => each.includes('in their report'))).toBe(true);
  });
});

describe('the stud behind a plate', () => {
  it('a shear on the face of a stud 3-1/2 in deep, 1/2 in of covering before it, turns it as well: V × 2-1/4 in', () => {
    const { named } = answer({
      wall: {
        height: '96 in',
        bracketHeight: '60 in',
        coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
      },
      loads: [{ shear: '200 lbf', couple: '400 lbf.in', duration: 'ten-years' }],
    });
    const M = ((400 + 200 * 2.25) * 60) / 96;
    expect(inPsi(named('stud').demand)).toBeCloseTo(M / ((1.5 * 3.5 ** 2) / 6), 6);
  });
});

describe('a wall of which nobody says what covers it', () => {
  it.each(['wood-stud', 'blocking', undefined] as const)('%s: as under 1/2 in of gypsum board', (framing) => {
    const wall = { framing, species: 'spruce-pine-fir' };
    const unsaid = answer({ screws: { fastener: 'wood-screw-10' }, wall: { ...wall, coverings: undefined } });
    const said = answer({
      screws: { fastener: 'wood-screw-10' },
      wall: { ...wall, coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }] },
    });
    expect(unsaid.row).toEqual(said.row);
    expect(unsaid.result.assumptions.join(' ')).toContain('Gypsum board 1/2 in thick');
  });

  it('that nothing covers it can be said, and then nothing does: half an inch takes two fifths of a #10 screw or more', () => {
    const bare = answer({ screws: { fastener: 'wood-screw-10' } });
    const unsaid = answer({ screws: { fastener: 'wood-screw-10' }, wall: { coverings: undefined } });
    expect(lbf(unsaid.row.lateralCapacity)).toBeLessThan(0.6 * lbf(bare.row.lateralCapacity));
    expect(bare.result.assumptions.join(' ')).not.toContain('Gypsum');
  });

  it('masonry is bare', () => {
    const allowable = { tension: '400 lbf', shear: '400 lbf', report: 'report of the anchor' };
    const { row } = answer({
      screws: { fastener: 'listed', allowable },
      wall: { framing: 'masonry', species: undefined, coverings: undefined },
    });
    expect(row.penetration.value / inch).toBeCloseTo(2.75, 9);
  });
});

describe('values of a report', () => {
  it('are taken as they stand, and what the report has to say is said: covering, depth, spacing, a wet place', () => {
    const { result } = answer({
      screws: {
        fastener: 'listed',
        length: '2-1/2 in',
        allowable: { tension: '400 lbf', shear: '400 lbf', report: 'report of the anchor' },
      },
      wall: {
        framing: 'concrete',
        species: undefined,
        coverings: [{ material: 'tile', thickness: '3/8 in' }],
      },
      conditions: { moisture: 'wet' },
    });
    const warning = result.warnings.find((each) => each.includes('report'));
    expect(warning).toContain('3/8 in off');
    expect(warning).toContain('1-7/8 in deep');
    expect(warning).toContain('a wet place');
  });
});

describe('screws close together', () => {
  it('thin ones less than 3 diameters apart up the plate, or 1-1/2 side by side, do not hold', () => {
    const thin = { fastener: 'wood-screw-10' };
    const up = (low: string) => answer({ screws: { ...thin, heights: ['7 in', low] } }).named('fixing');
    expect(up('6-1/2 in')).toMatchObject({ outcome: 'does-not-hold', ratio: null });
    expect(up('6-3/8 in').outcome).toBe('holds');
    const beside = (across: string) =>
      answer({ screws: { ...thin, perHeight: 2, across } }).named('fixing').outcome;
    expect(beside('1/4 in')).toBe('does-not-hold');
    expect(beside('5/16 in')).toBe('holds');
    // In blocking as well: the five diameters of Table 12.5.1D are for 1/4 in and more.
    const screws = { ...thin, perHeight: 2, across: '5/16 in' };
    expect(answer({ screws, wall: { framing: 'blocking' } }).named('fixing').outcome).toBe('holds');
  });
});

describe('a hole at the edge of the plate', () => {
  it('wider than the plate beside it does not hold: 5/16 in of a 1/4 in lag screw, 5/32 in to either side', () => {
    const at = (heights: string[]) => answer({ screws: { heights } }).named('fixing');
    expect(at(['8 in', '1 in'])).toMatchObject({ outcome: 'does-not-hold', ratio: null });
    expect(at(['7 in', '1/8 in'])).toMatchObject({ outcome: 'does-not-hold', ratio: null });
    expect(at(['7-3/4 in', '1/4 in']).outcome).toBe('holds');
    const beside = (across: string) =>
      answer({
        screws: { perHeight: 2, across },
        wall: { framing: 'blocking', blockingHeight: '12 in' },
      }).named('fixing').outcome;
    expect(beside('1-3/4 in')).toBe('does-not-hold');
    expect(beside('1-5/8 in')).toBe('holds');
  });
});

describe('a wide, low plate', () => {
  it('a couple bends no more than spreads at 45° from one screw 3 in up: a quarter of 12 in', () => {
    const { named } = answer({
      plate: { height: '4 in', width: '12 in', metal: 'a36' },
      screws: { heights: ['3 in'] },
      loads: [{ couple: '200 lbf.in', duration: 'ten-years' }],
    });
    expect(inPsi(named('plate').demand)).toBeCloseTo((6 * 4 * 200) / ((12 - 5 / 16) * 0.25 ** 2), 4);
  });
});

describe('lag screws 9 to 11 in long', () => {
  it.each([
    ['9 in', 5],
    ['10 in', 5.25],
    ['11 in', 5.5],
  ])('%s: %f in of thread (NDS Table L2, from memory)', (length, thread) => {
    const { row } = answer({
      screws: { length, fastener: 'lag-screw-1/2' },
      wall: { studDepth: '15 in', studWidth: '3 in' },
    });
    // Printed for 1/2 in in G 0.42: 291 lbf/in (Table 12.2A); the tip is 5/16 in.
    expect(lbf(row.withdrawalCapacity) / (291 * (thread - 5 / 16))).toBeCloseTo(1, 2);
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { foot, inch, judge, line, poundForce, shelf } from './documents.ts';
import { maple, mapleBoard } from './maple.ts';

/*
 * Movement by hand. Middle of a span with even overhangs: 5wL⁴/384EI − wa²L²/16EI + wL²/8κGA; tip: wa(3a³ + 6a²L − L³)/24EI
 * + wa²/2κGA (AISC Table 3-23; Wood Handbook ch. 9 for shear). Creep: NDS 3.5.2.
 */
const board = mapleBoard(10, 0.75);
const perFoot = poundForce / foot;

const onEnds = { positions: ['0 in', '48 in'] };

const middle = (w: number, L: number, a: number): number =>
  (5 * w * L ** 4) / (384 * board.EI) - (w * a * a * L * L) / (16 * board.EI) + (w * L * L) / (8 * board.GA);
const tip = (w: number, L: number, a: number): number =>
  (w * a * (3 * a ** 3 + 6 * a * a * L - L ** 3)) / (24 * board.EI) + (w * a * a) / (2 * board.GA);

describe('movement of a plain board', () => {
  it('live: the loads without the board, against L/360 of the bay', () => {
    const found = judge(shelf({ brackets: onEnds, loads: [line('30 lbf/ft')] }), 'deflection-live');
    expect(found.demand / middle(30 * perFoot, 48 * inch, 0)).toBeCloseTo(1, 9);
    expect(found.capacity).toBeCloseTo((48 * inch) / 360, 12);
  });

  it('with overhangs: the middle sags, the ends rise, and the ends are the worse on twice their length', () => {
    const document = shelf({ loads: [line('30 lbf/ft')] });
    const [left, span] = check(document).analysis.deflection.bays;
    const [w, L, a] = [30 * perFoot, 32 * inch, 8 * inch];
    expect((span?.live.value ?? NaN) / middle(w, L, a)).toBeCloseTo(1, 9);
    expect((left?.live.value ?? NaN) / -tip(w, L, a)).toBeCloseTo(1, 9);
    expect(judge(document, 'deflection-live').ratio ?? NaN).toBeCloseTo(-tip(w, L, a) / ((2 * a) / 360), 9);
  });

  it('an overhang is judged on twice its length, from its own bracket', () => {
    const long = shelf({ brackets: { positions: ['18 in', '30 in'] }, loads: [line('10 lbf/ft')] });
    const found = judge(long, 'deflection-live');
    expect(found.demand / tip(10 * perFoot, 12 * inch, 18 * inch)).toBeCloseTo(1, 9);
    expect(found.capacity).toBeCloseTo((2 * 18 * inch) / 360, 12);
    expect(found.where).toMatch(/end/);
  });

  it('the worst ratio governs, not the largest movement', () => {
    const uneven = shelf({
      board: { length: '56 in' },
      brackets: { positions: ['0 in', '48 in'] },
      loads: [line('20 lbf/ft', { from: '48 in' })],
    });
    const found = judge(uneven, 'deflection-live');
    const [L, a, w] = [48 * inch, 8 * inch, 20 * perFoot];
    const tipMoves =
      (w * a ** 3 * (4 * L + 3 * a)) / (24 * board.EI) + ((w * a * a) / 2) * (1 / board.GA) * (1 + a / L);
    expect(found.ratio ?? NaN).toBeCloseTo(tipMoves / ((2 * a) / 360), 6);
  });

  it('long-term: 1.5 × (board + what stays) + the rest', () => {
    const loads = [
      line('10 lbf/ft', { duration: 'permanent' }),
      line('10 lbf/ft', { duration: 'ten-years', sustained: 0.3 }),
      line('10 lbf/ft', { duration: 'seven-days' }),
    ];
    const found = judge(shelf({ brackets: onEnds, loads }), 'deflection-long-term');
    const w = 1.5 * board.weight_Npm + (1.5 + 1.5 * 0.3 + 0.7 + 1) * 10 * perFoot;
    expect(found.demand / middle(w, 48 * inch, 0)).toBeCloseTo(1, 9);
    expect(found.capacity).toBeCloseTo((48 * inch) / 240, 12);
  });

  it('wet: creep 2.0 and green stiffness (1.55 Mpsi for 1.83)', () => {
    const wet = shelf({ brackets: onEnds, conditions: { moisture: 'wet' }, loads: [line('30 lbf/ft')] });
    const found = judge(wet, 'deflection-long-term');
    const w = 2 * (30 * perFoot + board.weight_Npm);
    expect(found.demand / ((middle(w, 48 * inch, 0) * 1.83) / 1.55)).toBeCloseTo(1, 9);
  });

  it('an amount is a limit as it stands; "none" leaves the check out; and a limit shows in the verdict', () => {
    const amount = judge(
      shelf({ loads: [line('30 lbf/ft')], limits: { live: '1/16 in', longTerm: 'none' } }),
      'deflection-live',
    );
    expect(amount.capacity).toBeCloseTo(inch / 16, 12);
    const result = check(shelf({ loads: [line('30 lbf/ft')], limits: { live: 'none', longTerm: 'none' } }));
    expect(result.checks.filter(({ id }) => id.startsWith('deflection'))).toEqual([]);
  });

  it('a load at the front edge in the middle of a bay twists it: P e L / 4GJ × half the depth', () => {
    const stand = {
      kind: 'point',
      amount: '40 lbf',
      at: '24 in',
      duration: 'permanent',
      arrangement: 'fixed',
    } as const;
    const at = (eccentricity: string) =>
      judge(shelf({ brackets: onEnds, loads: [{ ...stand, eccentricity }] }), 'deflection-live').demand;
    const GJ = maple.G_Pa * 10 * inch * (0.75 * inch) ** 3 * (1 / 3) * (1 - 0.63 * (0.75 / 10));
    const twist = (40 * poundForce * 5 * inch * 48 * inch) / (4 * GJ);
    expect((at('10 in') - at('5 in')) / (twist * 5 * inch)).toBeCloseTo(1, 2);
    // Behind mid-depth it is the back edge that goes down: 3 in from there, three fifths of it.
    expect((at('2 in') - at('5 in')) / (0.6 * twist * 5 * inch)).toBeCloseTo(1, 2);
  });

  it('a line load of nothing along the front edge moves nothing', () => {
    const jars = line('20 lbf/ft');
    const moved = (changes: Parameters<typeof shelf>[0]) => judge(shelf(changes), 'deflection-live').demand;
    const nothing = line('0 lbf/ft', { eccentricity: '10 in' });
    expect(moved({ loads: [jars, nothing] })).toBe(moved({ loads: [jars] }));
  });

  it('a very long and narrow board with a strip is worked out like any other', () => {
    const strip = {
      material: 'mdf',
      basis: 'panel',
      height: '18 mm',
      thickness: '18 mm',
      flush: 'top',
    } as const;
    const hand = { kind: 'roaming', amount: '1 lbf', duration: 'seven-days' } as const;
    const long = shelf({
      board: {
        material: 'mdf',
        basis: 'panel',
        appearance: undefined,
        length: '12 m',
        depth: '50 mm',
        thickness: '18 mm',
        nosing: strip,
      },
      brackets: { positions: ['0 m', '12 m'], arm: '50 mm' },
      loads: [hand],
    });
    expect(judge(long, 'torsion').ratio ?? NaN).toBeGreaterThan(0);
  });

  it('a hand at the front edge of an overhang: Pa²(L + a)/3EI + Pa(1 + a/L)/κGA, and P e a / GJ × half the depth', () => {
    const hand = { kind: 'roaming', amount: '20 lbf', duration: 'seven-days' } as const;
    const found = judge(
      shelf({ board: { length: '44 in' }, brackets: { positions: ['0 in', '32 in'] }, loads: [hand] }),
      'deflection-live',
    );
    const [P, L, a] = [20 * poundForce, 32 * inch, 12 * inch];
    const GJ = maple.G_Pa * 10 * inch * (0.75 * inch) ** 3 * (1 / 3) * (1 - 0.63 * (0.75 / 10));
    const bent = (P * a * a * (L + a)) / (3 * board.EI) + ((P * a) / board.GA) * (1 + a / L);
    const twisted = ((P * 5 * inch * a) / GJ) * 5 * inch;
    expect(found.demand / (bent + twisted)).toBeCloseTo(1, 4);
    expect(found.capacity).toBeCloseTo((2 * a) / 360, 12);
  });

  it('an overhang that its own weight pulls down can still rise most: a hand in the next bay', () => {
    const hand = { kind: 'roaming', amount: '35 lbf', duration: 'seven-days' } as const;
    const found = check(shelf({ loads: [hand] })).analysis.deflection.bays[0];
    const [P, L, a, w] = [35 * poundForce, 32 * inch, 8 * inch, board.weight_Npm];
    const rises = (P * L * L * a) / (16 * board.EI) - 1.5 * tip(w, L, a);
    expect(found?.longTerm.value ?? NaN).toBeGreaterThanOrEqual(rises * (1 - 1e-9));
  });
});

describe('stiffness', () => {
  it('EI, κGA and GJ of the plain board', () => {
    const { stiffness } = check(shelf()).analysis;
    expect(stiffness.EI.value / board.EI).toBeCloseTo(1, 12);
    expect((stiffness.GA?.value ?? NaN) / board.GA).toBeCloseTo(1, 12);
  });

  it('layers that slide: the sum of their own; glued: one board', () => {
    const layers = { thickness: '3/4 in', layers: [{ thickness: '3/8 in' }, { thickness: '3/8 in' }] };
    const EI = (bond: 'none' | 'structural' | undefined) =>
      check(shelf({ board: { ...layers, ...(bond ? { bond } : {}) } })).analysis.stiffness.EI.value;
    expect(EI('structural') / board.EI).toBeCloseTo(1, 12);
    expect(EI('none') / board.EI).toBeCloseTo(1 / 4, 12);
    expect(EI(undefined)).toBe(EI('none'));
  });

  it('a hollow box: what is there less what is not', () => {
    const box = { thickness: '2 in', box: { skin: '1/2 in', frame: '1 in', members: 3 } };
    const found = check(shelf({ board: box })).analysis.stiffness;
    const [b, t] = [10 * inch, 2 * inch];
    expect(found.EI.value / ((maple.E_Pa * (b * t ** 3 - (b - 3 * inch) * inch ** 3)) / 12)).toBeCloseTo(
      1,
      12,
    );
    expect((found.GA?.value ?? NaN) / ((5 / 6) * maple.G_Pa * 3 * inch * inch)).toBeCloseTo(1, 12);
  });

  it('panels have shear inside their stiffness: plywood 0.95 Mpsi (Architectural Woodwork Standards), no shear term', () => {
    const plywood = check(
      shelf({ board: { material: 'plywood', basis: 'panel', appearance: undefined } }),
    ).analysis;
    expect(plywood.stiffness.GA).toBeNull();
    const { E_Pa, ...size } = { E_Pa: 0.95e6 * 6894.757, b: 10 * inch, t: 0.75 * inch };
    expect(plywood.stiffness.EI.value / ((E_Pa * size.b * size.t ** 3) / 12)).toBeCloseTo(1, 4);
  });

  it('a wood strip on a panel: with no shear term its stiffness must have shear inside it, 1.83 Mpsi, not 10 % more', () => {
    const strip = {
      material: 'sugar-maple',
      basis: 'clear-wood',
      appearance: 'nearly-clear',
      height: '2 in',
      thickness: '1 in',
    } as const;
    const mixed = (appearance: undefined) =>
      check(shelf({ board: { material: 'mdf', basis: 'panel', appearance, nosing: strip } })).analysis
        .stiffness;
    const { EI, GA } = mixed(undefined);
    const [Em, Ew] = [2200e6, 1.83e6 * 6894.757];
    const parts = [
      { E: Em, b: 10 * inch, h: 0.75 * inch, y: 5 * inch, z: (2 - 0.375) * inch },
      { E: Ew, b: inch, h: 2 * inch, y: 10.5 * inch, z: inch },
    ];
    const sum = (pick: (p: (typeof parts)[number]) => number) =>
      parts.reduce((total, p) => total + p.E * p.b * p.h * pick(p), 0);
    const [y0, z0] = [sum((p) => p.y) / sum(() => 1), sum((p) => p.z) / sum(() => 1)];
    const x = sum((p) => p.h ** 2 / 12 + (p.z - z0) ** 2);
    const yy = sum((p) => p.b ** 2 / 12 + (p.y - y0) ** 2);
    const xy = sum((p) => (p.y - y0) * (p.z - z0));
    if (GA === null) expect(EI.value).toBeLessThanOrEqual((x - xy ** 2 / yy) * 1.001);
  });
});

import { describe, expect, it } from 'vitest';
import { foot, inch, judge, line, poundForce, psi, shelf } from './documents.ts';
import { maple, mapleBoard } from './maple.ts';

/*
 * The plain shelf by hand: a maple board 48 × 10 × 3/4 in, arms at 8 and 40 in: a span of 32 in and two overhangs of 8 in,
 * everything fixed in place, so nothing is left but statics (AISC Table 3-23: wL²/8, wa²/2) and NDS 3.3, 3.4, 3.10.
 */
const board = mapleBoard(10, 0.75);
const load = 30 * (poundForce / foot);
const w = load + board.weight_Npm;
const [L, a] = [32 * inch, 8 * inch];
const loaded = shelf({ loads: [line('30 lbf/ft')] });

describe('strength of a plain board', () => {
  it('bending: w(L²/8 − a²/2) / S against F_b × 0.9', () => {
    const found = judge(loaded, 'bending');
    expect(found.demand / ((w * (L ** 2 / 8 - a ** 2 / 2)) / board.S)).toBeCloseTo(1, 9);
    expect(found.capacity / psi).toBeCloseTo(maple.bending_psi * 0.9, 6);
    expect(found.outcome).toBe('holds');
    expect(found.where).toMatch(/between brackets/);
  });

  it('bending over the bracket governs a long overhang: wa²/2', () => {
    const found = judge(
      shelf({ brackets: { positions: ['20 in', '28 in'] }, loads: [line('10 lbf/ft')] }),
      'bending',
    );
    const total = 10 * (poundForce / foot) + board.weight_Npm;
    expect(found.demand / ((total * (20 * inch) ** 2) / 2 / board.S)).toBeCloseTo(1, 9);
    expect(found.where).toMatch(/over the bracket/);
  });

  it('shear: 1.5 wL/2 / A, not reduced', () => {
    const found = judge(loaded, 'shear');
    expect(found.demand / ((1.5 * w * L) / 2 / board.A)).toBeCloseTo(1, 9);
    expect(found.capacity / psi).toBeCloseTo(maple.shear_psi * 0.9, 6);
  });

  it('bearing: half of everything on 1 × 10 in, without a duration factor', () => {
    const found = judge(loaded, 'bearing');
    expect(found.demand / ((w * 48 * inch) / 2 / (inch * 10 * inch))).toBeCloseTo(1, 9);
    expect(found.capacity / psi).toBeCloseTo(maple.bearing_psi, 6);
  });

  it('an arm longer than the board bears only under the board; a shorter one on its own length', () => {
    const long = judge(shelf({ brackets: { arm: '14 in' }, loads: [line('30 lbf/ft')] }), 'bearing');
    const short = judge(shelf({ brackets: { arm: '7 in' }, loads: [line('30 lbf/ft')] }), 'bearing');
    expect(long.demand / ((w * 48 * inch) / 2 / (inch * 10 * inch))).toBeCloseTo(1, 9);
    expect(short.demand / ((w * 48 * inch) / 2 / (inch * 7 * inch))).toBeCloseTo(1, 9);
  });

  it('an arm whose middle is at the very end of the board bears on half its width', () => {
    const found = judge(
      shelf({ brackets: { positions: ['0 in', '48 in'] }, loads: [line('30 lbf/ft')] }),
      'bearing',
    );
    expect(found.demand / ((w * 48 * inch) / 2 / (0.5 * inch * 10 * inch))).toBeCloseTo(1, 9);
  });

  it('a hollow box bears where its frame stands over the arm: two of three members of 3/4 in on an arm of 9 in', () => {
    const box = { skin: '1/4 in', frame: '3/4 in', members: 3, frameMaterial: 'eastern-white-pine' };
    const on = (amount: string) =>
      judge(
        shelf({
          board: { thickness: '2-1/2 in', box },
          brackets: { arm: '9 in' },
          loads: [line(amount)],
        }),
        'bearing',
      );
    const found = on('60 lbf/ft');
    // Half of 30 lbf/ft more; the middle of it is right over the second member, which takes it all on 1 × 0.75 in.
    expect((found.demand - on('30 lbf/ft').demand) / psi).toBeCloseTo(60 / 0.75, 6);
    expect(found.note).toContain('1-1/2 in');
    // Eastern white pine, green, across the grain: 220 psi (Wood Handbook, Table 5-3b), over 1.67 and × 1.5 dry (ASTM D245).
    expect(found.capacity / psi).toBeCloseTo((220 / 1.67) * 1.5, 6);
  });

  it('where two lengths meet, each bears on its half of the arm', () => {
    const jointed = shelf({
      board: { joints: ['24 in'] },
      brackets: { positions: ['0.5 in', '24 in', '47.5 in'] },
      loads: [line('30 lbf/ft')],
    });
    const own = (w * 24 * inch * (12 - 0.5) * inch) / (23.5 * inch);
    const stress = own / (0.5 * inch * 10 * inch);
    expect(judge(jointed, 'bearing').demand).toBeGreaterThanOrEqual(stress * (1 - 1e-9));
  });

  it('every combination is tried: a light permanent load with C_D 0.9 can govern over a hand with 1.25', () => {
    const heavy = line('60 lbf/ft');
    const hand = { kind: 'roaming', amount: '1 lbf', duration: 'seven-days' } as const;
    const found = judge(shelf({ loads: [heavy, hand] }), 'bending');
    const total = 60 * (poundForce / foot) + board.weight_Npm;
    expect(found.ratio).toBeCloseTo(
      (total * (L ** 2 / 8 - a ** 2 / 2)) / board.S / psi / (maple.bending_psi * 0.9),
      6,
    );
  });

  it('a hand in the middle: (wL²/8 − wa²/2 + PL/4) / S against F_b × 1.25', () => {
    const hand = { kind: 'roaming', amount: '100 lbf', duration: 'seven-days' } as const;
    const found = judge(shelf({ loads: [line('30 lbf/ft'), hand] }), 'bending');
    const M = w * (L ** 2 / 8 - a ** 2 / 2) + (100 * poundForce * L) / 4;
    expect(found.demand / (M / board.S)).toBeCloseTo(1, 9);
    expect(found.capacity / psi).toBeCloseTo(maple.bending_psi * 1.25, 6);
  });

  it('wet and hot: no seasoning, and C_t 0.5', () => {
    const wet = shelf({ conditions: { moisture: 'wet', temperature: 'hot' }, loads: [line('30 lbf/ft')] });
    expect(judge(wet, 'bending').capacity / psi).toBeCloseTo((maple.bending_psi / 1.25) * 0.9 * 0.5, 6);
    expect(judge(wet, 'bearing').capacity / psi).toBeCloseTo((maple.bearing_psi / 1.5) * 0.5, 6);
  });

  it('a ratio just above 1 does not hold, and just below holds', () => {
    const at = (pounds: number) => judge(shelf({ loads: [line(`${pounds} lbf/ft`)] }), 'bending');
    const base = at(0.001).ratio ?? NaN;
    const perPound = ((at(100).ratio ?? NaN) - base) / (100 - 0.001);
    const full = (1 - base) / perPound;
    expect(at(Number((full * 0.9995).toFixed(4))).outcome).toBe('holds');
    expect(at(Number((full * 1.0005).toFixed(4))).outcome).toBe('does-not-hold');
  });
});

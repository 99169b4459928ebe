import { describe, expect, it } from 'vitest';
import { inch, judge, poundForce, shelf, type Load } from './documents.ts';
import { mapleBoard } from './maple.ts';

/*
 * Screws up into a board that is lifted off an arm, by hand statics: the board turns about the wall end of the arm where it is
 * lifted in front of the screws, about the tip where it is lifted behind them. Forces in lbf, lengths in inches.
 */
const own = (mapleBoard(10, 0.75).weight_Npm * 48 * inch) / poundForce;
const a = 9;

describe('a board 10 in deep on arms of 9 in, screws at 2 and 7 in, its end loaded 16 in past the first of two arms 24 in apart', () => {
  const lifted = (eccentricity: string, more: Partial<Load> = {}, positions = ['16 in', '40 in']) => {
    const load: Load = {
      kind: 'point',
      amount: '50 lbf',
      at: '0 in',
      duration: 'seven-days',
      eccentricity,
      ...more,
    };
    const boardScrews = {
      fastener: 'wood-screw-8',
      length: '3/4 in',
      at: ['2 in', '7 in'],
      armThickness: '1/8 in',
    };
    return judge(
      shelf({ brackets: { arm: `${a} in`, positions, boardScrews }, loads: [load] }),
      'board-screws',
    );
  };
  const U = (50 * 16) / 24;
  const down = (own * (24 - 16)) / 24;

  it('at the front edge: both screws as the outer one, moments about the wall end of the arm, the board counted at 0.6', () => {
    const outer = ((U * 10 - 0.6 * down * 5) * 7) / (2 ** 2 + 7 ** 2);
    const { demand, where } = lifted('10 in');
    expect(where).toContain('bracket 2');
    expect(demand / poundForce).toBeCloseTo(2 * outer, 6);
    // Two and a half times what an even share of the lift says.
    expect(2 * outer).toBeGreaterThan(2.5 * (U - down));
  });

  it('at 1 in from the wall: both as the inner one, moments about the tip, the board counted at 0.6', () => {
    const inner = ((U * (a - 1) - 0.6 * down * (a - 5)) * 7) / (7 ** 2 + 2 ** 2);
    expect(lifted('1 in').demand / poundForce).toBeCloseTo(2 * inner, 6);
  });

  it('a load that is always there and lifts behind the tip counts in full', () => {
    const inner = ((U * (a - 1) - 0.6 * down * (a - 5)) * 7) / (7 ** 2 + 2 ** 2);
    expect(lifted('1 in', { arrangement: 'fixed' }).demand / poundForce).toBeCloseTo(2 * inner, 6);
  });

  it('in the middle of the arm: one screw with 0.6 of the lift of both, near enough, and not with all of it', () => {
    const { demand, capacity } = lifted('4-1/2 in');
    const one = 2850 * 0.63 ** 2 * 0.164 * (0.75 - 0.125) * 1.25;
    const used = (demand / capacity) * (one / U);
    expect(used).toBeGreaterThan(0.4);
    expect(used).toBeLessThan(0.65);
  });

  it('mirrored, the same', () => {
    const load: Load = {
      kind: 'point',
      amount: '50 lbf',
      at: '48 in',
      duration: 'seven-days',
      eccentricity: '10 in',
    };
    const boardScrews = {
      fastener: 'wood-screw-8',
      length: '3/4 in',
      at: ['2 in', '7 in'],
      armThickness: '1/8 in',
    };
    const brackets = { arm: `${a} in`, positions: ['8 in', '32 in'], boardScrews };
    expect(judge(shelf({ brackets, loads: [load] }), 'board-screws').demand).toBeCloseTo(
      lifted('10 in').demand,
      6,
    );
  });
});

import { describe, expect, it } from 'vitest';
import { twistOfOverhang, twistOfSpan } from '../../../calc/mechanics/twist.ts';

/*
 * Roark's Formulas for Stress and Strain, torsion of bars held at both ends or at one: the torque diagram over GJ. The
 * second opinion here cuts the bay into many short bars in series and balances each.
 */
function twistByCutting(length: number, GJ: number, from: number, to: number, torque: number): number {
  const pieces = 20000;
  const h = length / pieces;
  const middle = (i: number): number => (i + 0.5) * h;
  const onPiece = Array.from({ length: pieces }, (_, i) =>
    middle(i) > from && middle(i) < to ? torque * h : 0,
  );
  const left = onPiece.reduce((sum, each, i) => sum + (each * (length - middle(i))) / length, 0);
  let [turned, carried, most] = [0, left, 0];
  for (const each of onPiece) {
    turned += ((carried - each / 2) * h) / GJ;
    carried -= each;
    most = Math.max(most, turned);
  }
  return most;
}

describe('twist of a bay held at both ends', () => {
  it('a torque in the middle: TL/4GJ; all along: mL²/8GJ', () => {
    expect(twistOfSpan(2, 50, { from_m: 1, to_m: 1, torque: 3 })).toBeCloseTo((3 * 2) / (4 * 50), 12);
    expect(twistOfSpan(2, 50, { from_m: 0, to_m: 2, torque: 3 })).toBeCloseTo((3 * 4) / (8 * 50), 12);
  });

  it.each([
    [0, 0.5],
    [0.3, 1.1],
    [1.4, 2],
  ])('a torque from %d to %d m of 2', (from_m, to_m) => {
    const found = twistOfSpan(2, 50, { from_m, to_m, torque: 3 });
    expect(found / twistByCutting(2, 50, from_m, to_m, 3)).toBeCloseTo(1, 3);
  });
});

describe('twist of an overhang held at its root', () => {
  it('a torque at the tip: TL/GJ; all along: mL²/2GJ; along its outer half: the difference', () => {
    expect(twistOfOverhang(50, { from_m: 0.4, to_m: 0.4, torque: 3 })).toBeCloseTo((3 * 0.4) / 50, 12);
    expect(twistOfOverhang(50, { from_m: 0, to_m: 0.4, torque: 3 })).toBeCloseTo((3 * 0.16) / 100, 12);
    const whole = twistOfOverhang(50, { from_m: 0, to_m: 0.4, torque: 3 });
    const inner = (3 * 0.2 ** 2) / 100 + (3 * 0.2 * 0) / 50;
    expect(twistOfOverhang(50, { from_m: 0.2, to_m: 0.4, torque: 3 })).toBeCloseTo(whole - inner, 12);
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { inch, judge, line, poundForce, psi, shelf, type Load } from './documents.ts';
import { mapleBoard } from './maple.ts';

/*
 * A board screwed to its brackets, 32 in apart, and 28 in beyond the second: a load at that end lifts the first by P × 28 / 32.
 * What is always there holds down at 0.6 (ASCE 7 2.4.1, 0.6 D by analogy).
 */
const own_lbf = (mapleBoard(10, 0.75).weight_Npm * inch) / poundForce;
const longEnd = (loads: Load[], brackets: Partial<BracketShelfInput['brackets']> = {}): BracketShelfInput =>
  shelf({
    board: { length: '60 in' },
    brackets: { positions: ['0 in', '32 in'], ...brackets },
    loads,
  });
const hand: Load = { kind: 'roaming', amount: '40 lbf', duration: 'seven-days' };
/** The board's middle is 2 in on the near side of the second bracket. */
const heldByBoard = (own_lbf * 60 * 2) / 32;

describe('lift of a bracket', () => {
  /** Screws at 2-1/2 and 7-1/2 in of an arm of 10 in: both as the outer one, moments about the wall end of the arm. */
  const pullOf = (couple_lbfIn: number): number => (2 * couple_lbfIn * 7.5) / (2.5 ** 2 + 7.5 ** 2);

  it('pull on the screws: P × 28 / 32 at 10 in from the wall, less 0.6 of what the board presses there at 5 in', () => {
    const found = judge(longEnd([hand]), 'board-screws').demand / poundForce;
    expect(found).toBeCloseTo(pullOf(((40 * 28) / 32) * 10 - 0.6 * heldByBoard * 5), 6);
  });

  it('a load that is always there holds down at 0.6 too; one that may be gone not at all', () => {
    const jars = (arrangement: 'fixed' | 'free') =>
      line('12 lbf/ft', { from: '0 in', to: '32 in', arrangement, duration: 'permanent' });
    const of = (load: Load): number => judge(longEnd([hand, load]), 'board-screws').demand / poundForce;
    const lifted = ((40 * 28) / 32) * 10;
    expect(of(jars('fixed'))).toBeCloseTo(pullOf(lifted - 0.6 * (heldByBoard + 16) * 5), 6);
    expect(of(jars('free'))).toBeCloseTo(pullOf(lifted - 0.6 * heldByBoard * 5), 6);
  });

  it('the couple that lifts a rated bracket: the hand at 10 in, the board at 5 in from the wall', () => {
    const found = judge(longEnd([hand]), 'bracket-lift').demand / (poundForce * inch);
    expect(found).toBeCloseTo(((40 * 28) / 32) * 10 - 0.6 * heldByBoard * 5, 6);
  });
});

describe('a box on its arms', () => {
  const box = (frame: { members: number }, loads: Load[]): number =>
    judge(
      shelf({
        board: { thickness: '2 in', box: { skin: '1/4 in', frame: '3/4 in', ...frame } },
        brackets: { capacity: { basis: 'rated', allowable: '2500 lbf', at: '10 in' } },
        loads,
      }),
      'bearing',
    ).demand / psi;
  const leaning = (pounds: number): Load => ({ ...hand, amount: `${pounds} lbf` });

  it('a hand at the front edge is on the front member: P (10 − 0.375) / 9.25 on 1 × 0.75 in, over the end bracket more', () => {
    // On the overhang of 8 in the hand brings 40 / 32 of its weight to the near bracket.
    const more = box({ members: 2 }, [leaning(200)]) - box({ members: 2 }, [leaning(100)]);
    expect(more).toBeCloseTo((100 * (40 / 32) * (9.625 / 9.25)) / 0.75, 6);
  });

  it('three members share as bolts in a row: R / 3 + R (10 − 5) / (2 × 4.625)', () => {
    const more = box({ members: 3 }, [leaning(200)]) - box({ members: 3 }, [leaning(100)]);
    expect(more).toBeCloseTo((100 * (40 / 32) * (1 / 3 + 5 / 9.25)) / 0.75, 6);
  });

  it('what stands at the back is on the rear member', () => {
    const of = (amount: string): number => box({ members: 2 }, [line(amount, { eccentricity: '1 in' })]);
    expect(of('60 lbf/ft') - of('30 lbf/ft')).toBeCloseTo((60 * ((9.625 - 1) / 9.25)) / 0.75, 6);
  });
});

describe('a board that rests on arms of steel', () => {
  /*
   * Four brackets 26.67 in apart, 8 in beyond: a hand at the end lifts the second from there by about 1.6 × 50 × 8 / 26.67 =
   * 24 lbf on stiff arms (three moments: the end moment comes in at −4/15), of 15 lbf the board alone brings there. Arms of
   * 1-1/2 × 1 in, 10 in long, bend by a lbf as much as the board does in a bay: 4 a³ / E b t³ beside L³ / 48 EI.
   */
  const resting = (hold: 'resting' | 'screwed', strut?: 'strut') =>
    check(
      shelf({
        board: { length: '96 in', thickness: '1-1/2 in' },
        brackets: {
          positions: ['8 in', '34.667 in', '61.333 in', '88 in'],
          ...{ hold, armWidth: '1-1/2 in' },
          capacity: {
            ...{ basis: 'steel', width: '1-1/2 in', thickness: '1 in' },
            ...(strut ? { strut: { at: '9 in', drop: '9 in', width: '1-1/2 in', thickness: '1 in' } } : {}),
          },
        },
        loads: [{ ...hand, amount: '50 lbf' }],
      }),
    );
  const standing = (result: ReturnType<typeof resting>) => result.checks.find(({ id }) => id === 'standing');

  it('and lifts off some of them, which bend: cannot say', () => {
    const result = resting('resting');
    expect(standing(result)).toMatchObject({ outcome: 'cannot-say' });
    expect(standing(result)?.note).toContain('bend');
    expect(result.verdict).not.toBe('holds');
  });

  it('is not said where it is screwed down, or the arms are as good as stiff', () => {
    expect(standing(resting('screwed'))).toBeUndefined();
    expect(standing(resting('resting', 'strut'))).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { inch, judge, line, poundForce, psi, shelf, type Load } from './documents.ts';
import { maple, mapleBoard } from './maple.ts';

/* A board that tips, lifts, or breaks along its grain in front of the arms: statics by hand, lbf and inches. */
const board = mapleBoard(10, 0.75);
const perInch = (board.weight_Npm * inch) / poundForce;
const weight = 48 * perInch;
const resting = { hold: 'resting' } as const;

describe('tipping forward off the arms: about their tips, 0.6 of the board (ASCE 7 2.4.1 by analogy)', () => {
  const at = (arm: string, loads: Load[]) =>
    judge(shelf({ brackets: { ...resting, arm }, loads }), 'tip-forward');
  const hand: Load = { kind: 'roaming', amount: '5 lbf', duration: 'seven-days' };

  it('a hand at the front edge: P (10 − 8) against 0.6 W (8 − 5)', () => {
    const found = at('8 in', [hand]);
    expect(found.demand / (poundForce * inch)).toBeCloseTo(5 * 2, 6);
    expect(found.capacity / (poundForce * inch)).toBeCloseTo(0.6 * weight * 3, 6);
  });

  it('contents behind the tips do not help', () => {
    const found = at('8 in', [hand, line('50 lbf/ft', { eccentricity: '2 in' })]);
    expect(found.capacity / (poundForce * inch)).toBeCloseTo(0.6 * weight * 3, 6);
  });

  it('a board whose own middle is in front of the tips falls: no ratio, does not hold', () => {
    const found = at('4 in', []);
    expect([found.ratio, found.outcome]).toEqual([null, 'does-not-hold']);
    expect(check(shelf({ brackets: { ...resting, arm: '4 in' } })).verdict).toBe('does-not-hold');
  });

  it('arms to the middle exactly: nothing holds it against a hand', () => {
    const found = at('5 in', [hand]);
    expect([found.ratio, found.outcome]).toEqual([null, 'does-not-hold']);
  });

  it('of several loads that roam only the worst counts', () => {
    const found = at('8 in', [hand, { ...hand, amount: '3 lbf' }]);
    expect(found.demand / (poundForce * inch)).toBeCloseTo(10, 6);
  });

  it('a heavy nosing moves the middle forward', () => {
    const nosing = { height: '3 in', thickness: '1-1/2 in' };
    const found = judge(
      shelf({ board: { nosing }, brackets: { ...resting, arm: '8 in' }, loads: [hand] }),
      'tip-forward',
    );
    const [a, n] = [10 * 0.75, 3 * 1.5];
    const middle = (a * 5 + n * 10.75) / (a + n);
    expect(found.demand / (poundForce * inch)).toBeCloseTo(5 * 3.5, 6);
    expect(found.capacity / (poundForce * inch)).toBeCloseTo(0.6 * weight * ((a + n) / a) * (8 - middle), 5);
  });

  it('a board in two lengths tips length by length, so it is refused where it only rests', () => {
    const document = shelf({
      board: { length: '96 in', joints: ['16 in'] },
      brackets: { ...resting, arm: '8 in', positions: ['2 in', '16 in', '50 in', '94 in'] },
      loads: [
        {
          kind: 'point',
          amount: '8 lbf',
          at: '8 in',
          eccentricity: '10 in',
          duration: 'permanent',
          arrangement: 'fixed',
        },
      ],
    });
    expect(() => check(document)).toThrow(/screwed/);
  });
});

describe('turning up about an end bracket', () => {
  const brackets = { ...resting, positions: ['12 in', '40 in'] };

  it('a load on the end and the overhang itself against 0.6 of the rest', () => {
    const found = judge(
      shelf({ brackets, loads: [{ kind: 'point', amount: '4 lbf', at: '2 in', duration: 'permanent' }] }),
      'lift-off',
    );
    expect(found.demand / (poundForce * inch)).toBeCloseTo(4 * 10 + (perInch * 12 ** 2) / 2, 6);
    expect(found.capacity / (poundForce * inch)).toBeCloseTo((0.6 * perInch * 36 ** 2) / 2, 6);
  });

  it('tells nothing of the movement of a board that turns over', () => {
    const said = (amount: string): string =>
      check(shelf({ brackets, loads: [{ kind: 'point', amount, at: '2 in', duration: 'permanent' }] }))
        .summary;
    expect(said('0.1 lbf')).toContain('Over the years the front edge moves');
    expect(said('40 lbf')).not.toContain('Over the years');
    expect(said('40 lbf')).toContain('Before that is mended nothing is told');
  });

  it('screwed boards have no such check, but pull on their screws', () => {
    const screwed = check(
      shelf({
        brackets: { positions: ['12 in', '40 in'] },
        loads: [{ kind: 'point', amount: '40 lbf', at: '2 in', duration: 'permanent' }],
      }),
    );
    expect(screwed.checks.map(({ id }) => id)).not.toContain('lift-off');
    expect(screwed.checks.find(({ id }) => id === 'board-screws')?.demand?.value).toBeGreaterThan(0);
    expect(screwed.analysis.supports[1]?.reaction.min.value).toBeLessThan(0);
  });

  it('a board in two lengths turns up length by length, so it is refused where it only rests', () => {
    const document = shelf({
      board: { length: '96 in', joints: ['24 in'] },
      brackets: { ...resting, positions: ['12 in', '24 in', '56 in', '92 in'] },
      loads: [{ kind: 'point', amount: '3 lbf', at: '0 in', duration: 'permanent' }],
      limits: { live: 'none', longTerm: 'none' },
    });
    expect(() => check(document)).toThrow(/screwed/);
  });

  it('screwed, in two lengths: the length on the end pulls its own screws, whatever the other weighs on the bracket', () => {
    const stand = (other: string): Load[] => [
      { kind: 'point', amount: '40 lbf', at: '0 in', duration: 'permanent', arrangement: 'fixed' },
      line(other, { from: '24 in' }),
    ];
    const pull = (other: string): number =>
      judge(
        shelf({
          board: { length: '96 in', joints: ['24 in'] },
          brackets: { positions: ['12 in', '24 in', '56 in', '92 in'] },
          loads: stand(other),
        }),
        'board-screws',
      ).demand / poundForce;
    expect(pull('60 lbf/ft')).toBeGreaterThanOrEqual(40 - 1e-6);
  });

  it('a joint off the middle of an arm leaves one length the smaller part of it to lie on', () => {
    const bearing = (joint: string): number =>
      judge(
        shelf({
          board: { length: '96 in', joints: [joint] },
          brackets: { armWidth: '3 in', positions: ['12 in', '48 in', '84 in'] },
          loads: [line('40 lbf/ft')],
        }),
        'bearing',
      ).demand;
    // 1.5 in of the arm on either side of its middle, and 0.25 in past a joint at 49.25 in.
    expect(bearing('49.25 in') / bearing('48 in')).toBeGreaterThan(5);
    expect(bearing('46.75 in')).toBeCloseTo(bearing('49.25 in'), 3);
  });

  it('where two lengths meet on an arm, each has half of its screws', () => {
    const pull = (joints: string[]) =>
      judge(
        shelf({
          board: { length: '96 in', joints },
          brackets: { positions: ['12 in', '48 in', '84 in'] },
          loads: [
            { kind: 'point', amount: '40 lbf', at: '30 in', duration: 'permanent', arrangement: 'fixed' },
            { kind: 'roaming', amount: '30 lbf', duration: 'seven-days' },
          ],
        }),
        'board-screws',
      );
    const [whole, halves] = [pull([]), pull(['48 in'])];
    expect(halves.where).toContain('bracket 2');
    expect(halves.ratio).toBeGreaterThan(whole.ratio ?? Infinity);
  });

  it('a joint over the end bracket leaves the end on one bracket: refused, or it does not hold', () => {
    for (const hold of ['resting', 'screwed'] as const) {
      const document = shelf({
        board: { joints: ['12 in'] },
        brackets: { hold, positions: ['12 in', '28 in', '44 in'] },
        loads: [],
        limits: { live: 'none', longTerm: 'none' },
      });
      expect(() => {
        if (check(document).verdict === 'does-not-hold') throw new Error('does not hold');
      }, hold).toThrow();
    }
  });
});

describe('the board in front of the arm, across its grain', () => {
  const hand: Load = { kind: 'roaming', amount: '50 lbf', duration: 'seven-days' };
  const at = (amount: string) =>
    judge(shelf({ brackets: { arm: '6 in' }, loads: [{ ...hand, amount }] }), 'board-past-bracket');

  it('a 4 in patch flush with the edge over arm + 2 × nose, and the share of the board: 6 M / b t²', () => {
    const found = at('50 lbf');
    const own = (weight / 2) * (4 / 10) * 2;
    const M = 50 * (4 - 2) + own;
    expect(found.demand / psi).toBeGreaterThanOrEqual((6 * M) / ((1 + 8) * 0.75 ** 2) - 1e-6);
    expect(found.demand / psi).toBeLessThan(((6 * M) / ((1 + 8) * 0.75 ** 2)) * 1.05);
    expect(found.capacity / psi).toBeCloseTo(maple.across_psi * 1.25, 6);
  });

  it('at the end of the board or beside a joint only the board that is there: half the arm and 4 in on one side', () => {
    const on = (board: Parameters<typeof shelf>[0]) =>
      judge(shelf({ ...board, loads: [{ ...hand, amount: '50 lbf' }] }), 'board-past-bracket');
    const ends = on({ brackets: { arm: '6 in', positions: ['0 in', '24 in', '48 in'] } });
    expect(ends.demand / psi).toBeGreaterThanOrEqual((6 * 50 * 2) / (4.5 * 0.75 ** 2) - 1e-6);
    expect(ends.where).toMatch(/bracket [13],/);
    const beside = on({
      board: { length: '96 in', joints: ['48 in'] },
      brackets: { arm: '6 in', positions: ['8 in', '45 in', '48 in', '88 in'] },
    });
    // Over the joint each length has half an inch of arm: with 4 in on one side, 4-1/2 in at most.
    expect(beside.demand / psi).toBeGreaterThanOrEqual((6 * 50 * 2) / (4.5 * 0.75 ** 2) - 1e-6);
  });

  it.each([2, 4, 8, 16])(
    'arms %i in apart leave no less to bend than a strip: w l² / 2, 8 in in front of them',
    (apart) => {
      const positions = Array.from({ length: 48 / apart }, (_, i) => `${apart / 2 + i * apart} in`);
      const found = judge(
        shelf({
          board: { depth: '12 in' },
          brackets: { arm: '4 in', positions },
          loads: [{ kind: 'area', amount: '60 psf', duration: 'permanent', arrangement: 'fixed' }],
        }),
        'board-past-bracket',
      );
      const w = 60 / 144 + (mapleBoard(12, 0.75).weight_Npm * inch) / poundForce / 12;
      const strip = (6 * ((w * 8 ** 2) / 2)) / 0.75 ** 2;
      // Arms of a board that goes on past them carry a little more or less than their share.
      expect(found.demand / psi).toBeGreaterThan(strip * 0.999);
      expect(found.demand / psi).toBeLessThan(strip * 1.25);
    },
  );

  it('up to half of the derived value holds; up to all of it cannot say; above it does not hold', () => {
    const perPound = ((at('100 lbf').ratio ?? NaN) - (at('50 lbf').ratio ?? NaN)) / 50;
    const rest = (at('50 lbf').ratio ?? NaN) - 50 * perPound;
    const toReach = (ratio: number): string => `${((ratio - rest) / perPound).toFixed(3)} lbf`;
    expect(at(toReach(0.495)).outcome).toBe('holds');
    expect(at(toReach(0.505)).outcome).toBe('cannot-say');
    expect(at(toReach(0.995)).outcome).toBe('cannot-say');
    expect(at(toReach(1.005)).outcome).toBe('does-not-hold');
  });

  it('arms that reach the front edge leave nothing to check', () => {
    expect(check(shelf({ loads: [hand] })).checks.map(({ id }) => id)).not.toContain('board-past-bracket');
  });

  it('a box whose front member is not over the arms hangs on its skins: cannot say', () => {
    const box = { depth: '12 in', thickness: '2 in', box: { skin: '1/4 in', frame: '1 in', members: 2 } };
    const ids = (arm: string) => check(shelf({ board: box, brackets: { arm } })).checks;
    expect(ids('11-1/2 in').map(({ id }) => id)).not.toContain('board-past-bracket');
    expect(ids('11-3/8 in').find(({ id }) => id === 'board-past-bracket')?.outcome).toBe('cannot-say');
    expect(judge(shelf({ board: box, brackets: { arm: '10-1/2 in' } }), 'board-past-bracket').outcome).toBe(
      'cannot-say',
    );
  });

  it('no value across the grain for graded lumber: cannot say', () => {
    const graded = {
      material: 'Douglas Fir-Larch',
      basis: 'graded',
      grade: 'No.2',
      appearance: undefined,
      thickness: '1-1/2 in',
      depth: '9-1/4 in',
    } as const;
    expect(
      judge(shelf({ board: graded, brackets: { arm: '6 in' }, loads: [hand] }), 'board-past-bracket').outcome,
    ).toBe('cannot-say');
  });
});

describe('the upper skin of a box between the members of its frame, a strip on simple supports', () => {
  // 12 in deep, members of 1 in at wall and front: 10 in between them; 1/4 in of maple, 1/2 in under it for the arms.
  const on = (loads: Load[]) =>
    judge(
      shelf({
        board: { depth: '12 in', thickness: '2 in', box: { skin: '1/4 in', frame: '1 in', members: 2 } },
        brackets: { arm: '12 in' },
        loads,
      }),
      'box-skin',
    );
  const own = (mapleBoard(1, 0.25).weight_Npm * inch) / poundForce;
  const bare = (6 * ((own * 10 ** 2) / 8)) / 0.25 ** 2;

  it('a line in the middle: n s / 4', () => {
    const found = on([line('40 lbf/ft', { eccentricity: '6 in' })]);
    expect(found.demand / psi).toBeCloseTo(bare + (6 * ((40 / 12) * (10 / 4))) / 0.25 ** 2, 4);
    expect(found.outcome).toBe('does-not-hold');
  });

  it('spread over the depth: q s² / 8', () => {
    const found = on([line('24 lbf/ft')]);
    expect(found.demand / psi).toBeCloseTo(bare + (6 * (((2 / 12) * 100) / 8)) / 0.25 ** 2, 4);
  });

  it('a hand on a patch of 4 in, spread at 45°: P (2 s − c) / 8 over 14 in', () => {
    const found = on([{ kind: 'roaming', amount: '10 lbf', duration: 'seven-days' }]);
    expect(found.demand / psi).toBeCloseTo(bare + (6 * ((10 * 16) / 8 / 14)) / 0.25 ** 2, 4);
    expect(found.capacity / psi).toBeCloseTo(maple.across_psi * 1.25, 6);
  });

  it('one thing 3 in from a member: P a b / s over 4 + 2 × 3 in, and two of them side by side twice', () => {
    const jar = (at: string): Load => ({
      ...{ kind: 'point', amount: '5 lbf', at, eccentricity: '4 in', duration: 'permanent' },
    });
    const one = (6 * ((5 * 3 * 7) / 10 / 10)) / 0.25 ** 2;
    expect(on([jar('20 in')]).demand / psi).toBeCloseTo(bare + one, 4);
    expect(on([jar('20 in'), jar('24 in')]).demand / psi).toBeCloseTo(bare + 2 * one, 4);
    expect(on([jar('4 in'), jar('24 in')]).demand / psi).toBeCloseTo(bare + one, 4);
  });

  it('what stands over a member bends it as that goes down more than the other, a half of it at the most passing across', () => {
    const found = on([line('40 lbf/ft', { eccentricity: '11.5 in' })]).demand / psi - bare;
    // Two skins clamped at both ends of 10 in, a quarter more for how that is spread along the board.
    const most = ((6 * 1.25 * (40 / 12)) / 2) * (10 / 4);
    expect(found).toBeGreaterThan(0.01 * (most / 0.25 ** 2));
    expect(found).toBeLessThan(most / 0.25 ** 2);
    expect(on([line('40 lbf/ft', { eccentricity: '6 in' })]).demand / psi).toBeCloseTo(
      bare + (6 * ((40 / 12) * (10 / 4))) / 0.25 ** 2,
      4,
    );
  });

  it('a thing whose patch is half over a member bends it with what is beside that', () => {
    const jar: Load = {
      ...{ kind: 'point', amount: '8 lbf', at: '20 in', eccentricity: '11 in', duration: 'permanent' },
    };
    // Of 4 in beside the front edge 2 in are over the gap and 1 in over the member: 8 × 2 / 4 at 1 in from it, spread to 6 in.
    const beside = (6 * ((4 * 1 * 9) / 10 / 6)) / 0.25 ** 2;
    expect(on([jar]).demand / psi - bare).toBeGreaterThan(beside);
  });
});

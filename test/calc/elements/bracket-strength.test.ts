import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { inch, judge, line, poundForce, psi, shelf, type Load } from './documents.ts';
import { mapleBoard } from './maple.ts';

/*
 * Brackets by hand: statics, AISC 360 (0.6 F_y on the elastic section; E3), NDS 12.2. Thread of a wood screw: two thirds of
 * its length and at least 4 D (NDS Appendix L): all that is past a 1/8 in arm here. Forces in lbf, lengths in inches.
 */
type Capacity = NonNullable<BracketShelfInput['brackets']['capacity']>;

const board = mapleBoard(10, 0.75);
const ownWeight = (board.weight_Npm * 48 * inch) / poundForce;

describe('a rated bracket', () => {
  const on = (capacity: Capacity, loads: Load[]) =>
    judge(shelf({ brackets: { capacity }, loads }), 'bracket');

  it('the load: half of everything against the rating, where the rating was far out on the arm', () => {
    const found = on({ basis: 'rated', allowable: '100 lbf', at: '9 in' }, [line('30 lbf/ft')]);
    const R = (120 + ownWeight) / 2;
    expect(found.demand / poundForce).toBeCloseTo(R, 6);
    expect(found.ratio).toBeCloseTo(R / 100, 8);
  });

  it('the couple: load × mid-depth against rating × where it was rated', () => {
    const found = on({ basis: 'rated', allowable: '100 lbf', at: '3 in' }, [line('30 lbf/ft')]);
    const C = ((120 + ownWeight) / 2) * 5;
    expect(found.demand / (poundForce * inch)).toBeCloseTo(C, 5);
    expect(found.ratio).toBeCloseTo(C / 300, 8);
  });

  it('not stated where: rated at the middle of the arm', () => {
    expect(on({ basis: 'rated', allowable: '100 lbf' }, [line('30 lbf/ft')]).ratio).toBe(
      on({ basis: 'rated', allowable: '100 lbf', at: '5 in' }, [line('30 lbf/ft')]).ratio,
    );
  });

  it('a load counts at its own distance, a hand at the front edge: each with its own reaction', () => {
    const loads: Load[] = [
      line('30 lbf/ft', { eccentricity: '2 in' }),
      { kind: 'roaming', amount: '40 lbf', duration: 'seven-days' },
    ];
    const found = on({ basis: 'rated', allowable: '100 lbf', at: '1 in' }, loads);
    const fromHand = 40 * (1 + 8 / 32);
    expect(found.demand / (poundForce * inch)).toBeCloseTo(60 * 2 + (ownWeight / 2) * 5 + fromHand * 10, 5);
  });

  it('a test load over its factor', () => {
    const found = on({ basis: 'rated', ultimate: '400 lbf', factor: 4, at: '9 in' }, [line('30 lbf/ft')]);
    expect(found.ratio).toBeCloseTo((120 + ownWeight) / 2 / 100, 8);
  });

  it('a rating of nothing does not hold, and has no ratio', () => {
    const found = on({ basis: 'rated', allowable: '0 lbf' }, [line('30 lbf/ft')]);
    expect([found.ratio, found.outcome]).toEqual([null, 'does-not-hold']);
  });

  it('lifted by a hand on a long overhang: a quarter of the rated couple holds, above it cannot say, above all of it no', () => {
    // Brackets at 6 and 22 in of 48: the hand at the right end lifts the left one by 50 × 26 / 16, at the front edge.
    const weight = ownWeight / 48;
    const C = ((50 * 26) / 16) * 10 + ((48 * weight * 2) / 16) * 5;
    const rated = (allowable_lbf: number, hold: 'screwed' | 'resting' = 'screwed') =>
      shelf({
        brackets: {
          positions: ['6 in', '22 in'],
          hold,
          capacity: { basis: 'rated', allowable: `${allowable_lbf.toFixed(4)} lbf`, at: '10 in' },
        },
        loads: [{ kind: 'roaming', amount: '50 lbf', duration: 'seven-days' }],
      });
    const lift = (allowable_lbf: number) => judge(rated(allowable_lbf), 'bracket-lift');
    const unsure = lift(200);
    expect(unsure.demand / (poundForce * inch)).toBeCloseTo(C, 4);
    expect(unsure.ratio).toBeCloseTo(C / 2000, 6);
    expect(unsure).toMatchObject({ outcome: 'cannot-say', where: 'bracket 1, at 6 in' });
    expect(unsure.note).toContain('ask the maker');
    expect(lift(0.4 * C * 1.0001).outcome).toBe('holds');
    expect(lift((0.4 * C) / 1.0001).outcome).toBe('cannot-say');
    expect(lift((0.1 * C) / 1.0001).outcome).toBe('does-not-hold');
    const resting = check(rated(200, 'resting'));
    expect(resting.checks.map(({ id }) => id)).not.toContain('bracket-lift');
  });

  it('no rating: cannot say, however small the load', () => {
    const found = on({ basis: 'unknown', what: 'cast iron' }, []);
    expect([found.ratio, found.outcome]).toEqual([null, 'cannot-say']);
    expect(check(shelf({ brackets: { capacity: { basis: 'unknown' } } })).verdict).not.toBe('holds');
  });
});

/** What is left of a bar 1 in wide beside the hole for a #8 screw, 0.164 in (NDS Appendix L) and 1/16 in. */
const besideHole = 1 - 0.164 - 1 / 16;

describe('a steel arm: 1 × 1/4 in, 8 in long, 50 lbf at its tip (29 000 ksi; AISC Table 3-23 case 21)', () => {
  const arm = { board: { depth: '8 in' }, brackets: { positions: ['0 in', '48 in'], arm: '8 in' } };
  const steel = { basis: 'steel', metal: 'a36', width: '1 in', thickness: '1/4 in' } as const;
  const tip: Load = {
    kind: 'point',
    amount: '50 lbf',
    at: '0 in',
    eccentricity: '8 in',
    duration: 'permanent',
    arrangement: 'fixed',
  };
  const document = shelf({ ...arm, brackets: { ...arm.brackets, capacity: steel }, loads: [tip] });
  const weight = (mapleBoard(8, 0.75).weight_Npm * 24 * inch) / poundForce;

  it('38.4 ksi from the load alone: 6 M / b t², against 0.6 × 36 ksi', () => {
    const found = judge(document, 'bracket');
    expect((6 * 50 * 8) / 0.25 ** 2).toBeCloseTo(38400, 6);
    expect(found.demand / psi).toBeCloseTo(38400 + (6 * weight * 4) / 0.25 ** 2, 3);
    expect(found.capacity / psi).toBeCloseTo(21600, 6);
    expect(found.outcome).toBe('does-not-hold');
  });

  it('beside a hole 1 in from the wall less of it is left: 50 × 7 and the board past there, on 0.77 in', () => {
    const found = judge(
      shelf({
        ...arm,
        brackets: {
          ...arm.brackets,
          capacity: steel,
          boardScrews: { fastener: 'wood-screw-8', at: ['1 in', '6 in'] },
        },
        loads: [tip],
      }),
      'bracket',
    );
    const M = 50 * 7 + (weight * 7 ** 2) / (2 * 8);
    expect(found.demand / psi).toBeCloseTo((6 * M) / 0.25 ** 2 / besideHole, 2);
    expect(found.note).toContain('beside a hole');
  });

  it('a bar narrower than the holes in it does not hold, unless the board lies on something wider', () => {
    const narrow = (more: Partial<BracketShelfInput['brackets']>) =>
      judge(
        shelf({
          ...arm,
          brackets: {
            ...arm.brackets,
            armWidth: '3/16 in',
            capacity: { ...steel, width: '3/16 in', thickness: '2 in' },
            ...more,
          },
          loads: [line('1 lbf/ft')],
        }),
        'bracket',
      );
    expect(narrow({})).toMatchObject({ outcome: 'does-not-hold', ratio: null });
    expect(narrow({}).note).toContain('leave nothing of a bar');
    expect(narrow({ hold: 'resting' }).outcome).toBe('holds');
    expect(narrow({ armWidth: '1 in' }).outcome).toBe('holds');
  });

  it('it moves 0.23 in: PL³/3EI', () => {
    const I = 0.25 ** 3 / 12;
    const moved = (50 * 8 ** 3) / (3 * 29e6 * I);
    expect(moved).toBeCloseTo(0.226, 3);
    expect(check(document).analysis.deflection.live.value / inch).toBeCloseTo(moved, 6);
  });

  it('a metal without a yield point in the tables: cannot say', () => {
    const iron = shelf({
      ...arm,
      brackets: { ...arm.brackets, capacity: { ...steel, metal: 'cast iron' } },
      loads: [tip],
    });
    expect(judge(iron, 'bracket').outcome).toBe('cannot-say');
  });

  it('a strut: squeezed by C L_d / (s h), buckling by AISC 360 E3-2 and E3-3 over 1.67', () => {
    const strut = { at: '6 in', drop: '8 in', width: '1/2 in' } as const;
    const held = (thickness: string) =>
      judge(
        shelf({
          ...arm,
          brackets: {
            ...arm.brackets,
            capacity: { ...steel, width: '2 in', thickness: '1 in', strut: { ...strut, thickness } },
          },
          loads: [tip],
        }),
        'bracket',
      );
    const [L, C] = [10, 50 * 8 + weight * 4];
    const by = (t: number) => {
      const F_e = (Math.PI ** 2 * 29e6) / (L / (t / Math.sqrt(12))) ** 2;
      const F_cr = 36e3 / F_e <= 2.25 ? 0.658 ** (36e3 / F_e) * 36e3 : 0.877 * F_e;
      return { stress: (C * L) / (6 * 8) / (0.5 * t), allowed: F_cr / 1.67 };
    };
    for (const [written, t] of [
      ['1/16 in', 1 / 16],
      ['1/8 in', 1 / 8],
    ] as const) {
      const found = held(written);
      expect(found.demand / psi).toBeCloseTo(by(t).stress, 3);
      expect(found.capacity / psi).toBeCloseTo(by(t).allowed, 3);
    }
  });

  it('an arm on a strut is bent most where the load stands between wall and strut, not where the couple is largest', () => {
    const strut = { at: '6 in', drop: '8 in', width: '1 in', thickness: '1 in' } as const;
    const found = judge(
      shelf({
        ...arm,
        brackets: {
          ...arm.brackets,
          positions: ['8 in', '40 in'],
          capacity: { ...steel, width: '1 in', thickness: '1/4 in', strut },
        },
        loads: [
          {
            kind: 'point',
            amount: '100 lbf',
            at: '8 in',
            eccentricity: '3 in',
            arrangement: 'fixed',
            duration: 'permanent',
          },
          {
            kind: 'point',
            amount: '60 lbf',
            at: '40 in',
            eccentricity: '6 in',
            arrangement: 'fixed',
            duration: 'permanent',
          },
        ],
      }),
      'bracket',
    );
    // The board's weight is spread over the depth: the mean of e (6 − e) / 6 over 8 in is 36/48.
    const [C, M] = [100 * 3 + weight * 4, (100 * 3 * 3) / 6 + (weight * 36) / 48];
    expect(found.where).toContain('bracket 1');
    expect(found.demand / psi).toBeCloseTo(((6 * M) / 0.25 ** 2 + C / 8 / 0.25) / besideHole, 1);
  });
});

describe('steel arms that are lifted: brackets at 0, 12 and 24 in of a 144 in board, 40 lbf at its end', () => {
  // Clapeyron's three moments with shear, Φ = 12 EI / κGA L²: the moment over the middle bracket, and what lifts it.
  const plain = mapleBoard(10, 0.75);
  const w = (plain.weight_Npm * inch) / poundForce;
  const [L, c] = [12, 120];
  const Phi = (12 * plain.EI) / (plain.GA * (L * inch) ** 2);
  const carried = (1 - Phi / 2) / (4 * (1 + Phi / 4));
  const lift = ((1 + 2 * carried) * 40 * c) / L;
  const ownMoment = carried * ((w * c ** 2) / 2) - (w * L ** 2) / (8 * (1 + Phi / 4));
  const ownLift = (2 * ownMoment + (w * c ** 2) / 2) / L - w * L;
  const on = (capacity: Capacity, eccentricity: string) =>
    judge(
      shelf({
        board: { length: '144 in' },
        brackets: { positions: ['0 in', '12 in', '24 in'], capacity },
        loads: [
          {
            kind: 'point',
            amount: '40 lbf',
            at: '144 in',
            eccentricity,
            duration: 'permanent',
            arrangement: 'fixed',
          },
        ],
      }),
      'bracket',
    );
  const steel = { basis: 'steel', metal: 'a36', width: '2 in', thickness: '1 in' } as const;

  it('a plain arm is bent by the larger lift', () => {
    const found = on(steel, '6 in');
    const C = lift * 6 + ownLift * 5;
    expect(found.where).toBe('bracket 2, at 12 in');
    expect(found.demand / psi).toBeCloseTo((6 * C) / 2, 1);
  });

  it('a strut is pulled, against F_y / 1.67 (AISC 360 D2)', () => {
    const strut = { at: '3 in', drop: '3 in', width: '1/2 in', thickness: '1/2 in' } as const;
    const found = on({ ...steel, strut }, '3 in');
    const C = lift * 3 + ownLift * 5;
    expect(found.where).toBe('bracket 2, at 12 in');
    expect(found.demand / psi).toBeCloseTo((C * Math.SQRT2) / 3 / 0.25, 1);
    expect(found.capacity / psi).toBeCloseTo(36000 / 1.67, 6);
  });
});

describe('a lifted arm on a strut: pushed, it may buckle (AISC 360 E3) and sags the more (Appendix 8, from memory)', () => {
  it('1 × 1/8 in, 9 in between wall and strut, far weaker than pulled', () => {
    const strut = { at: '9 in', drop: '9 in', width: '1 in', thickness: '1/2 in' } as const;
    const found = judge(
      shelf({
        board: { thickness: '1-1/2 in' },
        brackets: {
          positions: ['6 in', '22 in'],
          capacity: { basis: 'steel', metal: 'a36', width: '1 in', thickness: '1/8 in', strut },
        },
        loads: [{ kind: 'roaming', amount: '20 lbf', duration: 'seven-days' }],
      }),
      'bracket',
    );
    const [hand, own] = [
      (20 * 26) / 16,
      (48 * ((mapleBoard(10, 1.5).weight_Npm * inch) / poundForce) * 2) / 16,
    ];
    const [C, M] = [hand * 10 + own * 5, hand * (10 - 9) + own * (5 - 9 + 9 ** 2 / 20)];
    const F_e = (Math.PI ** 2 * 29e6) / (9 / (0.125 / Math.sqrt(12))) ** 2;
    const f_a = C / 9 / 0.125 / besideHole;
    expect(found.where).toBe('bracket 1, at 6 in');
    expect(found.demand / psi).toBeCloseTo(
      f_a + (6 * M) / 0.125 ** 2 / besideHole / (1 - (1.6 * f_a) / F_e),
      1,
    );
    expect(found.capacity / psi).toBeCloseTo((0.877 * F_e) / 1.67, 2);
  });
});

describe('a strut under the middle of what is spread over the depth', () => {
  const strut = { at: '6 in', drop: '8 in', width: '1 in', thickness: '1/4 in' } as const;
  const steel = { basis: 'steel', metal: 'a36', width: '1 in', thickness: '1/4 in' } as const;
  const on = (loads: Load[], capacity: Capacity = { ...steel, strut }) =>
    judge(
      shelf({
        board: { depth: '12 in', thickness: '1-1/2 in' },
        brackets: { arm: '12 in', capacity },
        loads,
      }),
      'bracket',
    );
  const weight = (mapleBoard(12, 1.5).weight_Npm * 24 * inch) / poundForce;

  it('bends the arm in front of it by R (d − s)² / 2d: a cantilever under its part of an even load', () => {
    const found = on([line('80 lbf/ft')]);
    const R = 160 + weight;
    const [M, N] = [(R * 6 ** 2) / 24, (R * 6) / 8];
    expect(found.demand / psi).toBeCloseTo(((6 * M) / 0.25 ** 2 + N / 0.25) / besideHole, 1);
    expect(found.outcome).toBe('does-not-hold');
  });

  it('an even load asks more than the same in two lines at 3 and 9 in', () => {
    const lines = [line('40 lbf/ft', { eccentricity: '3 in' }), line('40 lbf/ft', { eccentricity: '9 in' })];
    expect(on([line('80 lbf/ft')]).demand).toBeGreaterThanOrEqual(on(lines).demand * (1 - 1e-9));
  });

  it('a bar on edge turns over: AISC 360 F11.2(c), 1.9 E / (L d / t²) / 1.67 for 1/16 × 3-1/2 in and 12 in', () => {
    const found = on([line('10 lbf/ft')], { ...steel, width: '1/16 in', thickness: '3-1/2 in' });
    expect(found.capacity / psi).toBeCloseTo((1.9 * 29e6) / (12 * 3.5 * 256) / 1.67, 1);
  });
});

describe('screws up into a hollow box', () => {
  const box = {
    depth: '10 in',
    thickness: '2-1/2 in',
    box: { skin: '1/2 in', frame: '3/4 in', members: 3 },
  } as const;
  const on = (boardScrews?: NonNullable<BracketShelfInput['brackets']['boardScrews']>) =>
    judge(
      shelf({
        board: box,
        brackets: {
          arm: '9 in',
          positions: ['16 in', '40 in'],
          ...(boardScrews !== undefined && { boardScrews }),
        },
        loads: [line('20 lbf/ft'), { kind: 'roaming', amount: '50 lbf', duration: 'seven-days' }],
      }),
      'board-screws',
    );
  const given = { fastener: 'wood-screw-8', at: ['2 in', '7 in'], armThickness: '1/8 in' };

  it('hold by the thread in the lower skin alone: none where the thread lies past it, in the hollow', () => {
    // 2-1/2 in long: its thread begins 2.5 / 3 = 0.83 in behind the head, past the arm and the skin, 5/8 in together.
    expect(on({ ...given, length: '2-1/2 in' }).outcome).toBe('does-not-hold');
    // 3/4 in long: thread from 1/4 in on, so 3/8 in of it in the skin.
    expect(on({ ...given, length: '3/4 in' }).capacity).toBeGreaterThan(0);
  });

  it('end in the skin where nothing is said of them', () => {
    expect(on().note).toContain('1/2 in long');
    expect(on().capacity).toBeGreaterThan(0);
  });
});

describe('an arm of steel as thick as a screw has to pass it', () => {
  it('counts from its own thickness, where nothing else is said', () => {
    const capacity = { basis: 'steel', metal: 'a36', width: '1 in', thickness: '1/2 in' } as const;
    const boardScrews = { fastener: 'wood-screw-8', length: '1-1/4 in', at: ['2 in', '7 in'] };
    const pulled = (armThickness?: string) =>
      judge(
        shelf({
          board: { thickness: '1-1/2 in' },
          brackets: {
            positions: ['16 in', '40 in'],
            capacity,
            boardScrews: { ...boardScrews, ...(armThickness !== undefined && { armThickness }) },
          },
          loads: [{ kind: 'roaming', amount: '50 lbf', duration: 'seven-days' }],
        }),
        'board-screws',
      );
    expect(pulled().capacity).toBe(pulled('1/2 in').capacity);
    expect(pulled().note).toContain('1/2 in thick');
    expect(pulled().capacity).toBeLessThan(pulled('1/8 in').capacity);
  });
});

describe('the leg of a bracket with a strut, pulled off the wall by the arm and held by its screws', () => {
  const R = (120 + ownWeight) / 2;
  /** Stress in the leg of 1-1/4 × 1/8 in on half of everything at mid-depth: what is left beside #14 screws. */
  const stress = (drop: string, heights: string[]) =>
    judge(
      shelf({
        loads: [line('30 lbf/ft')],
        brackets: {
          capacity: {
            basis: 'steel',
            width: '1-1/2 in',
            thickness: '3/8 in',
            strut: { at: '9 in', drop, width: '1 in', thickness: '1/4 in' },
          },
          plate: { height: '9 in', width: '1-1/4 in', thickness: '1/8 in' },
          screws: { fastener: 'wood-screw-14', length: '4 in', heights },
        },
        wall: {
          framing: 'wood-stud',
          species: 'spruce-pine-fir',
          studs: { first: '8 in', spacing: '16 in' },
        },
      }),
      'plate',
    );
  const stressOf = (M: number): number => (6 * M) / ((1.25 - 0.242 - 1 / 16) * 0.125 ** 2);

  it('at the lower screw: N × 3.5 less the pull of the upper one × 3.25, far more than N × 0.25 at the upper', () => {
    const C = R * 5;
    const upper = (C * 8.75) / (8.75 ** 2 + 5.5 ** 2);
    const M = Math.abs((C / 9) * 3.5 - upper * 3.25);
    expect(M).toBeGreaterThan(4 * (C / 9) * 0.25);
    expect(stress('9 in', ['8-3/4 in', '5-1/2 in']).demand / psi).toBeCloseTo(stressOf(M), 3);
  });

  it('at the foot of a strut below its only screw: C less the pull of the screw × 7.75', () => {
    const C = R * 5;
    const M = C - (C / 8.75) * 7.75;
    expect(stress('8 in', ['8-3/4 in']).demand / psi).toBeCloseTo(stressOf(M), 3);
  });
});

describe('a plate wider than its arm of 1 in', () => {
  const C = ((120 + ownWeight) / 2) * 5;
  const hole = 0.242 + 1 / 16;
  /** The plate of 1/4 in under half of everything at mid-depth. */
  const plateOf = (height: string, width: string, across: string, heights: string[]) =>
    judge(
      shelf({
        loads: [line('30 lbf/ft')],
        brackets: {
          capacity: { basis: 'steel', width: '1 in', thickness: '3/8 in' },
          plate: { height, width, thickness: '1/4 in' },
          screws: { fastener: 'wood-screw-14', length: '4 in', heights, perHeight: 2, across },
        },
        wall: { framing: 'blocking', species: 'spruce-pine-fir' },
      }),
      'plate',
    ).demand / psi;

  it('sideways from the arm to screws 5 in apart, 1 in up: C / 1 × (5 − 1) / 4 on 2 in less a hole', () => {
    expect(plateOf('2 in', '6 in', '5 in', ['1 in'])).toBeCloseTo((6 * C) / ((2 - hole) * 0.25 ** 2), 3);
  });

  it('down from the arm to screws 1 in below the upper end: no more than 1 + 1 + 1 in of its width, less two holes', () => {
    const net = 3 - 2 * hole;
    expect(plateOf('9 in', '4 in', '3 in', ['8 in', '1 in'])).toBeCloseTo((6 * C) / (net * 0.25 ** 2), 3);
  });
});

describe('screws up into the board: NDS 12.2.2, 2850 G² D lbf an inch of thread', () => {
  const screws = { fastener: 'wood-screw-8', length: '3/4 in', at: ['2 in', '7 in'], armThickness: '1/8 in' };
  const brackets = { positions: ['16 in', '40 in'], boardScrews: screws };

  it('pulled by an overhang: P a / L less the board, two screws', () => {
    const pull: Load = { kind: 'point', amount: '30 lbf', at: '0 in', duration: 'permanent' };
    const found = judge(shelf({ brackets, loads: [pull] }), 'board-screws');
    const own = (ownWeight * (24 - 16)) / 24;
    expect(found.demand / poundForce).toBeGreaterThanOrEqual((30 * 16) / 24 - own - 1e-6);
    const thread = 0.75 - 0.125;
    const one = 2850 * 0.63 ** 2 * 0.164 * thread * 0.9;
    expect(found.capacity / poundForce).toBeLessThanOrEqual(2 * one * (1 + 1e-9));
    expect(found.capacity / poundForce).toBeGreaterThanOrEqual(one * (1 - 1e-9));
  });

  it('a short arm: what stands past its tip pulls on the screw nearest the wall, one screw', () => {
    const hand: Load = { kind: 'roaming', amount: '25 lbf', duration: 'seven-days' };
    const found = judge(
      shelf({ brackets: { ...brackets, arm: '8 in', positions: ['0 in', '48 in'] }, loads: [hand] }),
      'board-screws',
    );
    const held = 0.6 * (ownWeight / 2) * (8 - 5);
    expect(found.demand / poundForce).toBeCloseTo((25 * (10 - 8) - held) / (8 - 2), 6);
    expect(found.capacity / poundForce).toBeCloseTo(2850 * 0.63 ** 2 * 0.164 * (0.75 - 0.125) * 1.25, 4);
  });

  it('screws at the very tip of the arm, or past the board, hold nothing down: no pass while the board lifts', () => {
    const lift: Load = {
      kind: 'point',
      amount: '200 lbf',
      at: '0 in',
      duration: 'permanent',
      eccentricity: '5 in',
    };
    for (const [arm, at] of [
      ['10 in', '10 in'],
      ['14 in', '13 in'],
    ] as const) {
      const document = shelf({
        brackets: { ...brackets, arm, boardScrews: { ...screws, at: [at] } },
        loads: [lift],
      });
      expect(() => {
        const { outcome, demand } = judge(document, 'board-screws');
        if (outcome !== 'holds' && demand !== 0) throw new Error('refused, or it does not hold');
      }, `arm ${arm}, screw at ${at}`).toThrow();
    }
  });

  it('a screw right at the tip, in whatever units its place is written, has no lever: does not hold', () => {
    for (const [arm, at] of [
      ['6 in', '152.4 mm'],
      ['4 in', '4 in'],
      ['9 in', '228.6 mm'],
      ['177.8 mm', '7 in'],
    ] as const) {
      const hand: Load = { kind: 'roaming', amount: '25 lbf', duration: 'seven-days' };
      const document = shelf({
        brackets: { ...brackets, arm, boardScrews: { ...screws, at: [at] } },
        loads: [hand],
      });
      expect(judge(document, 'board-screws'), `${arm}, ${at}`).toMatchObject({
        outcome: 'does-not-hold',
        ratio: null,
      });
    }
  });

  it('a panel has no published withdrawal: cannot say as soon as anything pulls', () => {
    const mdf = { material: 'mdf', basis: 'panel', appearance: undefined } as const;
    const pull: Load = { kind: 'point', amount: '30 lbf', at: '0 in', duration: 'permanent' };
    expect(judge(shelf({ board: mdf, brackets, loads: [pull] }), 'board-screws').outcome).toBe('cannot-say');
  });
});

describe('the fixing into the wall', () => {
  const wall = {
    framing: 'wood-stud' as const,
    species: 'spruce-pine-fir',
    studs: { first: '8 in', spacing: '16 in' },
    studWidth: '1-1/2 in',
    studDepth: '3-1/2 in',
    coverings: [{ material: 'gypsum-board', thickness: '1/2 in' }],
  } satisfies BracketShelfInput['wall'];
  const plate = { height: '8 in', width: '1-1/4 in', thickness: '1/4 in' };
  const screws = { fastener: 'wood-screw-10', length: '3 in', heights: ['7 in', '1 in'] };

  it('is never passed over where the wall, the plate or the screws are not given', () => {
    for (const document of [shelf(), shelf({ wall }), shelf({ wall, brackets: { plate } })]) {
      const result = check(document);
      expect(result.checks.filter(({ outcome }) => outcome !== 'holds').map(({ id }) => id)).toEqual([
        'fixing',
      ]);
      expect(result.verdict).toBe('cannot-say');
      expect(result.governing).toBe('fixing');
    }
  });

  it('a couple by hand: pulls in proportion to height about the lower end, 7 and 1 in', () => {
    const result = check(shelf({ wall, brackets: { plate, screws } }));
    for (const { couple, tension } of result.fixings) {
      expect(tension.value).toBeCloseTo((couple.value * 7) / (7 * 7 + 1 * 1) / 0.0254, 6);
    }
  });

  describe('a bracket that is pulled up turns its plate about the upper end', () => {
    // A hand at the front of the right end: 50 × 26 / 16 up on the left bracket, and its share of the board's own weight.
    const weight = (mapleBoard(10, 1.5).weight_Npm * inch) / poundForce;
    const C = ((50 * 26) / 16) * 10 + ((48 * weight * 2) / 16) * 5;
    const pulledUp = (
      heights: string[],
      more: Partial<typeof wall & { bearing: { allowable: string; source: string } }>,
    ) =>
      check(
        shelf({
          board: { thickness: '1-1/2 in' },
          brackets: {
            positions: ['6 in', '22 in'],
            plate,
            screws: { fastener: 'wood-screw-14', length: '4 in', heights },
          },
          wall: { ...wall, studs: { first: '6 in', spacing: '16 in' }, ...more },
          loads: [{ kind: 'roaming', amount: '50 lbf', duration: 'seven-days' }],
        }),
      );

    it('screws at 7-3/4 and 7 in of 8: 1/4 and 1 in from there, C × 1 / (1² + (1/4)²) on the lower one', () => {
      const { fixings, checks, assumptions } = pulledUp(['7-3/4 in', '7 in'], {});
      const T = C / (1 + 1 / 16);
      // 2850 G² D on two thirds of 4 in, for seven days (NDS 12.2-2).
      const W = 2850 * 0.42 ** 2 * 0.242 * (8 / 3) * 1.25;
      const [left] = fixings;
      expect((left?.couple.value ?? NaN) / (poundForce * inch)).toBeCloseTo(-C, 4);
      expect((left?.tension.value ?? NaN) / poundForce).toBeCloseTo(T, 4);
      expect(left?.withdrawal).toBeCloseTo(T / W, 6);
      const named = (id: string) => checks.find((each) => each.id === id);
      expect(named('fixing')).toMatchObject({ outcome: 'does-not-hold', where: 'bracket 1, at 6 in' });
      expect(named('fixing')?.note).toContain('lowest screw governs');
      expect(named('fixing')?.note).toContain('turns about the upper end');
      expect((named('screw-metal')?.demand?.value ?? NaN) / poundForce).toBeCloseTo(T, 4);
      expect(assumptions.join(' ')).toContain('presses the upper end of its plate');
    });

    it('with a strut: C / 9 off the wall at its foot, 9 in down; at the lower screw × 5.5, nothing beyond', () => {
      const strut = { at: '9 in', drop: '9 in', width: '1 in', thickness: '1/4 in' };
      const plates = { height: '9 in', width: '1-1/4 in', thickness: '1/8 in' };
      const found = judge(
        shelf({
          board: { thickness: '1-1/2 in' },
          brackets: {
            positions: ['6 in', '22 in'],
            capacity: { basis: 'steel', width: '1-1/2 in', thickness: '3/8 in', strut },
            plate: plates,
            screws: { fastener: 'wood-screw-14', length: '4 in', heights: ['8-3/4 in', '5-1/2 in'] },
          },
          wall: { ...wall, studs: { first: '6 in', spacing: '16 in' } },
          loads: [{ kind: 'roaming', amount: '50 lbf', duration: 'seven-days' }],
        }),
        'plate',
      );
      expect(found.where).toBe('bracket 1, at 6 in');
      const M = (C / 9) * (9 - 3.5);
      expect(found.demand / psi).toBeCloseTo((6 * M) / ((1.25 - 0.242 - 1 / 16) * 0.125 ** 2), 2);
    });

    it('on a covering of 300 psi: f b a (3 − a / 2) = C with the screw 3 in below the upper end', () => {
      const { fixings, checks } = pulledUp(['5 in'], { bearing: { allowable: '300 psi', source: 'a test' } });
      const a = 3 - Math.sqrt(9 - (2 * C) / (300 * 1.25));
      expect((fixings[0]?.tension.value ?? NaN) / poundForce).toBeCloseTo(300 * 1.25 * a, 4);
      const toe = checks.find(({ id }) => id === 'toe-bearing');
      expect(toe?.title).toContain('Upper end');
      expect((toe?.demand?.value ?? NaN) / inch).toBeCloseTo(a, 6);
      expect((toe?.capacity?.value ?? NaN) / inch).toBeCloseTo(3, 9);
    });

    it('a board that only rests on its brackets lifts none of them', () => {
      const resting = shelf({
        board: { thickness: '1-1/2 in' },
        brackets: { positions: ['6 in', '22 in'], hold: 'resting', plate, screws },
        wall: { ...wall, studs: { first: '6 in', spacing: '16 in' } },
        loads: [{ kind: 'roaming', amount: '50 lbf', duration: 'seven-days' }],
      });
      for (const { couple } of check(resting).fixings) expect(couple.value).toBeGreaterThanOrEqual(0);
    });
  });

  it('counts the largest of withdrawal, lateral and combined (NDS 12.4 can come out below the lateral alone)', () => {
    for (const each of check(shelf({ wall, brackets: { plate, screws } })).fixings) {
      expect(each.ratio).toBe(Math.max(each.withdrawal ?? NaN, each.lateral ?? NaN, each.combined ?? NaN));
    }
  });

  it('tells how far a bracket misses its stud, and does not hold beyond the middle half', () => {
    const off = check(
      shelf({ wall: { ...wall, studs: { first: '7 in', spacing: '16 in' } }, brackets: { plate, screws } }),
    );
    expect(off.checks.find(({ id }) => id === 'bracket-on-stud')?.outcome).toBe('does-not-hold');
    expect(off.fixings[0]?.miss?.value).toBeCloseTo(0.0254, 9);
  });

  it('cannot say for a hollow-wall anchor, for masonry without a report, or without the places of the studs', () => {
    const unmarked = { ...wall, studs: undefined };
    for (const other of [
      { ...wall, framing: 'hollow' as const },
      { ...wall, framing: 'masonry' as const },
      unmarked,
    ]) {
      const result = check(shelf({ wall: other, brackets: { plate, screws } }));
      expect(result.verdict).toBe('cannot-say');
    }
  });

  it('takes typed-in allowable values of a report: shares of pull and shear add up', () => {
    const listed = {
      ...screws,
      fastener: 'listed',
      allowable: { tension: '400 lbf', shear: '200 lbf', report: 'report of the anchor' },
    };
    for (const each of check(
      shelf({ wall: { ...wall, framing: 'masonry' }, brackets: { plate, screws: listed } }),
    ).fixings) {
      const shares =
        each.tension.value / (400 * 4.4482216152605) + each.shear.value / (200 * 4.4482216152605);
      expect(each.ratio).toBeCloseTo(shares, 9);
    }
  });

  it('never passes a screw that hardly reaches the wood', () => {
    const result = check(shelf({ wall, brackets: { plate, screws: { ...screws, length: '1-1/4 in' } } }));
    expect(result.checks.find(({ id }) => id === 'fixing')).toMatchObject({
      outcome: 'does-not-hold',
      ratio: null,
    });
  });

  it('what does not hold comes before what cannot be said', () => {
    const result = check(shelf({ loads: [line('2000 lbf/ft')] }));
    expect(result.verdict).toBe('does-not-hold');
  });
});

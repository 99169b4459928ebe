import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import type { BracketShelfInput } from '../../shared/check-document/index.ts';
import { inch, judge, line, poundForce, psi, shelf, type Load } from '../calc/elements/documents.ts';
import { maple } from '../calc/elements/maple.ts';
import { finiteStrip, type Plate, type StripLoad } from './finite-strip.ts';

/*
 * Boards 10 × 3/4 in with strips of 3/4 in along their edges, 32 in between two brackets, against thin plates that meet along
 * lines (finite-strip.ts). Across the grain E is taken as E_L / 15 there. Inches and pounds.
 */
const [L, t] = [32, 0.75];
const wood = { along: maple.E_Pa / psi, across: maple.E_Pa / psi / 15, shear: maple.G_Pa / psi };
interface Built {
  readonly rail?: number;
  readonly nosing?: number;
  /** The nosing stands up rather than hangs down. */
  readonly up?: boolean;
}
const front = ({ rail, nosing }: Built): number => 10 + (rail ? t : 0) + (nosing ? t : 0);

function documentOf({ rail, nosing, up }: Built, loads: readonly Load[]): BracketShelfInput {
  const strip = (height: number, flush: 'top' | 'bottom') => ({
    height: `${height} in`,
    thickness: `${t} in`,
    flush,
  });
  return shelf({
    board: {
      length: `${L} in`,
      ...(rail ? { rail: strip(rail, 'bottom') } : {}),
      ...(nosing ? { nosing: strip(nosing, up ? 'bottom' : 'top') } : {}),
    },
    brackets: {
      positions: ['0 in', `${L} in`],
      arm: '10 in',
      capacity: { basis: 'rated', allowable: '4000 lbf', at: '5 in' },
    },
    loads: [...loads],
  });
}

/** Middle lines of the plates: the board in the middle of its thickness, z from there upward. */
function plates({ rail, nosing, up }: Built, load_y: number): Plate[] {
  const [y0, y1] = [rail ? t / 2 : 0, front({ rail, nosing }) - (nosing ? t / 2 : 0)];
  const stop = Math.min(Math.max(load_y, y0), y1);
  const flat = (from: number, to: number): Plate[] =>
    to - from < 1e-6 ? [] : [{ from: [from, 0], to: [to, 0], thickness: t, strips: Math.ceil(to - from) }];
  const upright = (y: number, height: number | undefined, sense: 1 | -1): Plate[] =>
    height === undefined
      ? []
      : [
          { from: [y, 0], to: [y, sense * (height - t / 2)], thickness: t, strips: 5 },
          { from: [y, 0], to: [y, (-sense * t) / 2], thickness: t, strips: 1 },
        ];
  return [...flat(y0, stop), ...flat(stop, y1), ...upright(y0, rail, 1), ...upright(y1, nosing, up ? 1 : -1)];
}

function byPlates(built: Built, load_y: number, load: Omit<StripLoad, 'at'>) {
  const y1 = front(built) - (built.nosing ? t / 2 : 0);
  const y0 = built.rail ? t / 2 : 0;
  const at = [Math.min(Math.max(load_y, y0), y1), 0] as const;
  const found = finiteStrip(plates(built, load_y), L, [{ ...load, at }], wood);
  return { ...found, edges: Math.max(found.movement(y0, 0), found.movement(y1, 0)), y0, y1 };
}

const inTheMiddle = (amount: number, y: number): Load => ({
  ...{ kind: 'point', amount: `${amount} lbf`, at: `${L / 2} in`, eccentricity: `${y} in` },
  ...{ duration: 'permanent', arrangement: 'fixed' },
});

const strips: readonly (readonly [string, Built])[] = [
  ['a nosing that hangs 1-1/2 in', { nosing: 1.5 }],
  ['a nosing that hangs 3 in', { nosing: 3 }],
  ['a back rail 1-1/2 in high', { rail: 1.5 }],
  ['a back rail 3 in high', { rail: 3 }],
  ['both, 1-1/2 in', { nosing: 1.5, rail: 1.5 }],
  ['both upward, 1-1/2 in', { nosing: 1.5, rail: 1.5, up: true }],
];

describe('the edge that moves most, never less than by plates but for a twentieth, nor a third more', () => {
  it.each(strips)('%s, loaded at mid-depth all along', (_, built) => {
    const y = front(built) / 2;
    const found = judge(documentOf(built, [line('30 lbf/ft')]), 'deflection-live').demand / inch;
    const { edges } = byPlates(built, y, { perLength: 2.5 });
    expect(found / edges).toBeGreaterThan(0.95);
    expect(found / edges).toBeLessThan(1.33);
  });

  it.each(strips)('%s, 50 lbf at the front edge', (_, built) => {
    const y = front(built);
    const found = judge(documentOf(built, [inTheMiddle(50, y)]), 'deflection-live').demand / inch;
    const { edges } = byPlates(built, y, { point: 50, patch: 4 });
    expect(found / edges).toBeGreaterThan(0.95);
    expect(found / edges).toBeLessThan(1.33);
  });
});

describe('bending under a load at the front edge', () => {
  const perPound = (built: Built): number => {
    const of = (amount: number): number =>
      judge(documentOf(built, [inTheMiddle(amount, front(built))]), 'bending').demand / psi;
    return (of(300) - of(200)) / 100;
  };

  it.each([
    ['a nosing alone', { nosing: 1.5 }],
    ['with a rail behind, which is far from the load', { nosing: 1.5, rail: 1.5 }],
    ['both upward', { nosing: 1.5, rail: 1.5, up: true }],
    ['both 3 in', { nosing: 3, rail: 3 }],
  ] as const)('the nosing bears nearly all of it: %s', (_, built: Built) => {
    const { stress, y1 } = byPlates(built, front(built), { point: 1, patch: 4 });
    const tip = (built.up ? 1 : -1) * ((built.nosing ?? 0) - t / 2);
    // A point here, a patch of 4 in there: at most 4 in / 32 in more.
    const byHand = Math.abs(stress(y1, tip));
    expect(perPound(built) / byHand).toBeGreaterThan(0.97);
    expect(perPound(built) / byHand).toBeLessThan(1.25);
  });

  it('a rail at the back hardly helps the board: P L / 4 on 10 × 3/4 in of it, less a tenth', () => {
    const alone = L / 4 / ((10 * t ** 2) / 6);
    const built = { rail: 3 };
    expect(perPound(built)).toBeGreaterThan(0.9 * alone);
    expect(perPound(built)).toBeLessThan(1.4 * alone);
  });
});

describe('the twist axis', () => {
  const step = (document: BracketShelfInput, symbol: string): number =>
    check(document)
      .worksheet.sections.flatMap(({ steps }) => steps)
      .find((each) => each.symbol === symbol)?.result.value ?? NaN;

  it('lies at mid-depth between two strips alike, and at the middle line of a tall thin one', () => {
    const between = documentOf({ nosing: 2, rail: 2, up: true }, []);
    expect(step(between, 'y_s') / inch).toBeCloseTo(5.75, 9);
    const tall = shelf({
      board: { thickness: '1/4 in', rail: { height: '5 in', thickness: '1/4 in', flush: 'bottom' } },
    });
    expect(step(tall, 'y_s') / inch).toBeCloseTo(0.125, 1);
  });

  it('books at mid-depth twist a board with a tall rail: w (d / 2 − t / 2) L / 2 at a bracket', () => {
    const document = documentOf({ rail: 5 }, [line('30 lbf/ft')]);
    const axis = step(document, 'y_s') / inch;
    expect(axis).toBeLessThan(0.6);
    const own = maple.density_kgm3 * 9.80665 * (10 * t + 5 * t) * inch ** 2;
    const middle = (10 * 5.75 + 5 * 0.375) / 15;
    const T = ((30 * poundForce) / 12) * (5.375 - axis) * 16 + own * inch * (middle - axis) * 16;
    expect(step(document, 'T') / (T * inch)).toBeCloseTo(1, 6);
  });
});

describe('a strip no taller than the board', () => {
  it('is board: 9 in and a lipping of 1 in are bent as 10 in, front or back', () => {
    const hand: Load = { kind: 'roaming', amount: '60 lbf', duration: 'seven-days' };
    const lipping = { height: '3/4 in', thickness: '1 in', flush: 'bottom' } as const;
    const bent = (board: Partial<BracketShelfInput['board']>): number =>
      judge(shelf({ board, loads: [hand, line('20 lbf/ft')] }), 'bending').demand;
    const whole = bent({ depth: '10 in' });
    expect(bent({ depth: '9 in', nosing: lipping }) / whole).toBeCloseTo(1, 6);
    expect(bent({ depth: '9 in', rail: lipping }) / whole).toBeCloseTo(1, 6);
  });
});

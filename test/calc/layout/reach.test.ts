import { describe, expect, it } from 'vitest';
import { check, reach } from '../../../calc/index.ts';
import { largestThatHolds } from '../../../calc/layout/reach/boundary.ts';
import type { CheckResult, ReachLimit } from '../../../shared/check-result.ts';
import { bracketShelfSchema, type BracketShelfInput } from '../../../shared/check-document/bracket-shelf.ts';
import { studShelf } from './documents.ts';

const shelves: Readonly<Record<string, BracketShelfInput>> = {
  'a stiff board': studShelf({ brackets: { positions: ['16 in', '48 in', '80 in'] } }),
  'brackets of steel, in millimetres': {
    ...studShelf({
      brackets: {
        positions: ['16 in', '80 in'],
        capacity: { basis: 'steel', metal: 'a36', width: '30 mm', thickness: '8 mm' },
      },
      loads: [{ name: 'Jars', kind: 'line', amount: '60 N/m', duration: 'permanent' }],
    }),
    units: 'metric',
  },
};
const found = Object.entries(shelves).map(([name, document]) => [name, document, reach(document)] as const);

function inputOf(limit: ReachLimit): BracketShelfInput {
  const input: unknown = limit.document;
  if (!isInput(input)) throw new TypeError(limit.reason);
  return input;
}
const isInput = (value: unknown): value is BracketShelfInput => bracketShelfSchema.safeParse(value).success;
const allHold = ({ checks }: CheckResult): boolean => checks.every(({ outcome }) => outcome === 'holds');

/** The first load times a factor. */
function heavier(input: BracketShelfInput, factor: number): BracketShelfInput {
  const [first, ...others] = input.loads ?? [];
  if (first?.kind !== 'line' && first?.kind !== 'point') throw new TypeError('it has a load');
  const [number = '', ...unit] = (first.amount ?? '').split(' ');
  const amount = `${Number(number) * factor} ${unit.join(' ')}`;
  return { ...input, loads: [{ ...first, amount }, ...others] };
}

describe('how far a shelf could go', () => {
  it.each(found)('holds at the heaviest loads and not above them: %s', (_, __, limits) => {
    for (const limit of [limits.heaviestLine, limits.heaviestPoint]) {
      const input = inputOf(limit);
      const at = check(input);
      expect(allHold(at)).toBe(true);
      expect(at.governing).toBe(limit.governing?.id);
      expect(allHold(check(heavier(input, 1.01)))).toBe(false);
      const [load] = input.loads ?? [];
      expect(limit.value?.value).toBeGreaterThan(0);
      expect(load?.kind).toMatch(/^(?:line|point)$/);
    }
  });

  it.each(found)('holds at the longest bay and not beyond it: %s', (_, document, { longestBay }) => {
    const input = inputOf(longestBay);
    const at = check(input);
    expect(allHold(at)).toBe(true);
    const places = at.analysis.supports.map(({ position }) => position.value);
    const bays = places.slice(1).map((place, i) => place - (places[i] ?? 0));
    expect(Math.max(...bays)).toBeCloseTo(longestBay.value?.value ?? NaN, 4);
    const factor = ((longestBay.value?.value ?? NaN) / widest(document)) * 1.015;
    expect(allHold(check(stretched(document, factor)))).toBe(false);
  });

  it('says why there is no limit', () => {
    const weak = studShelf({ board: { thickness: '1/4 in' } });
    const { heaviestLine, heaviestPoint } = reach(weak);
    for (const { value, reason, document } of [heaviestLine, heaviestPoint]) {
      expect(value).toBeNull();
      expect(reason).toMatch(/^It does not hold even with none of it: /);
      expect(document).toBeNull();
    }
    const { wall: _, ...open } = studShelf();
    expect(reach(open).heaviestPoint.reason).toMatch(/^It can't be said: /);
  });
});

function widest({ brackets }: BracketShelfInput): number {
  const places = brackets.positions.map((at) => parseFloat(at) * 0.0254);
  return Math.max(...places.slice(1).map((place, i) => place - (places[i] ?? 0)));
}

/** Every length of a shelf whose loads cover it whole or stand in its middle, with studs behind its brackets. */
function stretched(input: BracketShelfInput, factor: number): BracketShelfInput {
  const long = (text: string): string => `${(parseFloat(text) * 0.0254 * factor).toFixed(6)} m`;
  const positions = input.brackets.positions.map(long);
  return {
    ...input,
    board: { ...input.board, length: long(input.board.length) },
    brackets: { ...input.brackets, positions },
    wall: { framing: 'wood-stud', ...input.wall, studs: { at: positions } },
    loads: (input.loads ?? []).map((load) => (load.kind === 'point' ? { ...load, at: long(load.at) } : load)),
  };
}

describe('closing in on a boundary', () => {
  it.each([0.7, 3, 99.99])('finds the edge of a step at %d to 0.2 %%, from below', (edge) => {
    const found = largestThatHolds((amount) => amount <= edge, { least: 0.5, start: 10, most: 1000 });
    expect(found).toBeLessThanOrEqual(edge);
    expect(found).toBeGreaterThan(edge * 0.996);
  });

  it('tells where nothing holds and where all does', () => {
    expect(largestThatHolds(() => false, { least: 0.5, start: 10, most: 1000 })).toBeNull();
    expect(largestThatHolds(() => true, { least: 0.5, start: 10, most: 1000 })).toBe(1000);
  });
});

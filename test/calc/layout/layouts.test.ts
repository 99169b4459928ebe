import { describe, expect, it } from 'vitest';
import { check, DocumentError, layouts } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { movementOf, mostUsed, studShelf } from './documents.ts';

/*
 * The search against every choice of studs, each a check of its own made anew. Nothing is left out by any estimate here:
 * only by the rule of the overhang, written out once more.
 */
interface Choice {
  readonly places: readonly number[];
  readonly holds: boolean;
  readonly movement: number;
  readonly used: number;
}

function everyChoice(document: BracketShelfInput, studs: readonly number[], length: number): Choice[] {
  const choices: Choice[] = [];
  for (let mask = 1; mask < 2 ** studs.length; mask++) {
    const places = studs.filter((_, i) => (mask >> i) % 2 === 1);
    if (places.length < 2 || !keepsToRule(places, studs, length)) continue;
    const positions = places.map((at) => `${at} in`);
    const result = check({ ...document, brackets: { ...document.brackets, positions } });
    const holds = result.checks.every(({ outcome }) => outcome === 'holds');
    choices.push({ places, holds, movement: movementOf(result), used: mostUsed(result) });
  }
  return choices;
}

function keepsToRule(places: readonly number[], studs: readonly number[], length: number): boolean {
  const [first = NaN, second = NaN] = places;
  const [before = NaN, last = NaN] = places.slice(-2);
  return (
    (first === studs[0] || first <= (second - first) / 2) &&
    (last === studs[studs.length - 1] || length - last <= (last - before) / 2)
  );
}

function better(a: Choice, b: Choice): number {
  return a.places.length - b.places.length || a.movement - b.movement;
}

const inInches = (metres: number): number => Math.round((metres / 0.0254) * 1e6) / 1e6;

const cases: readonly (readonly [string, BracketShelfInput, readonly number[], number])[] = [
  ['a stiff board', studShelf(), [16, 32, 48, 64, 80], 96],
  [
    'a thinner board',
    studShelf({
      board: { thickness: '1-1/4 in' },
      brackets: { capacity: { basis: 'rated', allowable: '400 lbf', at: '10 in' } },
    }),
    [16, 32, 48, 64, 80],
    96,
  ],
  [
    'studs that are not even with the board',
    studShelf({
      wall: { studs: { first: '3 in', spacing: '16 in' } },
      brackets: { positions: ['3 in', '83 in'] },
    }),
    [3, 19, 35, 51, 67, 83],
    96,
  ],
  [
    'no limit of movement and weak brackets',
    studShelf({
      limits: { live: 'none', longTerm: 'L/240' },
      wall: { studs: { first: '6 in', spacing: '12 in' } },
      board: { length: '72 in' },
      brackets: { positions: ['6 in', '66 in'], capacity: { basis: 'rated', allowable: '120 lbf' } },
      loads: [{ name: 'Jars', kind: 'line', amount: '18 lbf/ft', duration: 'permanent' }],
    }),
    [6, 18, 30, 42, 54, 66],
    72,
  ],
];

describe('layouts on studs', () => {
  it.each(cases)('finds the best of all choices: %s', { timeout: 60_000 }, (_, document, studs, length) => {
    const all = everyChoice(document, studs, length);
    const holding = all.filter(({ holds }) => holds).sort(better);
    expect(holding.length).toBeGreaterThan(0);
    const { present, proposals, searched } = layouts(document);
    expect(searched.isExact).toBe(true);
    const presentPlaces = present.positions.map(({ value }) => inInches(value)).join();
    const others = holding.filter(({ places }) => places.join() !== presentPlaces).slice(0, 3);
    expect(proposals.filter(({ verdict }) => verdict === 'holds').length).toBe(others.length);
    others.forEach((choice, i) => {
      const proposal = proposals[i];
      expect(proposal?.positions.length).toBe(choice.places.length);
      expect(proposal?.movement).toBeCloseTo(choice.movement, 6);
      const same = all.find(
        ({ places }) => places.join() === proposal?.positions.map(({ value }) => inInches(value)).join(),
      );
      expect(same?.holds).toBe(true);
      expect(same?.movement).toBeCloseTo(choice.movement, 6);
      expect(proposal?.governing.ratio).toBeCloseTo(same?.used ?? NaN, 6);
    });
  });

  it('gives each as a whole check that says the same', () => {
    for (const proposal of layouts(studShelf()).proposals) {
      const again = check(proposal.document);
      expect(again.verdict).toBe(proposal.verdict);
      expect(again.governing).toBe(proposal.governing.id);
      const supports = again.element === 'bracket-shelf' ? again.analysis.supports : [];
      expect(supports.map(({ position }) => position.shown)).toEqual(
        proposal.positions.map(({ shown }) => shown),
      );
    }
  });

  it('offers the least overloaded where none holds, and never says that they hold', () => {
    const heavy = studShelf({
      loads: [{ name: 'Stone', kind: 'line', amount: '400 lbf/ft', duration: 'permanent' }],
    });
    const { proposals } = layouts(heavy);
    expect(proposals.length).toBeGreaterThan(0);
    for (const { verdict, document } of proposals) {
      expect(verdict).toBe('does-not-hold');
      expect(check(document).verdict).toBe('does-not-hold');
    }
  });

  it('keeps joints of the board over brackets', () => {
    const jointed = studShelf({ board: { joints: ['48 in'] } });
    const { proposals } = layouts(jointed);
    expect(proposals.length).toBeGreaterThan(0);
    for (const { positions } of proposals) {
      expect(positions.map(({ value }) => inInches(value))).toContain(48);
    }
  });

  it('says why there are none', () => {
    expect(layouts(studShelf({ wall: { framing: 'hollow' } })).reason).toMatch(/^Nothing in a hollow wall/);
    expect(layouts(studShelf({ wall: { studs: { at: ['16 in'] } } })).reason).toMatch(/^Fewer than two/);
    expect(() => layouts({ schema: 1 })).toThrow(DocumentError);
  });
});

describe('layouts where brackets may stand anywhere', () => {
  it('gives layouts that hold, checked anew, better than even quarters of the board', () => {
    const document = studShelf({
      wall: { framing: 'blocking', blockingHeight: '9-1/4 in', studDepth: '3-1/2 in' },
    });
    const { proposals, searched } = layouts(document);
    expect(searched.isExact).toBe(false);
    const [best] = proposals;
    if (best === undefined) throw new Error('there is a layout');
    for (const { document: proposed, verdict } of proposals) expect(check(proposed).verdict).toBe(verdict);
    expect(best.verdict).toBe('holds');
    const count = best.positions.length;
    const even = Array.from({ length: count }, (_, i) => `${(96 * (i + 0.5)) / count} in`);
    const plain = check({ ...document, brackets: { ...document.brackets, positions: even } });
    expect(best.movement).toBeLessThanOrEqual(movementOf(plain) + 1e-6);
  });

  it('ends soon where no layout holds', () => {
    const { proposals, searched } = layouts(
      studShelf({ wall: { framing: 'masonry' }, board: { thickness: '1/2 in' } }),
    );
    expect(searched.judged).toBeLessThanOrEqual(20);
    for (const { verdict } of proposals) expect(verdict).not.toBe('holds');
  });
});

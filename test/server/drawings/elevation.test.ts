import { describe, expect, it } from 'vitest';
import { elevation, type View } from '../../../server/drawings/index.ts';
import { closeBrackets, crowdedLoads, plainShelf, shelf } from './documents.ts';
import { collisions, elements, outside, viewBox, writings } from './parts.ts';
import { sampleResult } from './sample-result.ts';

const views: View[] = ['wide', 'narrow'];
const numbersOf = (points: string | undefined): number[] => (points ?? '').split(/[ ,]/).map(Number);

describe('the elevation is true to scale', () => {
  // 96 in between 28 and 692 drawing units, which is what the wide frame leaves between its margins.
  const perInch = (692 - 28) / 96;
  const svg = elevation(shelf(), sampleResult(), 'wide').svg;
  const outlines = elements(svg, 'rect').filter((each) => each['class'] === 'pen-outline');

  it('draws each bracket at its place, its plate as wide and as high as it is', () => {
    const plates = outlines.filter((each) => Math.abs(Number(each['height']) - 8 * perInch) < 0.02);
    const middles = plates.map((each) => Number(each['x']) + Number(each['width']) / 2);
    expect(middles).toHaveLength(4);
    [8, 32, 64, 88].forEach((place, index) => expect(middles[index]).toBeCloseTo(28 + place * perInch, 1));
    for (const plate of plates) expect(Number(plate['width'])).toBeCloseTo(1.25 * perInch, 1);
  });

  it('draws the board and its nosing as thick as they are', () => {
    const board = elements(svg, 'rect').find((each) => each['class'] === 'pen-hidden');
    expect(Number(board?.['height'])).toBeCloseTo(0.75 * perInch, 1);
    const nosing = outlines.find((each) => Math.abs(Number(each['width']) - 96 * perInch) < 0.1);
    expect(Number(nosing?.['height'])).toBeCloseTo(1.5 * perInch, 1);
    expect(nosing?.['y']).toBe(board?.['y']);
  });

  it('draws every stud of the grid behind the board', () => {
    const studs = elements(svg, 'line').filter(
      (each) => each['class'] === 'pen-centre' && each['x1'] === each['x2'],
    );
    expect(studs.map((each) => Number(each['x1']))).toEqual(
      [0, 16, 32, 48, 64, 80, 96].map((place) => Number((28 + place * perInch).toFixed(2))),
    );
  });

  it('exaggerates the settled shape by the factor it states', () => {
    const settled = elements(svg, 'polyline').find((each) => each['class'] === 'pen-settled');
    const ys = numbersOf(settled?.['points']).filter((_, index) => index % 2 === 1);
    const factor = Number(/drawn × ([\d.]+)/.exec(svg)?.[1]);
    const drop = (Math.max(...ys) - Math.min(...ys)) / 2;
    expect(drop).toBeCloseTo((0.001 / 0.0254) * perInch * factor, 0);
    expect([1, 2, 5]).toContain(Number(String(factor).replace(/0/g, '').replace('.', '')));
  });

  it('writes running distances from the left end, and the length over all', () => {
    const words = writings(svg).map((each) => each.words);
    for (const number of ['0', '8', '32', '64', '88', '96', 'overall 96 in']) expect(words).toContain(number);
  });
});

describe('the elevation can be read', () => {
  const cases = {
    demo: {},
    crowded: { loads: crowdedLoads },
    'brackets close together': { brackets: { ...plainShelf.brackets, positions: closeBrackets } },
    'everything close together': {
      loads: crowdedLoads,
      brackets: { ...plainShelf.brackets, positions: closeBrackets },
      units: 'metric' as const,
    },
    'a short board on high plates': {
      board: { ...plainShelf.board, length: '0.5 m' },
      brackets: {
        ...plainShelf.brackets,
        positions: ['0 in', '0.5 m'],
        plate: { height: '1.2 m', width: '30 mm' },
      },
      loads: [{ kind: 'point' as const, amount: '5 lbf', at: '0.5 m' }],
    },
    'a long board on nothing but brackets': {
      board: { length: '12 m', depth: '10 in', thickness: '3/4 in' },
      brackets: { positions: ['0 m', '12 m'], arm: '8 in' },
      wall: undefined,
      loads: [],
    },
  };
  const entries = Object.entries(cases).flatMap(([name, changes]) =>
    views.map((view) => ({ name, changes, view })),
  );

  it.each(entries)(
    '$name, $view: nothing reaches over the edge, no label runs into another',
    ({ changes, view }) => {
      const { svg } = elevation(shelf(changes), sampleResult(), view);
      expect(outside(svg)).toEqual([]);
      expect(collisions(svg)).toEqual([]);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      expect(viewBox(svg).height).toBeLessThan(700);
    },
  );

  it('names every weight while there is room, and numbers them where there is not', () => {
    const few = crowdedLoads.filter(
      (load) => load.kind !== 'point' || load.at === '48 in' || load.at === '70 in',
    );
    const roomy = writings(elevation(shelf({ loads: few }), sampleResult(), 'wide').svg).map(
      ({ words }) => words,
    );
    expect(roomy.filter((words) => words.startsWith('5 lbf A heavy jar'))).toHaveLength(2);
    const crowded = writings(elevation(shelf({ loads: crowdedLoads }), sampleResult(), 'wide').svg);
    expect(crowded.filter(({ words }) => words === '5 lbf' || words.startsWith('no. '))).toHaveLength(10);
  });

  it('tells the same in words', () => {
    const { description } = elevation(shelf({ loads: crowdedLoads }), sampleResult(), 'narrow');
    expect(description).toContain('Brackets at 8 in, 32 in, 64 in and 88 in.');
    expect(description).toContain('Bottles of wine in their racks, 10 lbf/ft, from 10 in to 40 in.');
    expect(description).toContain('A heavy jar of pickled walnuts, no. 70, 5 lbf, at 70 in.');
    expect(description).toContain('Cat, 12 lbf, anywhere along the front edge.');
    expect(description).toMatch(/Over the years it moves most, 1\/32 in .* down, at \d+ in\./);
  });
});

describe('what a user writes stays text', () => {
  it('escapes names and titles', () => {
    const hostile = `<script>alert("1")</script> & 'so'`;
    const { svg } = elevation(
      shelf({ title: hostile, loads: [{ name: hostile, kind: 'line', amount: '1 lbf/ft' }] }),
      sampleResult(),
      'wide',
    );
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;so&#39;');
  });

  it('refuses to draw a number that failed', () => {
    const broken = sampleResult({ settled: Array.from({ length: 97 }, () => NaN) });
    expect(() => elevation(shelf(), broken, 'wide')).toThrow(RangeError);
  });
});

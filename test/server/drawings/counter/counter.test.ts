import { describe, expect, it } from 'vitest';
import { check } from '../../../../calc/index.ts';
import { bandParts, levelsOf } from '../../../../server/drawings/counter/contours.ts';
import { counterSection, plan, runSection } from '../../../../server/drawings/index.ts';
import { startChecks } from '../../../../server/start-checks.ts';
import { counterPictures } from '../../../../server/view-models/counter-pictures.ts';
import {
  readDocument,
  type CounterOverhangDocument,
  type CounterOverhangInput,
} from '../../../../shared/check-document/index.ts';
import { collisions, elements, outside, struckOut, writings } from '../parts.ts';

const start = startChecks['counter-overhang'];
const read = (document: CounterOverhangInput): CounterOverhangDocument => {
  const reading = readDocument(document);
  if (!reading.ok || reading.document.element !== 'counter-overhang') throw new Error('not a counter');
  return reading.document;
};
const bracketed: CounterOverhangInput = {
  ...start,
  props: [12, 36, 60].map((at) => ({ kind: 'bracket', at: `${at} in`, to: '34 in', allowable: '500 lbf' })),
};

describe('the plan of a counter', () => {
  const { svg, description } = plan(read(bracketed), check(bracketed), 'wide');
  const top = elements(svg, 'rect').find(({ class: pen }) => pen === 'pen-outline');

  it('is true to scale', () => {
    const perInch = Number(top?.['width']) / 72;
    expect(Number(top?.['height']) / perInch).toBeCloseTo(36, 2);
    const base = elements(svg, 'rect').filter(({ class: pen }) => pen === 'pen-hidden');
    expect(Number(base[0]?.['height']) / perInch).toBeCloseTo(24, 2);
    const screws = elements(svg, 'circle').filter(({ class: pen }) => pen === 'pen-outline');
    expect((Number(screws[0]?.['cx']) - Number(top?.['x'])) / perInch).toBeCloseTo(3, 2);
    expect((Number(screws[0]?.['cy']) - Number(top?.['y'])) / perInch).toBeCloseTo(2, 2);
    // Three stools fit on 72 in, 24 in apart: the first 12 in from the left end.
    const stools = elements(svg, 'circle').filter(({ class: pen }) => pen === 'pen-thin');
    expect(stools.map(({ cx }) => (Number(cx) - Number(top?.['x'])) / perInch)).toEqual(
      [12, 36, 60].map((at): unknown => expect.closeTo(at, 1)),
    );
  });

  it('writes places from the left end and from the back edge, and says in words what it shows', () => {
    const words = writings(svg).map((each) => each.words);
    expect(words).toEqual(expect.arrayContaining(['0', '12', '36', '60', '72', '24', 'overall 72 in']));
    expect(description).toContain('It stands out past the base 12 in on the stool side.');
    // The place that governs may be another: the square says what it is of.
    expect(words).toContain('hatched: a person, worst across the grain');
    expect(description).toContain('Most is asked of the top across its grain by a person at');
    expect(description).toContain('Prop 2, a bracket, is at 36 in and reaches to 34 in from the back edge.');
  });
});

describe('the numbers of props', () => {
  it.each([50, 69, 71, 72])(
    'stand clear of the prop and of the end of the top: a bracket at %s in of 72',
    (at) => {
      const document: CounterOverhangInput = {
        ...start,
        props: [
          { kind: 'bracket', at: '12 in', to: '34 in', allowable: '500 lbf' },
          { kind: 'bracket', at: `${at} in`, to: '34 in', allowable: '500 lbf' },
        ],
      };
      for (const view of ['wide', 'narrow'] as const) {
        const { svg } = plan(read(document), check(document), view);
        const top = elements(svg, 'rect').find(({ class: pen }) => pen === 'pen-outline');
        const [left, width] = [Number(top?.['x']), Number(top?.['width'])];
        const x = left + (at / 72) * width;
        const number = writings(svg).find(({ words }) => words === '2');
        expect(number?.right).toBeLessThan(left + width - 1);
        expect((number?.left ?? 0) > x + 1 || (number?.right ?? 0) < x - 1).toBe(true);
      }
    },
  );
});

describe('what is written on a top from above', () => {
  const bar = (at: number) =>
    ({
      kind: 'flat-bar',
      at: `${at} in`,
      from: '4 in',
      to: '34 in',
      width: '2 in',
      thickness: '3/8 in',
    }) as const;

  it.each([
    ['nothing under it', []],
    ['bars under the ends', [bar(1), bar(24), bar(70)]],
  ])('stands on nobody hatched, nor on the outline of the top: %s', (_, props) => {
    const document: CounterOverhangInput = { ...start, props };
    const { whole, diagrams } = counterPictures(read(document), check(document));
    for (const { svg } of [...whole, ...diagrams].flatMap(({ wide, narrow }) => [wide, narrow])) {
      const rects = elements(svg, 'rect').map(({ class: pen, x, y, width, height }) => ({
        ...{ pen, left: Number(x), top: Number(y) },
        ...{ right: Number(x) + Number(width), bottom: Number(y) + Number(height) },
      }));
      const hatched = rects.filter(({ pen }) => pen === 'pen-arrow');
      const outline = rects.find(({ pen }) => pen === 'pen-outline');
      expect(hatched.length).toBeGreaterThan(0);
      for (const { words, left, right, top, bottom } of writings(svg)) {
        const onHatching = hatched.filter(
          (box) => left < box.right && box.left < right && top < box.bottom - 1 && box.top + 1 < bottom,
        );
        expect(onHatching, words).toEqual([]);
        if (outline === undefined || bottom < outline.top || top > outline.bottom) continue;
        expect(left < outline.right && outline.right < right, words).toBe(false);
      }
    }
  });
});

describe('bands', () => {
  it.each([
    [0.43, [0, 0.1, 0.2, 0.3, 0.4]],
    [442, [0, 100, 200, 300, 400]],
    [6, [0, 1, 2, 3, 4, 5]],
    [0, []],
  ])('start at round levels under %s', (largest, levels) => {
    expect(levelsOf(largest)).toEqual(levels);
  });

  it('run where the value is: half way along a slope', () => {
    const field = { x_m: [0, 1, 3, 4], y_m: [0, 1, 2], values: [0, 1, 3, 4, 0, 1, 3, 4, 0, 1, 3, 4] };
    const [path = ''] = bandParts(field, [0, 2], (x, y) => ({ x: x * 100, y: y * 100 }));
    const xs = [...path.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
    expect(Math.min(...xs)).toBeCloseTo(200, 1);
    expect(Math.max(...xs)).toBeCloseTo(400, 1);
  });
});

describe('a counter run from the front', () => {
  it.each([0.3, 0.61, 2.4])('is lettered inside and apart over %s m', (span) => {
    const reading = readDocument({
      ...startChecks['counter-run'],
      opening: `${span} m`,
      bow: { measured: '2 mm' },
    });
    if (!reading.ok || reading.document.element !== 'counter-run') throw new Error('not a run');
    for (const view of ['wide', 'narrow'] as const) {
      const { svg } = runSection(reading.document, view);
      expect(writings(svg).map(({ words }) => words)).toEqual(
        expect.arrayContaining(['3/8 in stone', 'somebody standing']),
      );
      expect(outside(svg)).toEqual([]);
      expect(collisions(svg)).toEqual([]);
    }
  });
});

describe('lettering of counters of every kind', () => {
  const ends: CounterOverhangInput = {
    ...start,
    title: 'Both ends & both sides',
    screws: undefined,
    units: 'metric',
    base: {
      ...start.base,
      from: '12 in',
      to: '60 in',
      back: '3 in',
      foot: '21 in',
      panels: ['12 in', '60 in'],
    },
    props: [
      { kind: 'leg', at: '70 in', to: '34 in' },
      { kind: 'corbel', at: '40 in', to: '33 in' },
      { kind: 'flat-bar', at: '20 in', from: '4 in', to: '34 in', width: '2 in', thickness: '3/8 in' },
    ],
  };
  const small: CounterOverhangInput = {
    ...start,
    top: { ...start.top, length: '20 in', depth: '30 in' },
    base: { ...start.base, to: '20 in', front: '22 in', foot: '22 in', panels: ['0 in', '20 in'] },
    screws: undefined,
  };

  it.each([
    ['bracketed', bracketed],
    ['ends', ends],
    ['small', small],
  ])('stays inside and apart: %s', (_, document) => {
    const counter = read(document);
    const { whole, diagrams } = counterPictures(counter, check(document));
    const drawings = [...[...whole, ...diagrams].flatMap(({ wide, narrow }) => [wide, narrow])];
    for (const { svg } of [...drawings, counterSection(counter)]) {
      expect(outside(svg)).toEqual([]);
      expect(collisions(svg)).toEqual([]);
      expect(struckOut(svg)).toEqual([]);
      expect(svg).not.toMatch(/NaN|undefined/);
    }
  });
});

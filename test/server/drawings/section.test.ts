import { describe, expect, it } from 'vitest';
import { diagrams, elevation, section } from '../../../server/drawings/index.ts';
import { check } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { plainShelf, shelf } from './documents.ts';
import { collisions, elements, outside, writings } from './parts.ts';
import { sampleResult } from './sample-result.ts';

const number = (value: string | undefined): number => Number(value);

describe('the section is true to scale', () => {
  const { svg, description } = section(shelf());
  const outlines = elements(svg, 'rect').filter((each) => each['class'] === 'pen-outline');
  const board = outlines.find(
    (each) => number(each['width']) / number(each['height']) > 10 && number(each['height']) > 8,
  );
  const perInch = number(board?.['width']) / 9.25;
  const finish = number(board?.['x']);

  it('draws the board as deep and as thick as it is', () => {
    expect(number(board?.['height']) / perInch).toBeCloseTo(0.75, 2);
  });

  it('draws the nosing before it, the arm below it and the plate on the wall', () => {
    const has = (left: number, width: number, height: number): boolean =>
      outlines.some(
        (each) =>
          Math.abs((number(each['x']) - finish) / perInch - left) < 0.01 &&
          Math.abs(number(each['width']) / perInch - width) < 0.01 &&
          Math.abs(number(each['height']) / perInch - height) < 0.01,
      );
    expect(has(9.25, 0.75, 1.5)).toBe(true);
    expect(has(0, 8, 0.25)).toBe(true);
    expect(has(0, 0.25, 8)).toBe(true);
  });

  it('draws the screws as long as they are, as high as they are', () => {
    const [, path = ''] = /<path d="([^"]+)" class="pen-arrow"/.exec(svg) ?? [];
    const strokes = [...path.matchAll(/M(\S+) (\S+?)L(\S+) ([^M]+)/g)].map((match) =>
      match.slice(1).map(Number),
    );
    const level = strokes.filter(([, y1, , y2]) => y1 === y2);
    expect(level.map(([x1 = 0, , x2 = 0]) => (x1 - x2) / perInch)).toEqual([
      expect.closeTo(3, 1),
      expect.closeTo(3, 1),
    ]);
    const [upper = [], lower = []] = level;
    expect(((lower[1] ?? 0) - (upper[1] ?? 0)) / perInch).toBeCloseTo(6, 1);
  });

  it('points the loads at the lines they act in: mid-depth of 10 in over all, and the front edge', () => {
    const heads = [...svg.matchAll(/<polygon points="([\d.]+),/g)].map(
      ([, x]) => (number(x) - finish) / perInch,
    );
    expect(heads).toEqual([expect.closeTo(5, 1), expect.closeTo(10, 1)]);
    const words = writings(svg).map((each) => each.words);
    expect(words).toEqual(
      expect.arrayContaining([
        '5 in: Plates and jugs, Stock pot',
        '10 in: Hand leaning',
        'arm 8 in',
        'front edge 10 in',
        '3/4 in',
      ]),
    );
  });

  it('tells the same in words', () => {
    expect(description).toContain('its front edge is 10 in from the wall finish');
    expect(description).toContain('Screws 3 in long at 7 in and 1 in');
    expect(description).toContain('1/2 in of gypsum board');
  });
});

describe('the section can be read whatever is built', () => {
  it.each([
    [
      'a box',
      {
        board: {
          length: '96 in',
          depth: '10 in',
          thickness: '2 in',
          box: { skin: '1/4 in', frame: '1-1/2 in' },
        },
      },
    ],
    [
      'a rail behind',
      {
        board: {
          ...plainShelf.board,
          rail: { height: '3 in', thickness: '3/4 in', flush: 'bottom' as const },
        },
      },
    ],
    [
      'no wall, no plate',
      {
        wall: undefined,
        board: {
          ...plainShelf.board,
          nosing: { height: '1-1/2 in', thickness: '3/4 in', flush: 'bottom' as const },
        },
        brackets: { positions: ['8 in', '88 in'], arm: '20 in' },
      },
    ],
    ['masonry', { wall: { framing: 'masonry' as const } }],
    [
      'a strut',
      {
        brackets: {
          ...plainShelf.brackets,
          capacity: {
            basis: 'steel' as const,
            width: '1 in',
            thickness: '1/4 in',
            strut: { at: '7 in', drop: '7 in', width: '1 in', thickness: '1/4 in' },
          },
        },
      },
    ],
  ])('%s', (_, changes) => {
    const { svg } = section(shelf(changes));
    expect(outside(svg)).toEqual([]);
    expect(collisions(svg)).toEqual([]);
  });
});

describe('the diagrams', () => {
  it('lie on the same scale as the elevation above them', () => {
    const document = shelf();
    const middle = (points: string | undefined): number => number(points?.split(' ')[0]?.split(',')[0]);
    const ends = (svg: string): number[] =>
      elements(svg, 'polyline')
        .filter((each) => each['class'] === 'pen-settled')
        .map((each) => middle(each['points']));
    for (const view of ['wide', 'narrow'] as const) {
      expect(ends(diagrams(document, sampleResult(), view).svg)).toEqual(
        ends(elevation(document, sampleResult(), view).svg),
      );
    }
  });

  it('write the largest moment and shear as the analysis found them', () => {
    const document: BracketShelfInput = plainShelf;
    const result = check(document);
    const { svg, description } = diagrams(shelf(), result, 'wide');
    const words = writings(svg).map((each) => each.words);
    const { moment, shear } = result.analysis;
    expect(words).toContain(moment.max.shown);
    expect(words).toContain(moment.min.shown.replace('-', '−'));
    expect(words).toContain(shear.max.shown);
    expect(description).toContain(`Largest sagging moment ${moment.max.shown}`);
    expect(description).toContain('From 8 in to 32 in:');
  });

  it('stand empty where nothing moves', () => {
    const still = Array.from({ length: 97 }, () => 0);
    const { svg } = diagrams(
      shelf(),
      sampleResult({ momentMax: still, momentMin: still, shearMax: still, shearMin: still, settled: still }),
      'narrow',
    );
    expect(svg).not.toMatch(/NaN|Infinity/);
  });
});

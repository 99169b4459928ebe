import { describe, expect, it } from 'vitest';
import { checkBracketShelf } from '../../../calc/elements/bracket-shelf/index.ts';
import { check } from '../../../calc/index.ts';
import { bracketDetail, elevation, settingOut, type Drawing } from '../../../server/drawings/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { manyShelves } from '../sheets/many-shelves.ts';
import { plainShelf, shelf } from './documents.ts';
import { collisions, elements, outside, writings } from './parts.ts';

const { brackets, wall } = plainShelf;
const onStuds = { ...plainShelf, wall: { ...wall, studs: { at: brackets.positions } } };
const detailOf = (document: BracketShelfInput, size: 'plain' | 'big' = 'plain'): Drawing | undefined =>
  bracketDetail(shelf(document), check(document, { waysOut: false }), size);
const drawn = (document: BracketShelfInput): Drawing => {
  const drawing = detailOf(document);
  if (drawing === undefined) throw new Error('There is no detail.');
  return drawing;
};
const numbers = (svg: string, name: string, key: string, pen: string): number[] =>
  elements(svg, name)
    .filter((each) => each['class'] === pen)
    .map((each) => Number(each[key]));

describe('the bracket detail', () => {
  const { svg, description } = drawn(onStuds);
  const plate = elements(svg, 'rect').find((each) => each['class'] === 'pen-outline');
  const perInch = Number(plate?.['height']) / 8;

  it('is true to scale: plate, screws at their heights, heads as wide as the table has them', () => {
    expect(Number(plate?.['width']) / perInch).toBeCloseTo(1.25, 2);
    const bottom = Number(plate?.['y']) + Number(plate?.['height']);
    const heights = numbers(svg, 'circle', 'cy', 'pen-outline').map((y) => (bottom - y) / perInch);
    expect(heights.toSorted((a, b) => a - b)).toEqual([expect.closeTo(1, 2), expect.closeTo(7, 2)]);
    // NDS 2018 Table L3: the head of a no. 10 wood screw is 0.363 in across.
    expect((numbers(svg, 'circle', 'r', 'pen-outline')[0] ?? 0) / perInch).toBeCloseTo(0.363 / 2, 2);
  });

  it('writes heights, stud, covering, and how far the screws reach behind it', () => {
    const words = writings(svg).map((each) => each.words);
    // 3 in of screw less 1/4 in of plate and 1/2 in of board is 2-1/4 in.
    expect(words).toEqual(expect.arrayContaining(['0', '1', '7', '8', 'covering 1/2 in', 'screw 3 in']));
    expect(words).toContain('2-1/4 in into the stud');
  });

  it('says in words what it shows', () => {
    expect(description).toContain('A plate 8 in high and 1-1/4 in wide.');
    expect(description).toContain('Screws 3 in long at 1 in and 7 in above its lower end.');
    expect(description).toContain('covered with 1/2 in of gypsum board');
    expect(description).toContain('The screws reach 2-1/4 in into the stud.');
  });

  it('shows no stud behind a bracket beside it, and says by how much it misses', () => {
    const off = { ...onStuds, brackets: { ...brackets, positions: ['8 in', '34 in', '64 in', '88 in'] } };
    const missed = drawn(off);
    expect(missed.description).toContain('Bracket 2, at 34 in, is 2 in off the stud at 32 in.');
    expect(missed.description).not.toContain('into the stud');
    expect(missed.svg).not.toContain('into the stud');
  });

  it('sets screws side by side as far apart as they are said to be', () => {
    const two = {
      ...plainShelf,
      brackets: {
        ...brackets,
        plate: { ...brackets.plate, width: '4 in' },
        screws: { ...brackets.screws, perHeight: 2, across: '3 in' },
      },
      wall: { framing: 'blocking' as const },
    };
    const wide = drawn(two);
    expect(writings(wide.svg).map(({ words }) => words)).toContain('screws 3 in');
    expect(wide.description).toContain('2 at each height, the outer ones 3 in apart');
    const scale =
      Number(elements(wide.svg, 'rect').find((each) => each['class'] === 'pen-outline')?.['width']) / 4;
    const [first = 0, second = 0] = numbers(wide.svg, 'circle', 'cx', 'pen-outline');
    expect((second - first) / scale).toBeCloseTo(3, 2);
  });

  it.each([
    ['no wall', { ...plainShelf, wall: undefined }],
    ['no screws', { ...plainShelf, brackets: { ...brackets, screws: undefined } }],
    ['no plate', { ...plainShelf, brackets: { ...brackets, plate: undefined } }],
  ])('is left out where there is %s', (_, document) => {
    expect(detailOf(document)).toBeUndefined();
  });
});

describe('the setting-out', () => {
  const { svg, description } = settingOut(shelf(), check(plainShelf), 'wide');

  it('runs from the left end and from the first stud', () => {
    const words = writings(svg).map((each) => each.words);
    expect(words).toEqual(expect.arrayContaining(['8', '32', '64', '88', '96']));
    const from4 = { ...plainShelf, wall: { ...wall, studs: { at: ['4 in', '36 in', '60 in', '92 in'] } } };
    const other = settingOut(shelf(from4), check(from4), 'wide');
    expect(other.description).toContain(
      'From the first stud, the brackets stand at 4 in, 28 in, 60 in and 84 in.',
    );
    expect(description).toContain('From the left end, the brackets stand at 8 in, 32 in, 64 in and 88 in.');
  });

  it('has no row from a stud where no stud is known', () => {
    const none = { ...plainShelf, wall: { framing: 'masonry' as const } };
    expect(settingOut(shelf(none), check(none), 'wide').description).not.toContain('first stud');
  });

  it('tells in millimetres what a tape can show', () => {
    const metric = { ...plainShelf, units: 'metric' as const };
    // 32 in is 812.8 mm.
    expect(settingOut(shelf(metric), check(metric), 'wide').description).toContain('813 mm');
  });

  it('marks every bracket that is off its stud, and the elevation does so too', () => {
    const off: BracketShelfInput = {
      ...plainShelf,
      brackets: { ...brackets, positions: ['10 in', '32 in', '65 in', '88 in'] },
    };
    for (const drawing of [
      settingOut(shelf(off), check(off), 'wide'),
      elevation(shelf(off), check(off), 'wide'),
    ]) {
      // Studs stand at 0, 16, 32, 48, 64, 80 and 96 in; 88 in lies between two of them.
      expect(drawing.description).toContain('Bracket 1, at 10 in, is 6 in off the stud at 16 in.');
      expect(drawing.description).toContain('Bracket 3, at 65 in, is 1 in off the stud at 64 in.');
      expect(drawing.description).toContain('Bracket 4, at 88 in, is 8 in off the stud at');
      expect(drawing.description).not.toContain('Bracket 2, at');
      expect(drawing.svg).toContain('>1 in off<');
    }
  });
});

describe('lettering of shelves of every kind', () => {
  it.each(manyShelves)('stays inside and apart: $name', ({ document }) => {
    const read = shelf(document);
    const result = checkBracketShelf(read, () => []);
    const drawings = [
      bracketDetail(read, result, 'plain'),
      bracketDetail(read, result, 'big'),
      settingOut(read, result, 'wide'),
      settingOut(read, result, 'narrow'),
    ];
    for (const drawing of drawings) {
      if (drawing === undefined) continue;
      expect(outside(drawing.svg)).toEqual([]);
      expect(collisions(drawing.svg)).toEqual([]);
      expect(drawing.svg).not.toMatch(/NaN|undefined/);
    }
  });
});

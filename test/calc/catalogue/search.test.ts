import { describe, expect, it } from 'vitest';
import {
  findCombination,
  findPanel,
  findSpecies,
  nearest,
  panels,
  searchBoards,
  species,
} from '../../../calc/catalogue/index.ts';

describe('nearest', () => {
  const names = ['Sugar maple', 'Red maple', 'White oak', 'Western redcedar'];

  it.each([
    ['suger mapel', 'Sugar maple'],
    ['maple sugar', 'Sugar maple'],
    ['MAPLE, RED', 'Red maple'],
    ['wite oak', 'White oak'],
    ['western red cedar', 'Western redcedar'],
    ['redceder', 'Western redcedar'],
  ])('%s: %s', (written, name) => {
    expect(nearest(written, names, 1)).toEqual([name]);
  });

  it('gives no more than asked for, and all there are where that is less', () => {
    expect(nearest('maple', names, 2)).toEqual(['Sugar maple', 'Red maple']);
    expect(nearest('maple', names, 10)).toHaveLength(4);
    expect(nearest('', names, 2)).toHaveLength(2);
    expect(nearest('maple', [], 2)).toEqual([]);
  });

  it('counts a swap of neighbours as one slip (Damerau): "ca" is 1 from "ac"', () => {
    expect(nearest('aok', ['oka', 'oak'], 1)).toEqual(['oak']);
    expect(nearest('mapel', ['maxed', 'maple'], 1)).toEqual(['maple']);
  });
});

describe('searching for a board', () => {
  it.each([
    ['maple', 'species', 'sugar-maple'],
    ['hard maple', 'species', 'sugar-maple'],
    ['spf', 'lumber', 'spruce-pine-fir'],
    ['southern', 'lumber', 'southern-pine'],
    ['mdf', 'panel', 'mdf'],
    ['ply', 'panel', 'plywood'],
    ['chipboard', 'panel', 'particleboard'],
    ['not sure', 'species', 'not-sure'],
    ['douglas', 'species', 'coast-douglas-fir'],
    ['wallnut', 'species', 'black-walnut'],
  ])('"%s" offers the %s %s', (text, kind, id) => {
    expect(searchBoards(text)).toContainEqual(expect.objectContaining({ kind, id }));
  });

  it('puts a name that is just that first', () => {
    for (const row of species) expect(searchBoards(row.name)[0]?.id, row.name).toBe(row.id);
    expect(searchBoards('Hem-Fir')[0]).toEqual({ kind: 'lumber', id: 'hem-fir', name: 'Hem-Fir' });
  });

  it('gives at most 12, some for no text, none for what is like nothing', () => {
    for (const text of ['', ' ', 'pine', 'e', 'oak board'])
      expect(searchBoards(text).length).toBeLessThanOrEqual(12);
    expect(searchBoards('')).toHaveLength(12);
    expect(searchBoards('xyzzy quux')).toEqual([]);
    expect(searchBoards('x'.repeat(100_000))).toEqual([]);
  });

  it('gives ids that the finders take', () => {
    for (const text of ['pine', 'oak', 'fir', 'osb', 'ply', 'spf', 'board']) {
      for (const { kind, id, name } of searchBoards(text)) {
        for (const word of [id, name]) {
          if (kind === 'species') expect(findSpecies(word).ok, word).toBe(true);
          if (kind === 'lumber') expect(findCombination(word).ok, word).toBe(true);
          const thickness_m = panels.find((row) => row.id === id)?.thicknessFrom_m ?? NaN;
          if (kind === 'panel') expect(findPanel(word, thickness_m).ok, word).toBe(true);
        }
      }
    }
  });
});

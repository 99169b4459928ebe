import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import type { BracketShelfInput } from '../../../shared/check-document/index.ts';
import { gravity, shelf, type Load } from './documents.ts';

type Things = NonNullable<Extract<Load, { kind: 'line' }>['things']>;

/** What some things weigh: all reactions with them less all reactions without, N. */
function weightOf(things: Things): number {
  const total = (document: BracketShelfInput): number =>
    check(document).analysis.supports.reduce((sum, { reaction }) => sum + reaction.max.value, 0);
  const load: Load = { kind: 'line', things, duration: 'permanent', arrangement: 'fixed' };
  return total(shelf({ loads: [load] })) - total(shelf());
}

/* Size × density by hand (disc, cylinder, half ellipsoid, block); standard gravity 9.80665 m/s². */
describe('the weight of contents', () => {
  it('discs: plates 270 mm across, 6 mm thick, of 2 300 kg/m³', () => {
    const one = 2300 * (Math.PI / 4) * 0.27 ** 2 * 0.006;
    const found = weightOf([
      { thing: 'dinner-plate', count: 12, diameter: '270 mm', wall: '6 mm', density: '2300 kg/m3' },
    ]);
    expect(found / (12 * one * gravity)).toBeCloseTo(1, 9);
  });

  it('a jar with flour in it: glass between two cylinders, and nine tenths of the inside', () => {
    const outside = (Math.PI / 4) * 0.12 ** 2 * 0.2;
    const inside = (Math.PI / 4) * 0.112 ** 2 * 0.196;
    const found = weightOf([
      {
        thing: 'flour-jar',
        count: 3,
        diameter: '120 mm',
        height: '200 mm',
        wall: '4 mm',
        density: '2500 kg/m3',
        fill: 0.9,
        fillDensity: '600 kg/m3',
      },
    ]);
    expect(found / (3 * (2500 * (outside - inside) + 600 * 0.9 * inside) * gravity)).toBeCloseTo(1, 9);
  });

  it('a bowl: half an ellipsoid', () => {
    const half = (diameter: number, height: number): number =>
      (2 / 3) * Math.PI * (diameter / 2) ** 2 * height;
    const one = 2300 * (half(0.18, 0.06) - half(0.17, 0.055));
    const found = weightOf([
      {
        thing: 'soup-bowl',
        count: 4,
        diameter: '180 mm',
        height: '60 mm',
        wall: '5 mm',
        density: '2300 kg/m3',
      },
    ]);
    expect(found / (4 * one * gravity)).toBeCloseTo(1, 9);
  });

  it('blocks and things that were weighed add up', () => {
    const book = 800 * 0.03 * 0.24 * 0.17;
    const found = weightOf([
      {
        thing: 'hardback-book',
        count: 10,
        width: '30 mm',
        height: '240 mm',
        depth: '170 mm',
        density: '800 kg/m3',
      },
      { thing: 'jug', count: 2, each: '1.5 kg' },
    ]);
    expect(found / ((10 * book + 2 * 1.5) * gravity)).toBeCloseTo(1, 9);
  });

  it('a wall thicker than the thing, and a thing nobody knows, are refused', () => {
    expect(() => weightOf([{ thing: 'jug', count: 1, diameter: '20 mm', wall: '15 mm' }])).toThrow();
    expect(() => weightOf([{ thing: 'flying saucer', count: 1 }])).toThrow();
  });
});

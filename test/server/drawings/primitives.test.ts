import { describe, expect, it } from 'vitest';
import { ordinates, turningPoints, valueAt } from '../../../server/drawings/curve.ts';
import { levelDimension, spread } from '../../../server/drawings/dimension.ts';
import { hatch } from '../../../server/drawings/hatch.ts';
import { fitted, textWidth } from '../../../server/drawings/lettering.ts';
import { roundFactor } from '../../../server/drawings/scale.ts';
import { coordinate, drawing, escaped } from '../../../server/drawings/svg.ts';

describe('coordinates', () => {
  it('never writes what is not finite', () => {
    for (const bad of [NaN, Infinity, -Infinity]) expect(() => coordinate(bad)).toThrow(RangeError);
    expect(coordinate(-0.001)).toBe('0');
    expect(coordinate(12.3456)).toBe('12.35');
  });

  it('escapes the five signs that mean something in markup', () => {
    expect(escaped(`<a href="x">&'`)).toBe('&lt;a href=&quot;x&quot;&gt;&amp;&#39;');
  });

  it('gives a drawing a role, a title and a description, and nothing a strict policy would stop', () => {
    const { svg } = drawing({ width: 10, height: 5 }, { kind: 'k', title: 'A & B', description: 'c' }, []);
    expect(svg).toContain('role="img"');
    expect(svg).toContain('<title>A &amp; B</title><desc>c</desc>');
    expect(svg).not.toMatch(/ style=| id=|url\(/);
  });
});

describe('a dimension', () => {
  it.each([11.5, 20])('keeps words that are wider than it clear of its ticks, at %d', (size) => {
    const parts = levelDimension({ from: 50, to: 56, y: 40 }, 'plate 1-1/4 in', size, {
      left: 0,
      right: 400,
    }).join('');
    const baseline = Number(/<text x="[^"]+" y="([^"]+)"/.exec(parts)?.[1]);
    const ticks = /<path d="([^"]+)"/.exec(parts)?.[1] ?? '';
    const tops = [...ticks.matchAll(/[ML]\S+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(tops.length).toBe(4);
    // What reaches below the line of letters is about a fifth of their size.
    expect(baseline + size * 0.2).toBeLessThanOrEqual(Math.min(...tops));
  });
});

describe('hatching', () => {
  const box = { left: 10, right: 110, top: 20, bottom: 40 };
  const hole = { left: 40, right: 70, top: 22, bottom: 38 };
  const numbers = [...hatch(box, 5, [hole]).matchAll(/M(\S+) (\S+)L(\S+) (\S+?)(?=M|")/g)].map((match) =>
    match.slice(1).map(Number),
  );

  it('stays inside its box', () => {
    expect(numbers.length).toBeGreaterThan(10);
    for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of numbers) {
      expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(box.left);
      expect(Math.max(x1, x2)).toBeLessThanOrEqual(box.right);
      expect(Math.min(y1, y2)).toBeGreaterThanOrEqual(box.top);
      expect(Math.max(y1, y2)).toBeLessThanOrEqual(box.bottom);
    }
  });

  it('leaves the hole open', () => {
    for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of numbers) {
      for (const share of [0.1, 0.5, 0.9]) {
        const [x, y] = [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share];
        const isInside =
          x > hole.left + 0.1 && x < hole.right - 0.1 && y > hole.top + 0.1 && y < hole.bottom - 0.1;
        expect(isInside).toBe(false);
      }
    }
  });
});

describe('curves', () => {
  const at = Array.from({ length: 721 }, (_, index) => (index * Math.PI) / 180);
  const sine = at.map(Math.sin);

  it('finds the peaks and troughs of a sine', () => {
    const peaks = turningPoints(at, sine, 1, 0.1);
    const troughs = turningPoints(at, sine, -1, 0.1);
    expect(peaks.map((turn) => turn.at / Math.PI)).toEqual([0.5, 2.5]);
    expect(troughs.map((turn) => turn.at / Math.PI)).toEqual([1.5, 3.5]);
    expect(troughs[0]?.value).toBeCloseTo(-1, 12);
  });

  it('finds an end that sticks out, and one turn on a level stretch', () => {
    expect(turningPoints([0, 1, 2], [3, 1, 2], 1, 0).map((turn) => turn.at)).toEqual([0, 2]);
    expect(turningPoints([0, 1, 2, 3], [0, 5, 5, 0], 1, 0)).toHaveLength(1);
  });

  it('finds both sides of a jump', () => {
    const [position, shear] = [
      [0, 1, 1, 2],
      [0, -4, 3, 0],
    ];
    expect(turningPoints(position, shear, 1, 0.1)).toEqual([{ at: 1, value: 3 }]);
    expect(turningPoints(position, shear, -1, 0.1)).toEqual([{ at: 1, value: -4 }]);
  });

  it('reads a value between two places, and one at each end', () => {
    expect(valueAt([0, 2], [0, 10], 0.5)).toBe(2.5);
    expect(valueAt([0, 2], [3, 10], 0)).toBe(3);
    expect(valueAt([0, 2], [3, 10], 9)).toBe(10);
    expect(ordinates([0, 10], [5, 5], (x, y) => ({ x, y }), 1)).toHaveLength(10);
  });
});

describe('fitting', () => {
  it('takes the largest round factor that has room', () => {
    expect(roundFactor(0.5, 24)).toBe(20);
    expect(roundFactor(0.47, 24)).toBe(50);
    expect(roundFactor(300, 24)).toBe(0.05);
    expect(roundFactor(0, 24)).toBe(1);
  });

  it('sets places apart without leaving the room or their order', () => {
    const places = spread([10, 10.5, 11, 96], 12, { left: 6, right: 100 });
    expect(places).toEqual([10, 22, 34, 96]);
    expect(spread([90, 95, 99], 12, { left: 6, right: 100 })).toEqual([76, 88, 100]);
  });

  it('cuts a text to its room, or drops it', () => {
    expect(fitted('Plates', 12, 500)).toBe('Plates');
    const cut = fitted('Plates and jugs', 12, 60);
    expect(cut).toMatch(/…$/);
    expect(textWidth(cut, 12)).toBeLessThanOrEqual(60);
    expect(fitted('Plates and jugs', 12, 10)).toBe('');
  });
});

import { describe, expect, it } from 'vitest';
import { drillFor } from '../../../server/installer/drill.ts';
import { lineWords, weightWords } from '../../../server/installer/plain-weights.ts';
import { foot, inch, poundForce } from '../../published/values/units.ts';

describe('a drill', () => {
  it.each([
    // 0.1064 in lies between 6/64 (0.0938) and 7/64 (0.1094); 0.1663 in between 10/64 and 11/64 (0.1719).
    [0.1064, 0.1064, '7/64 in', '2.5 mm'],
    [0.16625, 0.16625, '11/64 in', '4 mm'],
    // A range is kept: from 0.100 to 0.175 in, its middle 0.1375 in lies on 9/64 (0.1406) and 3.5 mm (0.1378).
    [0.1, 0.175, '9/64 in', '3.5 mm'],
    [0.25, 0.25, '1/4 in', '6.5 mm'],
    [1, 1, '1 in', '25 mm'],
  ])('for %d to %d in is the common one nearest the middle', (from_in, to_in, inches, metric) => {
    expect(drillFor(from_in * inch, to_in * inch, 'inch-pound').words).toBe(inches);
    expect(drillFor(from_in * inch, to_in * inch, 'metric').words).toBe(metric);
  });

  it('lies within the range wherever a common one does, though another is nearer its middle', () => {
    const { size_m } = drillFor(0.0781 * inch, 0.0938 * inch, 'inch-pound');
    expect(size_m / inch).toBeGreaterThanOrEqual(0.0781);
    expect(size_m / inch).toBeLessThanOrEqual(0.0938);
  });
});

describe('a weight in plain words is never more than was checked', () => {
  it.each([
    [22 * poundForce, '22 lb', '9.9 kg'],
    [22.9 * poundForce, '22 lb', '10 kg'],
    [4.56 * poundForce, '4.5 lb', '2 kg'],
    [0.01 * poundForce, '', ''],
  ])('%d N', (load_N, pounds, kilograms) => {
    expect(weightWords(load_N, 'inch-pound')).toBe(pounds);
    expect(weightWords(load_N, 'metric')).toBe(kilograms);
  });

  it('along the board', () => {
    expect(lineWords((18 * poundForce) / foot, 'inch-pound')).toBe('18 lb a foot');
    expect(lineWords((18 * poundForce) / foot, 'metric')).toBe('26 kg a metre');
  });
});

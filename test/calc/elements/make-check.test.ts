import { describe, expect, it } from 'vitest';
import { makeCheck } from '../../../calc/elements/make-check.ts';

const parts = { id: 'bending', title: '', unit: 'Pa', clause: '', where: '', combination: '' } as const;

describe('a check', () => {
  it.each([-1, -Infinity, Infinity, NaN])('never holds with a demand of %d', (demand) => {
    expect(makeCheck({ ...parts, demand, capacity: 10 }, 'metric')).toMatchObject({
      outcome: 'cannot-say',
      demand: null,
      ratio: null,
    });
  });

  it.each([0, -1])('does not hold on a capacity of %d, and has no ratio', (capacity) => {
    expect(makeCheck({ ...parts, demand: 1, capacity }, 'metric')).toMatchObject({
      outcome: 'does-not-hold',
      ratio: null,
    });
  });
});

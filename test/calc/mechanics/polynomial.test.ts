import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestSum } from '../../../calc/mechanics/envelope.ts';
import { largest, rootsBetween, valueAt } from '../../../calc/mechanics/polynomial.ts';

const coefficient = fc.integer({ min: -1000, max: 1000 }).map((n) => n / 100);
const polynomial = fc.array(coefficient, { minLength: 1, maxLength: 5 });
const sampled = (from: number, to: number, count = 400): number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

describe('roots', () => {
  it('finds every root of a product of known factors', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 4 }),
        (hundredths) => {
          const roots = hundredths.map((n) => n / 100).sort((a, b) => a - b);
          const expanded = roots.reduce<number[]>(
            (product, root) =>
              [...product, 0].map((_, k) => (product[k - 1] ?? 0) - root * (product[k] ?? 0)),
            [1],
          );
          const found = Array.from(rootsBetween(expanded, 0, 1));
          expect(found).toHaveLength(roots.length);
          found.forEach((each, i) => expect(each).toBeCloseTo(roots[i] ?? NaN, 6));
        },
      ),
      { numRuns: 100 },
    );
  });

  it('finds the same where higher powers have nothing before them, and where a root is an end', () => {
    fc.assert(
      fc.property(
        // Shares of a power of two, so that an end is a root to the last digit.
        fc.integer({ min: 1, max: 127 }),
        fc.integer({ min: 129, max: 400 }),
        fc.integer({ min: 0, max: 3 }),
        (inside, outside, zeros) => {
          const [root, other] = [inside / 128, outside / 128];
          // (x − root)(x − other), and x(x − root)(x − 1): 0 and 1 are ends.
          const two = [root * other, -root - other, 1];
          const three = [0, root, -1 - root, 1];
          for (const each of [two, three]) {
            const found = rootsBetween([...each, ...Array<number>(zeros).fill(0)], 0, 1);
            expect(found).toHaveLength(1);
            expect(found[0]).toBeCloseTo(root, 9);
          }
        },
      ),
      { numRuns: 100 },
    );
  });

  it('finds one where three or five fall together, at nought too', () => {
    for (const [from, to] of [
      [-1.2, 2],
      [-0.2, 1],
      [-2, 1],
    ] as const) {
      for (const each of [
        [0, 0, 0, -104],
        [0, 0, 0, 0, 0, 3],
      ]) {
        const found = rootsBetween(each, from, to);
        expect(found).toHaveLength(1);
        expect(Math.abs(found[0] ?? NaN)).toBeLessThan(1e-3);
      }
      // (x − 1/4)³ and the top of 5 − (x − 1/4)⁴.
      expect(rootsBetween([-1 / 64, 3 / 16, -3 / 4, 1], from, to)[0]).toBeCloseTo(1 / 4, 4);
      expect(largest([5 - 1 / 256, 1 / 16, -3 / 8, 1, -1], from, to).value).toBeCloseTo(5, 12);
      expect(largest([5, 0, 0, 0, -26], from, to).value).toBeCloseTo(5, 12);
    }
  });

  it('misses no change of sign that sampling sees', () => {
    fc.assert(
      fc.property(polynomial, (coefficients) => {
        const roots = Array.from(rootsBetween(coefficients, -1, 2));
        const places = sampled(-1, 2);
        for (let i = 1; i < places.length; i++) {
          const [left, right] = [places[i - 1] ?? 0, places[i] ?? 0];
          if (valueAt(coefficients, left) * valueAt(coefficients, right) < -1e-12) {
            expect(roots.some((root) => root >= left - 1e-9 && root <= right + 1e-9)).toBe(true);
          }
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('the largest value', () => {
  it('is never below a sample, and is a value of the polynomial', () => {
    fc.assert(
      fc.property(polynomial, (coefficients) => {
        const { at, value } = largest(coefficients, -1, 2);
        expect(valueAt(coefficients, at)).toBeCloseTo(value, 9);
        for (const x of sampled(-1, 2)) expect(value).toBeGreaterThanOrEqual(valueAt(coefficients, x) - 1e-9);
      }),
      { numRuns: 100 },
    );
  });
});

describe('what must be beaten', () => {
  it('changes nothing where it is beaten, and is not beaten else', () => {
    fc.assert(
      fc.property(polynomial, fc.array(polynomial, { maxLength: 4 }), coefficient, (always, free, by) => {
        const [one, sum] = [largest(always, -1, 2), largestSum(always, free, 0, 1.5)];
        expect(largest(always, -1, 2, one.value - Math.abs(by) - 0.01)).toEqual(one);
        expect(largestSum(always, free, 0, 1.5, sum.value - Math.abs(by) - 0.01)).toEqual(sum);
        const [over, overSum] = [one.value + Math.abs(by), sum.value + Math.abs(by)];
        expect(largest(always, -1, 2, over).value).toBeLessThanOrEqual(over);
        expect(largestSum(always, free, 0, 1.5, overSum).value).toBeLessThanOrEqual(overSum);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the largest sum of what is always there and what may be', () => {
  it('is never below any choice at any sample, and is reached', () => {
    fc.assert(
      fc.property(polynomial, fc.array(polynomial, { maxLength: 4 }), (always, free) => {
        const { at, value } = largestSum(always, free, 0, 1.5);
        const best = (x: number): number =>
          valueAt(always, x) + free.reduce((sum, each) => sum + Math.max(0, valueAt(each, x)), 0);
        expect(best(at)).toBeCloseTo(value, 8);
        for (const x of sampled(0, 1.5)) expect(value).toBeGreaterThanOrEqual(best(x) - 1e-9);
      }),
      { numRuns: 100 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filledTex, symbolicTex } from '../../../server/typeset/expression.ts';
import { math } from '../../units.ts';
import { arithmeticOf } from './read-tex.ts';

const leaf = fc.constantFrom('a', 'b', 'c', 'd', '2', '0.5', '1.645', '3.141592653589793');

/** Expressions as formula files write them: the parentheses that are needed, and some that are not. */
const expressions = fc.letrec<{ any: string; sum: string; product: string; atom: string }>((tie) => ({
  any: fc.oneof({ weight: 3, arbitrary: tie('sum') }, tie('product')),
  sum: fc.tuple(tie('product'), fc.constantFrom(' + ', ' - '), tie('product')).map((parts) => parts.join('')),
  product: fc.oneof(
    { depthSize: 'small' },
    tie('atom'),
    fc.tuple(tie('product'), fc.constantFrom('*', '/'), tie('atom')).map((parts) => parts.join('')),
    tie('atom').map((atom) => `-${atom}`),
  ),
  atom: fc.oneof(
    { depthSize: 'small' },
    leaf,
    tie('any').map((inner) => `(${inner})`),
    fc
      .tuple(fc.constantFrom('a', 'b'), fc.constantFrom('2', '(1/2)', '0.75', '(c/d)', '(2*c)'))
      .map(([base, power]) => `${base}^${power}`),
    tie('any').map((inner) => `abs(${inner})`),
    tie('any').map((inner) => `sqrt(abs(${inner}))`),
    fc.tuple(tie('any'), tie('any')).map(([one, other]) => `min(${one}, ${other})`),
    tie('any').map((inner) => `(abs(${inner}) + 1)^2`),
  ),
})).any;

const positive = fc
  .double({ min: 0.05, max: 5000, noNaN: true })
  .map((value) => String(Number(value.toPrecision(4))));
const signed = fc.tuple(fc.constantFrom('', '-'), positive).map((parts) => parts.join(''));
const large = fc.integer({ min: 1, max: 9 }).map((digit) => `${digit}.5e7`);

const close = (one: unknown, other: unknown): boolean => {
  if (typeof one !== 'number' || typeof other !== 'number') return String(one) === String(other);
  return one === other || Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
};

describe('the printed formula means what the executed one does', () => {
  it('with its symbols, and with any numbers put in', () => {
    fc.assert(
      fc.property(
        expressions,
        fc.record({ a: positive, b: fc.oneof(positive, large), c: signed, d: fc.oneof(signed, large) }),
        (expression, values) => {
          const node = math.parse(expression);
          const scope = Object.fromEntries(
            Object.entries(values).map(([name, number]) => [name, Number(number)]),
          );
          const executed: unknown = math.evaluate(expression, { ...scope });
          const numbers = new Map(
            Object.entries(values).map(([name, number]) => [name, { number, unit: '' }]),
          );
          const asSymbols: unknown = math.evaluate(arithmeticOf(symbolicTex(node)), { ...scope });
          const asNumbers: unknown = math.evaluate(arithmeticOf(filledTex(node, numbers)));
          if (typeof executed === 'number' && !Number.isFinite(executed)) return;
          expect(close(asSymbols, executed), `${expression} → ${symbolicTex(node)}`).toBe(true);
          expect(close(asNumbers, executed), `${expression} → ${filledTex(node, numbers)}`).toBe(true);
        },
      ),
      { numRuns: 500 },
    );
  });
});

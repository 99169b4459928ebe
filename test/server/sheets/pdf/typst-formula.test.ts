import { expect, it } from 'vitest';
import { lettersSet } from '../../../../server/sheets/pdf/typst-formula.ts';

/* Counted by eye on what is set, the spaces beside a sign with it. */
it.each([
  ['a number and its unit', String.raw`144.9\,\text{lbf}`, '144.9lbf'],
  ['a product', String.raw`2 \times 1.25`, '2 × 1.25'],
  [
    'a fraction, by the longer of its parts',
    String.raw`7 - \dfrac{{(-32)}^{2}}{1.336 \times 10^{8}}`,
    '7 - 1.336 × 108',
  ],
  ['a fraction in a fraction', String.raw`\dfrac{\dfrac{0.75 \times 60000}{2} \, x}{4}`, '0.75 × 60000  x'],
  ['brackets that grow', String.raw`\left(\dfrac{a}{b + c}\right)`, '(b + c)'],
])('tells how wide a line of working is set: %s', (_, tex, set) => {
  expect(lettersSet(tex)).toBe(set.length);
});

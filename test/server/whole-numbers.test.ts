import { describe, expect, it } from 'vitest';
import { wholeNumbers } from '../../server/whole-numbers.ts';
import { parseQuantity } from '../../shared/quantity/index.ts';
import { loosened } from './page-text.ts';

const kept = (html: string): string[] =>
  [...wholeNumbers(html).matchAll(/<span class="one-number">([^<]*)<\/span>/g)].map(
    ([, number = '']) => number,
  );

describe('a mixed number on a page', () => {
  it.each([
    ['<p>Depth 11-1/4 in, at 2 3/16 in.</p>', ['11-1/4 in', '2 3/16 in']],
    ['<td>9-1/4\u00a0in</td>', ['9-1/4\u00a0in']],
    ['<li>A hole 1/16 in wider, 8 ft 4-1/2 in off</li>', ['1/16 in', '4-1/2 in']],
    ['<b>7-1/2 psf</b>', ['7-1/2']],
  ])('is kept together, with the inches behind it: %s', (html, numbers) => {
    expect(kept(html)).toEqual(numbers);
  });

  it.each([
    '<input value="11-1/4 in" placeholder="2 3/16 in">',
    '<svg><text>11-1/4 in</text></svg>',
    '<math><mn>1-1/4</mn></math>',
    '<select><option>1-1/4 in</option></select>',
    '<title>A shelf 11-1/4 in deep</title>',
    '<p>NDS 12.5.1; L/360; 3/4; EN 1995-1-1/A2; 2018-2024</p>',
    '<span class="one-number">11-1/4 in</span>',
  ])('is left as it is where a tag can not be or nothing would break: %s', (html) => {
    expect(wholeNumbers(html)).toBe(html);
  });

  it('keeps its letters: what is copied can be read again, and is the same length', () => {
    const html = '<p>at 11-1/4 in</p>';
    expect(loosened(wholeNumbers(html))).toBe(html);
    const [copied = ''] = kept(html);
    // By hand: 11.25 in of 25.4 mm.
    expect(parseQuantity(copied, 'length')).toEqual({
      ok: true,
      value: expect.closeTo(0.28575, 12) as number,
    });
  });
});

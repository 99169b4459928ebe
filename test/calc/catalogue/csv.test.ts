import { describe, expect, it } from 'vitest';
import { parseCsv } from '../../../calc/catalogue/csv.ts';

const cellsOf = (text: string) => parseCsv(text, 'a.csv').map((row) => Object.fromEntries(row.cells));

describe('reading comma-separated text (RFC 4180)', () => {
  it('reads quoted commas and doubled quotes', () => {
    expect(cellsOf('a,b\n"one, two","say ""three"""\n')).toEqual([{ a: 'one, two', b: 'say "three"' }]);
  });

  it('reads empty cells, quoted and not, and Windows line ends', () => {
    expect(cellsOf('a,b,c\r\n,"",x\r\n')).toEqual([{ a: '', b: '', c: 'x' }]);
  });

  it('numbers lines as an editor does', () => {
    expect(parseCsv('a\n1\n2\n', 'a.csv').map((row) => row.line)).toEqual([2, 3]);
  });

  it.each([
    ['an open quote', 'a,b\n"one,two\n', /a\.csv, line 2: a quote/],
    ['text after a quote', 'a,b\n"one"x,two\n', /a\.csv, line 2: a quote/],
    ['a quote inside a plain cell', 'a,b\non"e,two\n', /a\.csv, line 2: a quote/],
    ['a cell too few', 'a,b\n1,2\n1\n', /a\.csv, line 3: 1 cells under 2 headings/],
    ['a cell too many', 'a,b\n1,2,3\n', /a\.csv, line 2: 3 cells under 2 headings/],
    ['a blank line', 'a,b\n\n1,2\n', /a\.csv, line 2/],
    ['a repeated heading', 'a,a\n1,2\n', /a\.csv, line 1: a heading is repeated/],
    ['an empty heading', 'a,\n1,2\n', /a\.csv, line 1: a heading is empty/],
  ])('refuses %s', (_, text, message) => {
    expect(() => parseCsv(text, 'a.csv')).toThrow(message);
  });
});

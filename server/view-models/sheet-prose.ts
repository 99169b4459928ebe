import type { Typesetter } from '../typeset/index.ts';
import { greekLetters } from '../typeset/symbol.ts';

/** A symbol inside a sentence: a letter, or two capitals, with short subscripts, as in "C_D of the shortest load". */
const symbolInProse = new RegExp(
  String.raw`(?<![\w-])(?:[A-Za-z]|[A-Z]{2}|${greekLetters.join('|')})(?:_[A-Za-z0-9]{1,5}){1,2}(?:_prime)?(?![\w-])`,
  'g',
);

/** A stretch of a sentence: plain words, and then a symbol as the typesetter set it; either may be empty. */
export interface ProsePiece {
  readonly words: string;
  readonly symbol: string;
}

/** A sentence in pieces, so that whoever shows it keeps the words as words and sets the symbols as symbols. */
export function prosePieces(sentence: string, typesetter: Typesetter): ProsePiece[] {
  if (!sentence.includes('_')) return [{ words: sentence, symbol: '' }];
  const pieces: ProsePiece[] = [];
  let from = 0;
  for (const match of sentence.matchAll(symbolInProse)) {
    pieces.push({ words: sentence.slice(from, match.index), symbol: typesetter.symbol(match[0]) });
    from = match.index + match[0].length;
  }
  return [...pieces, { words: sentence.slice(from), symbol: '' }];
}

const raised: Readonly<Record<string, string>> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
};

/** A value as it is set in a table: powers of ten written out, a true minus, and no unit parted from its number. */
export function tableValue(text: string): string {
  return plainPowers(text)
    .replace(/(?<![\p{L}\d])-(?=\d)/gu, '−')
    .replace(/(?<=\d) (?=[\p{L}%°²])/gu, '\u00a0');
}

/** `1.336e8` as people write it: 1.336 × 10⁸. */
function plainPowers(text: string): string {
  return text.replace(
    /(?<![\w.])(-?\d+(?:\.\d+)?)e([+-]?\d+)(?!\w)/g,
    (_, mantissa: string, power: string) => {
      const digits = [...String(Number(power))].map((digit) => raised[digit] ?? '');
      return `${mantissa} × 10${digits.join('')}`;
    },
  );
}

/** A number as the calculation prints it, split for typesetting. */
export interface NumberTex {
  readonly tex: string;
  /** Negative, or a power of ten: it needs parentheses inside a product or a difference, or under a power. */
  readonly compound: boolean;
}

const printed = /^(-?)(\d+(?:\.\d+)?)(?:e([+-]?\d+))?$/;

/**
 * A printed number taken apart; what it lacks is empty.
 *
 * @throws Error when the text is no number: NaN or a word never gets into a line of working
 */
export function numberParts(text: string): { sign: string; digits: string; exponent: string } {
  const match = printed.exec(text);
  if (match === null) throw new Error(`"${text}" is not a number that can be printed`);
  const [, sign = '', digits = '', exponent = ''] = match;
  return { sign, digits, exponent };
}

/**
 * The TeX of a printed number: `0.75`, `-12.3`, `1.234e8` (as 1.234 × 10⁸).
 *
 * @throws Error when the text is no number
 */
export function numberTex(text: string): NumberTex {
  const { sign, digits, exponent } = numberParts(text);
  const power = exponent === '' ? '' : String.raw` \times 10^{${Number(exponent)}}`;
  return { tex: `${sign}${digits}${power}`, compound: sign !== '' || power !== '' };
}

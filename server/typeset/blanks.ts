import { fill, type Substitution } from '../../calc/formula/expression.ts';
import { numberParts } from './number.ts';

/** No number of a formula or a unit begins like this, so that a blank is never taken for one. */
const blankMark = '97531';
const firstBlank = 100;

/** A number as it is set, but for its digits: sign and power of ten decide on parentheses and spaces, the digits on nothing. */
export interface Blank {
  /** The number with a blank for its digits. */
  readonly blank: string;
  /** Sign and power of ten: alike for numbers that are set alike. */
  readonly shape: string;
  readonly digits: string;
}

/**
 * A printed number with its digits left open.
 *
 * @param index which blank of a line it is, from 0
 * @throws Error when the text is no number
 */
export function blankFor(text: string, index: number): Blank {
  const { sign, digits, exponent } = numberParts(text);
  const power = exponent === '' ? '' : `e${exponent}`;
  return { blank: `${sign}${blankMark}${firstBlank + index}${power}`, shape: `${sign}_${power}`, digits };
}

/** A line that was set with blanks, cut at them. */
export function cutAtBlanks(set: string): Substitution {
  const [first = '', ...rest] = set.split(blankMark);
  const length = String(firstBlank).length;
  return {
    pieces: [first, ...rest.map((piece) => piece.slice(length))],
    slots: rest.map((piece) => String(Number(piece.slice(0, length)) - firstBlank)),
  };
}

/** A line with the digits of its numbers put in. */
export function fillBlanks(cut: Substitution, blanks: readonly Blank[]): string {
  return fill(cut, Object.fromEntries(blanks.map(({ digits }, index) => [index, digits])));
}

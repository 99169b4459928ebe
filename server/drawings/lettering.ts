import type { UnitSystem } from '../../shared/quantity/index.ts';
import { show } from '../../shared/quantity/index.ts';

const narrow = new Set("iljftI.,:;'|!()[] /-");
const broad = new Set('mwMW@%&×');

/**
 * How wide a line of text may come out, in drawing units. Fonts differ, so this leans to the wide side: a label must not
 * run into its neighbour on any system.
 */
export function textWidth(words: string, size: number): number {
  let width = 0;
  for (const letter of words)
    width += narrow.has(letter) ? 0.38 : broad.has(letter) ? 0.98 : /[A-Z]/.test(letter) ? 0.72 : 0.63;
  return width * size;
}

/** The text, cut with an ellipsis where it is wider than its room; empty where not even three letters fit. */
export function fitted(words: string, size: number, room: number): string {
  if (textWidth(words, size) <= room) return words;
  const letters = [...words];
  while (letters.length > 0 && textWidth(`${letters.join('').trimEnd()}…`, size) > room) letters.pop();
  return letters.length < 3 ? '' : `${letters.join('').trimEnd()}…`;
}

/** A length for a dimension line: the fraction where it is exact, the decimal where it is not. */
export function dimensionText(length_m: number, units: UnitSystem): string {
  const shown = show(length_m, 'm', units);
  return /\(([^)]*)\)$/.exec(shown)?.[1] ?? shown;
}

/** A dimension without its unit, for a row of numbers whose unit is written once. */
export function bareDimension(length_m: number, units: UnitSystem): string {
  return dimensionText(length_m, units).replace(/ (in|mm)$/, '');
}

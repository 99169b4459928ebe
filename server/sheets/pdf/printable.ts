import { unbroken } from '../../view-models/unbroken.ts';
import { fontCharacters } from './font.ts';

/** Fits text to the sheet's font. */
export interface Printable {
  /** As it stands in a drawing. */
  readonly drawn: (text: string) => string;
  /** As it stands in running words: what has no place to be broken gets one, so that it can't run off the paper. */
  readonly words: (text: string) => string;
  /** How wide printable words are in one line, in sizes of the type. */
  readonly width: (words: string) => number;
}

const breakHere = '\u200b';
const longRun = /\S{28,}/gu;
const somewhat = /\S{10}(?=\S)/gu;

/**
 * Makes what fits text to the sheet's font: a character that the font lacks is written out by its number (`[U+6728]`), so
 * that nothing is lost or shown as an empty box, and ends of lines become spaces.
 */
export function createPrintable(): Printable {
  const known = fontCharacters();
  const shown = (each: string): string => {
    const code = each.codePointAt(0) ?? 0;
    if (/\s/.test(each) && each !== '\u00a0') return ' ';
    if (code < 0x20 || (code > 0x7e && code < 0xa0)) return '';
    return known.has(code) ? each : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
  };
  const drawn = (text: string): string => [...text.normalize('NFC')].map(shown).join('');
  return {
    drawn,
    words: (text) => unbroken(drawn(text)).replace(longRun, (run) => run.replace(somewhat, `$&${breakHere}`)),
    width: (words) =>
      [...words].reduce(
        (sum, each) => sum + (each === breakHere ? 0 : (known.get(each.codePointAt(0) ?? 0) ?? 1)),
        0,
      ),
  };
}

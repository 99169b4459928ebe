import { tex2typst } from 'tex2typst';
import { z } from 'zod';

const formulaShape = z.strictObject({ tex: z.string(), words: z.string() });
const stepShape = z.looseObject({ symbol: formulaShape, sides: z.array(formulaShape) });

/** Makes the function that turns TeX into the notation of the paper's setter; it remembers what comes again and again. */
export function createTypstFormula(): (tex: string) => string {
  const kept = new Map<string, string>();
  return (tex) => {
    const known = kept.get(tex);
    if (known !== undefined) return known;
    const set = tex2typst(tex.replace(raisedUnit, String.raw`\text{$1}^{$2}`));
    if (kept.size < mostKept) kept.set(tex, set);
    return set;
  };
}

const mostKept = 5000;

/** A power inside a unit, as TeX has to write it: `\text{lbf/in\text{\textasciicircum}1.75}`. */
const raisedUnit = /\\text\{([^{}]*)\\text\{\\textasciicircum\}([\d.]+)\}/g;

/**
 * From so many letters on a line of working may be wider than its column, beside the caption or below it, on the narrower
 * paper: the setter measures it, which takes its time. A letter takes 5.5 pt at most on the average of a long line.
 */
const wideFrom = { beside: 49, below: 71 };

/**
 * Puts a sheet's data into the setter's terms: every formula, and every line of working as one formula whose sides stand
 * under one another. A formula is an object with TeX in it; the user's words are strings, and no string is ever taken for one.
 */
export function withTypstFormulas(value: unknown, typst: (tex: string) => string): unknown {
  if (Array.isArray(value)) return value.map((each) => withTypstFormulas(each, typst));
  if (typeof value !== 'object' || value === null) return value;
  if ('tex' in value) {
    const { tex, words } = formulaShape.parse(value);
    return { math: typst(tex), words };
  }
  if ('sides' in value) {
    const { symbol, sides, ...rest } = stepShape.parse(value);
    const isJoined = fitsBehind(sides, rest['isLong'] === true);
    const lines = sides.map(({ tex }, index) => {
      const start = index === 0 ? typst(symbol.tex) : '';
      return isJoined && index === sides.length - 1 ? ` = ${typst(tex)}` : ` \\ ${start} &= ${typst(tex)}`;
    });
    const words = [symbol, ...sides].map((each) => each.words).join(' = ');
    const lengths = sides.map((side) => lettersSet(side.tex));
    const last = isJoined ? lengths.slice(-2).reduce((sum, length) => sum + length, signsBetween) : 0;
    const letters = lettersSet(symbol.tex) + signsBetween + Math.max(...lengths, last);
    return {
      ...withTypstMembers(rest, typst),
      math: lines.join('').replace(/^ \\ /, ''),
      words,
      mayBeWide: letters > wideFrom[rest['isLong'] === true ? 'below' : 'beside'],
    };
  }
  return withTypstMembers(value, typst);
}

/** An equals sign and the room beside it. */
const signsBetween = 3;

/** So many letters of numbers and result stand in one line, beside the caption and below it. */
const roomBeside = 46;
const roomBelow = 74;

/** Whether the result has room behind the numbers. */
function fitsBehind(sides: readonly { readonly tex: string }[], isLong: boolean): boolean {
  if (sides.length < 3) return false;
  const letters = sides.slice(-2).reduce((sum, { tex }) => sum + lettersSet(tex), 0);
  return letters <= (isLong ? roomBelow : roomBeside);
}

/** How many letters wide TeX is once it is set: a fraction is as wide as the longer of its two parts. */
export function lettersSet(tex: string): number {
  let left = tex
    .replace(/\\[,;:! ]/g, '')
    .replace(/\\times/g, '×')
    .replace(/\\dfrac/g, '\\');
  for (let before = ''; before !== left;) {
    before = left;
    left = left
      .replace(/\\\{([^{}]*)\}\{([^{}]*)\}/g, (_, over: string, under: string) =>
        over.length > under.length ? over : under,
      )
      .replace(/(?<![\\}])\{([^{}]*)\}/g, '$1');
  }
  return left.replace(/\\(?:left|right|text)?|[\^_]/g, '').length;
}

function withTypstMembers(value: object, typst: (tex: string) => string): object {
  return Object.fromEntries(
    Object.entries(value).map(([name, each]) => [name, withTypstFormulas(each, typst)]),
  );
}

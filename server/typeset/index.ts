import { parse } from '../../calc/formula/parser.ts';
import { LRUCache } from 'lru-cache';
import type { Step } from '../../shared/check-result.ts';
import type { Substitution } from '../../calc/formula/expression.ts';
import { blankFor, cutAtBlanks, fillBlanks } from './blanks.ts';
import { filledTex, symbolicTex, type PutIn } from './expression.ts';
import { mathml } from './mathml.ts';
import { putIn, type NamedNumber } from './put-in.ts';
import { symbolTex } from './symbol.ts';

/** A line of working, set: each part is in the typesetter's markup. */
export interface TypesetStep {
  readonly symbol: string;
  readonly formula: string;
  /** The formula with its numbers put in; empty where the formula is a number already. */
  readonly numbers: string;
  readonly result: string;
}

export interface Typesetter {
  /** A symbol by its name: `F_b_prime`. */
  symbol(name: string): string;
  /**
   * The three parts of a line of working. The formula and the numbers come from the parse tree of the one string that was
   * executed.
   *
   * @throws Error when the expression, or a number put in, can't be typeset
   */
  step(step: Step): TypesetStep;
}

/** For paper, which has a setter of its own. */
export const texAsItIs = (tex: string): string => tex;

/** Of each: symbols, formulas, and lines that differ in more than digits. One is about 1 kB. */
const mostKept = 4000;

/**
 * Makes a typesetter that remembers what it set last: a line with other digits is the same line with other digits put in.
 *
 * @param markup turns TeX into what is wanted: MathML for a page (where nothing is said), or TeX as it is for paper
 */
export function createTypesetter(markup: (tex: string) => string = mathml): Typesetter {
  const symbols = new LRUCache<string, string>({ max: mostKept });
  const formulas = new LRUCache<string, string>({ max: mostKept });
  const lines = new LRUCache<string, Substitution>({ max: mostKept });
  const filled = (expression: string, numbers: readonly NamedNumber[]): string => {
    const blanks = numbers.map(({ number }, index) => blankFor(number, index));
    let key = expression;
    numbers.forEach(({ name, unit }, index) => (key += ` ${name} ${blanks[index]?.shape ?? ''} ${unit}`));
    const cut = remembered(lines, key, () => {
      const put = numbers.map(({ name, unit }, index): [string, PutIn] => [
        name,
        { number: blanks[index]?.blank ?? '', unit },
      ]);
      return cutAtBlanks(markup(filledTex(parse(expression), new Map(put))));
    });
    return fillBlanks(cut, blanks);
  };
  const symbol = (name: string): string => remembered(symbols, name, () => markup(symbolTex(name)));
  return {
    symbol,
    step(step) {
      const { expression, shown } = step;
      const numbers = putIn(step);
      const [result = '', ...unit] = shown.split(' ');
      return {
        symbol: symbol(step.symbol),
        formula: remembered(formulas, expression, () => markup(symbolicTex(parse(expression)))),
        numbers: numbers.length === 0 ? '' : filled(expression, numbers),
        result: filled('x', [{ name: 'x', number: result, unit: unit.join(' ') }]),
      };
    },
  };
}

function remembered<Made extends object | string>(
  kept: LRUCache<string, Made>,
  key: string,
  make: () => Made,
): Made {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = make();
  kept.set(key, made);
  return made;
}

export { fontRoutes } from './fonts.ts';

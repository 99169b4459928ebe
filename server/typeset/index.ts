import { parse } from '../../calc/formula/parser.ts';
import { LRUCache } from 'lru-cache';
import type { Unit } from '../../shared/quantity/index.ts';
import type { Step } from '../../shared/check-result.ts';
import { filledTex, symbolicTex, type PutIn } from './expression.ts';
import { mathml } from './mathml.ts';
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

/** From one answer to the next most lines stay as they were. A line is about 1 kB. */
const mostKept = 4000;

/**
 * Makes a typesetter that remembers what it set last.
 *
 * @param markup turns TeX into what is wanted: MathML for a page (where nothing is said), or TeX as it is for paper
 */
export function createTypesetter(markup: (tex: string) => string = mathml): Typesetter {
  const kept = new LRUCache<string, string>({ max: mostKept });
  const remembered = (key: string, tex: () => string): string => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = markup(tex());
    kept.set(key, made);
    return made;
  };
  const symbol = (name: string): string => remembered(`symbol ${name}`, () => symbolTex(name));
  return {
    symbol,
    step(step) {
      const { expression, shown } = step;
      const numbers = putIn(step);
      const written = JSON.stringify([...numbers]);
      const [result = '', ...unit] = shown.split(' ');
      return {
        symbol: symbol(step.symbol),
        formula: remembered(`formula ${expression}`, () => symbolicTex(parse(expression))),
        numbers:
          numbers.size === 0
            ? ''
            : remembered(`numbers ${expression} ${written}`, () => filledTex(parse(expression), numbers)),
        result: remembered(`result ${shown}`, () => resultTex(result, unit.join(' '))),
      };
    },
  };
}

/**
 * Whether a unit goes with the others of its system as it stands (lbf and in; N and mm). Where one does not, the line carries
 * all its units, so that it stays true as it is printed.
 */
const goesWithOthers: Readonly<Record<Unit, boolean>> = {
  m: true,
  N: true,
  Pa: true,
  'N.m': true,
  'N/m': true,
  'N/m2': true,
  m2: true,
  m3: true,
  m4: true,
  'N.m2': true,
  'kg/m3': false,
  kg: false,
  rad: true,
  '1': true,
};

function putIn({ inputs }: Step): Map<string, PutIn> {
  const plain = inputs.every(({ unit }) => isUnit(unit) && goesWithOthers[unit]);
  return new Map(
    inputs.map(({ symbol, number, shown }) => [
      symbol,
      { number, unit: plain ? '' : tidyUnit(shown.slice(number.length)) },
    ]),
  );
}

function isUnit(unit: string): unit is Unit {
  return unit in goesWithOthers;
}

/** `m / s^2` as people write it: m/s². */
function tidyUnit(unit: string): string {
  const raised: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };
  return unit
    .trim()
    .replaceAll(' / ', '/')
    .replaceAll('inch', 'in')
    .replace(/\^([234])/g, (_, power: string) => raised[power] ?? '');
}

function resultTex(number: string, unit: string): string {
  return filledTex(parse('x'), new Map([['x', { number, unit }]]));
}

export { fontRoutes } from './fonts.ts';

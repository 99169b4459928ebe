import { math, type Unit } from '../../shared/quantity/index.ts';
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

/** Formulas come from the program's own files, so there are only so many; this is a bound, not a tuning. */
const mostKept = 5000;

/**
 * Makes a typesetter that remembers the symbols and formulas it has set.
 *
 * @param markup turns TeX into what is wanted: MathML for a page (where nothing is said), or TeX as it is for paper
 */
export function createTypesetter(markup: (tex: string) => string = mathml): Typesetter {
  const kept = new Map<string, string>();
  const remembered = (key: string, make: () => string): string => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = make();
    if (kept.size < mostKept) kept.set(key, made);
    return made;
  };
  const symbol = (name: string): string => remembered(`symbol ${name}`, () => markup(symbolTex(name)));
  return {
    symbol,
    step(step) {
      const node = math.parse(step.expression);
      const numbers = putIn(step);
      const [result = '', ...unit] = step.shown.split(' ');
      return {
        symbol: symbol(step.symbol),
        formula: remembered(`formula ${step.expression}`, () => markup(symbolicTex(node))),
        numbers: numbers.size === 0 ? '' : markup(filledTex(node, numbers)),
        result: markup(resultTex(result, unit.join(' '))),
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
  return filledTex(math.parse('x'), new Map([['x', { number, unit }]]));
}

export { fontRoutes } from './fonts.ts';

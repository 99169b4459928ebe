import { parse, type MathNode } from './parser.ts';
import { inch, poundForce, type Unit, type UnitSystem } from '../../shared/quantity/index.ts';
import { evaluatorOf } from './evaluator.ts';
import { substitution, symbolsOf, type Substitution } from './expression.ts';

/** Where a formula comes from. */
export interface Source {
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
}

/** What a formula is made of. */
export interface Definition<Symbols extends string> {
  /** The symbol of the result, as in the source: `f_b`, `F_b_prime`, `Delta`. */
  readonly symbol: string;
  readonly caption: string;
  /** One mathjs expression of the symbols below and pure numbers; `sqrt min max abs exp log sin cos tan` are known. */
  readonly expression: string;
  /** The SI unit of every symbol, constants with a unit included. */
  readonly symbols: Readonly<Record<Symbols, Unit | UnitExpression>>;
  readonly unit: Unit;
  readonly source: Source;
  /** Where the formula is valid, in words; empty where it always is. */
  readonly valid?: string;
}

/** A unit that no result carries, in mathjs spelling: the constants of empirical formulas need some. */
export interface UnitExpression {
  readonly unit: string;
  /** How it is shown in a calculation: the unit as people write it, and its size in SI. */
  readonly shown?: Readonly<Record<UnitSystem, { readonly unit: string; readonly size: number }>>;
}

/** The unit of an empirical constant that is a force over a broken power of a length: N/m^p, lbf/in^p, N/mm^p. */
export function forcePerLength(power: number): UnitExpression {
  return {
    unit: `N / m^${power}`,
    shown: {
      'inch-pound': { unit: `lbf/in^${power}`, size: poundForce / inch ** power },
      metric: { unit: `N/mm^${power}`, size: 1 / 0.001 ** power },
    },
  };
}

/** A formula: one string, parsed once, executed on SI numbers, and printed from the same parse tree. */
export interface Formula<Symbols extends string = string> extends Definition<Symbols> {
  readonly isFormula: true;
  readonly node: MathNode;
  readonly names: readonly Symbols[];
  readonly template: Substitution;
  /** Its source, in words. */
  readonly cited: string;
  /** The value for SI numbers. A result that is not finite is an error: it is never a number to go on with. */
  evaluate(values: Readonly<Record<Symbols, number>>): number;
}

/**
 * Makes a formula from its one string.
 *
 * @throws Error when the string uses a symbol that isn't listed, leaves one out, or uses anything but arithmetic
 */
export function formula<const Symbols extends string>(definition: Definition<Symbols>): Formula<Symbols> {
  const node = parse(definition.expression);
  const run = evaluatorOf(node);
  const names = Object.keys(definition.symbols) as Symbols[];
  const used = symbolsOf(node);
  const missing = used.filter((name) => !(names as string[]).includes(name));
  const idle = names.filter((name) => !used.includes(name));
  if (missing.length > 0 || idle.length > 0) {
    throw new Error(
      `Formula ${definition.symbol} = ${definition.expression}: not listed: ${missing.join(', ') || 'none'}; not used: ${idle.join(', ') || 'none'}`,
    );
  }
  return Object.freeze({
    ...definition,
    isFormula: true as const,
    node,
    names,
    template: substitution(node),
    cited: cite(definition.source),
    evaluate(values: Readonly<Record<Symbols, number>>): number {
      const result = run(values);
      if (!Number.isFinite(result)) {
        throw new RangeError(`${definition.symbol} = ${definition.expression} is not a finite number`);
      }
      return result;
    },
  });
}

/** Whether a value exported by a formula file is a formula. */
export function isFormula(value: unknown): value is Formula {
  return typeof value === 'object' && value !== null && 'isFormula' in value;
}

/** `NDS 2018, 3.3.1`. */
export function cite(source: Source): string {
  return [`${source.document} ${source.edition}`.trim(), source.clause]
    .filter((part) => part !== '')
    .join(', ');
}

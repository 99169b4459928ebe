import type { Formula, UnitExpression } from '../../../calc/formula/formula.ts';
import type { Unit } from '../../../shared/quantity/index.ts';
import { math, mathUnit } from '../../units.ts';

/** mathjs spelling of the unit of a symbol; empty where a plain number stands for it: angles and pure numbers. */
function spelling(unit: Unit | UnitExpression): string {
  if (typeof unit === 'object') return unit.unit;
  return unit === 'rad' ? '' : mathUnit[unit];
}

/**
 * Evaluates a formula's expression on numbers that carry their units, by mathjs and not by the formula's own code.
 *
 * @param formula the formula
 * @param values an SI number for each symbol
 * @returns the result in the formula's stated unit
 * @throws Error where terms of different kinds are added or compared, or the result is of another kind than stated
 */
export function evaluateWithUnits(formula: Formula, values: Readonly<Record<string, number>>): number {
  const scope = new Map<string, unknown>();
  for (const [symbol, unit] of Object.entries(formula.symbols)) {
    const value = values[symbol] ?? NaN;
    scope.set(symbol, spelling(unit) === '' ? value : math.unit(value, spelling(unit)));
  }
  const result: unknown = math.parse(formula.expression).compile().evaluate(scope);
  const stated = spelling(formula.unit);
  if (stated === '') {
    if (typeof result !== 'number') throw new Error(`${String(result)} is not a pure number`);
    return result;
  }
  if (!math.isUnit(result)) throw new Error(`a pure number comes out, not ${stated}`);
  if (!result.equalBase(math.unit(stated))) throw new Error(`${result.toString()} is not of ${stated}`);
  return result.toNumber(stated);
}

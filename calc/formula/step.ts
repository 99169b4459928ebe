import type { Step, StepInput } from '../../shared/check-result.ts';
import { calculationUnits, significant, type Unit, type UnitSystem } from '../../shared/quantity/index.ts';
import { fill } from './expression.ts';
import type { Formula, UnitExpression } from './formula.ts';

/** A computed value and the line of working that shows how. */
export interface Worked {
  readonly value: number;
  readonly step: Step;
}

/**
 * Executes a formula on SI numbers and keeps the line of working.
 *
 * @param formula the formula
 * @param values an SI number for each of its symbols
 * @param system the units in which the line is shown
 * @param caption what the value is here, where the formula's own caption is too general
 * @param symbol what later lines call the value, where that is not the formula's own symbol
 */
export function work<Symbols extends string>(
  formula: Formula<Symbols>,
  values: Readonly<Record<Symbols, number>>,
  system: UnitSystem,
  caption: string = formula.caption,
  symbol: string = formula.symbol,
): Worked {
  const value = formula.evaluate(values);
  const numbers: Record<string, string> = {};
  const inputs: StepInput[] = [];
  for (const name of formula.names) {
    const input = inputOf(name, values[name], formula.symbols[name], system);
    numbers[name] = input.value < 0 ? `(${input.number})` : input.number;
    inputs.push(input);
  }
  const shown = shownIn(value, formula.unit, system);
  return {
    value,
    step: {
      symbol,
      caption,
      expression: formula.expression,
      substituted: fill(formula.template, numbers),
      inputs,
      result: { value, unit: formula.unit, shown },
      shown,
      source: formula.cited,
    },
  };
}

function shownIn(value: number, unit: Unit, system: UnitSystem): string {
  const display = calculationUnits[system][unit];
  const number = significant(value / display.size);
  return display.unit === '' ? number : `${number} ${display.unit}`;
}

function inputOf(symbol: string, value: number, unit: Unit | UnitExpression, system: UnitSystem): StepInput {
  if (typeof unit === 'object') {
    const own = unit.shown?.[system] ?? { unit: unit.unit, size: 1 };
    const number = significant(value / own.size);
    return { symbol, value, unit: unit.unit, shown: `${number} ${own.unit}`, number };
  }
  const display = calculationUnits[system][unit];
  const number = significant(value / display.size);
  return { symbol, value, unit, shown: display.unit === '' ? number : `${number} ${display.unit}`, number };
}

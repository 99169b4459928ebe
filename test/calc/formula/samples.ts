import type { Formula, UnitExpression } from '../../../calc/formula/formula.ts';
import { calculationUnits, type Unit, type UnitSystem } from '../../../shared/quantity/index.ts';

/** How many SI units one printed unit is, in the units in which a calculation is shown. */
export function sizeOf(unit: Unit | UnitExpression, system: UnitSystem): number {
  return typeof unit === 'object' ? (unit.shown?.[system].size ?? 1) : calculationUnits[system][unit].size;
}

/** SI numbers for the symbols of a formula, from the numbers that would be printed. */
export function toSI(formula: Formula, printed: Readonly<Record<string, number>>, system: UnitSystem) {
  return Object.fromEntries(
    Object.entries(formula.symbols).map(([symbol, unit]) => [
      symbol,
      (printed[symbol] ?? NaN) * sizeOf(unit, system),
    ]),
  );
}

/**
 * Numbers of four figures between 0.5 and 5 for the symbols of a formula, a different set for each number `which`, always the
 * same. Four figures are what a line of working prints, so these are printed as they are.
 */
export function sample(formula: Formula, which: number): Record<string, number> {
  for (let attempt = 0; attempt < 100; attempt++) {
    const draw = generator(which + 1000 * attempt);
    const printed = Object.fromEntries(
      formula.names.map((name) => [name, Math.round(500 + draw() * 4500) / 1000]),
    );
    if (isInRange(formula, printed)) return printed;
  }
  throw new Error(`No numbers between 0.5 and 5 give ${formula.symbol} = ${formula.expression} a value`);
}

/** A formula with a root has no value for some numbers. */
function isInRange(formula: Formula, printed: Readonly<Record<string, number>>): boolean {
  try {
    formula.evaluate(printed);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** A linear congruential generator (Numerical Recipes' constants), from 0 up to 1. */
function generator(which: number): () => number {
  let state = (which * 2654435761) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

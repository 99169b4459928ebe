import { describe, expect, it } from 'vitest';
import { equalBays } from '../../calc/standards/beam-tables/closed-forms.ts';
import { exceptions } from '../ledger/exceptions.ts';
import { findFormulas } from '../ledger/find-formulas.ts';
import { publishedValues, type PublishedValue } from './values/index.ts';

const found = await findFormulas();
const nameOf = (value: PublishedValue): string =>
  found.find(({ formula }) => formula === value.formula)?.name ?? 'no formula of the engine';

function isMet({ formula, inputs, expected, tolerance }: PublishedValue): boolean {
  return Math.abs(formula.evaluate(inputs) / expected - 1) <= tolerance;
}

describe('formulas against print', () => {
  it.each(publishedValues.map((value) => [nameOf(value), value.source, value] as const))(
    '%s: %s',
    (_name, _source, value) => {
      const { formula, inputs, expected, tolerance } = value;
      const computed = formula.evaluate(inputs);
      expect(
        isMet(value),
        `${computed} is not within ${tolerance * 100} % of ${expected} (${value.why})`,
      ).toBe(true);
    },
  );
});

describe('the values themselves', () => {
  it('are of formulas of the engine, each with its source and the reason for its tolerance', () => {
    for (const value of publishedValues) {
      expect(nameOf(value)).not.toBe('no formula of the engine');
      expect(value.source.length).toBeGreaterThan(10);
      expect(value.why.length).toBeGreaterThan(4);
      expect(value.expected).toBeGreaterThan(0);
      expect(value.tolerance).toBeGreaterThan(0);
      expect(value.tolerance).toBeLessThan(0.065);
    }
  });

  const covered = found.filter(({ formula }) => publishedValues.some((value) => value.formula === formula));

  it.each(covered.map(({ file, name, formula }) => [`${file} ${name}`, formula] as const))(
    '%s: each symbol changes a value beyond its tolerance',
    (_label, formula) => {
      const values = publishedValues.filter((value) => value.formula === formula);
      const idle = formula.names.filter((symbol) =>
        values.every((value) => {
          const number = value.inputs[symbol] ?? NaN;
          return isMet({ ...value, inputs: { ...value.inputs, [symbol]: number * 1.3 } });
        }),
      );
      expect(idle).toEqual([]);
    },
  );

  it('leave out only the formulas that are listed with a reason', () => {
    const without = found
      .filter((each) => !covered.includes(each))
      .map(({ file, name }) => `${file} ${name}`);
    expect(without.sort()).toEqual(Object.keys(exceptions).sort());
  });
});

describe('coefficients of equal spans, AISC Manual Table 3-22c (from memory) and the equation of three moments', () => {
  it.each([
    [2, 0.125, 0.375],
    [3, 0.1, 0.4],
    [4, 0.107, 0.393],
  ] as const)('%d spans', (spans, moment, reaction) => {
    expect(equalBays[spans].moment).toBeCloseTo(moment, 3);
    expect(equalBays[spans].reaction).toBeCloseTo(reaction, 3);
  });
});

import { describe, expect, it } from 'vitest';
import { formula } from '../../../calc/formula/formula.ts';
import { work } from '../../../calc/formula/step.ts';
import { significant } from '../../../shared/quantity/index.ts';
import { math } from '../../units.ts';
import { findFormulas } from '../../ledger/find-formulas.ts';
import { evaluateWithUnits } from './dimension.ts';
import { sample, sizeOf, toSI } from './samples.ts';

const every = (await findFormulas()).map((found) => [`${found.file} ${found.name}`, found] as const);
const systems = ['inch-pound', 'metric'] as const;
const draws = [1, 2, 3];

describe.each(every)('%s', (_label, { formula: each }) => {
  it('gives the unit it states when its symbols carry theirs, and the same number', () => {
    for (const which of draws) {
      const values = toSI(each, sample(each, which), 'metric');
      const value = each.evaluate(values);
      expect(Math.abs(evaluateWithUnits(each, values) / value - 1)).toBeLessThan(1e-9);
    }
  });

  it.each(systems)('works out on paper with the numbers as they are printed, %s', (system) => {
    const isConsistent = draws.map((which) => {
      const values = toSI(each, sample(each, which), system);
      const { step } = work(each, values, system);
      const onPaper: unknown = math.evaluate(step.substituted.replaceAll('×', '*'));
      if (typeof onPaper !== 'number') throw new Error(`${step.substituted} is not a number`);
      const shown = each.evaluate(values) / sizeOf(each.unit, system);
      return Math.abs(onPaper / shown - 1) < 1e-9 && step.shown.split(' ')[0] === significant(onPaper);
    });
    expect(isConsistent).toEqual(draws.map(() => true));
  });
});

describe('the proof itself', () => {
  const source = { document: 'a wrong formula', edition: '', clause: '' };
  const refused = (definition: Parameters<typeof formula>[0], why: RegExp): void => {
    const wrong = formula(definition);
    expect(() => evaluateWithUnits(wrong, sample(wrong, 1))).toThrow(why);
  };

  it('refuses a result of another kind than stated', () => {
    const symbols = { M: 'N.m', S: 'm3' } as const;
    refused(
      { symbol: 'f', caption: '', expression: 'M * S', symbols, unit: 'Pa', source },
      /is not of N\/m\^2/,
    );
    refused(
      { symbol: 'f', caption: '', expression: 'M / M + 0 * S / S', symbols, unit: 'Pa', source },
      /pure number/,
    );
    refused(
      { symbol: 'f', caption: '', expression: 'M / S', symbols, unit: '1', source },
      /not a pure number/,
    );
  });

  it('refuses a sum, a comparison and a power of different kinds', () => {
    const symbols = { a: 'm', A: 'm2' } as const;
    refused({ symbol: 'x', caption: '', expression: 'a + A', symbols, unit: 'm', source }, /./);
    refused({ symbol: 'x', caption: '', expression: 'min(a, A)', symbols, unit: 'm', source }, /./);
    refused({ symbol: 'x', caption: '', expression: 'exp(a) * A', symbols, unit: 'm2', source }, /./);
    refused({ symbol: 'x', caption: '', expression: 'a + 1 + 0 * A / a', symbols, unit: 'm', source }, /./);
  });

  it('refuses an empirical constant without its unit', () => {
    const symbols = { G: '1', D: 'm' } as const;
    const expression = '2850 * G^2 * D';
    refused({ symbol: 'W', caption: '', expression, symbols, unit: 'N/m', source }, /is not of N\/m/);
  });
});

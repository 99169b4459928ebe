import { describe, expect, it } from 'vitest';
import { formula, type UnitExpression } from '../../../calc/formula/formula.ts';
import { work } from '../../../calc/formula/step.ts';
import type { Unit } from '../../../shared/quantity/index.ts';
import { math } from '../../units.ts';

const source = { document: 'NDS', edition: '2018', clause: '3.3.2' };

function make(expression: string, symbols: Record<string, Unit | UnitExpression>, unit: Unit = '1') {
  return formula({ symbol: 'x', caption: 'a value', expression, symbols, unit, source });
}

/** The line with its numbers put in, of a formula of pure numbers. */
function line(expression: string, values: Record<string, number>): string {
  const symbols = Object.fromEntries(Object.keys(values).map((name): [string, Unit] => [name, '1']));
  return work(make(expression, symbols), values, 'metric').step.substituted;
}

describe('the line with its numbers put in', () => {
  it.each([
    ['a * b', { a: 2, b: 3 }, '2 × 3'],
    ['a * b', { a: -2, b: -3 }, '(-2) × (-3)'],
    ['a - b', { a: 1, b: -0.5 }, '1 - (-0.5)'],
    ['a^2', { a: -1.5 }, '(-1.5)^2'],
    ['-a^2', { a: 3 }, '-3^2'],
    ['-a^2', { a: -3 }, '-(-3)^2'],
    ['2^a', { a: -2 }, '2^(-2)'],
    ['a / (2 * b)', { a: 6, b: 1.5 }, '6 / (2 × 1.5)'],
    ['(a + b) * (a - b)', { a: 3, b: 1 }, '(3 + 1) × (3 - 1)'],
    ['(w * (a^3 + b^3) / 4)', { w: 2, a: 1, b: 3 }, '(2 × (1^3 + 3^3) / 4)'],
    ['min(a, 2.5 * b)', { a: 4, b: 1 }, 'min(4, 2.5 × 1)'],
    ['sqrt(a^2 + b^2)', { a: 3, b: 4 }, 'sqrt(3^2 + 4^2)'],
    ['abs(a - b)', { a: 1, b: -4 }, 'abs(1 - (-4))'],
    ['1.10 * a', { a: 2 }, '1.1 × 2'],
    ['2 a * (b + 1)', { a: 3, b: 4 }, '2 × 3 × (4 + 1)'],
    ['a * a', { a: 0.00001234 }, '1.234e-5 × 1.234e-5'],
  ])('%s with %j', (expression, values, expected) => {
    expect(line(expression, values)).toBe(expected);
  });

  it('comes to the same as the formula, whatever the signs', () => {
    const expression = 'a - b * (c - a)^2 / -(b - c)^3 + abs(a * b) - (a - (b - c))';
    for (let signs = 0; signs < 8; signs++) {
      const [a, b, c] = [1.5, 2.25, 0.75].map((size, at) => ((signs >> at) & 1 ? -size : size));
      const values = { a: a ?? NaN, b: b ?? NaN, c: c ?? NaN };
      const { value, step } = work(make(expression, { a: '1', b: '1', c: '1' }), values, 'metric');
      expect(math.evaluate(step.substituted.replaceAll('×', '*'))).toBeCloseTo(value, 12);
    }
  });
});

describe('a line of working', () => {
  const bending = make('M / S', { M: 'N.m', S: 'm3' }, 'Pa');
  const inch = 0.0254;
  const poundForce = 4.4482216152605;

  it('puts numbers in with the units of the system, and keeps SI beside them', () => {
    const values = { M: 21390 * poundForce * inch, S: 21.39 * inch ** 3 };
    const { value, step } = work(bending, values, 'inch-pound', 'stress over bracket 2');
    expect(value).toBeCloseTo(6894757.293, 2);
    expect(step).toMatchObject({
      symbol: 'x',
      caption: 'stress over bracket 2',
      expression: 'M / S',
      substituted: '21390 / 21.39',
      result: { value, unit: 'Pa' },
      shown: '1000 psi',
      source: 'NDS 2018, 3.3.2',
    });
    expect(step.inputs).toEqual([
      { symbol: 'M', value: values.M, unit: 'N.m', shown: '21390 lbf·in', number: '21390' },
      { symbol: 'S', value: values.S, unit: 'm3', shown: '21.39 in³', number: '21.39' },
    ]);
    expect(work(bending, { M: 1, S: 1e-6 }, 'metric').step).toMatchObject({
      caption: 'a value',
      substituted: '1000 / 1000',
      shown: '1 MPa',
    });
  });

  it('shows a negative result with its sign and puts no unit after a pure number', () => {
    expect(work(make('a - b', { a: '1', b: '1' }), { a: 1, b: 3.5 }, 'metric').step.shown).toBe('-2.5');
    expect(work(bending, { M: -1, S: 1e-6 }, 'metric').step.shown).toBe('-1 MPa');
  });

  it('keeps the unit of a constant that has one of its own', () => {
    const weight = make('m * g_0', { m: 'kg', g_0: { unit: 'm / s^2' } }, 'N');
    const { step } = work(weight, { m: 2, g_0: 9.80665 }, 'metric');
    expect(step.inputs[1]).toEqual({
      symbol: 'g_0',
      value: 9.80665,
      unit: 'm / s^2',
      shown: '9.807 m / s^2',
      number: '9.807',
    });
    expect(step.substituted).toBe('2 × 9.807');
  });

  it('throws where the formula has no value, and prints nothing', () => {
    expect(() => work(bending, { M: 1, S: 0 }, 'metric')).toThrow(RangeError);
  });
});

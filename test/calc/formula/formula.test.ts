import { describe, expect, it } from 'vitest';
import { cite, formula, isFormula } from '../../../calc/formula/formula.ts';
import type { Unit } from '../../../shared/quantity/index.ts';

const source = { document: 'a document', edition: '', clause: '' };

/** A formula of pure numbers. */
function pure(expression: string, names: readonly string[]) {
  const symbols: Record<string, Unit> = Object.fromEntries(names.map((name) => [name, '1']));
  return formula({ symbol: 'x', caption: 'a number', expression, symbols, unit: '1', source });
}

describe('what a formula is made of', () => {
  it('refuses a symbol that is not listed, and names it', () => {
    expect(() => pure('a * b', ['a'])).toThrow('not listed: b; not used: none');
  });

  it('refuses a symbol that is listed and not used, and names it', () => {
    expect(() => pure('2 * a', ['a', 'b'])).toThrow('not listed: none; not used: b');
  });

  it.each(['i', 'e', 'E', 'pi', 'PI', 'tau', 'phi', 'LN2', 'inch', 'm', 'b', 'N', 'speedOfLight'])(
    'does not take %s for a constant or a unit that nobody listed',
    (name) => {
      expect(() => pure(`a * ${name}`, ['a'])).toThrow(`not listed: ${name};`);
    },
  );

  it.each(['i', 'e', 'E', 'pi', 'tau', 'b', 'h', 'L', 'N', 'm'])(
    'gives %s the value it is handed where it is listed',
    (name) => {
      expect(pure(`2 * ${name}`, [name]).evaluate({ [name]: 7 })).toBe(14);
    },
  );

  it('does not take a name of a known function for its symbol, nor the other way round', () => {
    expect(pure('min(a, b)', ['a', 'b']).names).toEqual(['a', 'b']);
    expect(() => pure('a * min', ['a'])).toThrow('not listed: min');
  });

  it.each([
    ['an assignment', 'a = 1', 'AssignmentNode'],
    ['an assignment inside', 'a * (b = 2)', 'AssignmentNode'],
    ['a function of its own', 'f(a) = a', 'FunctionAssignmentNode'],
    ['an index', 'a[1]', 'AccessorNode'],
    ['a property', 'a.b', 'AccessorNode'],
    ['a list', '[a, 1]', 'ArrayNode'],
    ['an object', '{a: 1}', 'ObjectNode'],
    ['a range', '1:1e9', 'RangeNode'],
    ['several lines', 'a; a', 'BlockNode'],
    ['a function by an expression', 'a.sqrt(1)', 'FunctionNode'],
    ['an unknown function', 'gamma(a)', 'FunctionNode'],
    ['a door to the evaluator', 'evaluate(a)', 'FunctionNode'],
    ['a unit made on the way', 'createUnit(a)', 'FunctionNode'],
    ['a name every object has', 'constructor(a)', 'FunctionNode'],
    ['a condition', 'a > 1 ? a : 1', 'ConditionalNode'],
  ])('refuses %s', (_what, expression, type) => {
    expect(() => pure(expression, ['a'])).toThrow(new RegExp(`more than arithmetic: ${type}`));
  });

  it.each(['a > 1', 'a == 1', 'a to a', 'a!', "a'", 'a mod 2', 'a .* 2', 'a and a', 'not a', 'a | 1', '~a'])(
    'refuses the operator in %s',
    (expression) => {
      expect(() => pure(expression, ['a'])).toThrow('no operator');
    },
  );

  it.each(['a * true', 'a * null', 'a * "2"', 'a + undefined'])(
    'refuses a constant that is no number: %s',
    (expression) => {
      expect(() => pure(expression, ['a'])).toThrow();
    },
  );

  it('refuses text that is no expression', () => {
    expect(() => pure('a *', ['a'])).toThrow(/end of expression/);
  });

  it('can not be changed once made', () => {
    const made = pure('2 * a', ['a']);
    expect(Object.isFrozen(made)).toBe(true);
    expect(isFormula(made)).toBe(true);
    expect([null, undefined, 1, 'a', {}, []].filter(isFormula)).toEqual([]);
  });
});

describe('evaluate', () => {
  it.each([
    ['sqrt(a)', 9, 3],
    ['abs(a)', -4, 4],
    ['exp(a)', 1, 2.718281828459045],
    ['log(a)', 10, 2.302585092994046],
    ['sin(a)', Math.PI / 6, 0.5],
    ['cos(a)', Math.PI / 3, 0.5],
    ['tan(a)', Math.PI / 4, 1],
    ['min(a, 2)', 3, 2],
    ['max(a, 2)', 3, 3],
    ['pow(2, a)', 10, 1024],
    ['-a^2', 3, -9],
    ['2^-a', 1, 0.5],
    ['2^a^2', 2, 16],
    ['12 / a / 3', 2, 2],
    ['12 / (a * 3)', 2, 2],
    ['8 - a - 2', 3, 3],
  ])('%s of %d is %d, as mathematics has it', (expression, a, expected) => {
    expect(pure(expression, ['a']).evaluate({ a })).toBeCloseTo(expected, 12);
  });

  it.each([
    ['a division by zero', '1 / a', 0],
    ['nothing over nothing', 'a / a', 0],
    ['a root of a negative number', 'sqrt(a)', -1],
    ['a broken power of a negative number', 'a^0.5', -1],
    ['an overflow', 'a^2', 1e200],
    ['a number that is none', 'a + 1', NaN],
    ['an infinite number', 'a + 1', Infinity],
  ])('throws on %s, and does not go on with it', (_what, expression, a) => {
    expect(() => pure(expression, ['a']).evaluate({ a })).toThrow(RangeError);
  });

  it.each(['e', 'i', 'pi', 'a', 'N'])(
    'throws where no number is handed for %s, rather than find one elsewhere',
    (name) => {
      expect(() => pure(`2 * ${name}`, [name]).evaluate({})).toThrow(RangeError);
    },
  );

  it('names the formula that failed', () => {
    expect(() => pure('1 / a', ['a']).evaluate({ a: 0 })).toThrow('x = 1 / a is not a finite number');
  });
});

describe('cite', () => {
  it.each([
    [{ document: 'NDS', edition: '2018', clause: '3.3.1' }, 'NDS 2018, 3.3.1'],
    [{ document: 'ASTM D245', edition: '', clause: 'shear' }, 'ASTM D245, shear'],
    [{ document: 'ASCE 7', edition: '2022', clause: '' }, 'ASCE 7 2022'],
  ])('%j', (given, expected) => {
    expect(cite(given)).toBe(expected);
  });
});

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isFormula, type Formula } from '../../../calc/formula/formula.ts';
import { check } from '../../../calc/index.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { filledTex, symbolicTex } from '../../../server/typeset/expression.ts';
import { createTypesetter } from '../../../server/typeset/index.ts';
import { mathml } from '../../../server/typeset/mathml.ts';
import { putIn, type NamedNumber } from '../../../server/typeset/put-in.ts';
import { symbolTex } from '../../../server/typeset/symbol.ts';
import { math } from '../../units.ts';
import type { Step } from '../../../shared/check-result.ts';
import { manyShelves } from '../sheets/many-shelves.ts';

const calc = join(import.meta.dirname, '../../../calc');

/** Every formula that a file of calc/ exports, by itself or in a list or a table. */
async function allFormulas(): Promise<Formula[]> {
  const files = readdirSync(calc, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  const modules = await Promise.all(files.map((file): Promise<object> => import(join(calc, file))));
  const formulas = new Set<Formula>();
  const collect = (value: unknown, depth: number): void => {
    if (isFormula(value)) formulas.add(value);
    else if (depth > 0 && typeof value === 'object' && value !== null) {
      for (const inner of Object.values(value)) collect(inner, depth - 1);
    }
  };
  for (const module of modules) for (const exported of Object.values(module)) collect(exported, 3);
  return [...formulas];
}

const stepsOf = (document: unknown): Step[] =>
  check(document, { waysOut: false }).worksheet.sections.flatMap(({ steps }) => steps);

describe('formulas', () => {
  it('sets every formula in calc/', async () => {
    const formulas = await allFormulas();
    expect(formulas.length).toBeGreaterThan(30);
    for (const formula of formulas) {
      const set = mathml(`${symbolTex(formula.symbol)} = ${symbolicTex(formula.node)}`);
      expect(set, formula.expression).toMatch(/^<math displaystyle="true">.*<\/math>$/s);
      expect(set, formula.expression).not.toMatch(/ style=|href|<merror|undefined|NaN/);
    }
  });
});

describe('lines of working', () => {
  it.each(manyShelves)('sets every step: $name', ({ document }) => {
    const typesetter = createTypesetter();
    const steps = stepsOf(document);
    expect(steps.length).toBeGreaterThan(10);
    for (const step of steps) {
      const set = typesetter.step(step);
      for (const part of [set.symbol, set.formula, set.numbers, set.result]) {
        expect(part, step.expression).not.toMatch(/ style=|<merror|undefined|NaN/);
      }
    }
  });

  it.each(manyShelves)('can be redone with a pencil from the printed numbers: $name', ({ document }) => {
    for (const step of stepsOf(document)) {
      const hasOwnUnits = step.inputs.some(
        ({ unit }) => unit === 'kg' || unit === 'kg/m3' || unit.includes(' '),
      );
      if (hasOwnUnits) continue;
      const scope = new Map(step.inputs.map(({ symbol, number }) => [symbol, Number(number)]));
      const redone: unknown = math.evaluate(step.expression, scope);
      const printed = Number(step.shown.split(' ')[0]);
      const size = Math.max(...step.inputs.map(({ number }) => Math.abs(Number(number))), Math.abs(printed));
      const allowed = Math.max(Math.abs(printed) * 0.003, size * 1e-9);
      expect(
        Math.abs(Number(redone) - printed),
        `${step.symbol} = ${step.substituted} = ${step.shown}`,
      ).toBeLessThanOrEqual(allowed);
    }
  });

  it('prints every unit on a line that mixes pounds and pounds-force, or inches and feet', () => {
    const weighed = stepsOf(manyShelves.find(({ name }) => name === 'things weighed')?.document).find(
      ({ inputs }) => inputs.some(({ unit }) => unit === 'kg/m3'),
    );
    expect(weighed).toBeDefined();
    if (weighed === undefined) return;
    const { numbers, result } = createTypesetter().step(weighed);
    expect(numbers).toContain('lb/in³');
    expect(numbers).toContain('<mtext>in</mtext>');
    expect(result).toContain('lb');
  });

  it('sets a line that it met with other numbers as if it had never met it', () => {
    const typesetter = createTypesetter();
    const counters = Object.values(startChecks).filter(({ element }) => element.startsWith('counter'));
    expect(counters.length).toBe(2);
    const steps = [...manyShelves.map(({ document }) => document), ...counters].flatMap(stepsOf);
    const signs = steps.flatMap(({ inputs }) => inputs.map(({ number }) => number.replace(/[\d.]+/, '')));
    expect(new Set(signs).size).toBeGreaterThan(3);
    for (const step of [...steps, ...steps.toReversed()]) {
      const numbers = putIn(step);
      const [result = '', unit = ''] = step.shown.split(/ (.*)/);
      const tex = (expression: string, named: readonly NamedNumber[]): string =>
        filledTex(math.parse(expression), new Map(named.map((each) => [each.name, each])));
      const set = typesetter.step(step);
      const expected = numbers.length === 0 ? '' : mathml(tex(step.expression, numbers));
      expect(set.numbers, step.expression).toBe(expected);
      expect(set.result).toBe(mathml(tex('x', [{ name: 'x', number: result, unit }])));
    }
  });

  it('sets a remembered formula the same way again', () => {
    const typesetter = createTypesetter();
    const [first] = stepsOf(manyShelves[0]?.document);
    expect(first).toBeDefined();
    if (first !== undefined) expect(typesetter.step(first)).toEqual(typesetter.step(first));
  });

  it('fails on a step that was not computed', () => {
    const [first] = stepsOf(manyShelves[0]?.document);
    if (first === undefined) throw new Error('no step');
    expect(() => createTypesetter().step({ ...first, shown: 'NaN psi' })).toThrow('is not a number');
  });
});

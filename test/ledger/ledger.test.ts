import { describe, expect, it } from 'vitest';
import { formula } from '../../calc/formula/formula.ts';
import { published } from '../published/values/published-value.ts';
import { findFormulas, type FoundFormula } from './find-formulas.ts';
import { entriesOf, faultsOf, keyOf, ledgerPage } from './ledger.ts';

function invented(name: string): FoundFormula {
  const source = { document: 'A code', edition: '2020', clause: '1.2' };
  const made = formula({
    symbol: 'x',
    caption: `the ${name} one`,
    expression: 'abs(a) * b',
    symbols: { a: '1', b: '1' },
    unit: '1',
    source,
  });
  return { formula: made, file: 'calc/invented.ts', name };
}

function valueOf(found: FoundFormula, source: string, memory: boolean) {
  return published(found.formula, { a: 1, b: 2 }, 2, { tolerance: 0.01, source, why: 'a | b', memory });
}

const covered = invented('covered');
const excused = invented('excused');
const bare = invented('bare');
const exceptions = { [keyOf(excused)]: 'Nobody prints it.' };

describe('the ledger', () => {
  const values = [
    valueOf(covered, 'Table | 1', true),
    valueOf(covered, 'Table 2', false),
    valueOf(covered, 'Table 2', true),
  ];
  const entries = entriesOf([covered, excused], values, exceptions);

  it('has a line for each formula: clause, file, outside values or the reason for having none', () => {
    const page = ledgerPage(entries);
    expect(page.split('\n').filter((line) => line.startsWith('| `'))).toEqual([
      '| `x = abs(a) * b`<br>the covered one | A code 2020, 1.2 | `calc/invented.ts` covered | Table \\| 1 *(from memory)*<br>Table 2 (2 values) |  |',
      '| `x = abs(a) * b`<br>the excused one | A code 2020, 1.2 | `calc/invented.ts` excused |  | Nobody prints it. |',
    ]);
    expect(page).toContain('2 formulas; 1 have a value from outside');
    expect(ledgerPage(entries)).toBe(page);
  });

  it('is without fault where every formula has a value or a reason', () => {
    expect(faultsOf(entries, exceptions)).toEqual([]);
  });

  it('finds fault with a formula that has neither, and shows the gap on the page', () => {
    const gap = entriesOf([covered, excused, bare], values, exceptions);
    expect(faultsOf(gap, exceptions)).toEqual([
      'calc/invented.ts bare has no value from outside the project, and no reason why.',
    ]);
    expect(ledgerPage(gap)).toContain('**no value and no reason**');
  });

  it('finds fault with a reason that is needed no more, and with one for a formula that is gone', () => {
    const late = entriesOf([excused], [valueOf(excused, 'Table 1', false)], exceptions);
    expect(faultsOf(late, exceptions)).toEqual([
      'calc/invented.ts excused has an outside value now, and still a reason for having none.',
    ]);
    expect(faultsOf([], exceptions)).toEqual(['calc/invented.ts excused has a reason and is no formula.']);
  });
});

describe('finding the formulas', () => {
  it('finds each once, in the order of the files and names, from mechanics, standards and elements', async () => {
    const found = await findFormulas();
    const keys = found.map(keyOf);
    expect(new Set(found.map(({ formula: each }) => each)).size).toBe(found.length);
    expect(new Set(keys).size).toBe(found.length);
    for (const folder of ['mechanics', 'standards', 'elements']) {
      expect(keys.some((key) => key.startsWith(`calc/${folder}/`))).toBe(true);
    }
    expect((await findFormulas()).map(keyOf)).toEqual(keys);
  });
});

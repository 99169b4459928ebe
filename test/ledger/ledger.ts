import { cite } from '../../calc/formula/formula.ts';
import type { PublishedValue } from '../published/values/index.ts';
import type { FoundFormula } from './find-formulas.ts';

/** One line of the ledger: a formula and everything outside the project that it was checked against. */
export interface Entry {
  readonly found: FoundFormula;
  readonly values: readonly PublishedValue[];
  /** Why there is no outside value; empty where there are some, or where nobody has said why. */
  readonly reason: string;
}

/** Brings formulas, outside values and the reasons for having none together, in the order of the formulas. */
export function entriesOf(
  found: readonly FoundFormula[],
  published: readonly PublishedValue[],
  exceptions: Readonly<Record<string, string>>,
): Entry[] {
  return found.map((each) => ({
    found: each,
    values: published.filter(({ formula }) => formula === each.formula),
    reason: exceptions[keyOf(each)] ?? '',
  }));
}

/** What is wrong with the ledger itself, in sentences: formulas without a value or reason, and idle reasons. */
export function faultsOf(entries: readonly Entry[], exceptions: Readonly<Record<string, string>>): string[] {
  const keys = new Set(entries.map(({ found }) => keyOf(found)));
  return [
    ...entries
      .filter(({ values, reason }) => values.length === 0 && reason === '')
      .map(({ found }) => `${keyOf(found)} has no value from outside the project, and no reason why.`),
    ...entries
      .filter(({ values, reason }) => values.length > 0 && reason !== '')
      .map(({ found }) => `${keyOf(found)} has an outside value now, and still a reason for having none.`),
    ...Object.keys(exceptions)
      .filter((key) => !keys.has(key))
      .map((key) => `${key} has a reason and is no formula.`),
  ];
}

/** The ledger as a page. */
export function ledgerPage(entries: readonly Entry[]): string {
  const covered = entries.filter(({ values }) => values.length > 0);
  const fromMemory = covered.filter(({ values }) => values.every(({ memory }) => memory));
  const rows = entries.map(({ found, values, reason }) => {
    const { symbol, caption, expression, source } = found.formula;
    const outside = values.length === 0 ? '' : sourcesOf(values).join('<br>');
    const not = values.length > 0 ? '' : reason === '' ? '**no value and no reason**' : reason;
    const what = `\`${symbol} = ${expression}\`<br>${caption}`;
    return [what, cite(source), `\`${found.file}\` ${found.name}`, outside, not];
  });
  return [
    '# Ledger of formulas',
    '',
    'Written by `npm run ledger` from the formulas and from `test/published/values`; not by hand.',
    '',
    `${entries.length} formulas; ${covered.length} have a value from outside the project beside them, ` +
      `${fromMemory.length} of them only values set down from memory; ${entries.length - covered.length} have none.`,
    'Each formula is also evaluated with its units, and as it is printed (`test/calc/formula`).',
    '',
    tableRow(['Formula', 'Source', 'File', 'Values from outside', 'Not covered, and why']),
    tableRow(['---', '---', '---', '---', '---']),
    ...rows.map(tableRow),
    '',
  ].join('\n');
}

/** `calc/mechanics/solids.ts bowlMass`. */
export function keyOf({ file, name }: FoundFormula): string {
  return `${file} ${name}`;
}

/** Each source once, with how many values it gave and whether all of them are from memory. */
function sourcesOf(values: readonly PublishedValue[]): string[] {
  const sources = [...new Set(values.map(({ source }) => source))];
  return sources.map((source) => {
    const ofSource = values.filter((value) => value.source === source);
    const count = ofSource.length === 1 ? '' : ` (${ofSource.length} values)`;
    return `${source}${count}${ofSource.every(({ memory }) => memory) ? ' *(from memory)*' : ''}`;
  });
}

function tableRow(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', String.raw`\|`).replaceAll('\n', ' ')).join(' | ')} |`;
}

import type { Formula } from '../../../calc/formula/formula.ts';

/** A value from outside the project, beside the formula it checks. */
export interface PublishedValue {
  readonly formula: Formula;
  /** SI numbers for the formula's symbols. */
  readonly inputs: Readonly<Record<string, number>>;
  /** What the source prints, or what follows from what it prints by plain arithmetic; SI. */
  readonly expected: number;
  /** Largest difference allowed, as a share of `expected`. */
  readonly tolerance: number;
  /** Document, edition, and table, page or example. */
  readonly source: string;
  /** Why the tolerance is what it is, and what arithmetic lies between the print and `expected`. */
  readonly why: string;
  /** Whether the value was set down from memory rather than read in a copy of the source. */
  readonly memory: boolean;
}

/** One published value of a formula; the compiler sees to it that every symbol has its number. */
export function published<Symbols extends string>(
  formula: Formula<Symbols>,
  inputs: Readonly<Record<Symbols, number>>,
  expected: number,
  rest: Pick<PublishedValue, 'tolerance' | 'source' | 'why' | 'memory'>,
): PublishedValue {
  return { formula, inputs, expected, ...rest };
}

import { z } from 'zod';
import { id, positiveOrNone, ratioOrNone, sourced, text } from './cells.ts';
import { readTable, tableText } from './table.ts';
import type { Criterion } from './types.ts';

const row = z
  .strictObject({
    id,
    topic: text,
    application: text,
    value: text,
    basis: text,
    span_divisor: ratioOrNone,
    load_Npm2: positiveOrNone,
    ...sourced,
  })
  .refine((cells) => cells.span_divisor === null || cells.value.startsWith(`L/${cells.span_divisor}`), {
    path: ['span_divisor'],
    error: 'is not the limit the value states',
  })
  .transform(({ span_divisor, ...cells }): Criterion => ({ ...cells, spanDivisor: span_divisor }));

/** Reads a table of published limits; throws naming file, line and column. */
export function readCriteria(text: string, file: string): readonly Criterion[] {
  return readTable(text, file, row);
}

/** Every published limit there is a row for. */
export const criteria: readonly Criterion[] = readCriteria(tableText('criteria.csv'), 'criteria.csv');

import { z } from 'zod';
import { id, names, positive, sourced, text } from './cells.ts';
import { NameIndex } from './name-index.ts';
import { readTable, tableText } from './table.ts';
import type { Density, Found } from './types.ts';

const row = z
  .strictObject({ id, name: text, other_names: names, low_kgm3: positive, high_kgm3: positive, ...sourced })
  .refine((cells) => cells.low_kgm3 <= cells.high_kgm3, {
    path: ['high_kgm3'],
    error: 'is less than the low density',
  })
  .transform(({ other_names, ...cells }): Density => ({ ...cells, otherNames: other_names }));

/** Reads a table of densities; throws naming file, line and column. */
export function readDensities(text: string, file: string): readonly Density[] {
  return readTable(text, file, row);
}

/** Every density there is a row for. */
export const densities: readonly Density[] = readDensities(tableText('densities.csv'), 'densities.csv');

const index = new NameIndex(densities, 'densities');

/** A density by any of its names, or the nearest names. A weight takes `high_kgm3`. */
export function findDensity(name: string): Found<Density> {
  const row = index.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

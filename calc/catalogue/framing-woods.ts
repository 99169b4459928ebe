import { z } from 'zod';
import { id, names, ratio, sourced, text } from './cells.ts';
import { NameIndex } from './name-index.ts';
import { readTable, tableText } from './table.ts';
import type { Found, FramingWood } from './types.ts';

const row = z
  .strictObject({ id, name: text, other_names: names, specific_gravity: ratio, ...sourced })
  .transform(({ other_names, specific_gravity, ...cells }): FramingWood => ({
    ...cells,
    otherNames: other_names,
    specificGravity: specific_gravity,
  }));

/** Reads a table of framing woods; throws naming file, line and column. */
export function readFramingWoods(text: string, file: string): readonly FramingWood[] {
  return readTable(text, file, row);
}

/** Every wood the connection rules assign a specific gravity to. */
export const framingWoods: readonly FramingWood[] = readFramingWoods(
  tableText('framing-woods.csv'),
  'framing-woods.csv',
);

const index = new NameIndex(framingWoods, 'framing woods');

/** The wood of a stud by any of its names, or the nearest names. */
export function findFramingWood(name: string): Found<FramingWood> {
  const row = index.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

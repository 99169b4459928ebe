import { z } from 'zod';
import { id, names, positive, positiveOrNone, sourced, text } from './cells.ts';
import { NameIndex } from './name-index.ts';
import { readTable, tableText } from './table.ts';
import type { Fastener, Found } from './types.ts';

const kinds = ['wood-screw', 'lag-screw', 'common-nail'] as const;

const row = z
  .strictObject({
    id,
    name: text,
    other_names: names,
    kind: z.enum(kinds, { error: `is none of ${kinds.join(', ')}` }),
    diameter_m: positive,
    root_m: positive,
    head_m: positiveOrNone,
    tip_m: positiveOrNone,
    bending_yield_Pa: positive,
    ...sourced,
  })
  .refine((cells) => cells.root_m <= cells.diameter_m, { path: ['root_m'], error: 'is over the diameter' })
  .transform(({ other_names, root_m, head_m, bending_yield_Pa, ...cells }): Fastener => ({
    ...cells,
    otherNames: other_names,
    rootDiameter_m: root_m,
    headDiameter_m: head_m,
    bendingYield_Pa: bending_yield_Pa,
  }));

/** Reads a table of fasteners; throws naming file, line and column. */
export function readFasteners(text: string, file: string): readonly Fastener[] {
  return readTable(text, file, row);
}

/** Every fastener there is a row for. */
export const fasteners: readonly Fastener[] = readFasteners(tableText('fasteners.csv'), 'fasteners.csv');

const index = new NameIndex(fasteners, 'fasteners');

/** A fastener by any of its names (`wood-screw-10`, `#10`, `1/4 in lag screw`, `10d`), or the nearest names. */
export function findFastener(name: string): Found<Fastener> {
  const row = index.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

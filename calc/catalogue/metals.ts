import { z } from 'zod';
import { id, names, positive, positiveOrNone, sourced, text } from './cells.ts';
import { NameIndex } from './name-index.ts';
import { readTable, tableText } from './table.ts';
import type { Found, Metal } from './types.ts';

const kinds = ['steel', 'stainless', 'aluminium', 'cast-iron', 'other'] as const;

const row = z
  .strictObject({
    id,
    name: text,
    other_names: names,
    kind: z.enum(kinds, { error: `is none of ${kinds.join(', ')}` }),
    yield_Pa: positiveOrNone,
    ultimate_Pa: positive,
    elasticity_Pa: positiveOrNone,
    density_kgm3: positive,
    ...sourced,
  })
  .refine((cells) => (cells.yield_Pa ?? 0) <= cells.ultimate_Pa, {
    path: ['yield_Pa'],
    error: 'is over the ultimate strength',
  })
  .transform(({ other_names, elasticity_Pa, ...cells }): Metal => ({
    ...cells,
    otherNames: other_names,
    modulusOfElasticity_Pa: elasticity_Pa,
  }));

/** Reads a table of metals; throws naming file, line and column. */
export function readMetals(text: string, file: string): readonly Metal[] {
  return readTable(text, file, row);
}

/** Every metal there is a row for. */
export const metals: readonly Metal[] = Object.freeze(
  ['metals.csv', 'metals-metric.csv'].flatMap((file) => readMetals(tableText(file), file)),
);

const index = new NameIndex(metals, 'metals');

/** A metal by any of its names: `steel` is A36, `aluminium` and `cast iron` the weakest of theirs; or the nearest names. */
export function findMetal(name: string): Found<Metal> {
  const row = index.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

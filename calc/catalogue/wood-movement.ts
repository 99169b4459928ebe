import { z } from 'zod';
import { id, ratio, sourced } from './cells.ts';
import { readTable, tableText } from './table.ts';

const row = z.strictObject({ id, tangential_per_percent: ratio, ...sourced });

/** How much flat-sawn wood moves across the grain for each percent of moisture, by species id. */
export const woodMovement: ReadonlyMap<string, z.output<typeof row>> = new Map(
  readTable(tableText('wood-movement.csv'), 'wood-movement.csv', row).map((each) => [each.id, each]),
);

import { z } from 'zod';
import { id, ratioOrNone, sourced, text } from './cells.ts';
import { readTable, tableText } from './table.ts';
import type { ElasticRatios } from './types.ts';

const row = z
  .strictObject({
    id,
    species: text,
    ET_over_EL: ratioOrNone,
    ER_over_EL: ratioOrNone,
    GLR_over_EL: ratioOrNone,
    GLT_over_EL: ratioOrNone,
    GRT_over_EL: ratioOrNone,
    nu_LR: ratioOrNone,
    nu_LT: ratioOrNone,
    ...sourced,
  })
  .transform(({ id: key, ...ratios }): { key: string; ratios: ElasticRatios } => ({ key, ratios }));

/** Elastic ratios by the id species rows refer to them by. */
export const elasticRatios: ReadonlyMap<string, ElasticRatios> = new Map(
  readTable(tableText('elastic-ratios.csv'), 'elastic-ratios.csv', row).map(({ key, ratios }) => [
    key,
    ratios,
  ]),
);

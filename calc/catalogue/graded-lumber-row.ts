import { z } from 'zod';
import { id, names, positive, ratio, sourced, text } from './cells.ts';
import { readTable } from './table.ts';
import type { GradedLumber, LumberCombination } from './types.ts';

const combinationRow = z
  .strictObject({ id, name: text, other_names: names, specific_gravity: ratio, ...sourced })
  .transform(({ other_names, specific_gravity, ...cells }): LumberCombination => ({
    ...cells,
    otherNames: other_names,
    specificGravity: specific_gravity,
  }));

const row = z
  .strictObject({
    id,
    combination: text,
    grade: text,
    table: z.enum(['4A', '4B'], { error: 'is neither 4A nor 4B' }),
    nominal_from: ratio,
    nominal_to: z.union([z.literal('').transform(() => Infinity), ratio], {
      error: 'is neither a number nor empty',
    }),
    bending_Pa: positive,
    shear_Pa: positive,
    compression_perp_Pa: positive,
    elasticity_Pa: positive,
    specific_gravity: ratio,
    ...sourced,
  })
  .refine((cells) => cells.nominal_from <= cells.nominal_to, {
    path: ['nominal_to'],
    error: 'is less than nominal_from',
  })
  .transform((cells): GradedLumber => ({
    id: cells.id,
    combination: cells.combination,
    grade: cells.grade,
    table: cells.table,
    nominalWidthFrom_in: cells.nominal_from,
    nominalWidthTo_in: cells.nominal_to,
    bending_Pa: cells.bending_Pa,
    shear_Pa: cells.shear_Pa,
    compressionPerp_Pa: cells.compression_perp_Pa,
    modulusOfElasticity_Pa: cells.elasticity_Pa,
    specificGravity: cells.specific_gravity,
    density_kgm3: densityAtTwelve(cells.specific_gravity),
    source: cells.source,
    provenance: cells.provenance,
  }));

/** Reads the table of combinations; throws naming file, line and column. */
export function readCombinations(text: string, file: string): readonly LumberCombination[] {
  return readTable(text, file, combinationRow);
}

/** Reads the table of graded lumber; throws naming file, line and column. */
export function readGradedLumber(text: string, file: string): readonly GradedLumber[] {
  return readTable(text, file, row);
}

const water_kgm3 = 1000;
const moisture_percent = 12;

/**
 * Density at 12 % moisture, kg/m³, from the specific gravity on ovendry weight and volume (NDS Supplement, 3.1.3; memory):
 * water × G / (1 + 0.009 m G) × (1 + m / 100).
 */
function densityAtTwelve(specificGravity: number): number {
  const swollen = specificGravity / (1 + 0.009 * moisture_percent * specificGravity);
  return water_kgm3 * swollen * (1 + moisture_percent / 100);
}

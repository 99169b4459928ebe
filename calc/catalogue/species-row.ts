import { z } from 'zod';
import { flag, id, idOrNone, names, positive, positiveOrNone, ratioOrNone, sourced, text } from './cells.ts';
import { elasticRatios } from './elastic-ratios.ts';
import { readTable } from './table.ts';
import type { ClearStrength, Species } from './types.ts';

const row = z.strictObject({
  id,
  name: text,
  other_names: names,
  group: z.enum(['hardwood', 'softwood'], { error: 'is neither hardwood nor softwood' }),
  likely: flag,
  elastic: idOrNone.refine((name) => name === null || elasticRatios.has(name), {
    error: 'is in no row of the elastic ratios',
  }),
  tension_perp_from: idOrNone,
  green_specific_gravity: ratioOrNone,
  green_bending_Pa: positiveOrNone,
  green_elasticity_Pa: positiveOrNone,
  green_shear_Pa: positiveOrNone,
  green_compression_perp_Pa: positiveOrNone,
  green_tension_perp_Pa: positiveOrNone,
  dry_moisture_percent: z.enum(['12', '15'], { error: 'is neither 12 nor 15' }).transform(Number),
  dry_specific_gravity: ratioOrNone,
  dry_bending_Pa: positive,
  dry_elasticity_Pa: positive,
  dry_shear_Pa: positiveOrNone,
  dry_compression_perp_Pa: positiveOrNone,
  dry_tension_perp_Pa: positiveOrNone,
  ...sourced,
});
type Row = z.output<typeof row>;

const water_kgm3 = 1000;
const moisture = 0.12;

/**
 * Reads a table of species.
 *
 * @param text the table
 * @param file its name, for messages
 * @throws Error naming file, line and column of the first bad cell
 */
export function readSpecies(text: string, file: string): readonly Species[] {
  return readTable(text, file, row.transform(toSpecies));
}

function toSpecies(cells: Row, context: z.RefinementCtx): Species {
  const printed = cells.dry_specific_gravity;
  const specificGravity = printed ?? shrunk(cells.green_specific_gravity);
  if (specificGravity === null) {
    context.addIssue({
      code: 'custom',
      path: ['dry_specific_gravity'],
      message: 'is empty, and the green one too',
    });
    return z.NEVER;
  }
  const note =
    printed === null ? '; specific gravity at 12 % from that on green volume (ASTM D2395, memory)' : '';
  return {
    id: cells.id,
    name: cells.name,
    otherNames: cells.other_names,
    group: cells.group,
    green: greenStrength(cells),
    dry: {
      modulusOfRupture_Pa: cells.dry_bending_Pa,
      modulusOfElasticity_Pa: cells.dry_elasticity_Pa,
      shear_Pa: cells.dry_shear_Pa,
      compressionPerp_Pa: cells.dry_compression_perp_Pa,
      tensionPerp_Pa: cells.dry_tension_perp_Pa,
      specificGravity,
    },
    dryMoisture_percent: cells.dry_moisture_percent,
    density_kgm3: specificGravity * water_kgm3 * (1 + moisture),
    elastic: cells.elastic === null ? null : (elasticRatios.get(cells.elastic) ?? null),
    tensionPerpStandIn: cells.tension_perp_from,
    likely: cells.likely,
    drawn: null,
    source: cells.source,
    provenance: cells.provenance + note,
  };
}

function greenStrength(cells: Row): ClearStrength | null {
  const { green_bending_Pa, green_elasticity_Pa, green_specific_gravity } = cells;
  if (green_bending_Pa === null || green_elasticity_Pa === null || green_specific_gravity === null)
    return null;
  return {
    modulusOfRupture_Pa: green_bending_Pa,
    modulusOfElasticity_Pa: green_elasticity_Pa,
    shear_Pa: cells.green_shear_Pa,
    compressionPerp_Pa: cells.green_compression_perp_Pa,
    tensionPerp_Pa: cells.green_tension_perp_Pa,
    specificGravity: green_specific_gravity,
  };
}

/**
 * Specific gravity at 12 % from that on green volume: G / (1 − 0.265 a G), a = (30 − 12) / 30 (ASTM D2395; memory). Some tables
 * print only the green one.
 */
function shrunk(greenSpecificGravity: number | null): number | null {
  if (greenSpecificGravity === null) return null;
  return greenSpecificGravity / (1 - 0.265 * ((30 - 12) / 30) * greenSpecificGravity);
}

import { z } from 'zod';
import { id, names, positive, positiveOrNone, sourced, text } from './cells.ts';
import { readTable } from './table.ts';
import type { Panel } from './types.ts';

const families = ['plywood', 'osb', 'mdf', 'particleboard', 'hardboard'] as const;
const kinds = ['mean', '5-percentile', 'allowable', 'minimum requirement'] as const;

const nameRow = z.strictObject({
  id,
  name: text,
  family: z.enum(families, { error: `is none of ${families.join(', ')}` }),
  other_names: names,
});
export type PanelName = z.output<typeof nameRow>;

const row = z
  .strictObject({
    id,
    thickness_from_m: positiveOrNone,
    thickness_to_m: positiveOrNone,
    along_elasticity_Pa: positive,
    along_bending_Pa: positive,
    across_elasticity_Pa: positiveOrNone,
    across_bending_Pa: positiveOrNone,
    shear_Pa: positiveOrNone,
    shear_basis: z.string(),
    bearing_Pa: positiveOrNone,
    bearing_basis: z.string(),
    strength_kind: z.enum(kinds, { error: `is none of ${kinds.join(', ')}` }),
    density_kgm3: positive,
    ...sourced,
  })
  .refine((cells) => (cells.thickness_from_m ?? 0) < (cells.thickness_to_m ?? Infinity), {
    path: ['thickness_to_m'],
    error: 'is not more than where the row begins',
  })
  .refine((cells) => (cells.across_elasticity_Pa === null) === (cells.across_bending_Pa === null), {
    path: ['across_bending_Pa'],
    error: 'is given without its fellow across the panel',
  })
  .refine((cells) => (cells.shear_Pa === null) === (cells.shear_basis === ''), {
    path: ['shear_basis'],
    error: 'says what a missing shear is, or leaves out what a given one is',
  })
  .refine((cells) => (cells.bearing_Pa === null) === (cells.bearing_basis === ''), {
    path: ['bearing_basis'],
    error: 'says what a missing bearing is, or leaves out what a given one is',
  });

/** Reads the table of panel names; throws naming file, line and column. */
export function readPanelNames(text: string, file: string): readonly PanelName[] {
  return readTable(text, file, nameRow);
}

/**
 * Reads the table of panels.
 *
 * @param text the table
 * @param file its name, for messages
 * @param named the panels it may hold rows of
 * @throws Error naming file, line and column of the first bad cell
 */
export function readPanels(text: string, file: string, named: readonly PanelName[]): readonly Panel[] {
  const byId = new Map(named.map((panel) => [panel.id, panel]));
  const withName = row.transform((cells, context): Panel => {
    const panel = byId.get(cells.id);
    if (panel === undefined) {
      context.addIssue({ code: 'custom', path: ['id'], message: 'is in no row of the panel names' });
      return z.NEVER;
    }
    return toPanel(cells, panel);
  });
  return readTable(text, file, withName);
}

function toPanel(cells: z.output<typeof row>, panel: PanelName): Panel {
  const { across_elasticity_Pa, across_bending_Pa } = cells;
  return {
    id: cells.id,
    name: panel.name,
    otherNames: panel.other_names,
    family: panel.family,
    thicknessFrom_m: cells.thickness_from_m ?? 0,
    thicknessTo_m: cells.thickness_to_m ?? Infinity,
    along: { modulusOfElasticity_Pa: cells.along_elasticity_Pa, bending_Pa: cells.along_bending_Pa },
    across:
      across_elasticity_Pa === null || across_bending_Pa === null
        ? null
        : { modulusOfElasticity_Pa: across_elasticity_Pa, bending_Pa: across_bending_Pa },
    shear_Pa: cells.shear_Pa,
    shearBasis: cells.shear_basis === '' ? null : cells.shear_basis,
    compressionPerp_Pa: cells.bearing_Pa,
    bearingBasis: cells.bearing_basis === '' ? null : cells.bearing_basis,
    strengthKind: cells.strength_kind,
    density_kgm3: cells.density_kgm3,
    source: cells.source,
    provenance: cells.provenance,
  };
}

import { z } from 'zod';
import { id, idOrNone, names, positiveOrNone, share, sourced, text } from './cells.ts';
import { densities } from './densities.ts';
import { NameIndex } from './name-index.ts';
import { readTable, tableText } from './table.ts';
import type { Found, Thing } from './types.ts';

const shapes = ['disc', 'bowl', 'vessel', 'block'] as const;
const sizes = ['diameter_m', 'width_m', 'height_m', 'depth_m', 'wall_m'] as const;
const sizesOfRound = new Set<string>(['diameter_m', 'height_m', 'wall_m']);
const sizesOfBlock = new Set<string>(['width_m', 'height_m', 'depth_m']);

const row = z.strictObject({
  id,
  name: text,
  other_names: names,
  shape: z.enum(shapes, { error: `is none of ${shapes.join(', ')}` }),
  diameter_m: positiveOrNone,
  width_m: positiveOrNone,
  height_m: positiveOrNone,
  depth_m: positiveOrNone,
  wall_m: positiveOrNone,
  density: id,
  fill: share,
  fill_density: idOrNone,
  ...sourced,
});
type Row = z.output<typeof row>;

/** Reads a table of the things that stand on shelves; throws naming file, line and column. */
export function readThings(text: string, file: string): readonly Thing[] {
  return readTable(text, file, row.transform(toThing));
}

function toThing(cells: Row, context: z.RefinementCtx): Thing {
  const bad = (column: keyof Row, message: string): never => {
    context.addIssue({ code: 'custom', path: [column], message });
    return z.NEVER;
  };
  const needed = cells.shape === 'block' ? sizesOfBlock : sizesOfRound;
  for (const size of sizes) {
    if (needed.has(size) !== (cells[size] !== null)) return bad(size, `is not what a ${cells.shape} has`);
  }
  const density = heavy(cells.density);
  if (density === null) return bad('density', 'is in no row of the densities');
  const fillDensity = cells.fill_density === null ? null : heavy(cells.fill_density);
  if (cells.fill_density !== null && fillDensity === null)
    return bad('fill_density', 'is in no row of the densities');
  if (cells.fill > 0 && fillDensity === null) return bad('fill_density', 'is empty, and the thing is not');
  return {
    id: cells.id,
    name: cells.name,
    otherNames: cells.other_names,
    shape: cells.shape,
    diameter_m: cells.diameter_m,
    width_m: cells.width_m,
    height_m: cells.height_m,
    depth_m: cells.depth_m,
    wall_m: cells.wall_m,
    density_kgm3: density,
    densityId: cells.density,
    fill: cells.fill,
    fillDensity_kgm3: fillDensity,
    source: cells.source,
    provenance: cells.provenance,
  };
}

/** The high end of a density: a thing of unknown make is taken as the heavy one. */
function heavy(id: string): number | null {
  return densities.find((density) => density.id === id)?.high_kgm3 ?? null;
}

/** Every thing there is a row for. */
export const things: readonly Thing[] = readThings(tableText('contents.csv'), 'contents.csv');

const index = new NameIndex(things, 'contents');

/** A thing by any of its names, or the nearest names. */
export function findThing(name: string): Found<Thing> {
  const row = index.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

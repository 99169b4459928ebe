import type { CounterOverhangDocument, Limit } from '../../../shared/check-document/index.ts';
import { parseLimit } from '../../../shared/check-document/index.ts';
import type { ProvenanceValue, Statement } from '../../../shared/check-result.ts';
import { show, standardGravity, type UnitSystem } from '../../../shared/quantity/index.ts';
import { findDensity } from '../../catalogue/index.ts';

/** Tile or stone on a top: what it weighs, and how still it wants to lie. */
export interface Finish {
  readonly weight_Npm2: number;
  readonly limit: Limit;
  readonly clause: string;
  readonly statements: readonly Statement[];
  readonly provenance: readonly ProvenanceValue[];
  readonly assumptions: readonly string[];
}

const kinds = {
  'ceramic-tile': {
    name: 'Ceramic tile',
    density: 'porcelain-tile',
    limit: 'L/360',
    clause: 'ANSI A108.01 and TCNA Handbook: L/360 under ceramic tile',
  },
  'natural-stone': {
    name: 'Natural stone',
    density: 'granite',
    limit: 'L/720',
    clause: 'Dimension Stone Design Manual: L/720 under natural stone',
  },
} as const;

/** The finish of a top; null where there is none. */
export function readFinish(
  finish: CounterOverhangDocument['top']['finish'],
  system: UnitSystem,
  span = 'twice the overhang',
): Finish | null {
  if (finish === undefined) return null;
  const kind = kinds[finish.kind];
  const cover = densityOf(kind.density);
  const bed = densityOf('thinset-mortar');
  const bed_m = finish.bed ?? 0;
  const weight = (cover.value * finish.thickness + bed.value * bed_m) * standardGravity;
  const thickness = `${show(finish.thickness, 'm', system)}${bed_m > 0 ? ` on a bed of ${show(bed_m, 'm', system)}` : ''}`;
  return {
    weight_Npm2: weight,
    limit: parseLimit(kind.limit) ?? { kind: 'none', written: 'none' },
    clause: kind.clause,
    statements: [
      { label: 'Finish', value: `${kind.name}, ${thickness}`, source: 'given' },
      {
        label: 'Its weight for each area',
        value: show(weight, 'N/m2', system),
        source: 'density × thickness',
      },
    ],
    provenance: [cover, ...(bed_m > 0 ? [bed] : [])].map(({ row, value }) => ({
      what: `${row.name}: density, the upper end of its range`,
      value: show(value, 'kg/m3', system),
      source: row.source,
      provenance: row.provenance,
    })),
    assumptions: [
      ...(finish.bed === undefined ? ['No weight of mortar or backer is counted: none was given.'] : []),
      `${kind.name} and its bed count as weight alone, glued down or not. What thin tile or stone bears by itself is not vouched for; the panel is kept still enough for it (${kind.limit} of ${span}).`,
    ],
  };
}

function densityOf(name: string) {
  const found = findDensity(name);
  if (!found.ok) throw new RangeError(`there is no density of ${name}`);
  return { row: found.row, value: found.row.high_kgm3 };
}

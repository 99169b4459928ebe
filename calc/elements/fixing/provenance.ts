import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { ProvenanceValue } from '../../../shared/check-result.ts';
import { significant, showInCalculation, type UnitSystem } from '../../../shared/quantity/index.ts';
import {
  findCombination,
  findFramingWood,
  findMetal,
  findSpecies,
  type Fastener,
} from '../../catalogue/index.ts';
import type { Fixing } from './fixing.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

/** Where the values of the screws, the wood of the wall and the metal of the plate come from. */
export function fixingProvenance(
  fixing: Fixing | null,
  wall: Wall | undefined,
  metal?: string,
): ProvenanceValue[] {
  if (fixing === null) return [];
  return [...ofFastener(fixing), ...ofWood(fixing, wall), ...ofMetal(fixing, metal)];
}

function ofFastener({ fastener, allowable, system }: Fixing): ProvenanceValue[] {
  if (allowable !== null) {
    const value = `pull ${showInCalculation(allowable.tension_N, 'N', system)}, shear ${showInCalculation(allowable.shear_N, 'N', system)}`;
    return [{ what: 'Allowable load of one screw', value, source: allowable.report, provenance: 'given' }];
  }
  return fastener === null ? [] : [fastenerProvenance(fastener, system)];
}

/** Where the sizes of a fastener come from. */
export function fastenerProvenance(fastener: Fastener, system: UnitSystem): ProvenanceValue {
  const c = (metres: number): string => showInCalculation(metres, 'm', system);
  const { name, diameter_m, rootDiameter_m, bendingYield_Pa, source, provenance } = fastener;
  return {
    what: `${name}: diameter, root, bending yield`,
    value: `${c(diameter_m)}, ${c(rootDiameter_m)}, ${showInCalculation(bendingYield_Pa, 'Pa', system)}`,
    source,
    provenance,
  };
}

function ofWood({ ground }: Fixing, wall: Wall | undefined): ProvenanceValue[] {
  if (wall?.species === undefined || ground.kind !== 'wood') return [];
  for (const found of [
    findFramingWood(wall.species),
    findCombination(wall.species),
    findSpecies(wall.species),
  ]) {
    if (!found.ok) continue;
    const { name, source, provenance } = found.row;
    return [{ what: `${name}: specific gravity`, value: significant(ground.G, 2), source, provenance }];
  }
  return [];
}

function ofMetal({ system }: Fixing, metal: string | undefined): ProvenanceValue[] {
  const found = metal === undefined ? undefined : findMetal(metal);
  if (found?.ok !== true || found.row.yield_Pa === null) return [];
  const { name, yield_Pa, source, provenance } = found.row;
  return [
    { what: `${name}: yield point`, value: showInCalculation(yield_Pa, 'Pa', system), source, provenance },
  ];
}

import { deepFreeze } from './freeze.ts';
import type { ClearStrength, ElasticRatios, Species } from './types.ts';

type Value = (species: Species) => number | null | undefined;

/**
 * The row for a board whose wood nobody knows: each strength, stiffness and specific gravity (it sets how well screws hold) the
 * lowest, and the density the highest, of the likely woods. It is no wood that grows; its provenance names where each value
 * is from. It counts as a hardwood, whose factor on strength is the larger.
 *
 * @param species the species table
 * @throws Error where no likely wood has a value
 */
export function woodNotKnown(species: readonly Species[]): Species {
  const likely = species.filter((row) => row.likely);
  const parts: string[] = [];
  const pick = (what: string, value: Value, better: 'lowest' | 'highest' = 'lowest'): number => {
    const [chosen] = likely
      .flatMap((row) => {
        const held = value(row);
        return held === null || held === undefined ? [] : [{ name: row.name, held }];
      })
      .sort((a, b) => (better === 'lowest' ? a.held - b.held : b.held - a.held));
    if (chosen === undefined) throw new Error(`no likely wood has a ${what}`);
    parts.push(`${what}: ${chosen.name}`);
    return chosen.held;
  };
  const strength = (state: string, of: (row: Species) => ClearStrength | null): ClearStrength => ({
    modulusOfRupture_Pa: pick(`${state} bending`, (row) => of(row)?.modulusOfRupture_Pa),
    modulusOfElasticity_Pa: pick(`${state} stiffness`, (row) => of(row)?.modulusOfElasticity_Pa),
    shear_Pa: pick(`${state} shear`, (row) => of(row)?.shear_Pa),
    compressionPerp_Pa: pick(`${state} compression across the grain`, (row) => of(row)?.compressionPerp_Pa),
    tensionPerp_Pa: pick(`${state} tension across the grain`, (row) => of(row)?.tensionPerp_Pa),
    specificGravity: pick(`${state} specific gravity`, (row) => of(row)?.specificGravity),
  });
  const green = strength('green', (row) => row.green);
  const dry = strength('dry', (row) => row.dry);
  const elastic: Omit<ElasticRatios, 'source' | 'provenance'> = {
    species:
      'lowest of the likely woods; across the grain in the radial plane the highest, which raises stress there',
    ET_over_EL: pick('tangential ratio', (row) => row.elastic?.ET_over_EL),
    ER_over_EL: pick('radial ratio', (row) => row.elastic?.ER_over_EL, 'highest'),
    GLR_over_EL: pick('shear ratio LR', (row) => row.elastic?.GLR_over_EL),
    GLT_over_EL: pick('shear ratio LT', (row) => row.elastic?.GLT_over_EL),
    nu_LR: pick('Poisson ratio LR', (row) => row.elastic?.nu_LR),
    nu_LT: pick('Poisson ratio LT', (row) => row.elastic?.nu_LT),
  };
  const density_kgm3 = pick('density (the highest)', (row) => row.density_kgm3, 'highest');
  const source =
    'The weakest value, and the heaviest weight, of the woods a board in a house or a shop is likely to be';
  const provenance = `taken from the rows of this catalogue (${parts.join('; ')}); which woods are likely: common practice, no source`;
  return deepFreeze({
    id: 'not-sure',
    name: 'Wood not known',
    otherNames: ['not sure', 'unknown', 'unknown wood', 'not known', "don't know"],
    group: 'hardwood',
    green,
    dry,
    dryMoisture_percent: 12,
    density_kgm3,
    elastic: { ...elastic, source, provenance },
    tensionPerpStandIn: null,
    likely: false,
    source,
    provenance,
  });
}

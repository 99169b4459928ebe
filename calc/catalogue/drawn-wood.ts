import { deepFreeze } from './freeze.ts';
import type { ClearStrength, DrawnRatio, DrawnValue, ElasticRatios, Species } from './types.ts';

/** A row that is to be drawn from several woods. */
export interface ToDraw extends Pick<Species, 'id' | 'name' | 'otherNames'> {
  readonly woods: readonly Species[];
  /** The woods, as a sentence names them. */
  readonly called: string;
  /** Stands in for whatever some of the woods has no value of; undefined: the others do. */
  readonly standIn: Species | undefined;
}

type Ratio = Exclude<keyof ElasticRatios, 'species' | 'source' | 'provenance'>;

/** A value and whose it is. */
interface Held {
  readonly name: string;
  readonly value: number;
}

/**
 * A row for a board of which nobody knows which of several woods it is: each strength, stiffness and specific gravity (it sets
 * how well screws hold) the lowest, and the density the highest. It is no wood that grows; its provenance names where each
 * value is from. Where there is a hardwood among them it counts as one: the factor on its strength is the larger.
 *
 * @param all every species, among which a wood may have one that stands in for it
 * @throws Error where no wood has a value
 */
export function drawnWood({ woods, called, standIn, ...names }: ToDraw, all: readonly Species[]): Species {
  const from: Partial<Record<DrawnValue, string>> = {};
  const pick = (
    what: DrawnValue,
    of: (row: Species) => number | null | undefined,
    better: 'lowest' | 'highest' = 'lowest',
    mayLack = true,
  ): number => {
    const held = heldBy(woods, of);
    const lacking =
      mayLack && held.length < woods.length && standIn !== undefined ? heldBy([standIn], of) : [];
    const [chosen] = [...held, ...lacking].sort((a, b) =>
      better === 'lowest' ? a.value - b.value : b.value - a.value,
    );
    if (chosen === undefined) throw new Error(`none of ${called} has a ${what}`);
    from[what] = chosen.name;
    return chosen.value;
  };
  const strength = (
    state: 'green' | 'dry',
    of: (row: Species) => ClearStrength | null | undefined,
  ): ClearStrength => ({
    modulusOfRupture_Pa: pick(`${state} bending`, (row) => of(row)?.modulusOfRupture_Pa),
    modulusOfElasticity_Pa: pick(`${state} stiffness`, (row) => of(row)?.modulusOfElasticity_Pa),
    shear_Pa: pick(`${state} shear`, (row) => of(row)?.shear_Pa),
    compressionPerp_Pa: pick(`${state} compression across the grain`, (row) => of(row)?.compressionPerp_Pa),
    tensionPerp_Pa: pick(
      `${state} tension across the grain`,
      (row) =>
        of(row)?.tensionPerp_Pa ??
        of(all.find(({ id }) => id === row.tensionPerpStandIn) ?? row)?.tensionPerp_Pa,
    ),
    specificGravity: pick(`${state} specific gravity`, (row) => of(row)?.specificGravity),
  });
  const lacksRatios = standIn !== undefined && woods.some(({ elastic }) => elastic === null);
  const ratio = (what: DrawnRatio, of: Ratio): number | null =>
    woods.some(({ elastic }) => typeof elastic?.[of] === 'number')
      ? pick(what, (row) => row.elastic?.[of], what === 'radial ratio' ? 'highest' : 'lowest', false)
      : null;
  const across = (what: DrawnRatio, of: Ratio): number | null => (lacksRatios ? null : ratio(what, of));
  const green = strength('green', (row) => row.green);
  const dry = strength('dry', (row) => row.dry);
  const ratios = {
    ET_over_EL: across('tangential ratio', 'ET_over_EL'),
    ER_over_EL: across('radial ratio', 'ER_over_EL'),
    GLR_over_EL: ratio('shear ratio LR', 'GLR_over_EL'),
    GLT_over_EL: ratio('shear ratio LT', 'GLT_over_EL'),
    GRT_over_EL: ratio('shear ratio RT', 'GRT_over_EL'),
    nu_LR: across('Poisson ratio LR', 'nu_LR'),
    nu_LT: across('Poisson ratio LT', 'nu_LT'),
  };
  const density_kgm3 = pick('density (the highest)', (row) => row.density_kgm3, 'highest');
  const source = `The weakest value, and the heaviest weight, of ${called}`;
  const parts = Object.entries(from).map(([what, name]) => `${what}: ${name}`);
  const provenance = `taken from the rows of this catalogue (${parts.join('; ')}); which woods are likely: common practice, no source`;
  return deepFreeze({
    ...names,
    group: woods.some(({ group }) => group === 'hardwood') ? 'hardwood' : 'softwood',
    green,
    dry,
    dryMoisture_percent: 12,
    density_kgm3,
    elastic: {
      species:
        'lowest of the woods it may be; across the grain in the radial plane the highest, which raises stress there',
      ...ratios,
      source,
      provenance,
    },
    tensionPerpStandIn: null,
    likely: false,
    drawn: { woods: called, lacksRatios, from },
    source,
    provenance,
  });
}

function heldBy(woods: readonly Species[], of: (row: Species) => number | null | undefined): Held[] {
  return woods.flatMap((row) => {
    const value = of(row);
    return value === null || value === undefined ? [] : [{ name: row.name, value }];
  });
}

import { NameIndex } from './name-index.ts';
import { readSpecies } from './species-row.ts';
import { tableText } from './table.ts';
import { drawnWood } from './drawn-wood.ts';
import { kindsNotKnown } from './kind-not-known.ts';
import type { DrawnValue, Found, Sourced, Species } from './types.ts';

/** Every species there is a row for. */
export const species: readonly Species[] = Object.freeze(
  ['species.csv', 'species-metric.csv'].flatMap((file) => readSpecies(tableText(file), file)),
);

const notKnown = drawnWood(
  {
    id: 'not-sure',
    name: 'Wood not known',
    otherNames: ['not sure', 'unknown', 'unknown wood', 'not known', "don't know"],
    woods: species.filter((row) => row.likely),
    called: 'the woods a board in a house or a shop is likely to be',
    standIn: undefined,
  },
  species,
);
const likelyFirst = [...species].sort((a, b) => Number(b.likely) - Number(a.likely));
const index = new NameIndex([...likelyFirst, notKnown], 'species');
const kinds = new NameIndex(kindsNotKnown(index, species, notKnown), 'kinds of wood');

for (const row of species) {
  const standIn = row.tensionPerpStandIn;
  if (
    standIn !== null &&
    !species.some((other) => other.id === standIn && other.dry.tensionPerp_Pa !== null)
  ) {
    throw new Error(
      `species: ${row.id} names ${standIn} as its stand-in, which has no tension across the grain`,
    );
  }
}

/** The row for a board whose wood is not known: each value the lowest of the likely woods. */
export function notSure(): Species {
  return notKnown;
}

/**
 * A species by any of its names: case, hyphens and spaces do not matter, and `maple, sugar` is `sugar maple`.
 *
 * @param name as a person writes it; "not sure" and "unknown" are answers
 * @returns the row, or the nearest names
 */
export function findSpecies(name: string): Found<Species> {
  const row = index.find(name) ?? kinds.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

/** For each common word that stands for several woods, the row of whoever can't tell which: see `kindsNotKnown`. */
export const woodKinds: readonly Species[] = kinds.rows;

/** Where a value of a species is from: where it is drawn from several woods, the one whose value it is. */
export function sourceOf(row: Species, what: DrawnValue): Sourced {
  if (row.drawn === null) return sourcedOf(row, what);
  const { from, woods } = row.drawn;
  const own = [...species, notKnown].find((each) => each.name === from[what] && each !== row);
  if (own === undefined) return sourcedOf(row, what);
  const { source, provenance } = sourceOf(own, what);
  return { source, provenance: `that of ${own.name}, of ${woods}: ${provenance}` };
}

function sourcedOf(row: Species, what: DrawnValue): Sourced {
  const { source, provenance } = isRatio(what) ? (row.elastic ?? row) : row;
  return { source, provenance };
}

const isRatio = (what: DrawnValue): boolean => what.includes(' ratio');

/** The names species are looked up by. */
export const speciesIndex: NameIndex<Species> = index;

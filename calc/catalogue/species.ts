import { NameIndex } from './name-index.ts';
import { readSpecies } from './species-row.ts';
import { tableText } from './table.ts';
import type { Found, Species } from './types.ts';
import { woodNotKnown } from './wood-not-known.ts';

/** Every species there is a row for. */
export const species: readonly Species[] = Object.freeze(
  ['species.csv', 'species-metric.csv'].flatMap((file) => readSpecies(tableText(file), file)),
);

const notKnown = woodNotKnown(species);
const likelyFirst = [...species].sort((a, b) => Number(b.likely) - Number(a.likely));
const index = new NameIndex([...likelyFirst, notKnown], 'species');

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

/** The row for a board whose wood is not known: see `woodNotKnown`. */
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
  const row = index.find(name);
  return row === undefined ? index.unknown(name) : { ok: true, row };
}

/** The names species are looked up by. */
export const speciesIndex: NameIndex<Species> = index;

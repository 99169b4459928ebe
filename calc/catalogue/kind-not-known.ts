import { listed, upperFirst } from '../../shared/words.ts';
import { drawnWood } from './drawn-wood.ts';
import type { NameIndex } from './name-index.ts';
import { words } from './nearest.ts';
import type { Species } from './types.ts';

/**
 * A row for each common word that stands for several woods and is the name of none ("oak"), for whoever can't tell which it is:
 * the lowest value of those that a board is likely to be, or of all of that name where fewer than two are likely (common
 * practice, no source). Woods without green values in print are left out: no strength is derived for them.
 *
 * @param notKnown stands in for what some of the woods print no value of
 */
export function kindsNotKnown(
  index: NameIndex<Species>,
  species: readonly Species[],
  notKnown: Species,
): readonly Species[] {
  const last = species.map(({ name }) => words(name).at(-1) ?? '');
  const several = [...new Set(last.filter((word, at) => last.indexOf(word) !== at))];
  return several
    .filter((word) => index.find(word) === undefined)
    .map((word) => {
      const all = index.sharingWord(word).filter(({ green }) => green !== null);
      const likely = all.filter((row) => row.likely);
      const woods = likely.length > 1 ? likely : all;
      return drawnWood(
        {
          id: `${word}-kind-not-known`,
          name: `${upperFirst(word)}, kind not known`,
          otherNames: [`${word}, not sure which`],
          woods,
          called: listed(woods.map(({ name }) => name)),
          standIn: notKnown,
        },
        species,
      );
    });
}

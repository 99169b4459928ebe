import {
  combinations,
  fasteners,
  findFastener,
  findThing,
  framingWoods,
  gradedLumber,
  metals,
  panels,
  species,
  things,
  woodKinds,
  type Thing,
} from '../../../calc/catalogue/index.ts';

/** The lists of the catalogue as a form offers them: word in the document → name. */
type Offered = Readonly<Record<string, string>>;

const named = (rows: readonly { readonly id: string; readonly name: string }[]): Offered =>
  Object.freeze(Object.fromEntries(rows.map(({ id, name }) => [id, name])));

const fastenerNames = named(fasteners);
const steelNames = named(metals.filter(({ kind }) => kind === 'steel' || kind === 'stainless'));
const thingNames = named(things);

export const fastenerOptions = (): Offered => fastenerNames;
export const metalOptions = (): Offered => steelNames;
export const thingOptions = (): Offered => thingNames;

/** What covers a wall, by the words people use; any other word is taken too. */
export const coveringNames = (): Offered => coverings;
const coverings: Offered = Object.freeze({
  'gypsum-board': 'Gypsum board',
  plaster: 'Plaster',
  plywood: 'Plywood',
  'wood-paneling': 'Wood paneling',
  tile: 'Tile',
});

/** A fastener as it is called in the catalogue, or as it was written. */
export function fastenerName(text: string): string {
  const found = findFastener(text);
  return found.ok ? found.row.name : text;
}

/** Whether a fastener is a nail. */
export function isNail(text: string): boolean {
  const found = findFastener(text);
  return found.ok && found.row.kind === 'common-nail';
}

/** One of the common contents; undefined where the name is in no row. */
export function thingOf(text: string): Thing | undefined {
  const found = findThing(text);
  return found.ok ? found.row : undefined;
}

/** Proposals for the fields in which any name may be written. */
export const proposals: readonly { readonly id: string; readonly words: readonly string[] }[] = Object.freeze(
  [
    {
      id: 'list:boards',
      words: unique([...species, ...woodKinds, ...combinations, ...panels].map(({ name }) => name)),
    },
    { id: 'list:framing', words: unique(framingWoods.map(({ name }) => name)) },
    { id: 'list:grades', words: unique(gradedLumber.map(({ grade }) => grade)) },
    { id: 'list:coverings', words: Object.keys(coverings) },
    { id: 'list:limits', words: ['L/360', 'L/240', 'L/180', 'L/144', 'none'] },
  ],
);

function unique(words: readonly string[]): string[] {
  return [...new Set(words)];
}

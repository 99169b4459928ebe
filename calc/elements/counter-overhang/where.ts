import { show, significant, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { Standing } from './people.ts';
import type { Bound } from './plate-model.ts';
import type { Served } from './top-loads.ts';
import type { Worst } from './trial.ts';
import type { VariantName } from './variants.ts';

/** A place on the top in words. */
export function placeWords(
  { x_m, y_m }: { readonly x_m: number; readonly y_m: number },
  system: UnitSystem,
): string {
  return `${show(x_m, 'm', system)} along, ${show(y_m, 'm', system)} from the back edge`;
}

/** Where people are, and how much of their weight counts. */
function peopleWords(people: Standing, share: number, system: UnitSystem): string {
  if (people.length === 0) return 'nobody there';
  const places = people.map((spot) => placeWords(spot, system)).join(' and at ');
  const light = share < 1 ? `, of ${significant(share, 2)} of that weight,` : '';
  return `${people.length === 1 ? 'a person' : 'two people'}${light} at ${places}`;
}

const boundWords: Readonly<Record<Bound, string>> = {
  'screws-hold': 'screws holding',
  'screws-loose': 'top loose on its base',
};
const servedWords: Readonly<Record<Served, string>> = {
  nowhere: 'nothing served',
  overhangs: 'served on the overhang alone',
  everywhere: 'served on the whole top',
  'stool overhang': 'served past the stool side of the base alone',
  'back overhang': 'served past the back of the base alone',
  'left overhang': 'served past the left end of the base alone',
  'right overhang': 'served past the right end of the base alone',
  'all but stool': 'served everywhere but past the stool side',
  'all but back': 'served everywhere but past the back',
  'all but left': 'served everywhere but past the left end',
  'all but right': 'served everywhere but past the right end',
};

const variantWords: Readonly<Record<VariantName, string>> = {
  'firm-screws': ' whatever pulls at them',
  'bent-rails': ', rails bending',
  'firm-and-bent': ' whatever pulls at them, rails bending',
  'firm-legs': ', legs hardly giving',
  'fewer-people': '',
};

/** What stood on the top when something was worst. */
export function stateWords({ people, share, bound, served, variant }: Worst, system: UnitSystem): string {
  const way = variant === undefined ? '' : variantWords[variant];
  return `${peopleWords(people, share, system)}, ${servedWords[served]}, ${boundWords[bound]}${way}`;
}

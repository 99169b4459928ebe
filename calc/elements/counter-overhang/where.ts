import { show, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { Standing } from './people.ts';
import type { Bound } from './plate-model.ts';
import type { Served } from './top-loads.ts';
import type { Worst } from './trial.ts';

/** A place on the top in words. */
export function placeWords(
  { x_m, y_m }: { readonly x_m: number; readonly y_m: number },
  system: UnitSystem,
): string {
  return `${show(x_m, 'm', system)} along, ${show(y_m, 'm', system)} from the back edge`;
}

/** Where people are. */
function peopleWords(people: Standing, system: UnitSystem): string {
  if (people.length === 0) return 'nobody there';
  const places = people.map((spot) => placeWords(spot, system)).join(' and at ');
  return `${people.length === 1 ? 'a person' : 'two people'} at ${places}`;
}

const boundWords: Readonly<Record<Bound, string>> = {
  'screws-hold': 'screws holding',
  'screws-loose': 'top loose on its base',
};
const servedWords: Readonly<Record<Served, string>> = {
  nowhere: 'nothing served',
  overhangs: 'served on the overhang alone',
  everywhere: 'served on the whole top',
};

/** What stood on the top when something was worst. */
export function stateWords({ people, bound, served }: Worst, system: UnitSystem): string {
  return `${peopleWords(people, system)}, ${servedWords[served]}, ${boundWords[bound]}`;
}

import type { Step } from '../../shared/check-result.ts';
import type { Unit } from '../../shared/quantity/index.ts';
import type { PutIn } from './expression.ts';

/** A number put in for a symbol of a line. */
export interface NamedNumber extends PutIn {
  readonly name: string;
}

/**
 * Whether a unit goes with the others of its system as it stands (lbf and in; N and mm). Where one does not, the line carries
 * all its units, so that it stays true as it is printed.
 */
const goesWithOthers: Readonly<Record<Unit, boolean>> = {
  m: true,
  N: true,
  Pa: true,
  'N.m': true,
  'N/m': true,
  'N/m2': true,
  m2: true,
  m3: true,
  m4: true,
  'N.m2': true,
  'kg/m3': false,
  kg: false,
  rad: true,
  '1': true,
};

/** The numbers of a line of working by symbol, with units where the line has to carry them. */
export function putIn({ inputs }: Step): NamedNumber[] {
  const plain = inputs.every(({ unit }) => isUnit(unit) && goesWithOthers[unit]);
  return inputs.map(({ symbol, number, shown }) => ({
    name: symbol,
    number,
    unit: plain ? '' : tidyUnit(shown.slice(number.length)),
  }));
}

function isUnit(unit: string): unit is Unit {
  return unit in goesWithOthers;
}

/** `m / s^2` as people write it: m/s². */
function tidyUnit(unit: string): string {
  const raised: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };
  return unit
    .trim()
    .replaceAll(' / ', '/')
    .replaceAll('inch', 'in')
    .replace(/\^([234])/g, (_, power: string) => raised[power] ?? '');
}

import { parseQuantity, type UnitSystem } from '../../shared/quantity/index.ts';
import { withUnit } from './bare-units.ts';
import { readForm } from './read-form.ts';
import { written, type Texts } from './texts.ts';

/**
 * Keeps what was written when the units are switched: a number that took the unit printed beside its field gets that
 * unit written out. The field `was` says in which units the form was shown.
 */
export function switchUnits(texts: Texts): Texts {
  const was: UnitSystem = written(texts, 'was') === 'metric' ? 'metric' : 'inch-pound';
  const { system, kinds } = readForm(texts);
  if (!texts.has('was') || was === system) return texts;
  const switched = new Map(texts);
  for (const [name, kind] of kinds) {
    const text = written(texts, name);
    if (text !== '' && !parseQuantity(text, kind).ok) switched.set(name, withUnit(text, kind, was));
  }
  return switched;
}

import { parseQuantity, type Kind, type UnitSystem } from '../../shared/quantity/index.ts';

/** The unit printed beside a field, which a number without a unit takes. */
export const bareUnits: Readonly<Record<UnitSystem, Readonly<Record<Kind, string>>>> = {
  'inch-pound': {
    length: 'in',
    force: 'lbf',
    'line-load': 'lbf/ft',
    'area-load': 'psf',
    stress: 'psi',
    couple: 'lbf.in',
    density: 'lb/ft3',
    mass: 'lb',
  },
  metric: {
    length: 'mm',
    force: 'N',
    'line-load': 'N/m',
    'area-load': 'kPa',
    stress: 'MPa',
    couple: 'N.m',
    density: 'kg/m3',
    mass: 'kg',
  },
};

/**
 * The text of a quantity with its unit written out, as a document takes it. Text that is no quantity stays as it is,
 * for the document to say what is wrong with it.
 *
 * @param text what was written, with or without a unit
 * @param kind what it is a quantity of
 * @param system the units in which the form was shown
 */
export function withUnit(text: string, kind: Kind, system: UnitSystem): string {
  if (parseQuantity(text, kind).ok) return text;
  const bare = bareUnits[system][kind];
  const meant = parseQuantity(text, kind, bare);
  if (!meant.ok) return text;
  const spellings = [`${text} ${bare}`, `${text} in`];
  const same = spellings.find((spelling) => {
    const parsed = parseQuantity(spelling, kind);
    return parsed.ok && parsed.value === meant.value;
  });
  return same ?? text;
}

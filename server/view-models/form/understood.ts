import {
  parseQuantity,
  show,
  unitOfKind,
  type Kind,
  type UnitSystem,
  inch,
} from '../../../shared/quantity/index.ts';
import { bareUnits } from '../../form/index.ts';

/**
 * What was understood of a quantity, to be shown beside its field: `= 8 ft 4-1/2 in`. Empty where the text says so
 * itself, or is no quantity.
 */
export function understood(text: string, kind: Kind, system: UnitSystem): string {
  const parsed = parseQuantity(text, kind, bareUnits[system][kind]);
  if (!parsed.ok) return '';
  const shown = show(parsed.value, unitOfKind[kind], system);
  const inFeet = kind === 'length' && system === 'inch-pound' ? feetAndInches(parsed.value, shown) : shown;
  const saysItself = plain(text) === plain(shown) || plain(text) === plain(inFeet);
  return saysItself ? '' : `= ${inFeet}`;
}

/** One spelling of a text that differs from another only in spaces and hyphens. */
const plain = (words: string): string => words.replace(/[\s-]+/g, ' ').trim();

/** From two feet on a length reads better in feet; below, as the rule shows it. */
function feetAndInches(metres: number, shown: string): string {
  const feet = Math.floor(metres / inch / 12 + 1e-9);
  if (feet < 2 || shown.includes('(')) return shown;
  const rest = metres - feet * 12 * inch;
  return rest < 1e-6 ? `${feet} ft` : `${feet} ft ${show(rest, 'm', 'inch-pound')}`;
}

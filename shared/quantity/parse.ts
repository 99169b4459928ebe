import { foot, inch } from './exact.ts';
import { unitAdvice, unitsOfKind, type Kind } from './units.ts';

/** What `parseQuantity` returns: the value in the kind's SI unit, or a sentence that says what the field takes. */
export type Parsed = { ok: true; value: number } | { ok: false; message: string };

const longest = 64;

const fractionSigns: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

const mixed = String.raw`\d{1,9}(?: ?- ?| )\d{1,6} ?\/ ?\d{1,6}`;
const fraction = String.raw`\d{1,6} ?\/ ?\d{1,6}`;
const decimal = String.raw`(?:\d{1,15}(?:\.\d{0,15})?|\.\d{1,15})(?:[eE][+-]?\d{1,3})?`;
const number = `(${mixed}|${fraction}|${decimal})`;
const feetAndInches = new RegExp(`^${number} ?(?:ft|feet|foot|') ?-? ?${number} ?(in|inch|inches|")?$`);
const numberAndUnit = new RegExp(`^${number} ?(.*)$`);

/**
 * Reads one quantity as people write it: `"96 in"`, `"1-1/2 in"`, `"8 ft 4-1/2 in"`, `"8'-4 1/2\""`, `"20 lbf/ft"`.
 *
 * @param text what was written
 * @param kind the kind of quantity the field takes
 * @param bare the unit a number without one takes (a form field's printed unit); none: a unit must be written
 * @returns the value in SI (see `unitOfKind`), or a message naming what the field takes
 */
export function parseQuantity(text: string, kind: Kind, bare?: string): Parsed {
  const refuse = (why: string): Parsed => ({ ok: false, message: `${why} It takes ${unitAdvice[kind]}.` });
  if (text.length > longest) return refuse('That is too long for one quantity.');
  const written = tidy(text);
  if (written === '') return refuse('Nothing is written here.');
  if (written.startsWith('-')) return refuse(`"${text}" is negative.`);
  if (/\d,\d/.test(written))
    return refuse(`"${text}" has a comma: write a point for decimals, and nothing between thousands.`);

  if (kind === 'length' && /[f']/.test(written)) {
    const [, feet, inches, unit] = feetAndInches.exec(written) ?? [];
    if (feet !== undefined && inches !== undefined && (unit !== undefined || bare !== undefined)) {
      // 12 in or more after the feet is a slip: 8 ft 41/2 in is meant to be 8 ft 4-1/2 in.
      if (readNumber(inches) >= 12) return refuse(`"${text}" has 12 inches or more after the feet.`);
      return finite(readNumber(feet) * foot + readNumber(inches) * inch, text, refuse);
    }
  }
  const [, value, unit] = numberAndUnit.exec(written) ?? [];
  if (value === undefined || unit === undefined) return refuse(`"${text}" is not a quantity.`);
  if (isMixed(value) && readNumber(value) >= Number.parseInt(value, 10) + 1) {
    return refuse(`"${text}" has a whole number beside a fraction of one or more.`);
  }
  const named = unit === '' ? bare : unit;
  if (named === undefined) return refuse(`"${text}" has no unit.`);
  const factor = unitsOfKind[kind].get(named);
  if (factor === undefined) return refuse(`"${named}" is not a unit this field knows.`);
  return finite(readNumber(value) * factor, text, refuse);
}

const plain = /^[!-~]+(?: [!-~]+)*$/;

/** One spelling for the many ways keyboards write primes, dashes, fractions and spaces. */
function tidy(text: string): string {
  if (plain.test(text) && !text.includes("''")) return text;
  return text
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${fractionSigns[sign] ?? sign}`)
    .replace(/[′’]/g, "'")
    .replace(/[″”]|''/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
}

function isMixed(written: string): boolean {
  return /^\d+(?: ?- ?| )\d/.test(written);
}

function readNumber(written: string): number {
  const [, whole, over, under] = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/.exec(written) ?? [];
  if (over === undefined || under === undefined) return Number(written);
  return Number(whole ?? 0) + Number(over) / Number(under);
}

function finite(value: number, text: string, refuse: (why: string) => Parsed): Parsed {
  return Number.isFinite(value) ? { ok: true, value } : refuse(`"${text}" is not a finite number.`);
}

import { foot, inch, poundForce, psi } from './exact.ts';
import type { Unit, UnitSystem } from './units.ts';

/** A number with its SI unit, and how a person reads it in the document's units. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
  readonly shown: string;
}

const poundPerCubicFoot = 0.45359237 / foot ** 3;

interface Display {
  readonly unit: string;
  readonly size: number;
}

/**
 * The units in which a calculation is shown. Each system is consistent in itself (lbf and in; N and mm), so a reader
 * can put the printed numbers into a printed formula as they stand.
 */
export const calculationUnits: Readonly<Record<UnitSystem, Readonly<Record<Unit, Display>>>> = {
  'inch-pound': {
    m: { unit: 'in', size: inch },
    N: { unit: 'lbf', size: poundForce },
    Pa: { unit: 'psi', size: psi },
    'N.m': { unit: 'lbf·in', size: poundForce * inch },
    'N/m': { unit: 'lbf/in', size: poundForce / inch },
    'N/m2': { unit: 'psi', size: psi },
    m2: { unit: 'in²', size: inch ** 2 },
    m3: { unit: 'in³', size: inch ** 3 },
    m4: { unit: 'in⁴', size: inch ** 4 },
    'N.m2': { unit: 'lbf·in²', size: poundForce * inch ** 2 },
    'kg/m3': { unit: 'lb/in³', size: 0.45359237 / inch ** 3 },
    kg: { unit: 'lb', size: 0.45359237 },
    rad: { unit: 'rad', size: 1 },
    '1': { unit: '', size: 1 },
  },
  metric: {
    m: { unit: 'mm', size: 1e-3 },
    N: { unit: 'N', size: 1 },
    Pa: { unit: 'MPa', size: 1e6 },
    'N.m': { unit: 'N·mm', size: 1e-3 },
    'N/m': { unit: 'N/mm', size: 1e3 },
    'N/m2': { unit: 'MPa', size: 1e6 },
    m2: { unit: 'mm²', size: 1e-6 },
    m3: { unit: 'mm³', size: 1e-9 },
    m4: { unit: 'mm⁴', size: 1e-12 },
    'N.m2': { unit: 'N·mm²', size: 1e-6 },
    'kg/m3': { unit: 'kg/mm³', size: 1e9 },
    kg: { unit: 'kg', size: 1 },
    rad: { unit: 'rad', size: 1 },
    '1': { unit: '', size: 1 },
  },
};

const resultUnits: Readonly<Record<UnitSystem, Readonly<Record<Unit, Display>>>> = {
  'inch-pound': {
    ...calculationUnits['inch-pound'],
    'kg/m3': { unit: 'lb/ft³', size: poundPerCubicFoot },
    'N/m': { unit: 'lbf/ft', size: poundForce / foot },
    'N/m2': { unit: 'psf', size: poundForce / foot ** 2 },
  },
  metric: {
    ...calculationUnits.metric,
    'kg/m3': { unit: 'kg/m³', size: 1 },
    'N.m': { unit: 'N·m', size: 1 },
    'N/m': { unit: 'N/m', size: 1 },
    'N/m2': { unit: 'kPa', size: 1e3 },
  },
};

/** Four significant figures, plain where people write plain numbers, a power of ten where they do not. */
export function significant(value: number, figures = 4): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 10 ** figures && size < 1e7) return String(Math.round(value));
  if (size >= 1e7 || size < 1e-4) {
    const [mantissa = '', exponent = ''] = value.toExponential(figures - 1).split('e');
    return `${withoutEndZeros(mantissa)}e${Number(exponent)}`;
  }
  const text = value.toPrecision(figures);
  return text.includes('e') ? String(Number(text)) : withoutEndZeros(text);
}

function withoutEndZeros(text: string): string {
  if (!text.includes('.')) return text;
  let end = text.length;
  while (text.charCodeAt(end - 1) === 48) end -= 1;
  return text.slice(0, text.charCodeAt(end - 1) === 46 ? end - 1 : end);
}

/** A value in the calculation's own units, as in a line of working: `"183.2 lbf·in"`. */
export function showInCalculation(value: number, unit: Unit, system: UnitSystem): string {
  const display = calculationUnits[system][unit];
  return joined(significant(value / display.size), display.unit);
}

/** A value as a person reads it. Lengths in inches are a fraction with the decimal beside it where it matters. */
export function show(value: number, unit: Unit, system: UnitSystem): string {
  if (unit === 'm') return system === 'metric' ? showMillimetres(value) : showInches(value);
  const display = resultUnits[system][unit];
  return joined(significant(value / display.size, 3), display.unit);
}

/** Inches under this are told in decimals: they are gauges of metal and veneers. */
const leastOnARule = 1 / 8;

/**
 * The end of a range, as somebody may type it: to four figures, inches as a rule has them, rounded to the side that is still
 * taken.
 *
 * @param side `up` for the lower end, `down` for the upper one
 */
export function showEnd(value: number, unit: Unit, system: UnitSystem, side: 'up' | 'down'): string {
  const display = resultUnits[system][unit];
  const number = value / display.size;
  if (number === 0) return joined('0', display.unit);
  if (display.unit === 'in' && number >= leastOnARule) {
    const denominator = number < 1 ? 64 : 16;
    return joined(mixedNumber(inward(number * denominator, side), denominator), display.unit);
  }
  const step = 10 ** (Math.floor(Math.log10(Math.abs(number))) - 3);
  const rounded = inward(number / step, side);
  return joined(String(Number((rounded * step).toPrecision(4))), display.unit);
}

/** A whole number of steps, on the side that is still taken. */
function inward(steps: number, side: 'up' | 'down'): number {
  if (Math.abs(steps - Math.round(steps)) < 1e-6) return Math.round(steps);
  return side === 'up' ? Math.ceil(steps) : Math.floor(steps);
}

/** A result that carries its SI value, its unit and the words for it. */
export function quantity(value: number, unit: Unit, system: UnitSystem): Quantity {
  return { value, unit, shown: show(value, unit, system) };
}

function joined(number: string, unit: string): string {
  return unit === '' ? number : `${number} ${unit}`;
}

function showMillimetres(metres: number): string {
  const millimetres = metres * 1e3;
  const size = Math.abs(millimetres);
  return `${Number(millimetres.toFixed(size >= 10 ? 1 : 2))} mm`;
}

/**
 * Inches as a rule is read: to the nearest 1/16, or 1/32 under an inch. Where that rounds the value away from what it
 * is, the decimal follows in parentheses: `"1/16 in (0.068 in)"`.
 */
function showInches(metres: number): string {
  const inches = metres / inch;
  const size = Math.abs(inches);
  const sign = inches < 0 ? '-' : '';
  const denominator = size < 1 ? 32 : 16;
  const parts = Math.round(size * denominator);
  const exact = Math.abs(size * denominator - parts) < 1e-6;
  if (parts === 0) return size < 1e-9 ? '0 in' : `under 1/32 in (${decimalInches(inches)} in)`;
  const asFraction = `${sign}${mixedNumber(parts, denominator)} in`;
  return exact ? asFraction : `${asFraction} (${decimalInches(inches)} in)`;
}

function decimalInches(inches: number): string {
  return Math.abs(inches) < 1 ? String(Number(inches.toPrecision(2))) : String(Number(inches.toFixed(2)));
}

function mixedNumber(parts: number, denominator: number): string {
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  if (rest === 0) return String(whole);
  const common = divisor(rest, denominator);
  const fraction = `${rest / common}/${denominator / common}`;
  return whole === 0 ? fraction : `${whole}-${fraction}`;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

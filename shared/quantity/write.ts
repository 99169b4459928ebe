import { parseQuantity } from './parse.ts';
import type { Kind, UnitSystem } from './units.ts';
import { unitsOfKind } from './units.ts';

const units: Readonly<
  Record<UnitSystem, Readonly<Record<'length' | 'force' | 'line-load' | 'area-load', string>>>
> = {
  'inch-pound': { length: 'in', force: 'lbf', 'line-load': 'lbf/ft', 'area-load': 'psf' },
  metric: { length: 'mm', force: 'N', 'line-load': 'N/m', 'area-load': 'kPa' },
};

/** A quantity as a document takes it, and what is read back from that text: it may differ from what was asked in the last digit. */
export interface Written {
  readonly text: string;
  readonly value: number;
}

/** A length as a document takes it: inches as a fraction of 1/64 where it is one, else with four decimals; millimetres. */
export function writeLength(value_m: number, system: UnitSystem): Written {
  const size = sizeOf('length', system);
  const amount = value_m / size;
  if (system === 'metric') return readBack(`${Number(amount.toFixed(3))} mm`, 'length', value_m);
  const parts = Math.round(amount * 64);
  const text = Math.abs(amount * 64 - parts) < 1e-6 ? fraction(parts) : String(Number(amount.toFixed(4)));
  return readBack(`${text} in`, 'length', value_m);
}

type LoadKind = 'force' | 'line-load' | 'area-load';

/** A load as a document takes it, rounded down to some figures. */
export function writeLoadDown(value: number, kind: LoadKind, system: UnitSystem, figures = 4): Written {
  return writeLoad(value, kind, system, figures, (steps) => Math.floor(steps + 1e-9));
}

/** The same rounded up, to four figures. */
export function writeLoadUp(value: number, kind: LoadKind, system: UnitSystem): Written {
  return writeLoad(value, kind, system, 4, (steps) => Math.ceil(steps - 1e-9));
}

function writeLoad(
  value: number,
  kind: LoadKind,
  system: UnitSystem,
  figures: number,
  whole: (steps: number) => number,
): Written {
  const amount = value / sizeOf(kind, system);
  const step = amount > 0 ? 10 ** (Math.floor(Math.log10(amount)) + 1 - figures) : 1;
  const rounded = Number((whole(amount / step) * step).toPrecision(figures));
  return readBack(`${plain(rounded)} ${units[system][kind]}`, kind, value);
}

function sizeOf(kind: keyof (typeof units)['metric'], system: UnitSystem): number {
  return unitsOfKind[kind].get(units[system][kind]) ?? NaN;
}

function readBack(text: string, kind: Kind, value: number): Written {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new RangeError(`${value} can't be written as a ${kind}`);
  return { text, value: parsed.value };
}

function plain(value: number): string {
  return value >= 1e-6 && value < 1e15 ? String(value) : value.toFixed(9);
}

function fraction(parts: number): string {
  let [over, under] = [parts % 64, 64];
  const whole = (parts - over) / 64;
  while (over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
  if (under === 1) return String(whole + over);
  return whole === 0 ? `${over}/${under}` : `${whole}-${over}/${under}`;
}

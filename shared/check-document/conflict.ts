import type { FieldError } from '../check-result.ts';
import { show, type UnitSystem } from '../quantity/index.ts';

/** Takes a conflict down, unless one of the fields it comes from is at fault itself. */
export interface Report {
  (path: string, message: string, ...from: readonly string[]): void;
  /** A length in a message, in the units of the document. */
  readonly shown: (metres: number) => string;
}

/** Lengths that differ by less are the same. */
export const tolerance_m = 1e-9;
/** Nothing stands closer to its neighbour. */
export const closest_m = 0.001;

/** Collects conflicts; what is missing because it is at fault is not called missing. */
export function reporter(
  faults: readonly FieldError[],
  units: UnitSystem | undefined,
): {
  readonly errors: FieldError[];
  readonly report: Report;
} {
  const errors: FieldError[] = [];
  const atFault = (field: string): boolean =>
    faults.some(({ path }) => path === field || path.startsWith(`${field}/`));
  const take = (path: string, message: string, ...from: readonly string[]): void => {
    if (![path, ...from].some(atFault)) errors.push({ path, message });
  };
  const shown = (metres: number): string => show(metres, 'm', units ?? 'inch-pound');
  return { errors, report: Object.assign(take, { shown }) };
}

/** Whether an earlier one in a list is at the same place. */
export function isRepeated(places: readonly (number | undefined)[] | undefined, index: number): boolean {
  const place = places?.[index];
  if (places === undefined || place === undefined) return false;
  return places.slice(0, index).some((other) => other !== undefined && Math.abs(other - place) < closest_m);
}

import type { CheckDocument } from '../../shared/check-document/index.ts';

/** What is assumed of the place where nothing is said of it. */
export function assumedConditions(conditions: CheckDocument['conditions']): string[] {
  return [
    ...(conditions?.moisture === undefined ? ['A dry room: wood at 19 % moisture or less.'] : []),
    ...(conditions?.temperature === undefined ? ['Ordinary temperature, up to 100 °F.'] : []),
  ];
}

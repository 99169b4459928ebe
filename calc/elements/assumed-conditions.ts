import type { CheckDocument } from '../../shared/check-document/index.ts';

/** What is assumed of the place where nothing is said of it. */
export function assumedConditions(conditions: CheckDocument['conditions']): string[] {
  return [
    ...(conditions?.moisture === undefined ? ['A dry room: wood at 19 % moisture or less.'] : []),
    ...(conditions?.temperature === undefined ? ['Ordinary temperature, up to 100 °F.'] : []),
  ];
}

/** What a wet place asks of everything that is not wood. */
export function wetWarning(conditions: CheckDocument['conditions']): string[] {
  return conditions?.moisture === 'wet'
    ? [
        'In a wet place use screws, metal and glue that are made for it (stainless or hot-dipped steel, waterproof glue), and leave the wood room to swell: none of this is checked.',
      ]
    : [];
}

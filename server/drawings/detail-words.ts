import { listed } from '../../shared/words.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import type { Detail } from './detail.ts';
import { dimensionText } from './lettering.ts';
import { missWords } from './misses.ts';

/** The enlarged bracket in words. */
export function detailWords(detail: Detail, units: UnitSystem): string {
  const length = (metres: number): string => dimensionText(metres, units);
  const { plate, screws, offsets, coverings, penetration, studs, misses } = detail;
  const heights = listed(screws.heights.toSorted((a, b) => a - b).map(length));
  const apart = (offsets.at(-1) ?? 0) - (offsets[0] ?? 0);
  const side =
    offsets.length === 1 ? '' : `, ${offsets.length} at each height, the outer ones ${length(apart)} apart`;
  return [
    `A plate ${length(plate.height)} high and ${length(plate.width)} wide.`,
    `Screws ${length(screws.length)} long at ${heights} above its lower end${side}.`,
    ...coverings.map(
      ({ material, thickness }) =>
        `The wall is covered with ${length(thickness)} of ${material.replaceAll('-', ' ')}.`,
    ),
    `The screws reach ${length(penetration)} ${detail.into}.`,
    ...studs.map(({ from, to }) => `The stud is ${length(to - from)} wide.`),
    ...misses.map((miss) => missWords(miss, units)),
  ].join(' ');
}

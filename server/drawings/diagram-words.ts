import type { BracketShelfResult } from '../../shared/check-result.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { dimensionText } from './lettering.ts';

/** The diagrams in words: the largest of each, and the movement of every bay. */
export function diagramWords(result: BracketShelfResult, units: UnitSystem): string {
  const { moment, shear, deflection } = result.analysis;
  const { at, momentMax, momentMin } = result.analysis.diagram;
  const place = (values: readonly number[], wanted: 'high' | 'low'): string => {
    const best = values.reduce((index, value, here) => {
      const known = values[index] ?? 0;
      return (wanted === 'high' ? value > known : value < known) ? here : index;
    }, 0);
    return dimensionText(at[best] ?? 0, units);
  };
  return [
    `Largest sagging moment ${moment.max.shown}, at ${place(momentMax, 'high')} from the left end.`,
    `Largest hogging moment ${moment.min.shown}, at ${place(momentMin, 'low')}.`,
    `Largest shear ${shear.max.shown}.`,
    ...deflection.bays.map(
      ({ from, to, live, longTerm }) =>
        `From ${dimensionText(from.value, units)} to ${dimensionText(to.value, units)}: ${live.shown} at once, ${longTerm.shown} over the years.`,
    ),
  ].join(' ');
}

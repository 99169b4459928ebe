import type { FieldError } from '../check-result.ts';
import { reporter } from './conflict.ts';
import type { SoundCounterRun } from './sound.ts';

/** What does not fit together between the fields of a counter run. */
export function counterRunConflicts(
  { units, substrate, opening, loads, rails, rail }: SoundCounterRun,
  faults: readonly FieldError[],
): FieldError[] {
  const { errors, report } = reporter(faults, units);
  if (substrate?.sheets !== undefined && !Number.isInteger(substrate.sheets))
    report('/substrate/sheets', 'It takes a whole number.');
  if (substrate?.thickness !== undefined && opening !== undefined && substrate.thickness > opening / 4)
    report(
      '/substrate/thickness',
      `It is much for an opening of ${report.shown(opening)}: are the two the wrong way round?`,
      '/opening',
    );
  if (rail !== undefined && (rails ?? 'none') === 'none')
    report('/rail', 'There are no rails: say under which long edges they are.', '/rails');
  for (const kind of ['area', 'person'] as const) {
    const places = (loads ?? []).flatMap((load, index) => (load?.kind === kind ? [index] : []));
    for (const index of places.slice(1))
      report(`/loads/${index}`, `There is one load of this kind already: put the two together.`);
  }
  return errors;
}

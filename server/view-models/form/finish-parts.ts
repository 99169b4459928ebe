import type { FormView } from './form-view.ts';
import { givenPart, isGiven } from './given.ts';
import { fieldPart, type Part } from './model.ts';
import { finishWords } from './words.ts';

/** Tile or stone on panels. */
export function finishParts(form: FormView, group: string): Part[] {
  const isCovered = isGiven(form, group);
  return [
    givenPart(form, group, 'Tile or stone', isCovered),
    ...(isCovered
      ? [
          form.choice(`${group}.kind`, { label: 'Which', options: finishWords }),
          form.text(`${group}.thickness`, { label: 'Its thickness' }),
          form.text(`${group}.bed`, {
            label: 'Mortar and backer',
            hint: 'Under it, together. Left empty: none.',
          }),
        ].map(fieldPart)
      : []),
  ];
}

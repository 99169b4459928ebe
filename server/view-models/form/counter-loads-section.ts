import type { FormView } from './form-view.ts';
import { fieldPart, tablePart, type Part, type Section } from './model.ts';
import { counterLoadWords, durationWords } from './words.ts';

/** What is served on a counter, and who leans or sits on it. */
export function counterLoadsSection(form: FormView): Section {
  return {
    id: 'loads',
    title: 'What it carries',
    parts: [
      ...(form.rows('loads').length === 0 ? [noLoads(form)] : []),
      tablePart(
        form.table('loads', {
          title: 'Loads',
          hint: 'The weight of the top itself is always counted.',
          add: 'Add a load',
          rowTitle: (_row, place) => `Load ${place + 1}`,
          parts: (row) => loadParts(form, `loads.${row}`),
        }),
      ),
    ],
  };
}

function noLoads(form: FormView): Part {
  return fieldPart(
    form.choice('loads.by', {
      label: 'Loads',
      options: { none: 'Not said: 10 psf served, and a person at the edge', empty: 'None: the top alone' },
      chosen: form.written('loads.by') === 'empty' ? 'empty' : 'none',
      reshapes: true,
    }),
  );
}

function loadParts(form: FormView, load: string): Part[] {
  const kind = form.written(`${load}.kind`);
  const isPerson = kind === 'person';
  return [
    form.text(`${load}.name`, { label: 'Name' }),
    form.choice(`${load}.kind`, {
      label: 'What it is',
      options: counterLoadWords,
      chosen: kind,
      reshapes: true,
    }),
    form.text(`${load}.amount`, { label: isPerson ? 'Weight on the edge' : 'Weight per area' }),
    ...(isPerson
      ? [
          form.text(`${load}.at`, {
            label: 'Stays at',
            hint: 'From the left end. Left empty: the worst place of every free edge is looked for.',
          }),
          form.text(`${load}.patch`, { label: 'On a square of', hint: 'Left empty: 4 in (100 mm).' }),
        ]
      : [
          form.text(`${load}.sustained`, {
            label: 'Share that stays',
            hint: 'For years, from 0 to 1. Left empty: 0.3.',
          }),
        ]),
    form.choice(`${load}.duration`, {
      label: 'How long, in all',
      unsaid: isPerson ? 'Not said: for days' : 'Not said: for years',
      options: durationWords,
    }),
  ].map(fieldPart);
}

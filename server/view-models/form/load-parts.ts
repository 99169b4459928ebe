import type { FormView } from './form-view.ts';
import { fieldPart, tablePart, type Part, type Section } from './model.ts';
import { counterLoadWords, durationWords } from './words.ts';

/** The words of a section of loads. */
export interface LoadsWords {
  readonly title: string;
  readonly hint: string;
  /** What is taken where nothing is said, and what is left where there are none. */
  readonly unsaid: string;
  readonly none: string;
}

/** What something carries, load by load. */
export function loadsPart(form: FormView, words: LoadsWords, parts: (load: string) => Part[]): Section {
  return {
    id: 'loads',
    title: words.title,
    parts: [
      ...(form.rows('loads').length === 0 ? [noLoads(form, words)] : []),
      tablePart(
        form.table('loads', {
          title: 'Loads',
          hint: words.hint,
          add: 'Add a load',
          rowTitle: (_row, place) => `Load ${place + 1}`,
          parts: (row) => parts(`loads.${row}`),
        }),
      ),
    ],
  };
}

function noLoads(form: FormView, { unsaid, none }: LoadsWords): Part {
  return fieldPart(
    form.choice('loads.by', {
      label: 'Loads',
      options: { none: unsaid, empty: none },
      chosen: form.written('loads.by') === 'empty' ? 'empty' : 'none',
      reshapes: true,
    }),
  );
}

/** What a person on a counter is called, and the fields that only this counter asks of one. */
export interface PersonWords {
  readonly option: string;
  readonly weight: string;
  readonly parts: (load: string) => Part[];
}

/** A load on each area of a counter, or a person on it. */
export function counterLoadParts(form: FormView, load: string, person: PersonWords): Part[] {
  const kind = form.written(`${load}.kind`);
  const isPerson = kind === 'person';
  return [
    fieldPart(form.text(`${load}.name`, { label: 'Name' })),
    fieldPart(
      form.choice(`${load}.kind`, {
        label: 'What it is',
        options: { ...counterLoadWords, person: person.option },
        chosen: kind,
        reshapes: true,
      }),
    ),
    fieldPart(form.text(`${load}.amount`, { label: isPerson ? person.weight : 'Weight per area' })),
    ...(isPerson
      ? [
          ...person.parts(load),
          fieldPart(
            form.text(`${load}.patch`, { label: 'On a square of', hint: 'Left empty: 4 in (100 mm).' }),
          ),
        ]
      : [
          fieldPart(
            form.text(`${load}.sustained`, {
              label: 'Share that stays',
              hint: 'For years, from 0 to 1. Left empty: 0.3.',
            }),
          ),
        ]),
    fieldPart(
      form.choice(`${load}.duration`, {
        label: 'How long, in all',
        unsaid: isPerson ? 'Not said: for days' : 'Not said: for years',
        options: durationWords,
      }),
    ),
  ];
}

import { finishParts } from './finish-parts.ts';
import type { FormView } from './form-view.ts';
import { fieldPart, tablePart, type Part, type Section } from './model.ts';
import { bondWords, counterLoadWords, durationWords, railWords, runGrainWords } from './words.ts';

/** The panels under tile or stone. */
export function substrateSection(form: FormView): Section {
  const sheets = form.written('substrate.sheets');
  return {
    id: 'substrate',
    title: 'The panels',
    parts: [
      fieldPart(
        form.text('substrate.material', {
          label: 'Panel',
          hint: 'Any common name. Left empty: particleboard is taken.',
          list: 'list:boards',
        }),
      ),
      fieldPart(form.text('substrate.thickness', { label: 'Thickness', hint: 'Of all sheets together.' })),
      fieldPart(form.text('substrate.sheets', { label: 'Sheets', hint: 'One on another. Left empty: 1.' })),
      ...(['', '1'].includes(sheets) && !form.anyWritten('substrate.bond')
        ? []
        : [
            fieldPart(
              form.choice('substrate.bond', {
                label: 'Between the sheets',
                unsaid: 'Not said: not glued',
                options: bondWords,
              }),
            ),
          ]),
      fieldPart(
        form.choice('substrate.grain', {
          label: 'The face grain runs',
          unsaid: 'Not said: along the span',
          options: runGrainWords,
        }),
      ),
      ...finishParts(form, 'finish'),
    ],
  };
}

/** Where they lie. */
export function openingSection(form: FormView): Section {
  return {
    id: 'opening',
    title: 'Where they lie',
    parts: [
      fieldPart(form.text('opening', { label: 'Clear span', hint: 'Between cabinet sides.' })),
      fieldPart(form.text('depth', { label: 'Depth', hint: 'Back to front.' })),
      fieldPart(
        form.choice('rails', {
          label: 'Rails under the long edges',
          unsaid: 'Not said: none',
          options: railWords,
        }),
      ),
      fieldPart(
        form.text('bow.measured', {
          label: 'Bow there now',
          hint: 'How far the middle hangs below a straightedge. Left empty: not measured.',
        }),
      ),
    ],
  };
}

/** What stands on them, and who. */
export function runLoadsSection(form: FormView): Section {
  return {
    id: 'loads',
    title: 'What it carries',
    parts: [
      ...(form.rows('loads').length === 0
        ? [
            fieldPart(
              form.choice('loads.by', {
                label: 'Loads',
                options: {
                  none: 'Not said: 10 psf, and somebody standing on it',
                  empty: 'None: the counter alone',
                },
                chosen: form.written('loads.by') === 'empty' ? 'empty' : 'none',
                reshapes: true,
              }),
            ),
          ]
        : []),
      tablePart(
        form.table('loads', {
          title: 'Loads',
          hint: 'The weight of panels and finish is always counted.',
          add: 'Add a load',
          rowTitle: (_row, place) => `Load ${place + 1}`,
          parts: (row) => loadParts(form, `loads.${row}`),
        }),
      ),
    ],
  };
}

function loadParts(form: FormView, load: string): Part[] {
  const kind = form.written(`${load}.kind`);
  return [
    form.text(`${load}.name`, { label: 'Name' }),
    form.choice(`${load}.kind`, {
      label: 'What it is',
      options: { ...counterLoadWords, person: 'Somebody standing on it' },
      chosen: kind,
      reshapes: true,
    }),
    form.text(`${load}.amount`, { label: kind === 'person' ? 'Weight' : 'Weight per area' }),
    ...(kind === 'person'
      ? [form.text(`${load}.patch`, { label: 'On a square of', hint: 'Left empty: 4 in (100 mm).' })]
      : [
          form.text(`${load}.sustained`, {
            label: 'Share that stays',
            hint: 'For years, from 0 to 1. Left empty: 0.3.',
          }),
        ]),
    form.choice(`${load}.duration`, {
      label: 'How long, in all',
      unsaid: kind === 'person' ? 'Not said: for days' : 'Not said: for years',
      options: durationWords,
    }),
  ].map(fieldPart);
}

import type { FormView } from './form-view.ts';
import { fieldPart, tablePart, type Part, type Section } from './model.ts';
import { plateParts, screwParts } from './screw-parts.ts';
import { durationWords } from './words.ts';

/** The plate of a fixing on its own. */
export function plateSection(form: FormView): Section {
  return {
    id: 'plate',
    title: 'The plate',
    parts: plateParts(form, 'plate', 'Not said: its bending is not checked'),
  };
}

/** Its screws. */
export function screwsSection(form: FormView): Section {
  return { id: 'screws', title: 'Its screws', parts: screwParts(form, 'screws') };
}

/** Where it stands among the studs. */
export function positionSection(form: FormView): Section {
  return {
    id: 'position',
    title: 'Where it is',
    parts: [
      fieldPart(
        form.text('position', {
          label: 'Middle of the plate',
          hint: 'Measured as the studs are. Left empty: on the centre line of a stud.',
        }),
      ),
    ],
  };
}

/** The forces on it. */
export function forcesSection(form: FormView): Section {
  return {
    id: 'loads',
    title: 'What acts on it',
    parts: [
      tablePart(
        form.table('loads', {
          title: 'Loads',
          hint: 'About the wall finish, at the middle of the plate.',
          add: 'Add a load',
          rowTitle: (_row, place) => `Load ${place + 1}`,
          parts: (row) => forceParts(form, `loads.${row}`),
        }),
      ),
    ],
  };
}

function forceParts(form: FormView, load: string): Part[] {
  return [
    fieldPart(form.text(`${load}.name`, { label: 'Name' })),
    fieldPart(form.text(`${load}.shear`, { label: 'Shear', hint: 'Down along the wall.' })),
    fieldPart(form.text(`${load}.pull`, { label: 'Pull', hint: 'Away from the wall.' })),
    fieldPart(
      form.text(`${load}.couple`, {
        label: 'Couple',
        hint: 'Weight times its distance from the wall: it pulls at the upper end.',
      }),
    ),
    fieldPart(
      form.choice(`${load}.duration`, {
        label: 'How long, in all',
        unsaid: 'Not said: for good',
        options: durationWords,
      }),
    ),
  ];
}

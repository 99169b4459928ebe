import { finishParts } from './finish-parts.ts';
import type { FormView } from './form-view.ts';
import { counterLoadParts, loadsPart } from './load-parts.ts';
import { fieldPart, type Part, type Section } from './model.ts';
import { bondWords, railWords, runGrainWords } from './words.ts';

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
          reshapes: true,
        }),
      ),
      ...railParts(form),
      fieldPart(
        form.text('bow.measured', {
          label: 'Bow there now',
          hint: 'How far the middle hangs below a straightedge. Left empty: not measured.',
        }),
      ),
    ],
  };
}

/** What the rails are; asked only where there are some. */
function railParts(form: FormView): Part[] {
  const hasRails = !['', 'none'].includes(form.written('rails'));
  if (!hasRails && !form.anyWritten('rail')) return [];
  return [
    fieldPart(form.text('rail.thickness', { label: 'Thickness of each rail' })),
    fieldPart(
      form.text('rail.height', {
        label: 'Height of each rail',
        hint: 'Thickness and height left empty: the answer is “cannot say”.',
      }),
    ),
    fieldPart(form.text('rail.material', { label: 'Wood of the rails', list: 'list:boards' })),
    fieldPart(
      form.text('rail.seat', {
        label: 'Seat of each end',
        hint: 'How much of it rests on a cleat or in a notch of the side. Left empty: the answer is “cannot say”.',
      }),
    ),
  ];
}

/** What stands on them, and who. */
export function runLoadsSection(form: FormView): Section {
  const words = {
    title: 'What it carries',
    hint: 'The weight of panels and finish is always counted.',
    unsaid: 'Not said: 10 psf, and somebody standing on it',
    none: 'None: the counter alone',
  };
  const person = { option: 'Somebody standing on it', weight: 'Weight', parts: () => [] };
  return loadsPart(form, words, (load) => counterLoadParts(form, load, person));
}

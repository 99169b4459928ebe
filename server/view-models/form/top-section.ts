import { finishParts } from './finish-parts.ts';
import type { FormView } from './form-view.ts';
import { fieldPart, type Part, type Section } from './model.ts';
import { appearanceWords, bondWords, buildWords, stavesWords } from './words.ts';

/** A counter top: how it is built, of what, and how big. */
export function topSection(form: FormView): Section {
  const isPanel = form.written('top.build') === 'panel';
  return {
    id: 'top',
    title: 'The top',
    parts: [
      fieldPart(
        form.choice('top.build', {
          label: 'Built as',
          unsaid: 'Not said: staves glued edge to edge',
          options: buildWords,
          reshapes: true,
        }),
      ),
      fieldPart(
        form.text('top.material', {
          label: isPanel ? 'Panel' : 'Wood',
          hint: isPanel
            ? 'Any common name. Left empty: particleboard is taken.'
            : 'Any common name. Left empty: the weakest likely wood is taken.',
          list: 'list:boards',
        }),
      ),
      ...(isPanel && !form.anyWritten('top.appearance') ? [] : [appearance(form)]),
      fieldPart(
        form.choice('top.staves', {
          label: isPanel ? 'The face grain runs' : 'The staves run',
          unsaid: 'Not said: along the stool edge',
          options: stavesWords,
        }),
      ),
      fieldPart(form.text('top.length', { label: 'Length', hint: 'Along the stool edge.' })),
      fieldPart(form.text('top.depth', { label: 'Depth', hint: 'Back edge to stool edge.' })),
      fieldPart(
        form.text('top.thickness', {
          label: 'Thickness',
          ...(isPanel ? { hint: 'Of the panel, all its sheets together, without tile or stone.' } : {}),
        }),
      ),
      ...(isPanel || ['sheets', 'bond', 'finish'].some((part) => form.anyWritten(`top.${part}`))
        ? panelParts(form)
        : []),
    ],
  };
}

function appearance(form: FormView): Part {
  return fieldPart(
    form.choice('top.appearance', {
      label: 'Appearance',
      unsaid: 'Not said: small sound knots',
      options: appearanceWords,
    }),
  );
}

function panelParts(form: FormView): Part[] {
  const sheets = form.written('top.sheets');
  return [
    fieldPart(form.text('top.sheets', { label: 'Sheets', hint: 'One on another. Left empty: 1.' })),
    ...(['', '1'].includes(sheets) && !form.anyWritten('top.bond')
      ? []
      : [
          fieldPart(
            form.choice('top.bond', {
              label: 'Between the sheets',
              unsaid: 'Not said: not glued',
              options: bondWords,
            }),
          ),
        ]),
    ...finishParts(form, 'top.finish'),
  ];
}

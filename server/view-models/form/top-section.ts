import type { FormView } from './form-view.ts';
import { fieldPart, type Section } from './model.ts';
import { appearanceWords, buildWords, stavesWords } from './words.ts';

/** A counter top: how it is built, of what, and how big. */
export function topSection(form: FormView): Section {
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
          label: 'Wood',
          hint: 'Any common name. Left empty: the weakest likely wood is taken.',
          list: 'list:boards',
        }),
      ),
      fieldPart(
        form.choice('top.appearance', {
          label: 'Appearance',
          unsaid: 'Not said: small sound knots',
          options: appearanceWords,
        }),
      ),
      fieldPart(
        form.choice('top.staves', {
          label: 'The staves run',
          unsaid: 'Not said: along the stool edge',
          options: stavesWords,
        }),
      ),
      fieldPart(form.text('top.length', { label: 'Length', hint: 'Along the stool edge.' })),
      fieldPart(form.text('top.depth', { label: 'Depth', hint: 'Back edge to stool edge.' })),
      fieldPart(form.text('top.thickness', { label: 'Thickness' })),
    ],
  };
}

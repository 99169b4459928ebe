import { fastenerOptions } from './catalogue.ts';
import type { FormView } from './form-view.ts';
import { givenPart, isGiven } from './given.ts';
import { fieldPart, tablePart, type Section } from './model.ts';

/** Screws up into a counter top. */
export function topScrewsSection(form: FormView): Section {
  const isIt = isGiven(form, 'screws');
  return {
    id: 'screws',
    title: 'Screws up into the top',
    parts: [
      givenPart(form, 'screws', 'Screws', isIt),
      ...(isIt
        ? [
            fieldPart(
              form.choice('screws.fastener', {
                label: 'Screw',
                unsaid: 'Choose one',
                options: fastenerOptions(),
              }),
            ),
            fieldPart(form.text('screws.length', { label: 'Length' })),
            fieldPart(
              form.text('screws.through', {
                label: 'Through',
                hint: 'Thickness of the rail or cleat each goes through.',
              }),
            ),
            fieldPart(form.text('screws.cleat', { label: 'Its wood', list: 'list:framing' })),
            tablePart(
              form.table('screws.at', {
                title: 'Where they are',
                add: 'Add a screw',
                rowTitle: (_row, place) => `Screw ${place + 1}`,
                parts: (row) => [
                  fieldPart(form.text(`screws.at.${row}.0`, { label: 'Along', hint: 'From the left end.' })),
                  fieldPart(
                    form.text(`screws.at.${row}.1`, {
                      label: 'In from the back',
                      hint: 'From the back edge.',
                    }),
                  ),
                ],
              }),
            ),
          ]
        : []),
    ],
  };
}

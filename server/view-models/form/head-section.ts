import type { FormView } from './form-view.ts';
import { upperFirst } from '../../../shared/words.ts';
import { elementWords } from './words.ts';
import { fieldPart, morePart, type Section } from './model.ts';

/** What the check is: its title, and who made it when. */
export function headSection(form: FormView): Section {
  const people = [
    form.written('date') === '' ? 'no date' : `dated ${form.written('date')}`,
    form.written('preparedBy') === '' ? 'nobody named' : `prepared by ${form.written('preparedBy')}`,
    ...(form.written('checkedBy') === '' ? [] : [`checked by ${form.written('checkedBy')}`]),
  ];
  return {
    id: 'what',
    title: 'What it is',
    parts: [
      fieldPart(
        form.choice('element', {
          label: 'What is checked',
          hint: 'Another choice begins a new form, with the title, the wall and its screws. “Back”, in a job “History”, brings this one again.',
          options: elementWords,
          chosen: form.element,
          reshapes: true,
        }),
      ),
      fieldPart(form.text('title', { label: 'Title' })),
      morePart(
        form.more(
          'people',
          'For the sheet',
          sentence(people.join(', ')),
          ['date', 'preparedBy', 'checkedBy'],
          [
            fieldPart(form.date('date', { label: 'Date' })),
            fieldPart(form.text('preparedBy', { label: 'Prepared by' })),
            fieldPart(form.text('checkedBy', { label: 'Checked by' })),
          ],
        ),
      ),
    ],
  };
}

/** A list of words as a sentence: a capital and a full stop. */
export function sentence(words: string): string {
  return words === '' ? '' : `${upperFirst(words)}.`;
}

/** What a check is called on its page. */
export function headingOf(form: FormView): string {
  return form.written('title') || elementWords[form.element];
}

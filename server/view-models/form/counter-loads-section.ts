import type { FormView } from './form-view.ts';
import { counterLoadParts, loadsPart } from './load-parts.ts';
import { fieldPart, type Section } from './model.ts';
import { counterLoadWords } from './words.ts';

/** What is served on a counter, and who leans or sits on it. */
export function counterLoadsSection(form: FormView): Section {
  const words = {
    title: 'What it carries',
    hint: 'The weight of the top itself is always counted.',
    unsaid: 'Not said: 10 psf served, and a person at the edge',
    none: 'None: the top alone',
  };
  const stays = {
    label: 'Stays at',
    hint: 'From the left end. Left empty: the worst place of every free edge is looked for.',
  };
  const person = {
    option: counterLoadWords.person,
    weight: 'Weight on the edge',
    parts: (load: string) => [fieldPart(form.text(`${load}.at`, stays))],
  };
  return loadsPart(form, words, (load) => counterLoadParts(form, load, person));
}

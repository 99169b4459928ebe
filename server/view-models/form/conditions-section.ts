import type { FormView } from './form-view.ts';
import { sentence } from './head-section.ts';
import { fieldPart, morePart, type Section } from './model.ts';
import { codeWords, moistureWords, temperatureWords, wordOf } from './words.ts';

/** Moisture, temperature and the code of practice. */
export function conditionsSection(form: FormView): Section {
  const moisture = form.written('conditions.moisture');
  const temperature = form.written('conditions.temperature');
  const said = [
    moisture === '' ? 'taken as dry' : wordOf(moistureWords, moisture, moisture).replace(/ \(.*/, ''),
    `${(temperature === '' ? 'ordinary' : temperature).toLowerCase()} temperature`,
    codeWords['nds-asd'],
  ];
  return {
    id: 'conditions',
    title: 'Conditions',
    parts: [
      morePart(
        form.more(
          'conditions',
          'Room and code',
          sentence(said.join(', ')),
          ['conditions', 'code'],
          [
            fieldPart(
              form.choice('conditions.moisture', {
                label: 'Moisture',
                unsaid: 'Not said: dry',
                options: moistureWords,
              }),
            ),
            fieldPart(
              form.choice('conditions.temperature', {
                label: 'Temperature',
                unsaid: 'Not said: ordinary',
                options: temperatureWords,
              }),
            ),
            fieldPart(form.choice('code', { label: 'Code', unsaid: 'Not said: NDS', options: codeWords })),
          ],
        ),
      ),
    ],
  };
}

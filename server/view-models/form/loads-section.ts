import type { FormView } from './form-view.ts';
import { sentence } from './head-section.ts';
import { loadsPart } from './load-parts.ts';
import { fieldPart, morePart, tablePart, type More, type Part, type Section } from './model.ts';
import { thingsTable } from './things.ts';
import { arrangementWords, durationWords, loadKindWords } from './words.ts';

/** What stands on the shelf, load by load. */
export function loadsSection(form: FormView): Section {
  const words = {
    title: 'What stands on it',
    hint: 'The weight of the board itself is always counted.',
    unsaid: 'Not said: contents of 20 lbf/ft and a hand leaning',
    none: 'None: the board alone',
  };
  return loadsPart(form, words, (load) => loadParts(form, load));
}

function loadParts(form: FormView, load: string): Part[] {
  const kind = form.written(`${load}.kind`);
  const takesThings = kind === 'line' || kind === 'point';
  const way = takesThings ? form.way(load) : 'amount';
  return [
    fieldPart(form.text(`${load}.name`, { label: 'Name' })),
    fieldPart(
      form.choice(`${load}.kind`, {
        label: 'Where it acts',
        options: loadKindWords,
        chosen: kind,
        reshapes: true,
      }),
    ),
    ...(takesThings
      ? [
          fieldPart(
            form.choice(`${load}.by`, {
              label: 'Its weight',
              options: {
                amount: kind === 'line' ? 'I know it for each length' : 'I know it',
                ...(kind === 'line' ? { total: 'I know it in all' } : {}),
                things: 'Work it out from what stands there',
              },
              chosen: way,
              reshapes: true,
            }),
          ),
        ]
      : []),
    way === 'things'
      ? tablePart(thingsTable(form, `${load}.things`))
      : way === 'total' && kind === 'line'
        ? fieldPart(
            form.text(`${load}.total`, {
              label: 'Weight in all',
              hint: 'Spread evenly over the length below.',
            }),
          )
        : fieldPart(form.text(`${load}.amount`, { label: amountLabels[kind] ?? 'Amount' })),
    ...(kind === 'point'
      ? [fieldPart(form.text(`${load}.at`, { label: 'At', hint: 'From the left end.' }))]
      : []),
    ...(kind === 'line' || kind === 'area' ? [morePart(stretch(form, load))] : []),
    fieldPart(
      form.choice(`${load}.duration`, {
        label: 'How long, in all',
        unsaid: kind === 'roaming' ? 'Not said: for days' : 'Not said: for good',
        options: durationWords,
      }),
    ),
    morePart(finePoints(form, load, kind)),
  ];
}

function stretch(form: FormView, load: string): More {
  const [from, to] = [form.written(`${load}.from`), form.written(`${load}.to`)];
  const said =
    from === '' && to === ''
      ? 'the whole length'
      : `from ${from || 'the left end'} to ${to || 'the right end'}`;
  return form.more(
    `${load}:stretch`,
    'Over',
    sentence(said),
    [`${load}.from`, `${load}.to`],
    [
      fieldPart(form.text(`${load}.from`, { label: 'From', hint: 'Left empty: the left end.' })),
      fieldPart(form.text(`${load}.to`, { label: 'To', hint: 'Left empty: the right end.' })),
    ],
  );
}

const amountLabels: Readonly<Record<string, string>> = {
  line: 'Weight per length',
  area: 'Weight per area',
  point: 'Weight',
  roaming: 'Push or weight',
};

function finePoints(form: FormView, load: string, kind: string): More {
  const [arrangement, sustained, eccentricity] = ['arrangement', 'sustained', 'eccentricity'].map(
    (field) => `${load}.${field}`,
  );
  const asksPlace = kind === 'line' || kind === 'point';
  const asksArrangement = kind !== 'roaming' || form.anyWritten(arrangement ?? '');
  const said = [
    ...(asksArrangement
      ? [form.written(arrangement ?? '') === 'fixed' ? 'always there' : 'comes and goes']
      : []),
    form.written(sustained ?? '') === ''
      ? 'sags on by its duration'
      : `${form.written(sustained ?? '')} of it stays for years`,
    ...(asksPlace
      ? [
          form.written(eccentricity ?? '') === ''
            ? 'in the middle of the depth'
            : `${form.written(eccentricity ?? '')} from the wall`,
        ]
      : []),
  ];
  const names = [arrangement, sustained, eccentricity].filter((name) => name !== undefined);
  return form.more(load, 'Finer points', sentence(said.join(', ')), names, [
    ...(asksArrangement
      ? [
          fieldPart(
            form.choice(`${load}.arrangement`, {
              label: 'Presence',
              unsaid: 'Not said: it comes and goes',
              options: arrangementWords,
            }),
          ),
        ]
      : []),
    fieldPart(
      form.text(`${load}.sustained`, {
        label: 'Share that stays',
        hint: 'For years, from 0 to 1. Left empty: as its duration tells.',
      }),
    ),
    ...(asksPlace
      ? [
          fieldPart(
            form.text(`${load}.eccentricity`, {
              label: 'From the wall',
              hint: 'Left empty: the middle of the depth.',
            }),
          ),
        ]
      : []),
  ]);
}

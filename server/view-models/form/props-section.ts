import type { FormView } from './form-view.ts';
import { fieldPart, tablePart, type Field, type Part, type Section } from './model.ts';
import { propWords } from './words.ts';

/** What is put under the overhang to carry it. */
export function propsSection(form: FormView): Section {
  return {
    id: 'props',
    title: 'What carries the overhang',
    parts: [
      tablePart(
        form.table('props', {
          title: 'Props',
          hint:
            form.rows('props').length === 0
              ? 'None: the top carries itself past its base.'
              : 'Each carries the overhang where it stands.',
          add: 'Add a prop',
          rowTitle: (_row, place) => `Prop ${place + 1}`,
          parts: (row) => propParts(form, `props.${row}`),
        }),
      ),
    ],
  };
}

function propParts(form: FormView, prop: string): Part[] {
  const kind = form.written(`${prop}.kind`);
  const text = (field: string, label: string, hint?: string): Field =>
    form.text(`${prop}.${field}`, hint === undefined ? { label } : { label, hint });
  const rating = [
    text(
      'allowable',
      'Allowable load',
      '“Load rating” or “working load” on the packaging, of one. Left empty: nobody can say.',
    ),
    ...(kind === 'leg' ? [] : [text('gives', 'Gives under it', 'Left empty: taken as stiff.')]),
    text('source', 'Who says so'),
  ];
  const bar = [
    text('from', 'Begins at', 'From the back edge.'),
    text('width', 'Width'),
    text('thickness', 'Thickness', 'Up and down.'),
    text('metal', 'Metal', 'Left empty: ASTM A36.'),
  ];
  return [
    form.choice(`${prop}.kind`, { label: 'Kind', options: propWords, chosen: kind, reshapes: true }),
    text('at', 'At', 'From the left end.'),
    text('to', kind === 'leg' ? 'Stands at' : 'Reaches to', 'From the back edge.'),
    ...(kind === 'flat-bar' ? bar : rating),
  ].map(fieldPart);
}

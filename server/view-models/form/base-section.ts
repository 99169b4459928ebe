import type { FormView } from './form-view.ts';
import { sentence } from './head-section.ts';
import { fieldPart, morePart, tablePart, type More, type Part, type Section } from './model.ts';

const leftEnd = 'From the left end of the top.';
const backEdge = 'From the back edge of the top.';

/** The base under a counter top, and how it stands on the floor. */
export function baseSection(form: FormView): Section {
  return {
    id: 'base',
    title: 'The base',
    parts: [
      fieldPart(form.text('base.from', { label: 'Left face', hint: leftEnd })),
      fieldPart(form.text('base.to', { label: 'Right face', hint: leftEnd })),
      fieldPart(form.text('base.back', { label: 'Back face', hint: backEdge })),
      fieldPart(form.text('base.front', { label: 'Face on the stool side', hint: backEdge })),
      ...(form.rows('base.panels').length === 0 ? [noPanels(form)] : []),
      tablePart(
        form.table('base.panels', {
          title: 'Upright panels',
          hint: leftEnd,
          add: 'Add a panel',
          isNarrow: true,
          rowTitle: (_row, place) => `Panel ${place + 1}`,
          parts: (row, place) => [
            fieldPart(form.text(`base.panels.${row}`, { label: `Panel ${place + 1} at` })),
          ],
        }),
      ),
      morePart(rail(form)),
      ...standing(form),
    ],
  };
}

function noPanels(form: FormView): Part {
  return fieldPart(
    form.choice('base.panels.by', {
      label: 'Upright panels',
      options: { none: 'Not said: one at each end', empty: 'None: rails alone' },
      chosen: form.written('base.panels.by') === 'empty' ? 'empty' : 'none',
      reshapes: true,
    }),
  );
}

function rail(form: FormView): More {
  const thickness = form.written('base.rail.thickness');
  const height = form.written('base.rail.height');
  const said = [
    thickness === '' ? 'usual thickness' : `${thickness} thick`,
    height === '' ? 'height not given, so its bending is not checked' : `${height} high`,
  ];
  return form.more(
    'rail',
    'Rails and panels under the top',
    sentence(said.join(', ')),
    ['base.rail'],
    [
      fieldPart(form.text('base.rail.thickness', { label: 'Thickness' })),
      fieldPart(
        form.text('base.rail.height', {
          label: 'Height of the rail on the stool side',
          hint: 'Left empty: it is not checked between panels.',
        }),
      ),
      fieldPart(form.text('base.rail.material', { label: 'Its wood', list: 'list:boards' })),
    ],
  );
}

/** How the base stands: what it takes to tip it. */
function standing(form: FormView): Part[] {
  const isHeld = form.written('base.heldToFloor') === 'yes';
  return [
    fieldPart(
      form.choice('base.heldToFloor', {
        label: 'Held to the floor',
        unsaid: 'Not said: it is not',
        options: { yes: 'Fastened to the floor', no: 'Stands there by its weight' },
        reshapes: true,
      }),
    ),
    ...(isHeld || form.anyWritten('base.anchorPull') || form.anyWritten('base.anchorPullFront')
      ? [
          fieldPart(
            form.text('base.anchorPull', {
              label: 'Allowable pull of the floor fasteners',
              hint: 'Along the back of the base, all together.',
            }),
          ),
          fieldPart(
            form.text('base.anchorPullFront', {
              label: 'And along the stool side',
              hint: 'All together. Left empty: none there.',
            }),
          ),
        ]
      : []),
    fieldPart(form.text('base.weight', { label: 'Weight of the base', hint: 'Empty, without the top.' })),
    morePart(
      form.more(
        'standing',
        'Where it stands',
        sentence(
          [
            form.written('base.foot') === '' ? 'no toe recess' : `outer foot at ${form.written('base.foot')}`,
            form.written('base.height') === '' ? 'usual height' : `${form.written('base.height')} high`,
          ].join(', '),
        ),
        ['base.foot', 'base.weightAt', 'base.height', 'base.push'],
        [
          fieldPart(
            form.text('base.foot', {
              label: 'Outer foot on the stool side',
              hint: 'From the back edge of the top; the base would tip about it. A toe recess counts.',
            }),
          ),
          fieldPart(
            form.text('base.weightAt', {
              label: 'Its weight acts at',
              hint: 'From the back edge of the top. Left empty: midway.',
            }),
          ),
          fieldPart(form.text('base.height', { label: 'Height', hint: 'Floor to underside of the top.' })),
          fieldPart(
            form.text('base.push', {
              label: 'Sideways push at the top',
              hint: 'Left empty: 100 lbf (445 N), as is common practice.',
            }),
          ),
        ],
      ),
    ),
  ];
}

import { fastenerName, fastenerOptions, metalOptions } from './catalogue.ts';
import type { FormView } from './form-view.ts';
import { givenPart, isGiven } from './given.ts';
import { sentence } from './head-section.ts';
import { fieldPart, morePart, tablePart, type More, type Part, type Section } from './model.ts';
import { plateParts, screwParts } from './screw-parts.ts';
import { studNote } from './stud-note.ts';
import { capacityWords, holdWords } from './words.ts';

/** The brackets: where they are, what they can carry, and how they are screwed to wall and board. */
export function bracketsSection(form: FormView): Section {
  const asksBoardScrews =
    form.written('brackets.hold') === 'screwed' || isGiven(form, 'brackets.boardScrews');
  return {
    id: 'brackets',
    title: 'The brackets',
    parts: [
      tablePart(
        form.table('brackets.positions', {
          title: 'Where they are',
          hint: 'From the left end of the board to the middle of each bracket.',
          add: 'Add a bracket',
          isNarrow: true,
          rowTitle: (_row, place) => `Bracket ${place + 1}`,
          parts: (row, place) => [
            fieldPart(form.text(`brackets.positions.${row}`, { label: `Bracket ${place + 1} at` })),
          ],
          note: (row) => studNote(form, `brackets.positions.${row}`),
        }),
      ),
      fieldPart(form.text('brackets.arm', { label: 'Arm', hint: 'How far it reaches from the wall.' })),
      fieldPart(form.text('brackets.armWidth', { label: 'Arm width', hint: 'Under the board.' })),
      fieldPart(
        form.choice('brackets.hold', {
          label: 'The board is',
          unsaid: 'Not said: resting on its brackets',
          options: holdWords,
          reshapes: true,
        }),
      ),
      fieldPart(
        form.choice('brackets.capacity.basis', {
          label: 'What one carries',
          unsaid: 'Not said',
          options: capacityWords,
          reshapes: true,
        }),
      ),
      ...(capacityParts[form.written('brackets.capacity.basis')]?.(form) ?? []),
      morePart(wallScrews(form)),
      ...(asksBoardScrews ? [morePart(boardScrews(form))] : []),
    ],
  };
}

const capacityParts: Readonly<Record<string, (form: FormView) => Part[]>> = {
  rated: (form) => {
    const way = form.way('brackets.capacity');
    return [
      fieldPart(
        form.choice('brackets.capacity.by', {
          label: 'Rated as',
          options: { allowable: 'A load it may carry', test: 'A load at which it failed on test' },
          chosen: way,
          reshapes: true,
        }),
      ),
      ...(way === 'test'
        ? [
            fieldPart(
              form.text('brackets.capacity.ultimate', {
                label: 'Failed at',
                hint: '“Ultimate” or “breaking load”, of one bracket.',
              }),
            ),
            fieldPart(
              form.text('brackets.capacity.factor', {
                label: 'Safety factor',
                hint: 'What that load is divided by, from 1 to 10.',
              }),
            ),
          ]
        : [
            fieldPart(
              form.text('brackets.capacity.allowable', {
                label: 'Rating',
                hint: 'Of one bracket: “Load rating” or “working load” on the packaging. Of a pair, half.',
              }),
            ),
          ]),
      morePart(aboutRating(form)),
    ];
  },
  steel: (form) => {
    const hasStrut = isGiven(form, 'brackets.capacity.strut');
    return [
      fieldPart(form.text('brackets.capacity.width', { label: 'Bar width', hint: 'Along the board.' })),
      fieldPart(form.text('brackets.capacity.thickness', { label: 'Bar thickness', hint: 'Up and down.' })),
      fieldPart(
        form.choice('brackets.capacity.metal', {
          label: 'Steel',
          unsaid: 'Not said: ordinary structural steel',
          options: metalOptions(),
        }),
      ),
      fieldPart(
        form.choice('brackets.capacity.strut.by', {
          label: 'Strut below',
          options: { none: 'None', given: 'From the arm down to the wall' },
          chosen: hasStrut ? 'given' : 'none',
          reshapes: true,
        }),
      ),
      ...(hasStrut
        ? [
            fieldPart(
              form.text('brackets.capacity.strut.at', { label: 'Strut meets arm', hint: 'From the wall.' }),
            ),
            fieldPart(
              form.text('brackets.capacity.strut.drop', {
                label: 'Strut meets wall',
                hint: 'Below the arm.',
              }),
            ),
            fieldPart(form.text('brackets.capacity.strut.width', { label: 'Strut width' })),
            fieldPart(form.text('brackets.capacity.strut.thickness', { label: 'Strut thickness' })),
          ]
        : []),
    ];
  },
  unknown: (form) => [
    fieldPart(form.text('brackets.capacity.what', { label: 'Made of', hint: 'Cast iron, wood, not known…' })),
  ],
};

function aboutRating(form: FormView): More {
  const [at, source] = [form.written('brackets.capacity.at'), form.written('brackets.capacity.source')];
  const said = `${at === '' ? 'at mid-arm' : `${at} from the wall`}${source === '' ? '' : `, by ${source}`}`;
  return form.more(
    'rating',
    'Where it was rated',
    sentence(said),
    ['brackets.capacity.at', 'brackets.capacity.source'],
    [
      fieldPart(
        form.text('brackets.capacity.at', {
          label: 'Rated at',
          hint: 'Distance of that load from the wall. Left empty: the middle of the arm.',
        }),
      ),
      fieldPart(form.text('brackets.capacity.source', { label: 'Who says so' })),
    ],
  );
}

function wallScrews(form: FormView): More {
  const hasPlate = isGiven(form, 'brackets.plate');
  const hasScrews = isGiven(form, 'brackets.screws');
  const heights = form.rows('brackets.screws.heights');
  const name = fastenerName(form.written('brackets.screws.fastener')).toLowerCase();
  const said = hasScrews
    ? `${name}, ${form.written('brackets.screws.length')} long, at ${heights.length} ${heights.length === 1 ? 'height' : 'heights'}`
    : 'screws not described';
  const plate = hasPlate ? `plate ${form.written('brackets.plate.height')} high` : 'plate not described';
  return form.more(
    'wall-screws',
    'Wall plate and screws',
    sentence(`${plate}, ${said}`),
    [
      'brackets.plate',
      'brackets.screws',
      'brackets.plate.by',
      'brackets.screws.by',
      'add:brackets.screws.heights',
    ],
    [
      givenPart(form, 'brackets.plate', 'Wall plate', hasPlate),
      ...(hasPlate
        ? plateParts(form, 'brackets.plate', 'Not said: as the arms, where they are worked out')
        : []),
      givenPart(form, 'brackets.screws', 'Wall screws', hasScrews),
      ...(hasScrews ? screwParts(form, 'brackets.screws') : []),
    ],
  );
}

function boardScrews(form: FormView): More {
  const group = 'brackets.boardScrews';
  const has = isGiven(form, group);
  return form.more(
    'board-screws',
    'Board screws',
    has ? 'Described.' : 'Not described.',
    [group, `${group}.by`, `add:${group}.at`],
    [
      givenPart(form, group, 'Screws up into the board', has),
      ...(has
        ? [
            fieldPart(
              form.choice(`${group}.fastener`, {
                label: 'Screw',
                unsaid: 'Not said',
                options: fastenerOptions(),
              }),
            ),
            fieldPart(form.text(`${group}.length`, { label: 'Screw length' })),
            tablePart(
              form.table(`${group}.at`, {
                title: 'Where they are on the arm',
                hint: 'From the wall.',
                add: 'Add a screw',
                isNarrow: true,
                rowTitle: (_row, place) => `Screw ${place + 1}`,
                parts: (row, place) => [
                  fieldPart(form.text(`${group}.at.${row}`, { label: `Screw ${place + 1} at` })),
                ],
              }),
            ),
            fieldPart(
              form.text(`${group}.armThickness`, {
                label: 'Arm thickness',
                hint: 'What the screw goes up through first.',
              }),
            ),
            fieldPart(
              form.text(`${group}.armMaterial`, {
                label: 'Arm of',
                hint: '“metal”, or the wood it is made of.',
              }),
            ),
          ]
        : []),
    ],
  );
}

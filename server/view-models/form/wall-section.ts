import { isFramed } from '../../../calc/elements/fixing/coverings.ts';
import { isGiven } from './given.ts';
import type { Element } from '../../form/index.ts';
import { coveringNames } from './catalogue.ts';
import type { FormView } from './form-view.ts';
import { sentence } from './head-section.ts';
import { fieldPart, morePart, tablePart, type More, type Part, type Section } from './model.ts';
import { framingWords, grainWords, wordOf } from './words.ts';

const woodFramings = ['', 'wood-stud', 'blocking', 'sheathing'];
const studFramings = ['', 'wood-stud', 'metal-stud'];

/** The wall: what the screws go into, where its studs are, and what covers it. */
export function wallSection(form: FormView): Section {
  // A fixing on its own is nothing without its wall.
  if (form.element === 'wall-fixing') return { id: 'wall', title: 'The wall', parts: described(form) };
  const isIt = isGiven(form, 'wall');
  return {
    id: 'wall',
    title: 'The wall',
    parts: [
      fieldPart(
        form.choice('wall.by', {
          label: 'The wall is',
          options: { none: 'Not described (no word on the fixings)', given: 'Described here' },
          chosen: isIt ? 'given' : 'none',
          reshapes: true,
        }),
      ),
      ...(isIt ? described(form) : []),
    ],
  };
}

function described(form: FormView): Part[] {
  const framing = form.written('wall.framing');
  const asksSpecies = woodFramings.includes(framing) || form.anyWritten('wall.species');
  const asksStuds = studFramings.includes(framing) || form.anyWritten('wall.studs');
  return [
    fieldPart(
      form.choice('wall.framing', {
        label: 'Screws go into',
        unsaid: 'Not said',
        options: framingWords,
        reshapes: true,
      }),
    ),
    ...(asksSpecies
      ? [
          fieldPart(
            form.text('wall.species', {
              label: 'Wood of it',
              hint: woodTaken(framing),
              list: 'list:framing',
            }),
          ),
        ]
      : []),
    ...(['wood-stud', 'blocking'].includes(framing) || form.anyWritten('wall.grain')
      ? [
          fieldPart(
            form.choice('wall.grain', {
              label: 'Screwed into',
              unsaid: 'Not said: the side of the wood',
              options: grainWords,
            }),
          ),
        ]
      : []),
    ...(framing === 'blocking' || form.anyWritten('wall.blockingHeight')
      ? [
          fieldPart(
            form.text('wall.blockingHeight', {
              label: 'Blocking height',
              hint: 'Up the wall, from edge to edge.',
            }),
          ),
        ]
      : []),
    ...(framing === 'blocking' && !asksStuds
      ? [fieldPart(form.text('wall.studDepth', { label: 'Blocking depth', hint: 'Into the wall.' }))]
      : []),
    ...(framing === 'sheathing' || form.anyWritten('wall.sheathing')
      ? [fieldPart(form.text('wall.sheathing', { label: 'Sheathing', hint: 'How thick it is.' }))]
      : []),
    ...(asksStuds ? [...studs(form), morePart(studSize(form))] : []),
    morePart(coverings(form)),
    morePart(bearing(form)),
  ];
}

/** What is taken where the wood is not named. */
function woodTaken(framing: string): string {
  if (framing === '') return 'Left empty: the lightest of common framing, specific gravity 0.36.';
  return framing === 'sheathing'
    ? 'Left empty: plywood of any grade, specific gravity 0.42.'
    : 'Left empty: as spruce-pine-fir, specific gravity 0.42.';
}

const measuredFrom = (element: Element): string =>
  element === 'bracket-shelf' ? 'from the left end of the board' : 'from any mark, the same for all';

function studs(form: FormView): Part[] {
  const said = form.written('wall.studs.by');
  const inUse = form.anyWritten('wall.studs.at') ? 'at' : form.anyWritten('wall.studs') ? 'first' : 'none';
  const way = ['none', 'first', 'at'].includes(said) ? said : inUse;
  return [
    fieldPart(
      form.choice('wall.studs.by', {
        label: 'Stud places',
        options: { none: 'Not known', first: 'Regular', at: 'Measured, one by one' },
        chosen: way,
        reshapes: true,
      }),
    ),
    ...(way === 'first'
      ? [
          fieldPart(
            form.text('wall.studs.first', {
              label: 'First stud at',
              hint: `Centre line, ${measuredFrom(form.element)}.`,
            }),
          ),
          fieldPart(form.text('wall.studs.spacing', { label: 'Spacing', hint: 'Centre to centre.' })),
        ]
      : []),
    ...(way === 'at'
      ? [
          tablePart(
            form.table('wall.studs.at', {
              title: 'Where the studs are',
              hint: `Centre lines, ${measuredFrom(form.element)}.`,
              add: 'Add a stud',
              isNarrow: true,
              rowTitle: (_row, place) => `Stud ${place + 1}`,
              parts: (row, place) => [
                fieldPart(form.text(`wall.studs.at.${row}`, { label: `Stud ${place + 1} at` })),
              ],
            }),
          ),
        ]
      : []),
  ];
}

function studSize(form: FormView): More {
  const [width, depth] = [form.written('wall.studWidth'), form.written('wall.studDepth')];
  const said =
    width === '' && depth === ''
      ? 'size not said'
      : `${width || 'width not said'} by ${depth || 'depth not said'}`;
  return form.more(
    'stud-size',
    'Size of a stud',
    sentence(said),
    ['wall.studWidth', 'wall.studDepth', 'wall.grade', 'wall.height', 'wall.bracketHeight'],
    [
      fieldPart(form.text('wall.studWidth', { label: 'Stud width', hint: 'Along the wall.' })),
      fieldPart(form.text('wall.studDepth', { label: 'Stud depth', hint: 'Into the wall.' })),
      fieldPart(form.text('wall.grade', { label: 'Grade of the studs', hint: 'Left empty: Stud.' })),
      fieldPart(form.text('wall.height', { label: 'Wall height', hint: 'Floor to ceiling.' })),
      fieldPart(
        form.text('wall.bracketHeight', {
          label: form.element === 'wall-fixing' ? 'Plate at' : 'Brackets at',
          hint: 'Above the floor.',
        }),
      ),
    ],
  );
}

/** What the covering may carry under the lower end of a plate, where somebody states it. */
function bearing(form: FormView): More {
  const group = 'wall.bearing';
  const has = isGiven(form, group);
  return form.more(
    'covering-bearing',
    'How hard it is',
    has
      ? sentence(form.written(`${group}.allowable`))
      : 'Not known: solid backing under the plates is assumed.',
    [group, `${group}.by`],
    [
      fieldPart(
        form.choice(`${group}.by`, {
          label: 'Bearing strength',
          options: { none: 'Not known', given: 'Given here' },
          chosen: has ? 'given' : 'none',
          reshapes: true,
        }),
      ),
      ...(has
        ? [
            fieldPart(form.text(`${group}.allowable`, { label: 'It may carry' })),
            fieldPart(form.text(`${group}.source`, { label: 'Who states it' })),
          ]
        : []),
    ],
  );
}

function coverings(form: FormView): More {
  const list = 'wall.coverings';
  const rows = form.rows(list);
  const said = form.written(`${list}.by`);
  const way = ['none', 'empty', 'given'].includes(said) ? said : rows.length > 0 ? 'given' : 'none';
  const names = rows.map((row) => {
    const material = form.written(`${list}.${row}.material`);
    return `${form.written(`${list}.${row}.thickness`)} ${wordOf(coveringNames(), material, material).toLowerCase()}`;
  });
  const unsaid = isFramed(form.written('wall.framing'))
    ? 'Not said: a sheet of gypsum board is taken'
    : 'Not said: nothing is taken';
  const sentences: Readonly<Record<string, string>> = {
    none: `${unsaid}.`,
    empty: 'None: the plate lies on the framing.',
    given: sentence(names.join(', ')),
  };
  return form.more(
    'coverings',
    'What covers it',
    sentences[way] ?? '',
    [list, `${list}.by`, `add:${list}`],
    [
      fieldPart(
        form.choice(`${list}.by`, {
          label: 'Covering',
          options: { none: unsaid, empty: 'None: the plate lies on the framing', given: 'Listed here' },
          chosen: way,
          reshapes: true,
        }),
      ),
      ...(way === 'given'
        ? [
            tablePart(
              form.table(list, {
                title: 'Coverings',
                hint: 'From the room inwards.',
                add: 'Add a covering',
                rowTitle: (_row, place) => `Covering ${place + 1}`,
                parts: (row) => [
                  fieldPart(
                    form.text(`${list}.${row}.material`, { label: 'Material', list: 'list:coverings' }),
                  ),
                  fieldPart(form.text(`${list}.${row}.thickness`, { label: 'Thickness' })),
                ],
              }),
            ),
          ]
        : []),
    ],
  );
}

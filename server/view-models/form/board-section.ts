import { boardPicker } from './board-picker.ts';
import type { FormView } from './form-view.ts';
import { sentence } from './head-section.ts';
import { fieldPart, morePart, pickerPart, tablePart, type More, type Part, type Section } from './model.ts';
import { appearanceWords, basisWords, bondWords, flushWords } from './words.ts';

/** The board: what it is made of, its size, and what is built onto it. */
export function boardSection(form: FormView): Section {
  const search = form.text('board.material', {
    label: 'Wood or panel',
    hint: 'Any common name. Leave it empty when not sure: the weakest likely wood is taken.',
  });
  const joints = form.rows('board.joints');
  return {
    id: 'board',
    title: 'The board',
    parts: [
      fieldPart({ ...search, isSearch: true }),
      pickerPart(boardPicker(form)),
      ...materialParts(form, 'board', ['basis', 'appearance', 'grade']),
      fieldPart(form.text('board.length', { label: 'Length' })),
      fieldPart(form.text('board.depth', { label: 'Depth', hint: 'Wall to front, without nosing or rail.' })),
      fieldPart(form.text('board.thickness', { label: 'Thickness' })),
      morePart(strip(form, 'nosing', 'Nosing', 'a strip glued along the front edge')),
      morePart(strip(form, 'rail', 'Back rail', 'a strip glued along the back edge')),
      morePart(build(form)),
      morePart(
        form.more(
          'joints',
          'Joints',
          joints.length === 0 ? 'One length, end to end.' : `Joined at ${joints.length} places.`,
          ['board.joints', 'add:board.joints'],
          [
            tablePart(
              form.table('board.joints', {
                title: 'Where one length ends and the next begins',
                hint: 'From the left end. Each must lie over a bracket.',
                add: 'Add a joint',
                isNarrow: true,
                rowTitle: (_row, place) => `Joint ${place + 1}`,
                parts: (row, place) => [
                  fieldPart(form.text(`board.joints.${row}`, { label: `Joint ${place + 1} at` })),
                ],
              }),
            ),
          ],
        ),
      ),
    ],
  };
}

/** Where the strength of a piece comes from, and the one question that answer leaves. */
function materialParts(form: FormView, group: string, names: readonly [string, string, string]): Part[] {
  const [basis, appearance, grade] = names.map((name) => `${group}.${name}`);
  if (basis === undefined || appearance === undefined || grade === undefined) return [];
  const said = form.written(basis);
  const asks = (choices: readonly string[], name: string): boolean =>
    choices.includes(said) || form.anyWritten(name);
  return [
    fieldPart(
      form.choice(basis, {
        label: 'Strength from',
        unsaid: 'As its name tells',
        options: basisWords,
        reshapes: true,
      }),
    ),
    ...(asks(['', 'clear-wood'], appearance)
      ? [
          fieldPart(
            form.choice(appearance, {
              label: 'Appearance',
              unsaid: group === 'board' ? unsaidAppearance(form) : 'Not said',
              options: appearanceWords,
            }),
          ),
        ]
      : []),
    ...(asks(['graded'], grade)
      ? [fieldPart(form.text(grade, { label: 'Grade stamp', list: 'list:grades' }))]
      : []),
  ];
}

/** A board nobody named is taken as the worst there is; one that was named, as most are. */
function unsaidAppearance(form: FormView): string {
  return form.written('board.material') === '' ? 'Not said: knotty' : 'Not said: small sound knots';
}

function strip(form: FormView, name: string, title: string, meaning: string): More {
  const group = `board.${name}`;
  const isGiven =
    form.written(`${group}.by`) !== 'none' &&
    (form.anyWritten(group) || form.written(`${group}.by`) === 'given');
  const by = fieldPart(
    form.choice(`${group}.by`, {
      label: title,
      options: { none: 'None', given: sentence(meaning).slice(0, -1) },
      chosen: isGiven ? 'given' : 'none',
      reshapes: true,
    }),
  );
  const size = `${form.written(`${group}.height`)} high, ${form.written(`${group}.thickness`)} thick`;
  return form.more(
    name,
    title,
    isGiven ? sentence(size) : 'None.',
    [group, `${group}.by`],
    [
      by,
      ...(isGiven
        ? [
            fieldPart(form.text(`${group}.height`, { label: 'Height' })),
            fieldPart(form.text(`${group}.thickness`, { label: 'Thickness', hint: 'Front to back.' })),
            fieldPart(
              form.choice(`${group}.flush`, {
                label: 'Placed',
                unsaid: 'Not said: flush with the top',
                options: flushWords,
              }),
            ),
            fieldPart(
              form.text(`${group}.material`, {
                label: 'Wood or panel',
                hint: 'Left empty: as the board.',
                list: 'list:boards',
              }),
            ),
            ...materialParts(form, group, ['basis', 'appearance', 'grade']),
          ]
        : []),
    ],
  );
}

const buildWords = {
  plain: 'One solid board or panel',
  box: 'A hollow box: two skins on a frame',
  layers: 'Layers, one on another',
};

function build(form: FormView): More {
  const way = form.way('board');
  const sentences: Readonly<Record<string, string>> = {
    plain: 'One solid board or panel.',
    box: 'A hollow box.',
    layers: `${form.rows('board.layers').length} layers.`,
  };
  const parts: Readonly<Record<string, () => Part[]>> = {
    plain: () => [],
    box: () => box(form),
    layers: () => layers(form),
  };
  return form.more(
    'build',
    'How it is built',
    sentences[way] ?? '',
    ['board.by', 'board.box', 'board.layers', 'board.bond', 'add:board.layers'],
    [
      fieldPart(
        form.choice('board.by', { label: 'Built as', options: buildWords, chosen: way, reshapes: true }),
      ),
      ...(parts[way]?.() ?? []),
    ],
  );
}

function box(form: FormView): Part[] {
  return [
    fieldPart(form.text('board.box.skin', { label: 'Each skin', hint: 'Thickness; top and bottom alike.' })),
    fieldPart(form.text('board.box.frame', { label: 'Frame width', hint: 'Of each lengthwise member.' })),
    fieldPart(form.text('board.box.members', { label: 'Members', hint: 'Lengthwise. Left empty: 2.' })),
    fieldPart(
      form.text('board.box.frameMaterial', {
        label: 'Frame wood',
        hint: 'Left empty: as the skins.',
        list: 'list:boards',
      }),
    ),
    ...materialParts(form, 'board.box', ['frameBasis', 'frameAppearance', 'frameGrade']),
  ];
}

function layers(form: FormView): Part[] {
  return [
    tablePart(
      form.table('board.layers', {
        title: 'Layers from the top down',
        hint: 'Together as thick as the board.',
        add: 'Add a layer',
        rowTitle: (_row, place) => `Layer ${place + 1}`,
        parts: (row) => [
          fieldPart(form.text(`board.layers.${row}.thickness`, { label: 'Thickness' })),
          fieldPart(
            form.text(`board.layers.${row}.material`, {
              label: 'Wood or panel',
              hint: 'Left empty: as the board.',
              list: 'list:boards',
            }),
          ),
          ...materialParts(form, `board.layers.${row}`, ['basis', 'appearance', 'grade']),
        ],
      }),
    ),
    fieldPart(
      form.choice('board.bond', {
        label: 'Between the layers',
        unsaid: 'Not said: not glued',
        options: bondWords,
      }),
    ),
  ];
}

import { fastenerOptions, isNail, metalOptions } from './catalogue.ts';
import type { FormView } from './form-view.ts';
import { givenPart, isGiven } from './given.ts';
import { fieldPart, tablePart, type Part } from './model.ts';
import { drivenWords } from './words.ts';

/**
 * A plate on the wall.
 *
 * @param group where the document has it
 * @param unsaid what is taken where its metal is not named
 */
export function plateParts(form: FormView, group: string, unsaid: string): Part[] {
  return [
    fieldPart(form.text(`${group}.height`, { label: 'Plate height' })),
    fieldPart(form.text(`${group}.width`, { label: 'Plate width' })),
    fieldPart(form.text(`${group}.thickness`, { label: 'Plate thickness' })),
    fieldPart(form.choice(`${group}.metal`, { label: 'Plate of', unsaid, options: metalOptions() })),
  ];
}

/** The screws of a plate into the wall. */
export function screwParts(form: FormView, group: string): Part[] {
  return [
    fieldPart(
      form.choice(`${group}.fastener`, {
        label: 'Screw',
        unsaid: 'Choose one',
        options: { ...fastenerOptions(), listed: 'A listed screw or anchor, by its report' },
        reshapes: true,
      }),
    ),
    ...drivenPart(form, group),
    fieldPart(form.text(`${group}.length`, { label: 'Screw length' })),
    fieldPart(
      form.text(`${group}.thread`, {
        label: 'Thread length',
        hint: 'Left empty: as the NDS has it for that screw.',
      }),
    ),
    tablePart(
      form.table(`${group}.heights`, {
        title: 'Heights of the screws',
        hint: "Above the plate's lower end.",
        add: 'Add a height',
        isNarrow: true,
        rowTitle: (_row, place) => `Height ${place + 1}`,
        parts: (row, place) => [
          fieldPart(form.text(`${group}.heights.${row}`, { label: `Height ${place + 1}` })),
        ],
      }),
    ),
    fieldPart(form.text(`${group}.perHeight`, { label: 'Screws at each', hint: 'Left empty: 1.' })),
    fieldPart(
      form.text(`${group}.across`, {
        label: 'How far apart',
        hint: 'Between the outer screws at one height, where there are several.',
      }),
    ),
    ...reportParts(form, group),
  ];
}

/** Nails may be toed in. */
function drivenPart(form: FormView, group: string): Part[] {
  const name = `${group}.driven`;
  if (!isNail(form.written(`${group}.fastener`)) && !form.anyWritten(name)) return [];
  return [
    fieldPart(
      form.choice(name, { label: 'Nails driven', unsaid: 'Not said: straight', options: drivenWords }),
    ),
  ];
}

/** Allowable values of a listed screw or an anchor, typed in from its report. */
function reportParts(form: FormView, screws: string): Part[] {
  const group = `${screws}.allowable`;
  const has = isGiven(form, group);
  return [
    givenPart(form, group, 'Values of a report', has),
    ...(has
      ? [
          fieldPart(
            form.text(`${group}.tension`, { label: 'Allowable pull', hint: 'Of one screw or anchor.' }),
          ),
          fieldPart(
            form.text(`${group}.shear`, { label: 'Allowable shear', hint: 'Of one screw or anchor.' }),
          ),
          fieldPart(form.text(`${group}.report`, { label: 'Report', hint: 'Where the two values stand.' })),
        ]
      : []),
  ];
}

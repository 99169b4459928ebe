import type { Element } from '../../form/index.ts';
import { baseSection } from './base-section.ts';
import { boardSection } from './board-section.ts';
import { bracketsSection } from './brackets-section.ts';
import { proposals } from './catalogue.ts';
import { conditionsSection } from './conditions-section.ts';
import { counterLoadsSection } from './counter-loads-section.ts';
import { FormView, type FormState } from './form-view.ts';
import { headingOf, headSection } from './head-section.ts';
import { limitsSection } from './limits-section.ts';
import { loadsSection } from './loads-section.ts';
import type { Field, Section, ShownSection, Part } from './model.ts';
import { forcesSection, plateSection, positionSection, screwsSection } from './plate-section.ts';
import { propsSection } from './props-section.ts';
import { openingSection, runLoadsSection, substrateSection } from './run-sections.ts';
import { topScrewsSection } from './top-screws-section.ts';
import { topSection } from './top-section.ts';
import { wallSection } from './wall-section.ts';
import { unitsWords } from './words.ts';

/** A field that is not shown and travels along, so that nothing is lost while a choice leaves it idle. */
export interface Hidden {
  readonly name: string;
  readonly value: string;
}

/** What changes beside a field while someone types: what was understood of it, and what is wrong. */
export interface FieldNote {
  readonly noteId: string;
  readonly note: string;
  readonly errorId: string;
  readonly error: string;
  readonly name: string;
}

export interface CheckForm {
  readonly heading: string;
  readonly units: Field;
  readonly sections: readonly ShownSection[];
  readonly hidden: readonly Hidden[];
  readonly proposals: readonly { readonly id: string; readonly words: readonly string[] }[];
  readonly notes: readonly FieldNote[];
  /** What each field is called, with the row it is in, or the part of the form where two fields bear one name. */
  readonly labels: ReadonlyMap<string, string>;
}

/** The parts of the form of each element, in the order of the work. */
const sectionsOf: Readonly<Record<Element, readonly ((form: FormView) => Section)[]>> = {
  'bracket-shelf': [
    headSection,
    boardSection,
    bracketsSection,
    wallSection,
    loadsSection,
    limitsSection,
    conditionsSection,
  ],
  'wall-fixing': [
    headSection,
    plateSection,
    screwsSection,
    wallSection,
    positionSection,
    forcesSection,
    conditionsSection,
  ],
  'counter-run': [
    headSection,
    substrateSection,
    openingSection,
    runLoadsSection,
    limitsSection,
    conditionsSection,
  ],
  'counter-overhang': [
    headSection,
    topSection,
    baseSection,
    topScrewsSection,
    propsSection,
    counterLoadsSection,
    limitsSection,
    conditionsSection,
  ],
};

/** The whole form of a check. */
export function checkForm(state: FormState): CheckForm {
  const form = new FormView(state);
  const units = form.choice('units', {
    label: 'Units',
    options: unitsWords,
    reshapes: true,
    chosen: form.system,
  });
  const sections = sectionsOf[form.element].map((section) => section(form));
  const shown = sections.map((section) => ({ ...section, error: form.errorInside(section.id) }));
  const kinds = ['loads', 'props'].flatMap((list) =>
    form.rows(list).map((row) => ({
      name: `${list}.${row}.was`,
      value: form.written(`${list}.${row}.kind`),
    })),
  );
  const weighed = form.element === 'bracket-shelf' ? form.rows('loads') : [];
  const ways = weighed.map((row) => ({ name: `loads.${row}.by.was`, value: form.way(`loads.${row}`) }));
  // A load of which nothing is written is a load all the same, and an error.
  const bare = form
    .rows('loads')
    .map((row) => ({ name: `loads.${row}.by`, value: form.written(`loads.${row}.by`) }))
    .filter(({ value }) => value === 'given');
  const heading = headingOf(form);
  form.sayings.push({ id: 'heading', text: heading });
  return {
    heading,
    units,
    sections: shown,
    hidden: [
      { name: 'was', value: form.system },
      { name: 'element.was', value: form.element },
      ...(form.element === 'counter-overhang'
        ? [{ name: 'top.build.was', value: form.written('top.build') }]
        : []),
      ...kinds,
      ...ways,
      ...bare,
      ...idle(form),
    ],
    proposals,
    labels: toldApart(form.labels(), sections),
    notes: [
      ...form.fields.map(({ id, note, error }) => ({
        noteId: `note:${id}`,
        note,
        errorId: `error:${id}`,
        error,
        name: id,
      })),
      ...shown.map(({ id, error }) => ({
        noteId: '',
        note: '',
        errorId: `error:section:${id}`,
        error,
        name: '',
      })),
      ...form.sayings.map(({ id, text }) => ({ noteId: id, note: text, errorId: '', error: '', name: '' })),
    ],
  };
}

/** Names of fields; those that two fields bear with the title of what they are of: "The top, Length". */
function toldApart(
  labels: ReadonlyMap<string, string>,
  sections: readonly Section[],
): ReadonlyMap<string, string> {
  const titles = new Map(sections.flatMap(({ title, parts }) => titled(title, parts)));
  const all = [...labels.values()];
  const isShared = (label: string): boolean => all.indexOf(label) !== all.lastIndexOf(label);
  return new Map(
    [...labels].map(([id, label]) => [
      id,
      isShared(label) ? [titles.get(id), label].filter(Boolean).join(', ') : label,
    ]),
  );
}

/** Each field and the title of the part of the form it stands in. */
function titled(title: string, parts: readonly Part[]): [string, string][] {
  return parts.flatMap(({ fields, mores }) => [
    ...fields.map(({ id }): [string, string] => [id, title]),
    ...mores.flatMap((more) => titled(more.title, more.parts)),
  ]);
}

function idle(form: FormView): Hidden[] {
  const steering = new Set(['do', 'at', 'was', 'find']);
  return [...form.texts]
    .filter(([name, text]) => !form.shown.has(name) && !steering.has(name) && text.trim() !== '')
    .filter(([name]) => !name.endsWith('.by') && !name.endsWith('.was'))
    .map(([name, value]) => ({ name, value }));
}

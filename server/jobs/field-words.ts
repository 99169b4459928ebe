import { readDocument } from '../../shared/check-document/index.ts';
import { upperFirst } from '../../shared/words.ts';
import { readForm, textsOf } from '../form/index.ts';
import { changedFields } from '../store/changed-fields.ts';
import { checkForm } from '../view-models/form/index.ts';

/** A field that differs between two forms, as people call it and write it. */
export interface Difference {
  readonly field: string;
  readonly before: string;
  readonly after: string;
}

const nothing = 'nothing';

/** What differs between two forms, in the words of the form. */
export function differences(before: string, after: string): Difference[] {
  const changed = changedFields(before, after);
  if (changed.length === 0) return [];
  const labels = new Map([...labelsOf(before), ...labelsOf(after)]);
  return changed.map(({ name, before: old, after: now }) => ({
    field: labels.get(name) ?? plainName(name),
    before: old || nothing,
    after: now || nothing,
  }));
}

/** What the fields of a form are called, with the row they are in: "Load 2, weight". */
function labelsOf(form: string): ReadonlyMap<string, string> {
  const texts = textsOf(form);
  const reading = readForm(texts);
  const read = readDocument(reading.document);
  const sound = read.ok ? read.document : (read.sound ?? { element: 'bracket-shelf' });
  return checkForm({ texts, reading, at: '', errors: [], sound }).labels;
}

/** The name of a field that is not shown: `wall.coverings.0.studDepth` as "Wall, coverings, 1, stud depth". */
function plainName(name: string): string {
  const words = name
    .split('.')
    .map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : part))
    .join(', ')
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
  return upperFirst(words);
}

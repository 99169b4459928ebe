import { isDeepStrictEqual } from 'node:util';
import { idleFields } from './alternatives.ts';
import { elementOf } from './elements.ts';
import { fillForm } from './fill-form.ts';
import { readForm } from './read-form.ts';
import { anyWritten, queryOf, textsOf, type Texts } from './texts.ts';
import { unknownNames } from './unknown-names.ts';

/** What a button may carry: the text of a field is cut at the same length. */
const longestChange = 1_900;

/**
 * Writes fields that stand in a query into a form, and takes out those that are empty there. A query that names a field no
 * form has changes nothing.
 */
export function setFields(texts: Texts, query: string): Texts {
  const changes = textsOf(query);
  if (unknownNames(changes, elementOf(texts)).length > 0) return texts;
  const changed = new Map(texts);
  for (const [name, text] of changes) {
    if (text === '') changed.delete(name);
    else changed.set(name, text);
  }
  for (const [name, text] of changes) {
    if (text === '') clearRow(changed, name);
    else wake(changed, name);
  }
  return changed;
}

/** A row in which nothing is written any more goes with all that the page sent along of it. */
function clearRow(texts: Map<string, string>, name: string): void {
  const row = /^.*\.\d+(?=\.)/.exec(name)?.[0];
  if (row === undefined || anyWritten(texts, row)) return;
  for (const other of [...texts.keys()]) if (other.startsWith(`${row}.`)) texts.delete(other);
}

/** A field that is written counts, whatever the form said of the part it is in: that there is none, or another way. */
function wake(texts: Map<string, string>, name: string): void {
  const parts = name.split('.');
  parts.slice(0, -1).forEach((_, depth) => {
    const group = parts.slice(0, depth + 1).join('.');
    const by = texts.get(`${group}.by`);
    const isIdle = idleFields(texts, group).has(parts[depth + 1] ?? '');
    if (by === 'none' || by === 'empty' || isIdle) texts.delete(`${group}.by`);
  });
}

/**
 * The fields that make one document of another, as a query for `setFields`: all that was written elsewhere stays as it is.
 * Null where the form can't be changed field by field: the changed form then does not say what the document says, or says it
 * at too great a length.
 */
export function changesTo(texts: Texts, document: unknown): string | null {
  const [before, after] = [fillForm(readForm(texts).document), fillForm(document)];
  const changes = new Map([...after].filter(([name, text]) => before.get(name) !== text));
  for (const name of before.keys()) if (!after.has(name)) changes.set(name, '');
  const wanted = readForm(after).document;
  const says = (query: string): boolean =>
    query.length <= longestChange &&
    isDeepStrictEqual(plain(readForm(setFields(texts, query)).document), plain(wanted));
  const plainly = queryOf(changes);
  if (says(plainly)) return plainly;
  for (const name of waysOf(texts, changes)) changes.set(name, '');
  const anew = queryOf(changes);
  return says(anew) ? anew : null;
}

/** The fields that say which way a changed part of the form is given. */
function waysOf(texts: Texts, changes: ReadonlyMap<string, string>): string[] {
  return [...texts.keys()].filter(
    (name) =>
      name.endsWith('.by') && [...changes.keys()].some((changed) => changed.startsWith(name.slice(0, -2))),
  );
}

/** A document without what is left out. */
function plain(document: unknown): unknown {
  return JSON.parse(JSON.stringify(document));
}

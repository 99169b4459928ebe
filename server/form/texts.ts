/**
 * A filled-in form: field name → text. The names are the paths of the document with dots (`board.length`,
 * `loads.1.amount`); a name that ends in `.by` says which of several ways a group is given.
 */
export type Texts = ReadonlyMap<string, string>;

const longestText = 2_000;

/** Reads a query or an urlencoded body. Of a name given twice the last counts. */
export function textsOf(query: string): Map<string, string> {
  const texts = new Map<string, string>();
  for (const [name, text] of new URLSearchParams(query)) {
    texts.set(name, text.slice(0, longestText));
  }
  return texts;
}

/** Writes a form as a query, with the few signs left readable that an address takes as they are. */
export function queryOf(entries: Iterable<readonly [string, string]>): string {
  return new URLSearchParams([...entries].map(([name, text]): [string, string] => [name, text]))
    .toString()
    .replaceAll('%2F', '/');
}

/** What was written in a field, without the space around it; empty where nothing was. */
export function written(texts: Texts, name: string): string {
  return texts.get(name)?.trim() ?? '';
}

/** Whether a field says how a group is given, or what a choice was before: nothing that is written counts by it. */
const isBeside = (name: string): boolean => name.endsWith('.by') || name.endsWith('.was');

/** Whether anything is written in a field or in a part of it. */
export function anyWritten(texts: Texts, name: string): boolean {
  for (const [other, text] of texts) {
    const inside = other === name || other.startsWith(`${name}.`);
    if (inside && !isBeside(other) && text.trim() !== '') return true;
  }
  return false;
}

/** Every field, and every part of the form, in which something is written. */
export function writtenParts(texts: Texts): ReadonlySet<string> {
  const parts = new Set<string>();
  for (const [name, text] of texts) {
    if (isBeside(name) || text.trim() === '') continue;
    for (let end = name.length; end > 0; end = name.lastIndexOf('.', end - 1)) parts.add(name.slice(0, end));
  }
  return parts;
}

/** The rows of a list that have a field in the form, in order. */
export function rowsOf(texts: Texts, list: string): number[] {
  const rows = new Set<number>();
  for (const name of texts.keys()) {
    if (!name.startsWith(`${list}.`)) continue;
    const row = /^(\d{1,3})(?:\.|$)/.exec(name.slice(list.length + 1))?.[1];
    if (row !== undefined) rows.add(Number(row));
  }
  return [...rows].sort((a, b) => a - b);
}

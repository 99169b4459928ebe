/** One field that differs between two forms; empty text where one of them has no such field. */
export interface ChangedField {
  readonly name: string;
  readonly before: string;
  readonly after: string;
}

/** The fields that differ between two forms, each written as a query, in the order of the later one. */
export function changedFields(before: string, after: string): ChangedField[] {
  if (before === after) return [];
  const [old, now] = [new Map(new URLSearchParams(before)), new Map(new URLSearchParams(after))];
  const names = new Set([...now.keys(), ...old.keys()]);
  return [...names]
    .map((name) => ({ name, before: old.get(name) ?? '', after: now.get(name) ?? '' }))
    .filter((field) => field.before !== field.after);
}

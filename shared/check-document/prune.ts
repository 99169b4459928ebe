/** More than any list takes, and deeper than any document goes. */
const mostItems = 100;
const deepest = 10;

/**
 * A copy of an untrusted value that is small enough to be judged: lists and depth are cut where they are already past
 * every limit, so the judgement stays the same.
 */
export function prune(value: unknown, depth = deepest): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (depth === 0) return null;
  if (Array.isArray(value)) {
    return Array.from(value.slice(0, mostItems), (item: unknown) => prune(item, depth - 1));
  }
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, prune(item, depth - 1)]));
}

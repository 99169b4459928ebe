/**
 * A value as canonical JSON (RFC 8785): no white space, the keys of every object in the order of their UTF-16 code units, and
 * numbers and texts as JSON prints them. The same value is always the same text. Fields that are `undefined` are left out.
 *
 * @throws Error where something in it is no JSON, such as NaN
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const fields = Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item)}`);
    return `{${fields.join(',')}}`;
  }
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'number' && Number.isFinite(value)) return JSON.stringify(value);
  throw new Error(`This ${typeof value} can't be written as JSON.`);
}

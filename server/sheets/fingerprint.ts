import { createHash } from 'node:crypto';

/**
 * A short mark of what was checked: two sheets with the same mark come from the same document and the same version of the
 * tool. The order of fields does not count.
 *
 * @returns twelve hexadecimal digits in threes: `3f2 a91 bc0 d4e`
 */
export function fingerprint(document: unknown, tool: string): string {
  const digest = createHash('sha256')
    .update(JSON.stringify([tool, ordered(document)]))
    .digest('hex');
  return (digest.slice(0, 12).match(/.{3}/g) ?? []).join(' ');
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, item]) => [key, ordered(item)]),
  );
}

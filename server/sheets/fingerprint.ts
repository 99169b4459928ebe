import { createHash } from 'node:crypto';
import { canonicalJson } from './canonical-json.ts';

/**
 * A short mark of what was checked: two sheets with the same mark come from the same document and the same version of the
 * tool. The order of fields does not count.
 *
 * @returns twelve hexadecimal digits in threes: `3f2 a91 bc0 d4e`
 */
export function fingerprint(document: unknown, tool: string): string {
  return inGroups(digestOf(canonicalJson([tool, document])).slice(0, 12), 3);
}

/** The SHA-256 digest of a text (as UTF-8) or of bytes: 64 hexadecimal digits. */
export function digestOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/** How many digits a whole fingerprint has. */
export const fingerprintLength = 64;

/** A whole fingerprint as it is printed, so that it can be read out and typed in: sixteen groups of four digits. */
export function printedFingerprint(digest: string): string {
  return inGroups(digest, 4);
}

function inGroups(digits: string, size: number): string {
  return (digits.match(new RegExp(`.{${size}}`, 'g')) ?? []).join(' ');
}

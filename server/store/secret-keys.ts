import { createHash, randomBytes } from 'node:crypto';

/** A key that nobody can guess: 256 bits, as it can stand in an address or a cookie. */
export function newKey(): string {
  return randomBytes(32).toString('base64url');
}

/** What a key is kept as: whoever reads the store can't use it. A key is random enough to need no salt. */
export function keyHash(key: string): string {
  return createHash('sha256').update(key).digest('hex');
}

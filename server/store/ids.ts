import { randomBytes } from 'node:crypto';

/** An id nobody can guess and no other row has. */
export function newId(): string {
  return randomBytes(12).toString('hex');
}

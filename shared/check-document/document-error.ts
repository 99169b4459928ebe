import type { FieldError } from '../check-result.ts';

/** A document that can't be checked, with everything that is wrong with it. */
export class DocumentError extends Error {
  readonly errors: readonly FieldError[];

  constructor(errors: readonly FieldError[]) {
    super(errors.map(({ path, message }) => `${path || '/'}: ${message}`).join('\n'));
    this.name = 'DocumentError';
    this.errors = errors;
  }
}

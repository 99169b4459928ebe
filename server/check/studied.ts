import { DocumentError } from '../../shared/check-document/index.ts';
import type { FieldError } from '../../shared/check-result.ts';
import type { AnyFound } from './findings.ts';

/** What a thread answers: what was worked out, what is wrong with the document, or that it is at fault itself. */
export type Studied =
  | AnyFound
  | { readonly study: 'refused'; readonly errors: readonly FieldError[] }
  | { readonly study: 'fault'; readonly message: string };

/** Works something out for an answer. */
export function studied(workOut: () => AnyFound): Studied {
  try {
    return workOut();
  } catch (error) {
    if (error instanceof DocumentError) return { study: 'refused', errors: error.errors };
    return {
      study: 'fault',
      message: error instanceof Error ? (error.stack ?? error.message) : String(error),
    };
  }
}

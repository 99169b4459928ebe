import { check, DocumentError } from '../../calc/index.ts';
import {
  readDocument,
  type BracketShelfDocument,
  type SoundDocument,
} from '../../shared/check-document/index.ts';
import type { CheckResult, FieldError } from '../../shared/check-result.ts';

/** What comes of a document: the answer to it, or everything that is wrong with it. */
export type Answer =
  | { readonly ok: true; readonly document: BracketShelfDocument; readonly result: CheckResult }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly sound: SoundDocument };

/** Checks an untrusted document. */
export function answerTo(document: unknown): Answer {
  const reading = readDocument(document);
  try {
    const result = check(document);
    if (reading.ok) return { ok: true, document: reading.document, result };
    return reading;
  } catch (error) {
    if (!(error instanceof DocumentError)) throw error;
    return { ok: false, errors: error.errors, sound: reading.ok ? reading.document : reading.sound };
  }
}

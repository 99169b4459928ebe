import { check, DocumentError } from '../../calc/index.ts';
import {
  readShelfDocument,
  type BracketShelfDocument,
  type SoundShelf,
} from '../../shared/check-document/index.ts';
import type { BracketShelfResult, FieldError } from '../../shared/check-result.ts';

/** What comes of a document: the answer to it, or everything that is wrong with it. */
export type Answer =
  | { readonly ok: true; readonly document: BracketShelfDocument; readonly result: BracketShelfResult }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly sound: SoundShelf };

const nothingSound: SoundShelf = { element: 'bracket-shelf' };

/**
 * Checks an untrusted document, which has to be a shelf.
 *
 * @param waysOut whether ways out are wanted with it
 */
export function answerTo(document: unknown, waysOut: boolean): Answer {
  const reading = readShelfDocument(document);
  const sound = reading.ok ? reading.document : (reading.sound ?? nothingSound);
  try {
    const result = check(document, { waysOut });
    if (reading.ok && result.element === 'bracket-shelf')
      return { ok: true, document: reading.document, result };
    return { ok: false, errors: reading.ok ? [] : reading.errors, sound };
  } catch (error) {
    if (!(error instanceof DocumentError)) throw error;
    return { ok: false, errors: error.errors, sound };
  }
}

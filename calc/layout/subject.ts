import { bracketShelfSchema, type BracketShelfInput } from '../../shared/check-document/bracket-shelf.ts';
import {
  DocumentError,
  readShelfDocument,
  type BracketShelfDocument,
} from '../../shared/check-document/index.ts';
import { unknownNames } from '../elements/bracket-shelf/names.ts';
import { readShelf } from '../elements/bracket-shelf/read-shelf.ts';
import type { Shelf } from '../elements/bracket-shelf/shelf.ts';

/** A check as it was written, and the shelf that was read from it. */
export interface Subject {
  readonly input: BracketShelfInput;
  readonly shelf: Shelf;
}

/**
 * Reads a document that a search begins from.
 *
 * @throws DocumentError with every error of the document, as `check` does
 */
export function readSubject(document: unknown): Subject {
  const reading = readShelfDocument(document);
  if (!reading.ok)
    throw new DocumentError([
      ...reading.errors,
      ...(reading.sound === null ? [] : unknownNames(reading.sound)),
    ]);
  const shelf = readShelf(reading.document);
  if (!shelf.ok) throw new DocumentError(shelf.errors);
  if (!isInput(document)) throw new TypeError('a document that was read is one as it is written');
  return { input: document, shelf: shelf.shelf };
}

/** The shelf of a changed document; null where the change makes a document that can't be read. */
export function tryShelf(input: BracketShelfInput): Shelf | null {
  const reading = readShelfDocument(input);
  if (!reading.ok) return null;
  const shelf = readShelf(reading.document);
  return shelf.ok ? shelf.shelf : null;
}

/** Whether a value is a document as it is written. */
export function isInput(value: unknown): value is BracketShelfInput {
  return bracketShelfSchema.safeParse(value).success;
}

/** A shelf on brackets in other places. */
export function onBrackets(shelf: Shelf, positions_m: readonly number[]): Shelf {
  const { document } = shelf;
  const brackets = { ...document.brackets, positions: [...positions_m] };
  const moved: BracketShelfDocument = { ...document, brackets };
  return { ...shelf, document: moved, positions_m };
}

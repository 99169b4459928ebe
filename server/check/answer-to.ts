import {
  DocumentError,
  readDocument,
  type BracketShelfDocument,
  type CheckDocument,
  type CounterOverhangDocument,
  type CounterRunDocument,
  type SoundDocument,
  type WallFixingDocument,
} from '../../shared/check-document/index.ts';
import type {
  BracketShelfResult,
  CheckResult,
  CounterOverhangResult,
  CounterRunResult,
  FieldError,
  WallFixingResult,
} from '../../shared/check-result.ts';

/** A document and the answer to it. */
export type Checked =
  | {
      readonly element: 'bracket-shelf';
      readonly document: BracketShelfDocument;
      readonly result: BracketShelfResult;
    }
  | {
      readonly element: 'wall-fixing';
      readonly document: WallFixingDocument;
      readonly result: WallFixingResult;
    }
  | {
      readonly element: 'counter-overhang';
      readonly document: CounterOverhangDocument;
      readonly result: CounterOverhangResult;
    }
  | {
      readonly element: 'counter-run';
      readonly document: CounterRunDocument;
      readonly result: CounterRunResult;
    };

/** What comes of a document: the answer to it, or everything that is wrong with it. */
export type Answer =
  | ({ readonly ok: true } & Checked)
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly sound: SoundDocument };

const nothingSound: SoundDocument = { element: 'bracket-shelf' };

/** What is wrong with a document, of an error. @throws whatever else it is */
export function refusalOf(error: unknown): DocumentError {
  if (error instanceof DocumentError) return error;
  throw error;
}

/** An untrusted document with what came of checking it. */
export function answerOf(untrusted: unknown, outcome: CheckResult | DocumentError): Answer {
  const reading = readDocument(untrusted);
  const sound = reading.ok ? reading.document : (reading.sound ?? nothingSound);
  if (outcome instanceof DocumentError) return { ok: false, errors: outcome.errors, sound };
  const checked = reading.ok ? together(reading.document, outcome) : undefined;
  if (checked !== undefined) return { ok: true, ...checked };
  return { ok: false, errors: reading.ok ? [] : reading.errors, sound };
}

function together(document: CheckDocument, result: CheckResult): Checked | undefined {
  if (document.element === 'bracket-shelf' && result.element === 'bracket-shelf') {
    return { element: 'bracket-shelf', document, result };
  }
  if (document.element === 'wall-fixing' && result.element === 'wall-fixing') {
    return { element: 'wall-fixing', document, result };
  }
  if (document.element === 'counter-overhang' && result.element === 'counter-overhang') {
    return { element: 'counter-overhang', document, result };
  }
  if (document.element === 'counter-run' && result.element === 'counter-run') {
    return { element: 'counter-run', document, result };
  }
  return undefined;
}

import { counterOverhangSchema } from '../../../shared/check-document/counter-overhang.ts';
import {
  DocumentError,
  readDocument,
  type CounterOverhangDocument,
  type CounterOverhangInput,
} from '../../../shared/check-document/index.ts';
import type { CounterOverhangResult } from '../../../shared/check-result.ts';
import { checkCounterOverhang } from '../../elements/counter-overhang/index.ts';
import { unknownNamesOfOverhang } from '../../elements/counter-overhang/names.ts';

/** A counter as it was written and as it was read. */
export interface Counter {
  readonly input: CounterOverhangInput;
  readonly document: CounterOverhangDocument;
}

/**
 * Reads a counter that a search begins from.
 *
 * @throws DocumentError with every error of the document, as `check` does; and where it is no counter overhang
 */
export function readCounter(untrusted: unknown): Counter {
  const reading = readDocument(untrusted);
  if (!reading.ok) throw new DocumentError([...reading.errors]);
  if (reading.document.element !== 'counter-overhang')
    throw new DocumentError([
      { path: '/element', message: 'It takes "counter-overhang": only its props can be looked for.' },
    ]);
  const unknown = unknownNamesOfOverhang(reading.document);
  if (unknown.length > 0) throw new DocumentError(unknown);
  if (!isInput(untrusted)) throw new TypeError('a document that was read is one as it is written');
  return { input: untrusted, document: reading.document };
}

function isInput(value: unknown): value is CounterOverhangInput {
  return counterOverhangSchema.safeParse(value).success;
}

/** A changed counter, read; null where it can't be. */
export function tryRead(input: CounterOverhangInput): Counter | null {
  const reading = readDocument(input);
  if (!reading.ok || reading.document.element !== 'counter-overhang') return null;
  return { input, document: reading.document };
}

/** A changed counter, checked anew; null where the change makes a document that can't be read or checked. */
export function tryCounter(input: CounterOverhangInput): CounterOverhangResult | null {
  const counter = tryRead(input);
  if (counter === null) return null;
  try {
    return checkCounterOverhang(counter.document);
  } catch (error) {
    if (error instanceof DocumentError) return null;
    throw error;
  }
}

import type { CheckResult } from '../shared/check-result.ts';
import { DocumentError, readDocument } from '../shared/check-document/index.ts';
import { checkBracketShelf } from './elements/bracket-shelf/index.ts';
import { unknownNames } from './elements/bracket-shelf/names.ts';
import { remediesOf } from './layout/remedies/index.ts';
import { isInput } from './layout/subject.ts';

/**
 * Checks one document. Pure: the same document always gives the same result, and nothing else is read.
 *
 * @param document an untrusted check document, as parsed from JSON
 * @returns every check with demand, capacity and ratio, the analysis, and the calculation behind them
 * @throws DocumentError with every error of the document, each with its path and what the field takes
 */
export function check(document: unknown): CheckResult {
  const reading = readDocument(document);
  if (!reading.ok) throw new DocumentError([...reading.errors, ...unknownNames(reading.sound)]);
  return checkBracketShelf(reading.document, (shelf, judgement) =>
    isInput(document) ? remediesOf(document, shelf, judgement) : [],
  );
}

export { layouts } from './layout/layouts.ts';
export { reach } from './layout/reach/index.ts';
export { DocumentError } from '../shared/check-document/index.ts';

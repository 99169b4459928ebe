import type {
  BracketShelfResult,
  CheckResult,
  CounterOverhangResult,
  CounterRunResult,
  FieldError,
  WallFixingResult,
} from '../shared/check-result.ts';
import {
  DocumentError,
  readDocument,
  type BracketShelfInput,
  type CounterOverhangInput,
  type CounterRunInput,
  type SoundDocument,
  type WallFixingInput,
} from '../shared/check-document/index.ts';
import { checkBracketShelf } from './elements/bracket-shelf/index.ts';
import { unknownNames } from './elements/bracket-shelf/names.ts';
import { checkCounterOverhang } from './elements/counter-overhang/index.ts';
import { unknownNamesOfOverhang } from './elements/counter-overhang/names.ts';
import { checkCounterRun } from './elements/counter-run/index.ts';
import { checkWallFixing } from './elements/wall-fixing/index.ts';
import { unknownNamesOfWallFixing } from './elements/wall-fixing/names.ts';
import { needsRemedies, remediesOf } from './layout/remedies/index.ts';
import { isInput } from './layout/subject.ts';

/** What may be left out of an answer. */
interface CheckOptions {
  /** Whether ways out are looked for where a check fails or is close; each is a check of its own. */
  readonly waysOut?: boolean;
}

/**
 * Checks one document. Pure: the same document always gives the same result, and nothing else is read.
 *
 * @param document an untrusted check document, as parsed from JSON; its `element` says what is checked
 * @returns every check with demand, capacity and ratio, the analysis, and the calculation behind them
 * @throws DocumentError with every error of the document, each with its path and what the field takes
 */
export function check(document: BracketShelfInput, options?: CheckOptions): BracketShelfResult;
export function check(document: WallFixingInput, options?: CheckOptions): WallFixingResult;
export function check(document: CounterOverhangInput, options?: CheckOptions): CounterOverhangResult;
export function check(document: CounterRunInput, options?: CheckOptions): CounterRunResult;
export function check(document: unknown, options?: CheckOptions): CheckResult;
export function check(document: unknown, { waysOut = true }: CheckOptions = {}): CheckResult {
  const reading = readDocument(document);
  if (!reading.ok) throw new DocumentError([...reading.errors, ...namesNotKnown(reading.sound)]);
  if (reading.document.element === 'wall-fixing') return checkWallFixing(reading.document);
  if (reading.document.element === 'counter-overhang') return checkCounterOverhang(reading.document);
  if (reading.document.element === 'counter-run') return checkCounterRun(reading.document);
  return checkBracketShelf(reading.document, (shelf, judgement) =>
    waysOut && needsRemedies(judgement.checks) && isInput(document)
      ? remediesOf(document, shelf, judgement)
      : [],
  );
}

function namesNotKnown(sound: SoundDocument | null): FieldError[] {
  if (sound === null) return [];
  if (sound.element === 'bracket-shelf') return unknownNames(sound);
  if (sound.element === 'counter-run') return [];
  return sound.element === 'wall-fixing' ? unknownNamesOfWallFixing(sound) : unknownNamesOfOverhang(sound);
}

export { layouts } from './layout/layouts.ts';
export { props } from './layout/props/index.ts';
export { reach } from './layout/reach/index.ts';
export { DocumentError } from '../shared/check-document/index.ts';

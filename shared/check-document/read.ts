import { z } from 'zod';
import type { FieldError } from '../check-result.ts';
import { bracketShelfSchema, type BracketShelfDocument, type BracketShelfInput } from './bracket-shelf.ts';
import { bracketShelfConflicts } from './bracket-shelf-conflicts.ts';
import { counterOverhangSchema, type CounterOverhangDocument } from './counter-overhang.ts';
import { counterRunSchema, type CounterRunDocument } from './counter-run.ts';
import { counterRunConflicts } from './counter-run-conflicts.ts';
import { counterOverhangConflicts } from './counter-overhang-conflicts.ts';
import { explain } from './explain.ts';
import { quoted } from './field.ts';
import { headSchema } from './head.ts';
import { isRecord } from './parts.ts';
import { metricFirst } from './own-units.ts';
import { prune } from './prune.ts';
import {
  soundCounterOverhang,
  soundCounterRun,
  soundShelf,
  soundWallFixing,
  type SoundDocument,
  type SoundShelf,
} from './sound.ts';
import { wallFixingSchema, type WallFixingDocument } from './wall-fixing.ts';
import { wallFixingConflicts } from './wall-fixing-conflicts.ts';

/** A checked document of something that hangs on a wall. */
export type WallDocument = BracketShelfDocument | WallFixingDocument;

/** A checked document of any element. */
export type CheckDocument = WallDocument | CounterOverhangDocument | CounterRunDocument;

/**
 * What came of reading a document: the checked document, or everything that is wrong with it and what is left of it
 * without that; null where not even its element is known.
 */
export type Reading<Document = CheckDocument, Rest = SoundDocument> =
  | { readonly ok: true; readonly document: Document }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly sound: Rest | null };

const elementNames = ['bracket-shelf', 'wall-fixing', 'counter-overhang', 'counter-run'] as const;

/** The schema of every document the tool checks. */
export const documentSchema = z.discriminatedUnion('element', [
  bracketShelfSchema,
  wallFixingSchema,
  counterOverhangSchema,
  counterRunSchema,
]);

const headOnly = z.looseObject({
  ...headSchema,
  element: z.enum(elementNames, { error: `It takes ${quoted(elementNames)}.` }),
});
const mostErrors = 1000;
const shelfOnly =
  'Only a "bracket-shelf" can be opened here. Any other check runs on the command line and over HTTP.';

/**
 * Reads an untrusted document. Every error is reported at once: those of single fields, and those between fields
 * wherever the fields they need are sound by themselves.
 */
export function readDocument(document: BracketShelfInput): Reading<BracketShelfDocument, SoundShelf>;
export function readDocument(document: unknown): Reading;
export function readDocument(document: unknown): Reading {
  const pruned = prune(document);
  if (!isRecord(pruned)) {
    return refuse([{ path: '', message: 'It takes a JSON object, the check document.' }], null);
  }
  const named = Object.hasOwn(pruned, 'element') ? pruned['element'] : undefined;
  if (named === 'bracket-shelf') {
    return readElement(pruned, bracketShelfSchema, soundShelf, bracketShelfConflicts);
  }
  if (named === 'wall-fixing') {
    return readElement(pruned, wallFixingSchema, soundWallFixing, wallFixingConflicts);
  }
  if (named === 'counter-overhang') {
    return readElement(pruned, counterOverhangSchema, soundCounterOverhang, counterOverhangConflicts);
  }
  if (named === 'counter-run') {
    return readElement(pruned, counterRunSchema, soundCounterRun, counterRunConflicts);
  }
  return refuse(explain(headOnly.safeParse(pruned).error?.issues ?? [], headOnly, pruned), null);
}

/** Reads an untrusted document that has to be a bracket shelf. */
export function readShelfDocument(document: unknown): Reading<BracketShelfDocument, SoundShelf> {
  const reading = readDocument(document);
  if (reading.ok) {
    return reading.document.element === 'bracket-shelf'
      ? { ok: true, document: reading.document }
      : refuse([{ path: '/element', message: shelfOnly }], null);
  }
  const { errors, sound } = reading;
  return { ok: false, errors, sound: sound?.element === 'bracket-shelf' ? sound : null };
}

function readElement<Rest, Document extends Rest>(
  value: unknown,
  schema: z.ZodType<Document>,
  soundOf: (value: unknown) => Rest,
  conflictsOf: (sound: Rest, faults: readonly FieldError[]) => FieldError[],
): Reading<Document, Rest> {
  const parsed = schema.safeParse(value);
  if (parsed.success) {
    const conflicts = conflictsOf(parsed.data, []);
    if (conflicts.length === 0) return { ok: true, document: parsed.data };
    return refuse(conflicts, parsed.data);
  }
  const sound = soundOf(value);
  const explained = explain(parsed.error.issues, schema, value);
  const isMetric = isRecord(value) && value['units'] === 'metric';
  const faults = isMetric ? metricFirst(explained) : explained;
  return refuse([...faults, ...conflictsOf(sound, faults)], sound);
}

function refuse<Rest>(errors: readonly FieldError[], sound: Rest): Reading<never, Rest> {
  if (errors.length <= mostErrors) return { ok: false, errors, sound };
  const rest: FieldError = {
    path: '',
    message: `There are ${errors.length - mostErrors} more errors like these.`,
  };
  return { ok: false, errors: [...errors.slice(0, mostErrors), rest], sound };
}

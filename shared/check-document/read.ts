import { z } from 'zod';
import type { FieldError } from '../check-result.ts';
import { bracketShelfSchema, headSchema, type BracketShelfDocument } from './bracket-shelf.ts';
import { bracketShelfConflicts } from './bracket-shelf-conflicts.ts';
import { explain } from './explain.ts';
import { listed } from './field.ts';
import { isRecord } from './parts.ts';
import { prune } from './prune.ts';
import { soundParts, type SoundDocument } from './sound.ts';

/**
 * What came of reading a document: the checked document, or everything that is wrong with it and what is left of it
 * without that.
 */
export type Reading =
  | { readonly ok: true; readonly document: BracketShelfDocument }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly sound: SoundDocument };

const elementNames = ['bracket-shelf'] as const;

/** The schema of every document the tool checks. */
export const documentSchema = bracketShelfSchema;

const headOnly = z.looseObject({
  ...headSchema,
  element: z.enum(elementNames, { error: `It takes ${listed(elementNames)}.` }),
});
const mostErrors = 1000;

/**
 * Reads an untrusted document. Every error is reported at once: those of single fields, and those between fields
 * wherever the fields they need are sound by themselves.
 */
export function readDocument(document: unknown): Reading {
  const pruned = prune(document);
  if (!isRecord(pruned)) {
    return refuse([{ path: '', message: 'It takes a JSON object, the check document.' }]);
  }
  if (!Object.hasOwn(pruned, 'element') || !elementNames.some((name) => name === pruned['element'])) {
    return refuse(explain(headOnly.safeParse(pruned).error?.issues ?? [], headOnly, pruned));
  }
  const parsed = documentSchema.safeParse(pruned);
  if (parsed.success) {
    const conflicts = bracketShelfConflicts(parsed.data, []);
    if (conflicts.length === 0) return { ok: true, document: parsed.data };
    return refuse(conflicts, parsed.data);
  }
  const sound = soundParts(documentSchema, pruned);
  const faults = explain(parsed.error.issues, documentSchema, pruned);
  return refuse([...faults, ...bracketShelfConflicts(sound, faults)], sound);
}

function refuse(errors: readonly FieldError[], sound: SoundDocument = {}): Reading {
  if (errors.length <= mostErrors) return { ok: false, errors, sound };
  const rest: FieldError = {
    path: '',
    message: `There are ${errors.length - mostErrors} more errors like these.`,
  };
  return { ok: false, errors: [...errors.slice(0, mostErrors), rest], sound };
}

import { z } from 'zod';
import type { BracketShelfDocument, bracketShelfSchema } from './bracket-shelf.ts';
import { chosenSchema, isRecord } from './parts.ts';

/** What is left of a value where every unsound part is undefined. */
type Sound<T> = T extends readonly (infer Item)[]
  ? readonly (Sound<Item> | undefined)[]
  : T extends object
    ? { readonly [Key in keyof T]?: Sound<T[Key]> }
    : T;

/** A document of which only the sound parts are there. */
export type SoundDocument = Sound<BracketShelfDocument>;

/** What is sound in a document that has errors, so that the parts can still be held against each other. */
export function soundParts(schema: typeof bracketShelfSchema, value: unknown): SoundDocument {
  return sound(schema, value) ?? {};
}

function sound(schema: z.core.$ZodType, value: unknown): unknown {
  const chosen = chosenSchema(schema, value);
  if (chosen === undefined || value === undefined) return undefined;
  if (chosen instanceof z.ZodObject && isRecord(value)) {
    return Object.fromEntries(
      Object.entries<z.core.$ZodType>(chosen.shape).map(([key, child]) => [
        key,
        Object.hasOwn(value, key) ? sound(child, value[key]) : undefined,
      ]),
    );
  }
  if (chosen instanceof z.ZodArray && Array.isArray(value)) {
    return value.map((item) => sound(chosen.element, item));
  }
  const parsed = z.safeParse(chosen, value);
  return parsed.success ? parsed.data : undefined;
}

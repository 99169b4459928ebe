import { z } from 'zod';

/** Whether a value is an object that is no list. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * The schema that judges a value: what is inside `optional`, and the branch of a union that the value itself chooses.
 * Undefined where the value chooses none.
 */
export function chosenSchema(schema: z.core.$ZodType, value: unknown): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodOptional) return chosenSchema(schema.unwrap(), value);
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return schema;
  const key = schema.def.discriminator;
  return schema.options.find(
    (option) =>
      option instanceof z.ZodObject &&
      isRecord(value) &&
      z.safeParse(part(option, key) ?? z.never(), own(value, key)).success,
  );
}

/** The schema of one part of an object or a list; undefined where there is no such part. */
function part(schema: z.core.$ZodType, key: PropertyKey): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodArray) return schema.element;
  if (!(schema instanceof z.ZodObject)) return undefined;
  return Object.entries<z.core.$ZodType>(schema.shape).find(([name]) => name === key)?.[1];
}

/** The schema and the value at a path of a document, as far as both go. */
export function at(
  schema: z.core.$ZodType,
  value: unknown,
  path: readonly PropertyKey[],
): { readonly schema: z.core.$ZodType | undefined; readonly value: unknown } {
  let here: z.core.$ZodType | undefined = chosenSchema(schema, value);
  let held = value;
  for (const key of path) {
    held = own(held, key);
    const next = here === undefined ? undefined : part(here, key);
    here = next === undefined ? undefined : chosenSchema(next, held);
  }
  return { schema: here, value: held };
}

/** A property that the value itself has, never one it inherits. */
function own(value: unknown, key: PropertyKey): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return Object.getOwnPropertyDescriptor(value, key)?.value;
}

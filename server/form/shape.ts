import { z } from 'zod';
import type { Kind } from '../../shared/quantity/index.ts';

/** What a form needs to know of a schema: where its fields are and how their text becomes a value. */
export type Shape =
  | { readonly is: 'text' }
  | { readonly is: 'number' }
  | { readonly is: 'yes-no' }
  | { readonly is: 'quantity'; readonly kind: Kind }
  | { readonly is: 'constant'; readonly value: string | number }
  | Group
  | { readonly is: 'list'; readonly item: Shape }
  /** A list that always has the same few items. */
  | { readonly is: 'tuple'; readonly items: readonly Shape[] }
  /** A group whose other fields depend on the word in one of them. */
  | { readonly is: 'variants'; readonly key: string; readonly variants: ReadonlyMap<string, Group> }
  /** A group that is one of several, told apart by their fields; named by the first field of each. */
  | { readonly is: 'either'; readonly options: ReadonlyMap<string, Group> };

export interface Part {
  readonly shape: Shape;
  readonly optional: boolean;
}

export interface Group {
  readonly is: 'group';
  readonly parts: ReadonlyMap<string, Part>;
}

/**
 * Reads the shape of a form from the schema of a document, so that every field of the schema is a field of the form.
 *
 * @throws Error when the schema holds something a form has no field for
 */
function shapeOf(schema: z.core.$ZodType): Shape {
  if (schema instanceof z.ZodOptional) return shapeOf(schema.unwrap());
  if (schema instanceof z.ZodObject) return groupOf(schema);
  if (schema instanceof z.ZodArray) return { is: 'list', item: shapeOf(schema.element) };
  if (schema instanceof z.ZodTuple) return { is: 'tuple', items: schema.def.items.map(shapeOf) };
  if (schema instanceof z.ZodBoolean) return { is: 'yes-no' };
  if (schema instanceof z.ZodDiscriminatedUnion) return variantsOf(schema);
  if (schema instanceof z.ZodUnion) {
    const options = schema.options.map((option) => groupOf(option));
    return { is: 'either', options: new Map(options.map((option) => [firstField(option), option])) };
  }
  if (schema instanceof z.ZodNumber) return { is: 'number' };
  if (schema instanceof z.ZodLiteral) {
    const [value] = schema.values;
    if (typeof value === 'string' || typeof value === 'number') return { is: 'constant', value };
  }
  if (schema instanceof z.ZodString || schema instanceof z.ZodEnum) return { is: 'text' };
  if (schema instanceof z.ZodPipe) {
    const kind = kindOf(schema.meta()?.['x-quantity']);
    return kind === undefined ? { is: 'text' } : { is: 'quantity', kind };
  }
  throw new Error(`A form has no field for a schema of type ${schema._zod.def.type}.`);
}

/** The shape of a schema that is a group of fields. */
export function groupOf(schema: z.core.$ZodType): Group {
  if (!(schema instanceof z.ZodObject)) throw new Error('Only a group of fields can be one of several.');
  const parts = Object.entries<z.core.$ZodType>(schema.shape).map(([name, child]): [string, Part] => [
    name,
    { shape: shapeOf(child), optional: child instanceof z.ZodOptional },
  ]);
  return { is: 'group', parts: new Map(parts) };
}

function variantsOf(schema: z.ZodDiscriminatedUnion): Shape {
  const key = schema.def.discriminator;
  const variants = schema.options.map((option): [string, Group] => {
    const group = groupOf(option);
    const word = group.parts.get(key)?.shape;
    if (word?.is !== 'constant') throw new Error(`"${key}" tells no variant from another.`);
    return [String(word.value), group];
  });
  return { is: 'variants', key, variants: new Map(variants) };
}

function firstField(group: Group): string {
  const [name] = group.parts.keys();
  if (name === undefined) throw new Error('A group without fields can not be told from others.');
  return name;
}

const kinds: Readonly<Record<Kind, Kind>> = {
  length: 'length',
  force: 'force',
  'line-load': 'line-load',
  'area-load': 'area-load',
  stress: 'stress',
  couple: 'couple',
  density: 'density',
  mass: 'mass',
};

function kindOf(word: unknown): Kind | undefined {
  return Object.values(kinds).find((kind) => kind === word);
}

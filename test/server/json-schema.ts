/**
 * A validator for the part of JSON Schema 2020-12 that the document's schema uses, written from the specification
 * (draft-bhutton-json-schema-01 and -validation-01) and sharing nothing with the library that makes the schema. A
 * keyword it does not know is an error, so nothing in the schema goes unread.
 */
type Schema = Readonly<Record<string, unknown>>;
type Rule = (taken: unknown, value: unknown, schema: Schema) => boolean;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const asSchema = (value: unknown): Schema => {
  if (!isObject(value)) throw new Error(`A schema is an object, not ${JSON.stringify(value)}`);
  return value;
};
const asList = (value: unknown): unknown[] => {
  if (!Array.isArray(value)) throw new Error(`Not a list: ${JSON.stringify(value)}`);
  return value as unknown[];
};
const length = (text: string): number => Array.from(text).length;

const types: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: isObject,
  array: Array.isArray,
  boolean: (value) => typeof value === 'boolean',
  string: (value) => typeof value === 'string',
  number: (value) => typeof value === 'number',
  integer: Number.isInteger,
};

const rules: Readonly<Record<string, Rule>> = {
  $schema: () => true,
  title: () => true,
  description: () => true,
  'x-quantity': () => true,
  format: () => true,
  type: (taken, value) => {
    const test = types[String(taken)];
    if (test === undefined) throw new Error(`Unknown type ${String(taken)}`);
    return test(value);
  },
  const: (taken, value) => taken === value,
  enum: (taken, value) => asList(taken).includes(value),
  properties: (taken, value) =>
    !isObject(value) ||
    Object.entries(asSchema(taken)).every(
      ([key, schema]) => !Object.hasOwn(value, key) || isValid(schema, value[key]),
    ),
  required: (taken, value) =>
    !isObject(value) || asList(taken).every((key) => Object.hasOwn(value, String(key))),
  additionalProperties: (taken, value, schema) => {
    if (taken !== false) throw new Error('Only false is known here');
    return (
      !isObject(value) ||
      Object.keys(value).every((key) => Object.hasOwn(asSchema(schema['properties']), key))
    );
  },
  items: (taken, value) => !Array.isArray(value) || value.every((item) => isValid(taken, item)),
  prefixItems: (taken, value) =>
    !Array.isArray(value) ||
    asList(taken).every((schema, index) => index >= value.length || isValid(schema, value[index])),
  minItems: (taken, value) => !Array.isArray(value) || value.length >= Number(taken),
  maxItems: (taken, value) => !Array.isArray(value) || value.length <= Number(taken),
  minLength: (taken, value) => typeof value !== 'string' || length(value) >= Number(taken),
  maxLength: (taken, value) => typeof value !== 'string' || length(value) <= Number(taken),
  pattern: (taken, value) => typeof value !== 'string' || new RegExp(String(taken), 'u').test(value),
  minimum: (taken, value) => typeof value !== 'number' || value >= Number(taken),
  maximum: (taken, value) => typeof value !== 'number' || value <= Number(taken),
  anyOf: (taken, value) => asList(taken).some((schema) => isValid(schema, value)),
  oneOf: (taken, value) => asList(taken).filter((schema) => isValid(schema, value)).length === 1,
};

/** Whether a value is valid against a schema. @throws Error where the schema holds a keyword that is not known here */
export function isValid(schema: unknown, value: unknown): boolean {
  return Object.entries(asSchema(schema)).every(([keyword, taken]) => {
    const rule = rules[keyword];
    if (rule === undefined) throw new Error(`Unknown keyword ${keyword}`);
    return rule(taken, value, asSchema(schema));
  });
}

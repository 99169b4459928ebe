import { z } from 'zod';
import type { FieldError } from '../check-result.ts';
import { quoted } from './field.ts';
import { at } from './parts.ts';

/**
 * Puts what a schema found wrong into the words of a colleague: where it is, and what the field takes.
 *
 * @param issues what the schema found
 * @param schema the schema of the whole document
 * @param document the document it judged
 */
export function explain(
  issues: readonly z.core.$ZodIssue[],
  schema: z.core.$ZodType,
  document: unknown,
): FieldError[] {
  // A value of the wrong type can also be too long or too small; only the type is worth saying.
  const mistyped = new Set(issues.filter(isTypeIssue).map(({ path }) => pointer(path)));
  const worthSaying = issues.filter((issue) => isTypeIssue(issue) || !mistyped.has(pointer(issue.path)));
  return distinct(worthSaying.flatMap((issue) => explainOne(issue, schema, document)));
}

function isTypeIssue({ code }: z.core.$ZodIssue): boolean {
  return code === 'invalid_type';
}

function distinct(errors: readonly FieldError[]): FieldError[] {
  return [...new Map(errors.map((error) => [`${error.path} ${error.message}`, error])).values()];
}

/** A JSON pointer (RFC 6901). A name of any length can be a key of a document; the pointer keeps the start of it. */
function pointer(path: readonly PropertyKey[]): string {
  return path
    .map((part) => `/${String(part).slice(0, 80).replaceAll('~', '~0').replaceAll('/', '~1')}`)
    .join('');
}

function explainOne(issue: z.core.$ZodIssue, schema: z.core.$ZodType, document: unknown): FieldError[] {
  const place = at(schema, document, issue.path);
  if (issue.code === 'unrecognized_keys') {
    const fields = fieldNames(place.schema);
    const message = `There is no such field here.${fields.length === 0 ? '' : ` The fields here are ${quoted(fields, 'and')}.`}`;
    return issue.keys.map((key) => ({ path: pointer([...issue.path, key]), message }));
  }
  const branch = issue.code === 'invalid_union' ? likelyBranch(issue.errors) : undefined;
  if (branch !== undefined) {
    const inner = branch.map((each) => ({ ...each, path: [...issue.path, ...each.path] }));
    return explain(inner, schema, document);
  }
  const isGroup = issue.code === 'invalid_type' && issue.expected === 'object';
  const takes = isGroup ? groupAdvice(place.schema, issue.message) : issue.message;
  const message = place.value === undefined ? `It is missing. ${takes}` : takes;
  return [{ path: pointer(issue.path), message }];
}

/** The one branch of a union whose fields are the ones that were written. */
function likelyBranch(
  branches: readonly (readonly z.core.$ZodIssue[])[],
): readonly z.core.$ZodIssue[] | undefined {
  const likely = branches.filter((issues) =>
    issues.every(({ code, path }) => path.length > 0 && code !== 'unrecognized_keys'),
  );
  return likely.length === 1 ? likely[0] : undefined;
}

function fieldNames(schema: z.core.$ZodType | undefined): string[] {
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

function groupAdvice(schema: z.core.$ZodType | undefined, otherwise: string): string {
  if (!(schema instanceof z.ZodObject)) return otherwise;
  const needed = Object.entries<z.core.$ZodType>(schema.shape)
    .filter(([, child]) => !(child instanceof z.ZodOptional))
    .map(([name]) => name);
  if (needed.length === 0) return `It takes a group of fields: any of ${quoted(fieldNames(schema))}.`;
  return `It takes a group of fields, with ${quoted(needed, 'and')} at least.`;
}

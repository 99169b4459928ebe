import { z } from 'zod';
import type { JobWords } from '../store/tables.ts';

const line = (longest: number) =>
  z
    .string()
    .trim()
    .max(longest, { error: `It takes at most ${longest} characters.` })
    .regex(/^\P{Cc}*$/u, { error: 'It takes plain text on one line.' });

/** The words of a job as they are taken from a form or a file. */
export const jobWordsSchema = z.strictObject({
  name: line(120).min(1, { error: 'A job needs a name, such as the house or the client it is for.' }),
  client: line(120),
  address: line(200),
  reference: line(80),
  preparedBy: line(80),
  checkedBy: line(80),
  edition: line(120),
  authority: line(120),
  notes: z
    .string()
    .transform((text) => text.replaceAll('\r\n', '\n').trim())
    .refine((text) => text.length <= 4000, { error: 'It takes at most 4000 characters.' })
    .refine((text) => !/[^\P{Cc}\n\t]/u.test(text), { error: 'It takes plain text.' }),
});

export const jobFields = Object.keys(jobWordsSchema.shape);

/** What came of reading a job's form: its words, or what is wrong with each field. */
export type JobReading =
  | { readonly ok: true; readonly words: JobWords }
  | { readonly ok: false; readonly errors: ReadonlyMap<string, string> };

/** Reads a job's form; a field that was not sent is empty. */
export function readJobForm(fields: URLSearchParams): JobReading {
  const written = Object.fromEntries(jobFields.map((name) => [name, fields.get(name) ?? '']));
  const parsed = jobWordsSchema.safeParse(written);
  if (parsed.success) return { ok: true, words: parsed.data };
  const errors = new Map<string, string>();
  for (const { path, message } of parsed.error.issues) {
    const name = String(path[0]);
    if (!errors.has(name)) errors.set(name, message);
  }
  return { ok: false, errors };
}

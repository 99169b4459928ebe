import { z } from 'zod';
import { readDocument, readJson } from '../../shared/check-document/index.ts';
import type { FieldError } from '../../shared/check-result.ts';
import { sentForm } from '../check/check-state.ts';
import type { Desk } from '../desk.ts';
import { fillForm, queryOf, textsOf } from '../form/index.ts';
import { insertCheck, type Check, type NewCheck } from '../store/checks.ts';
import { insertJob, type Job } from '../store/jobs.ts';
import type { Actor } from '../store/actor.ts';
import type { JobWords } from '../store/tables.ts';
import { jobFields, jobWordsSchema } from './job-words.ts';

/** A job with its checks as one document to keep, to send, and to bring in again. */
export interface JobFile {
  readonly schema: 1;
  readonly kind: 'job';
  readonly job: Readonly<Record<string, string>>;
  /** A check that can be worked out is a check document; one that can't yet is its form as it was filled in. */
  readonly checks: readonly (
    | { readonly document: Readonly<Record<string, unknown>> }
    | { readonly unfinished: Readonly<Record<string, string>> }
  )[];
}

const mostChecks = 200;
const mostErrors = 50;

const schema = z.strictObject({
  schema: z.literal(1, { error: 'It takes the number 1, the version of this document.' }),
  kind: z.literal('job', { error: 'It takes "job". A single check is opened from the first page.' }),
  job: jobWordsSchema,
  checks: z
    .array(
      z.union(
        [
          z.strictObject({ document: z.record(z.string(), z.unknown()) }),
          z.strictObject({ unfinished: z.record(z.string().max(200), z.string().max(2000)) }),
        ],
        { error: 'It takes a group with "document", a check document, or with "unfinished".' },
      ),
      { error: `It takes a list of at most ${mostChecks} checks.` },
    )
    .max(mostChecks, { error: `It takes a list of at most ${mostChecks} checks.` }),
});

/** A job as a file. @param checks how they stand by this version */
export function jobFile(job: Job, checks: readonly Check[]): JobFile {
  const words = new Map(Object.entries(job).filter(([name]) => jobFields.includes(name)));
  return {
    schema: 1,
    kind: 'job',
    job: Object.fromEntries(jobFields.map((name) => [name, String(words.get(name) ?? '')])),
    checks: checks.map(({ form, standing }) =>
      standing === 'unfinished'
        ? { unfinished: Object.fromEntries(new URLSearchParams(form)) }
        : { document: sentForm(textsOf(form)).reading.document },
    ),
  };
}

/** What came of reading a file: a job with the forms of its checks, or everything that is wrong with it. */
export type JobFileReading =
  | { readonly ok: true; readonly words: JobWords; readonly forms: readonly string[] }
  | { readonly ok: false; readonly status: 400 | 422; readonly errors: readonly FieldError[] };

function isCheck(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'element' in value && !('kind' in value);
}

function messageOf(code: string, message: string): string {
  if (code === 'unrecognized_keys') return 'There are fields here that a job does not have.';
  return message.startsWith('Invalid input') ? 'It is missing, or is not what a job has here.' : message;
}

/** Reads an untrusted file. */
export function readJobFile(bytes: Uint8Array): JobFileReading {
  const json = readJson(bytes);
  if (!json.ok) return { ok: false, status: 400, errors: [{ path: '', message: json.message }] };
  if (isCheck(json.value)) {
    const message = 'This file is no job. A single check is opened from the first page.';
    return { ok: false, status: 422, errors: [{ path: '', message }] };
  }
  const parsed = schema.safeParse(json.value);
  if (!parsed.success) {
    const errors = parsed.error.issues.map(({ path, message, code }) => ({
      path: path.map((part) => `/${String(part).slice(0, 80)}`).join(''),
      message: messageOf(code, message),
    }));
    return { ok: false, status: 422, errors: bounded(errors) };
  }
  const errors: FieldError[] = [];
  const forms = parsed.data.checks.map((check, index) => {
    if ('unfinished' in check) return sentForm(textsOf(queryOf(Object.entries(check.unfinished)))).query;
    const reading = readDocument(check.document);
    if (reading.ok) return queryOf(fillForm(check.document));
    errors.push(
      ...reading.errors.map(({ path, message }) => ({ path: `/checks/${index}/document${path}`, message })),
    );
    return '';
  });
  if (errors.length > 0) return { ok: false, status: 422, errors: bounded(errors) };
  return { ok: true, words: parsed.data.job, forms };
}

/** Brings a job in, all of it or nothing. */
export async function bringJobIn(
  { store, study }: Pick<Desk, 'store' | 'study'>,
  actor: Actor,
  words: JobWords,
  forms: readonly string[],
): Promise<Job> {
  const checks: NewCheck[] = [];
  for (const form of forms) {
    const standing = await study.standing(sentForm(textsOf(form)));
    checks.push({ form, standing, reason: 'brought in from a file' });
  }
  return store.db.transaction().execute(async (db) => {
    const inside = { ...store, db };
    const job = await insertJob(inside, actor, words);
    for (const check of checks) await insertCheck(inside, actor, job.id, check);
    return job;
  });
}

function bounded(errors: readonly FieldError[]): FieldError[] {
  if (errors.length <= mostErrors) return [...errors];
  return [
    ...errors.slice(0, mostErrors),
    { path: '', message: `There are ${errors.length - mostErrors} more errors like these.` },
  ];
}

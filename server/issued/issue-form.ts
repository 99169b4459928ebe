import { headSchema } from '../../shared/check-document/head.ts';
import type { SeenVersions } from '../store/issued.ts';
import { wholeNumber } from '../visits/whole-number.ts';
import type { SheetNames } from './frozen-document.ts';

/** What somebody fills in to issue a sheet. */
export interface IssueForm extends SheetNames {
  readonly paper: string;
  readonly insist: string;
  readonly seen: SeenVersions;
}

/** A form that was sent, with what is wrong with each field; none: it will do. */
export interface IssueFormReading {
  readonly form: IssueForm;
  readonly errors: ReadonlyMap<keyof SheetNames, string>;
}

/** The limits are those of the check document, since its names stand in it. */
const { title, preparedBy, checkedBy, date } = headSchema;
const schemas = { title, preparedBy, checkedBy, date } as const;
const mayBeEmpty: ReadonlySet<string> = new Set(['preparedBy', 'checkedBy']);

/** Reads the form that issues a sheet. */
export function readIssueForm(fields: URLSearchParams): IssueFormReading {
  const written = (name: string): string => (fields.get(name) ?? '').trim();
  const form: IssueForm = {
    title: written('title'),
    preparedBy: written('preparedBy'),
    checkedBy: written('checkedBy'),
    date: written('date'),
    paper: written('paper'),
    insist: written('insist'),
    seen: { check: wholeNumber(fields.get('check.version')), job: wholeNumber(fields.get('job.version')) },
  };
  const errors = new Map<keyof SheetNames, string>();
  for (const name of ['title', 'preparedBy', 'checkedBy', 'date'] as const) {
    if (form[name] === '' && mayBeEmpty.has(name)) continue;
    const parsed = schemas[name].safeParse(form[name]);
    if (!parsed.success) errors.set(name, parsed.error.issues[0]?.message ?? '');
  }
  return { form, errors };
}

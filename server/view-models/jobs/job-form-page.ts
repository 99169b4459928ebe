import type { Job } from '../../store/jobs.ts';
import type { JobWords } from '../../store/tables.ts';
import { atTime } from './times.ts';
import { pageFrame, type PageFrame } from '../page.ts';

interface JobField {
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly hasHint: boolean;
  readonly value: string;
  readonly error: string;
  readonly hasError: boolean;
  readonly isLong: boolean;
}

export interface JobFormPage extends PageFrame {
  readonly heading: string;
  readonly action: string;
  readonly submit: string;
  readonly back: string;
  readonly token: string;
  readonly version: string;
  readonly fields: readonly JobField[];
  readonly problem: string;
  readonly hasProblem: boolean;
  /** A check that goes into the job once it is made; empty for none. */
  readonly check: string;
  /** What somebody else wrote in the meantime; none otherwise. */
  readonly theirs: readonly { readonly label: string; readonly mine: string; readonly theirs: string }[];
  readonly isStale: boolean;
  /** Version of theirs, to save over; empty for none. */
  readonly over: string;
  /** Whether it is saved as it is written: a job that there is. */
  readonly savesItself: boolean;
  readonly isSaved: boolean;
  readonly saved: string;
}

const labels: Readonly<Record<keyof JobWords, readonly [label: string, hint: string]>> = {
  name: ['Name', 'What you call it, such as the house or the room'],
  client: ['Client', ''],
  address: ['Address', ''],
  reference: ['Reference', 'Your own order or file number'],
  preparedBy: ['Prepared by', 'Printed on the sheets'],
  checkedBy: ['Checked by', 'Printed on the sheets'],
  edition: ['Code adopted there', 'Building code and edition of the place'],
  authority: ['Authority', 'Who has jurisdiction there'],
  notes: ['Notes', ''],
};

function isJobField(name: string): name is keyof JobWords {
  return Object.hasOwn(labels, name);
}

/** The form in which a job is written down, new or changed, with what is wrong beside each field. */
export function jobFormPage(
  about: {
    readonly job: Job | undefined;
    readonly written: (name: keyof JobWords) => string;
    readonly errors: ReadonlyMap<string, string>;
    readonly theirs: Job | undefined;
    readonly check: string;
  },
  token: string,
  now: Date,
): JobFormPage {
  const { job, written, errors, theirs, check } = about;
  const names = Object.keys(labels).filter(isJobField);
  const heading = job === undefined ? 'A new job' : `Job ${job.number}`;
  const differing = names.filter((name) => theirs !== undefined && theirs[name] !== written(name));
  return {
    ...pageFrame(heading),
    heading,
    action: job === undefined ? '/jobs' : `/jobs/${job.id}/edit`,
    submit: job === undefined ? 'Begin the job' : 'Save',
    back: job === undefined ? '/' : `/jobs/${job.id}`,
    token,
    version: String(job?.version ?? 0),
    fields: names.map((name) => ({
      name,
      label: labels[name][0],
      hint: labels[name][1],
      hasHint: labels[name][1] !== '',
      value: written(name),
      error: errors.get(name) ?? '',
      hasError: errors.has(name),
      isLong: name === 'notes',
    })),
    problem: errors.size === 1 ? 'One thing to put right' : `${errors.size} things to put right`,
    hasProblem: errors.size > 0,
    check,
    isStale: theirs !== undefined,
    over: String(theirs?.version ?? ''),
    savesItself: job !== undefined,
    isSaved: job !== undefined && theirs === undefined && errors.size === 0,
    saved: job === undefined ? '' : `Saved ${atTime(job.changedAt, now)}`,
    theirs: differing.map((name) => ({
      label: labels[name][0],
      mine: written(name) || 'nothing',
      theirs: theirs?.[name] || 'nothing',
    })),
  };
}

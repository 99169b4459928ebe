import { differences } from '../../jobs/field-words.ts';
import type { Check } from '../../store/checks.ts';
import type { Job } from '../../store/jobs.ts';
import type { IssuedSheet } from '../../store/issued.ts';
import type { Saved } from '../../store/save-check.ts';
import { mayActAs, type Visit } from '../../visits/visit.ts';
import { issuedList } from '../issued/issued-rows.ts';
import type { CheckPlace, IssuingView, KeepingView, TrailView } from '../check-page.ts';
import { atTime } from './times.ts';

/** Where a check of a job is. */
export function checkAddress({ jobId, id }: Pick<Check, 'jobId' | 'id'>): string {
  return `/jobs/${jobId}/checks/${id}`;
}

/** A check's page as a part of its job; without the way back where the job could not be read. */
export function keptPlace(
  address: string,
  token: string,
  editor: string,
  keeping: KeepingView,
  trail: readonly TrailView[] = [],
  issuing: readonly IssuingView[] = [],
): CheckPlace {
  const hidden = [
    { name: 'token', value: token },
    { name: 'save.editor', value: editor },
  ];
  return { action: address, isKept: true, hidden, trail, issuing, keeping: [keeping] };
}

/** The way from a check back to its job. */
export function trailTo(job: Job, check: Check): TrailView {
  return {
    jobAddress: `/jobs/${job.id}`,
    job: job.name,
    check: `Check ${job.number}-${check.number}`,
    historyAddress: `${checkAddress(check)}/history`,
  };
}

/** The way from a check to an issued sheet, and the sheets that were issued of it. */
export function issuingView(check: Check, sheets: readonly IssuedSheet[], visit: Visit): IssuingView {
  return {
    issueAddress: mayActAs(visit.role, 'member') ? `${checkAddress(check)}/issue` : '',
    lists: issuedList('Issued sheets of this check', sheets),
  };
}

/** That a check is saved, and when. */
export function savedView(check: Check, now: Date): KeepingView {
  const by = check.changedBy === '' ? '' : ` by ${check.changedBy}`;
  return {
    isSaved: true,
    said: `Saved ${atTime(check.changedAt, now)}${by}`,
    base: String(check.version),
    conflict: [],
  };
}

/** That a check is not saved, and why not. */
export function notSavedView(reason: string, base: string): KeepingView {
  return { isSaved: false, said: reason, base, conflict: [] };
}

/** What became of a save. */
export function keepingView(saved: Saved, form: string, base: string, now: Date): KeepingView {
  if (saved.kind !== 'stale') return savedView(saved.check, now);
  const { check } = saved;
  const by = check.changedBy === '' ? 'Another window' : check.changedBy;
  const rows = differences(form, check.form).map(({ field, before, after }) => ({
    field,
    mine: before,
    theirs: after,
  }));
  return {
    isSaved: false,
    said: `${by} saved this check ${atTime(check.changedAt, now)}, after it was opened here.`,
    base,
    conflict: [
      {
        said:
          rows.length === 0
            ? 'Both are the same by now.'
            : 'What was saved stays in the history, also where it is saved over. What is here is kept nowhere until it is saved.',
        rows,
        theirAddress: checkAddress(check),
        over: String(check.version),
      },
    ],
  };
}

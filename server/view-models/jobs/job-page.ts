import { caution } from '../../../shared/cautions.ts';
import { elementNamed, usualElement } from '../../form/index.ts';
import type { Check } from '../../store/checks.ts';
import type { IssuedSheet } from '../../store/issued.ts';
import type { Job } from '../../store/jobs.ts';
import { mayActAs, type Visit } from '../../visits/visit.ts';
import { elementWords } from '../form/words.ts';
import { issuedList, type IssuedList } from '../issued/issued-rows.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import { jobFacts, type Fact } from './job-facts.ts';
import { checkAddress } from './kept-check.ts';
import { standingView, type StandingView } from './standing-view.ts';
import { shortTime } from './times.ts';

export interface CheckRow extends StandingView {
  readonly address: string;
  readonly label: string;
  readonly title: string;
  readonly changed: string;
  /** Whether it can be worked out, and so issued. */
  readonly canIssue: boolean;
  readonly canGoUp: boolean;
  readonly canGoDown: boolean;
}

export interface JobPageView extends PageFrame {
  readonly token: string;
  readonly mayChange: boolean;
  /** Whether others can be shown it by a link. */
  readonly canShare: boolean;
  readonly address: string;
  /** Where a PDF of the whole job is begun. */
  readonly beginAddress: string;
  readonly label: string;
  readonly name: string;
  readonly facts: readonly Fact[];
  readonly hasNotes: boolean;
  readonly notes: string;
  readonly rows: readonly CheckRow[];
  readonly hasRows: boolean;
  readonly caution: string;
  /** The job's issued sheets, those of deleted checks too; one list, or none. */
  readonly issued: readonly IssuedList[];
  /** What a check can be begun of. */
  readonly elements: readonly { readonly value: string; readonly label: string }[];
  readonly isArchived: boolean;
  readonly isDeleted: boolean;
  /** A check that was just deleted, to be brought back: one, or none. */
  readonly deleted: readonly { readonly address: string }[];
}

/** The page of a job: its words, and its checks with how each stands. */
export function jobPage(
  job: Job,
  checks: readonly Check[],
  issued: readonly IssuedSheet[],
  visit: Visit,
  deletedCheck: string,
  now: Date,
): JobPageView {
  const address = `/jobs/${job.id}`;
  return {
    ...pageFrame(job.name),
    token: visit.token,
    mayChange: mayActAs(visit.role, 'member') && job.isDeleted === 0,
    canShare: visit.person !== undefined,
    address,
    beginAddress: `${address}/papers`,
    label: `Job ${job.number}`,
    name: job.name,
    facts: jobFacts(job),
    hasNotes: job.notes !== '',
    notes: job.notes,
    rows: checks.map((check, index) => ({
      ...standingView(check),
      address: checkAddress(check),
      label: `${job.number}-${check.number}`,
      title: check.title || elementWords[elementNamed(check.element) ?? usualElement],
      changed: shortTime(check.changedAt, now),
      canIssue: check.standing !== 'unfinished',
      canGoUp: index > 0,
      canGoDown: index < checks.length - 1,
    })),
    hasRows: checks.length > 0,
    caution: caution.aid,
    issued: issuedList('Issued sheets', issued),
    elements: Object.entries(elementWords).map(([value, label]) => ({ value, label })),
    isArchived: job.isArchived === 1,
    isDeleted: job.isDeleted === 1,
    deleted: deletedCheck === '' ? [] : [{ address: `${address}/checks/${deletedCheck}/undelete` }],
  };
}

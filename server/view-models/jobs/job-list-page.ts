import {
  startAddress,
  startFixingAddress,
  startOverhangAddress,
  startRunAddress,
} from '../../check/addresses.ts';
import { caution } from '../../../shared/cautions.ts';
import type { JobPage, JobPlace, JobQuery, JobSort } from '../../store/job-list.ts';
import { mayActAs, type Visit } from '../../visits/visit.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import { jobStanding, type StandingView } from './standing-view.ts';
import { shortTime } from './times.ts';

interface JobRow extends StandingView {
  readonly address: string;
  readonly label: string;
  readonly name: string;
  readonly client: string;
  readonly changed: string;
}

interface ChoiceView {
  readonly label: string;
  readonly address: string;
  readonly isChosen: boolean;
}

export interface JobListPage extends PageFrame {
  readonly startAddress: string;
  readonly startFixingAddress: string;
  readonly startOverhangAddress: string;
  readonly startRunAddress: string;
  readonly token: string;
  readonly mayChange: boolean;
  readonly isSignedIn: boolean;
  readonly person: string;
  readonly hasJobs: boolean;
  readonly rows: readonly JobRow[];
  readonly hasRows: boolean;
  readonly caution: string;
  readonly nothingFound: string;
  readonly search: string;
  readonly place: string;
  readonly places: readonly ChoiceView[];
  readonly sorts: readonly { readonly value: JobSort; readonly label: string; readonly isChosen: boolean }[];
  readonly isDeletedList: boolean;
  readonly found: string;
  readonly pages: readonly ChoiceView[];
  readonly hasPages: boolean;
  /** A job that was just deleted, to be brought back: one, or none. */
  readonly deleted: readonly { readonly address: string }[];
}

const placeWords: Readonly<Record<JobPlace, string>> = {
  open: 'Open',
  archived: 'Archived',
  deleted: 'Deleted',
};
const sortWords: Readonly<Record<JobSort, string>> = {
  changed: 'Last changed first',
  number: 'Newest first',
  name: 'By name',
  client: 'By client',
};

/** The first page: the office's jobs, and the ways into a check. */
export function jobListPage(
  { jobs, total, page, pages }: JobPage,
  counts: Readonly<Record<JobPlace, number>>,
  asked: JobQuery,
  visit: Visit,
  deletedId: string,
  now: Date,
): JobListPage {
  const addressOf = (changes: Partial<JobQuery>): string => {
    const query = { ...asked, ...changes };
    const words = { place: query.place, search: query.search, sort: query.sort, page: String(query.page) };
    return `/?${new URLSearchParams(words).toString()}`;
  };
  const near = [...new Set([1, page - 1, page, page + 1, pages])].filter(
    (each) => each >= 1 && each <= pages,
  );
  return {
    ...pageFrame('Jobs'),
    startAddress,
    startFixingAddress,
    startOverhangAddress,
    startRunAddress,
    token: visit.token,
    mayChange: mayActAs(visit.role, 'member'),
    isSignedIn: visit.person !== undefined,
    person: visit.actor.name,
    hasJobs: counts.open + counts.archived + counts.deleted > 0,
    rows: jobs.map((job) => ({
      ...jobStanding(job.checks),
      address: `/jobs/${job.id}`,
      label: [`Job ${job.number}`, job.reference].filter(Boolean).join(', '),
      name: job.name,
      client: [job.client, job.address].filter(Boolean).join(', '),
      changed: shortTime(job.changedAt, now),
    })),
    hasRows: jobs.length > 0,
    caution: caution.aid,
    nothingFound: asked.search === '' ? 'There are no jobs here.' : `No job here fits “${asked.search}”.`,
    search: asked.search,
    place: asked.place,
    places: Object.entries(placeWords).map(([place, label]) => ({
      label: `${label} (${counts[isPlace(place) ? place : 'open']})`,
      address: `/?place=${place}`,
      isChosen: place === asked.place,
    })),
    sorts: Object.entries(sortWords).map(([value, label]) => ({
      value: isSort(value) ? value : 'changed',
      label,
      isChosen: value === asked.sort,
    })),
    isDeletedList: asked.place === 'deleted',
    found: total === 1 ? 'One job' : `${total} jobs`,
    pages: near.map((each) => ({
      label: `Page ${each}`,
      address: addressOf({ page: each }),
      isChosen: each === page,
    })),
    hasPages: pages > 1,
    deleted: deletedId === '' ? [] : [{ address: `/jobs/${deletedId}/undelete` }],
  };
}

export function isPlace(word: string): word is JobPlace {
  return Object.hasOwn(placeWords, word);
}

export function isSort(word: string): word is JobSort {
  return Object.hasOwn(sortWords, word);
}

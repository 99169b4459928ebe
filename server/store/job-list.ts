import { sql } from 'kysely';
import type { Actor } from './actor.ts';
import type { Job } from './jobs.ts';
import type { Store } from './open-store.ts';
import { likePattern, sortKey } from './sort-key.ts';
import type { Standing } from './tables.ts';

export const jobSorts = ['changed', 'number', 'name', 'client'] as const;
export type JobSort = (typeof jobSorts)[number];
export const jobPlaces = ['open', 'archived', 'deleted'] as const;
export type JobPlace = (typeof jobPlaces)[number];

export interface JobQuery {
  readonly place: JobPlace;
  /** Words, each of which stands in the name, client, address, reference or number. */
  readonly search: string;
  readonly sort: JobSort;
  /** Counted from 1. */
  readonly page: number;
}

/** A job of a list, and how its checks stand. */
export interface ListedJob extends Pick<
  Job,
  'id' | 'number' | 'name' | 'client' | 'address' | 'reference' | 'changedAt'
> {
  readonly checks: readonly (Standing & { readonly number: number })[];
}

export interface JobPage {
  readonly jobs: readonly ListedJob[];
  readonly total: number;
  /** The page that is shown: the last one, where a later one was asked for. */
  readonly page: number;
  readonly pages: number;
}

const pageSize = 25;
const mostWords = 8;
const columns: Readonly<Record<JobSort, 'changedAt' | 'number' | 'nameKey' | 'clientKey'>> = {
  changed: 'changedAt',
  number: 'number',
  name: 'nameKey',
  client: 'clientKey',
};
const newestFirst: ReadonlySet<JobSort> = new Set<JobSort>(['changed', 'number']);

/** A page of the office's jobs. */
export async function listJobs(store: Store, { officeId }: Actor, asked: JobQuery): Promise<JobPage> {
  const words = sortKey(asked.search).split(' ').filter(Boolean).slice(0, mostWords);
  let found = store.db
    .selectFrom('job')
    .where('officeId', '=', officeId)
    .where('isDeleted', '=', asked.place === 'deleted' ? 1 : 0);
  if (asked.place !== 'deleted') {
    found = found.where('isArchived', '=', asked.place === 'archived' ? 1 : 0);
  }
  for (const word of words) {
    found = found.where(sql<boolean>`search_key like ${likePattern(word)} escape '\\'`);
  }
  const { total } = await found
    .select(({ fn }) => fn.countAll<number>().as('total'))
    .executeTakeFirstOrThrow();
  const pages = Math.max(1, Math.ceil(total / pageSize));
  const page = Math.min(Math.max(1, asked.page), pages);
  const direction = newestFirst.has(asked.sort) ? 'desc' : 'asc';
  const jobs = await found
    .select(['id', 'number', 'name', 'client', 'address', 'reference', 'changedAt'])
    .orderBy(columns[asked.sort], direction)
    .orderBy('id', direction)
    .limit(pageSize)
    .offset((page - 1) * pageSize)
    .execute();
  const checks = await standingsOf(
    store,
    jobs.map(({ id }) => id),
  );
  return { jobs: jobs.map((job) => ({ ...job, checks: checks.get(job.id) ?? [] })), total, page, pages };
}

/** How many jobs an office has in each place. */
export async function countJobs(
  store: Store,
  { officeId }: Actor,
): Promise<Readonly<Record<JobPlace, number>>> {
  const rows = await store.db
    .selectFrom('job')
    .select(['isDeleted', 'isArchived', ({ fn }) => fn.countAll<number>().as('count')])
    .where('officeId', '=', officeId)
    .groupBy(['isDeleted', 'isArchived'])
    .execute();
  const counts = { open: 0, archived: 0, deleted: 0 };
  for (const { isDeleted, isArchived, count } of rows) {
    counts[isDeleted === 1 ? 'deleted' : isArchived === 1 ? 'archived' : 'open'] += count;
  }
  return counts;
}

async function standingsOf(
  store: Store,
  jobIds: readonly string[],
): Promise<ReadonlyMap<string, ListedJob['checks']>> {
  if (jobIds.length === 0) return new Map();
  const rows = await store.db
    .selectFrom('jobCheck')
    .select(['jobId', 'number', 'element', 'title', 'standing', 'governs', 'used', 'tool'])
    .where('jobId', 'in', jobIds)
    .where('isDeleted', '=', 0)
    .orderBy('place')
    .execute();
  const grouped = new Map<string, typeof rows>();
  for (const row of rows) {
    const before = grouped.get(row.jobId);
    if (before === undefined) grouped.set(row.jobId, [row]);
    else before.push(row);
  }
  return grouped;
}

import type { Job } from '../../store/jobs.ts';
import type { ShareLink } from '../../store/share-links.ts';
import type { Visit } from '../../visits/visit.ts';
import { dayAndTime } from '../jobs/times.ts';
import { pageFrame, type PageFrame } from '../page.ts';

/** What came of the last change. */
export interface LinksNews {
  /** A link that was just made: one, or none. */
  readonly made: readonly { readonly address: string }[];
  readonly label: string;
  readonly error: string;
}

export interface LinksPage extends PageFrame, LinksNews {
  readonly token: string;
  readonly address: string;
  readonly job: string;
  readonly hasError: boolean;
  readonly rows: readonly {
    readonly address: string;
    readonly label: string;
    readonly made: string;
    readonly ends: string;
  }[];
  readonly hasRows: boolean;
}

/** The links to a job that lead to it, and the form for another. */
export function linksPage(job: Job, links: readonly ShareLink[], visit: Visit, news: LinksNews): LinksPage {
  const address = `/jobs/${job.id}`;
  return {
    ...pageFrame(`Links to ${job.name}`),
    ...news,
    token: visit.token,
    address,
    job: job.name,
    hasError: news.error !== '',
    rows: links.map(({ id, label, madeAt, madeBy, endsAt }) => ({
      address: `${address}/links/${id}`,
      label,
      made: `${dayAndTime(madeAt)} by ${madeBy}`,
      ends: dayAndTime(endsAt),
    })),
    hasRows: links.length > 0,
  };
}

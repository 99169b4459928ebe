import { caution } from '../../../shared/cautions.ts';
import { elementNamed, usualElement } from '../../form/index.ts';
import type { Check } from '../../store/checks.ts';
import type { IssuedSheet } from '../../store/issued.ts';
import type { Job } from '../../store/jobs.ts';
import { elementWords } from '../form/words.ts';
import { issuedList, type IssuedList } from '../issued/issued-rows.ts';
import { jobFacts, type Fact } from '../jobs/job-facts.ts';
import { standingView, type StandingView } from '../jobs/standing-view.ts';
import { pageFrame, type PageFrame } from '../page.ts';

export interface SharedJobPage extends PageFrame {
  /** Where a PDF of the whole job is begun; whoever has a link has no token. */
  readonly beginAddress: string;
  readonly token: string;
  readonly name: string;
  readonly label: string;
  readonly facts: readonly Fact[];
  readonly rows: readonly (StandingView & {
    readonly address: string;
    readonly title: string;
    readonly label: string;
    readonly hasSheet: boolean;
  })[];
  readonly hasRows: boolean;
  readonly caution: string;
  /** Its issued sheets: one list, or none. */
  readonly issued: readonly IssuedList[];
}

/** A job as it is shown to whoever has a link to it: nothing to change, and no notes. */
export function sharedJobPage(
  job: Job,
  checks: readonly Check[],
  issued: readonly IssuedSheet[],
  address: string,
): SharedJobPage {
  return {
    ...pageFrame(job.name),
    beginAddress: `${address}/papers`,
    token: '',
    name: job.name,
    label: `Job ${job.number}`,
    facts: jobFacts(job),
    rows: checks.map((check) => ({
      ...standingView(check),
      address: `${address}/checks/${check.id}`,
      title: check.title || elementWords[elementNamed(check.element) ?? usualElement],
      label: `${job.number}-${check.number}`,
      hasSheet: check.standing !== 'unfinished',
    })),
    hasRows: checks.length > 0,
    caution: caution.aid,
    issued: issuedList('Issued sheets', issued, ({ id }) => `${address}/issued/${id}`),
  };
}

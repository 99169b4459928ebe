import { differences, type Difference } from '../../jobs/field-words.ts';
import type { Check } from '../../store/checks.ts';
import type { Job } from '../../store/jobs.ts';
import type { RevisionPage } from '../../store/revisions.ts';
import { mayActAs, type Visit } from '../../visits/visit.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import type { TrailView } from '../check-page.ts';
import { checkAddress, trailTo } from './kept-check.ts';
import { dayAndTime } from './times.ts';
import { upperFirst } from '../../../shared/words.ts';

export interface HistoryPage extends PageFrame {
  readonly trail: TrailView;
  readonly address: string;
  readonly token: string;
  readonly version: string;
  readonly rows: readonly {
    readonly number: string;
    readonly when: string;
    readonly by: string;
    readonly said: string;
    readonly changes: readonly Difference[];
    readonly mayRestore: boolean;
    readonly asItWas: string;
  }[];
  readonly pages: readonly { readonly label: string; readonly address: string; readonly isChosen: boolean }[];
  readonly hasPages: boolean;
}

/** The history of a check: when it changed, by whom, and what. */
export function historyPage(
  job: Job,
  check: Check,
  { revisions, page, pages }: RevisionPage,
  visit: Visit,
): HistoryPage {
  const address = checkAddress(check);
  return {
    ...pageFrame(`History of check ${job.number}-${check.number}`),
    trail: trailTo(job, check),
    address,
    token: visit.token,
    version: String(check.version),
    rows: revisions.map((revision) => {
      const changes = differences(revision.formBefore, revision.form);
      const isFirst = revision.number === 1;
      const unsaid = isFirst ? 'Begun' : changes.length === 0 ? 'Nothing, in the end' : '';
      return {
        number: String(revision.number),
        when: dayAndTime(revision.savedAt),
        by: revision.savedBy,
        said: revision.reason === '' ? unsaid : upperFirst(revision.reason),
        changes: isFirst ? [] : changes,
        // What changed nothing, or is how the check is now, leaves nothing to put back.
        mayRestore:
          mayActAs(visit.role, 'member') &&
          revision.form !== check.form &&
          (isFirst || revision.form !== revision.formBefore),
        asItWas: `/check?${revision.form}`,
      };
    }),
    pages: Array.from({ length: pages }, (_, index) => ({
      label: `Page ${index + 1}`,
      address: `${address}/history?page=${index + 1}`,
      isChosen: index + 1 === page,
    })),
    hasPages: pages > 1,
  };
}

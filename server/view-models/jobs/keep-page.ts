import type { SentForm } from '../../check/check-state.ts';
import { written } from '../../form/index.ts';
import type { JobPage } from '../../store/job-list.ts';
import { pageFrame, type PageFrame } from '../page.ts';

export interface KeepPage extends PageFrame {
  readonly title: string;
  readonly token: string;
  readonly check: string;
  readonly search: string;
  /** Whether there are more jobs than are shown, or some were looked for. */
  readonly canSearch: boolean;
  readonly nothingFound: boolean;
  readonly jobs: readonly { readonly id: string; readonly name: string; readonly label: string }[];
}

/** The page on which a check without a job is given one. */
export function keepPage(state: SentForm, { jobs, pages }: JobPage, search: string, token: string): KeepPage {
  return {
    ...pageFrame('Put the check in a job'),
    title: written(state.texts, 'title') || 'Untitled check',
    token,
    search,
    canSearch: pages > 1 || search !== '',
    nothingFound: jobs.length === 0 && search !== '',
    check: state.query,
    jobs: jobs.map(({ id, name, number, client }) => ({
      id,
      name,
      label: [`Job ${number}`, client].filter(Boolean).join(', '),
    })),
  };
}

import type { Work } from '../../papers/works.ts';
import type { PdfFault } from '../../sheets/pdf/task.ts';
import type { Job } from '../../store/jobs.ts';
import { pageFrame, type PageFrame } from '../page.ts';

/** What a PDF of a whole job is of, and where it is asked for. */
export interface PapersPlace {
  readonly job: Job;
  /** Address of the job's page; its PDFs are below it. */
  readonly address: string;
  /** Of the forms; empty for whoever has a link. */
  readonly token: string;
  readonly isShared: boolean;
}

/** How far a PDF of a whole job is. One of the four lists has one item. */
export interface PapersPage extends PageFrame {
  readonly isShared: boolean;
  readonly jobAddress: string;
  readonly name: string;
  readonly label: string;
  readonly token: string;
  /** Where a new one is begun. */
  readonly beginAddress: string;
  readonly going: readonly {
    /** Is asked again for how far it is. */
    readonly address: string;
    readonly said: string;
    readonly done: string;
    readonly all: string;
    readonly cancelAddress: string;
  }[];
  readonly ready: readonly {
    readonly fileAddress: string;
    readonly fileName: string;
    readonly size: string;
  }[];
  /** Why there is none, to be said before another can be begun. */
  readonly over: readonly { readonly said: string }[];
}

const cancelled = 'It was cancelled. The job and its checks are as they were.';
const forgotten =
  'This PDF is not kept any more: one is kept for half an hour, and none when the program starts again. The job and its checks are as they were.';

const reasons: Readonly<Record<PdfFault, string>> = {
  busy: 'Much is being made just now, and this would have waited long. Try again in a moment.',
  'too-slow': 'It took too long and was given up.',
  ended: 'The part of the program that makes it has stopped; it starts afresh. Try again in a moment.',
  'not-set':
    'The fault is in this program, and it has been noted. The sheets of the checks can be printed from their pages.',
  cancelled,
};

/** @param work undefined: it is not kept any more */
export function papersPage(
  { job, address, token, isShared }: PapersPlace,
  work: Work | undefined,
): PapersPage {
  const state = work?.state;
  const own = `${address}/papers/${work?.id ?? ''}`;
  return {
    ...pageFrame(`PDF of ${job.name}`),
    isWaiting: state?.is === 'going',
    isShared,
    jobAddress: address,
    name: job.name,
    label: `Job ${job.number}`,
    token,
    beginAddress: `${address}/papers`,
    going:
      work?.state.is === 'going'
        ? [{ address: own, cancelAddress: `${own}/cancel`, ...progressOf(work) }]
        : [],
    ready:
      work !== undefined && state?.is === 'ready'
        ? [{ fileAddress: `${own}/file`, fileName: work.fileName, size: megabytes(state.pdf.length) }]
        : [],
    over: reasonOf(work).map((said) => ({ said })),
  };
}

function progressOf({ checks, state }: Work): { said: string; done: string; all: string } {
  const progress = state.is === 'going' ? state.progress : { at: 'pages' as const };
  // To set the pages takes about as long as to work the checks out.
  const all = String(Math.max(checks, 1) * 2);
  if (progress.at === 'pages') return { said: 'Setting the pages', done: String(Math.max(checks, 1)), all };
  return { said: `Working out check ${progress.done + 1} of ${checks}`, done: String(progress.done), all };
}

function reasonOf(work: Work | undefined): string[] {
  if (work === undefined) return [forgotten];
  const { state } = work;
  if (state.is === 'cancelled') return [cancelled];
  if (state.is !== 'failed') return [];
  const { check, fault } = state.error;
  return [
    `${check === '' ? 'The pages could not be set.' : `Check ${check} could not be worked out.`} ${reasons[fault]}`,
  ];
}

function megabytes(bytes: number): string {
  return bytes < 100_000 ? 'under 0.1 MB' : `${(bytes / 1e6).toFixed(1)} MB`;
}

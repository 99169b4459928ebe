import { setImmediate } from 'node:timers/promises';
import { sentForm } from '../check/check-state.ts';
import { knownAnswer } from '../check/known-answers.ts';
import { textsOf } from '../form/index.ts';
import { createPrintable, type Printable } from '../sheets/pdf/printable.ts';
import { PdfError } from '../sheets/pdf/task.ts';
import { createPdfWorkers, type PdfWorkers } from '../sheets/pdf/workers.ts';
import type { Check } from '../store/checks.ts';
import { ThreadError } from '../threads/thread-error.ts';
import { openThreadRoom, type ThreadRoom } from '../threads/thread-room.ts';
import type { Draft, DraftOrder } from './draft.ts';
import type { DraftReply } from './draft-worker.ts';
import { jobPaper, type JobPaper } from './job-paper.ts';

/** What of a check is put on paper. */
interface PaperCheck extends Pick<Check, 'form' | 'number'> {
  /** The newest sheet issued of it, in words; empty for none. */
  readonly issued: string;
}

/** What is to be made, and the checks as they were when it was asked for. */
export interface JobPaperOrder extends JobPaper {
  readonly checks: readonly PaperCheck[];
  readonly made_s: number;
}

/** How far the work is: `done` of the checks are worked out, or the pages are being set. */
export type Progress = { readonly at: 'checks'; readonly done: number } | { readonly at: 'pages' };

/** Makes PDFs of whole jobs. */
export interface JobPaperMaker {
  /**
   * @param tell is told how far the work is
   * @param signal ends the work
   * @throws WorkError where there is no PDF, with the reason
   */
  make(order: JobPaperOrder, tell: (progress: Progress) => void, signal: AbortSignal): Promise<Uint8Array>;
  close(): Promise<void>;
}

/** Why a PDF of a job came to nothing, and at which check. */
export class WorkError extends Error {
  readonly fault: PdfError['fault'];
  /** As people call it; empty where it was no check's doing. */
  readonly check: string;

  constructor(fault: PdfError['fault'], check: string, cause: unknown) {
    super(cause instanceof Error ? cause.message : String(cause), { cause });
    this.name = 'WorkError';
    this.fault = fault;
    this.check = check;
  }
}

const program = new URL('./draft-worker.ts', import.meta.url);

/** Opens what makes PDFs of whole jobs: checks are worked out in a thread, and set where sheets are. */
export function openJobPaperMaker(pdfs: PdfWorkers = createPdfWorkers()): JobPaperMaker {
  const rules = {
    kind: 'thread',
    most: 1,
    mostWaiting: 50,
    patience_ms: 120_000,
    grace_ms: 500,
    mostOrders: 5000,
    idle_ms: 30 * 60_000,
  } as const;
  const drafts = openThreadRoom<DraftOrder, DraftReply>(program, rules);
  const printable = createPrintable();
  return {
    async make(order, tell, signal) {
      pdfs.warm('job');
      const drafted: Draft[] = [];
      for (const check of order.checks) {
        tell({ at: 'checks', done: drafted.length });
        drafted.push(await draft(drafts, order, check, signal));
      }
      tell({ at: 'pages' });
      return setPages(pdfs, order, drafted, printable, signal);
    },
    close: () => drafts.close(),
  };
}

async function draft(
  drafts: ThreadRoom<DraftOrder, DraftReply>,
  { job, paper }: JobPaperOrder,
  { form, issued, number: own }: PaperCheck,
  signal: AbortSignal,
): Promise<Draft> {
  const number = `${job.number}-${own}`;
  const known = knownAnswer(sentForm(textsOf(form)).reading.document) ?? null;
  try {
    const reply = await drafts.ask({ form, number, issued, paper, known }, { signal });
    if (reply.ok) return reply.draft;
    throw new WorkError('not-set', number, reply.message);
  } catch (error) {
    throw error instanceof ThreadError ? new WorkError(error.fault, number, error) : error;
  }
}

async function setPages(
  pdfs: PdfWorkers,
  order: JobPaperOrder,
  drafts: readonly Draft[],
  printable: Printable,
  signal: AbortSignal,
): Promise<Uint8Array> {
  await setImmediate();
  const json = jobPaper(order, drafts, printable);
  await setImmediate();
  try {
    return await pdfs.make({ template: 'job', json, made_s: order.made_s }, signal);
  } catch (error) {
    throw error instanceof PdfError ? new WorkError(error.fault, '', error) : error;
  }
}

import { ThreadError } from '../../threads/thread-error.ts';
import { openThreadRoom, type RoomRules, type ThreadRoom } from '../../threads/thread-room.ts';
import { PdfError, type PdfReply, type PdfTask } from './task.ts';

/** Sets PDFs in processes of their own: the setter can be stopped nowhere else, and gives its memory back no other way. */
export interface PdfWorkers {
  /**
   * Sets a PDF as soon as a setter is free.
   *
   * @param signal ends the work where nobody waits for it any more
   * @throws PdfError where there is no PDF, with the reason
   */
  make(task: PdfTask, signal: AbortSignal): Promise<Uint8Array>;
  /** Starts a setter for a kind of paper, so that whoever asks next does not wait for that. */
  warm(template: PdfTask['template']): void;
  /** Ends every setter. */
  close(): Promise<void>;
}

const program = new URL('./worker.ts', import.meta.url);

const minute_ms = 60_000;

/** Jobs are set apart, so that no sheet waits for one; each by a setter of its own, which takes what it kept with it; the next one is ready then. */
const usual: Readonly<Record<'sheets' | 'jobs', RoomRules>> = {
  sheets: {
    ...{ kind: 'process', most: 2, mostWaiting: 20, patience_ms: 30_000, grace_ms: 1000, mostOrders: 200 },
    idle_ms: 30 * minute_ms,
  },
  jobs: {
    ...{ kind: 'process', most: 1, mostWaiting: 20, patience_ms: 300_000, grace_ms: 0, mostOrders: 1 },
    ...{ staysReady: true, idle_ms: 10 * minute_ms },
  },
};

/** Opens the rooms of the setters. */
export function createPdfWorkers(rules = usual, file = program): PdfWorkers {
  const sheets = openThreadRoom<PdfTask, PdfReply>(file, rules.sheets);
  const jobs = openThreadRoom<PdfTask, PdfReply>(file, rules.jobs);
  const roomOf = (template: PdfTask['template']): ThreadRoom<PdfTask, PdfReply> =>
    template === 'job' ? jobs : sheets;
  return {
    async make(task, signal) {
      const reply = await roomOf(task.template)
        .ask(task, { signal })
        .catch((error: unknown) => {
          throw error instanceof ThreadError ? new PdfError(error.fault, error.message) : error;
        });
      if (!reply.ok) throw new PdfError('not-set', reply.message);
      return reply.pdf;
    },
    warm: (template) => roomOf(template).warm(),
    async close() {
      await Promise.all([sheets.close(), jobs.close()]);
    },
  };
}

import { Worker } from 'node:worker_threads';
import { PdfError, type PdfReply, type PdfTask } from './task.ts';

/** Sets PDFs in threads of their own. */
export interface PdfWorkers {
  /**
   * Sets a PDF as soon as a thread is free.
   *
   * @param signal ends the work where nobody waits for it any more
   * @throws PdfError where there is no PDF, with the reason
   */
  make(task: PdfTask, signal: AbortSignal, patience_ms?: number): Promise<Uint8Array>;
  /** Ends every thread. */
  close(): Promise<void>;
}

interface Waiting {
  readonly task: PdfTask;
  readonly signal: AbortSignal;
  readonly patience_ms: number;
  readonly resolve: (pdf: Uint8Array) => void;
  readonly reject: (error: PdfError) => void;
}

interface Options {
  readonly threads: number;
  readonly mostWaiting: number;
  readonly patience_ms: number;
  /** A thread keeps a little of every document, so that it is replaced after so many. */
  readonly documentsEach: number;
  readonly file: URL;
}

const usual: Options = {
  threads: 2,
  mostWaiting: 20,
  patience_ms: 30_000,
  documentsEach: 200,
  file: new URL('./start.mjs', import.meta.url),
};

/** Makes the threads' keeper; a thread is started when there is work for it, and an idle one keeps no program alive. */
export function createPdfWorkers(asked: Partial<Options> = {}): PdfWorkers {
  const options = { ...usual, ...asked };
  const queue: Waiting[] = [];
  const idle: Thread[] = [];
  const all = new Set<Thread>();

  const serve = (): void => {
    while (queue.length > 0 && (idle.length > 0 || all.size < options.threads)) {
      const next = queue.shift();
      if (next === undefined) return;
      if (next.signal.aborted) {
        next.reject(cancelled());
        continue;
      }
      const thread = idle.pop() ?? new Thread(options.file);
      all.add(thread);
      void thread.run(next).then((isSound) => {
        if (isSound && thread.made < options.documentsEach) idle.push(thread);
        else {
          all.delete(thread);
          void thread.end();
        }
        serve();
      });
    }
  };

  return {
    make(task, signal, patience_ms = options.patience_ms) {
      if (queue.length >= options.mostWaiting) {
        return Promise.reject(new PdfError('busy', 'Too many sheets are waiting to be set.'));
      }
      return new Promise((resolve, reject) => {
        const waiting = { task, signal, patience_ms, resolve, reject };
        queue.push(waiting);
        signal.addEventListener('abort', () => {
          const at = queue.indexOf(waiting);
          if (at < 0) return;
          queue.splice(at, 1);
          reject(cancelled());
        });
        serve();
      });
    },
    async close() {
      await Promise.all([...all].map((thread) => thread.end()));
      all.clear();
      idle.length = 0;
    },
  };
}

class Thread {
  made = 0;
  private readonly worker: Worker;
  private hasEnded = false;

  constructor(file: URL) {
    this.worker = new Worker(file, { execArgv: [] });
    this.worker.on('error', () => undefined);
    this.worker.once('exit', () => {
      this.hasEnded = true;
    });
  }

  /** Does one task. @returns whether the thread can do another */
  run({ task, signal, patience_ms, resolve, reject }: Waiting): Promise<boolean> {
    return new Promise((settle) => {
      if (this.hasEnded) {
        reject(new PdfError('ended', 'The thread that sets the sheet has ended.'));
        settle(false);
        return;
      }
      const finish = (isSound: boolean): void => {
        clearTimeout(timer);
        signal.removeEventListener('abort', onAbort);
        this.worker.off('message', onReply).off('exit', onExit).off('error', onError).unref();
        settle(isSound);
      };
      const fail = (error: PdfError): void => {
        reject(error);
        finish(false);
      };
      const onAbort = (): void => fail(cancelled());
      const onExit = (): void => fail(new PdfError('ended', 'The thread that sets the sheet has ended.'));
      const onError = (error: Error): void => fail(new PdfError('ended', error.message));
      const onReply = (reply: PdfReply): void => {
        this.made += 1;
        if (reply.ok) resolve(reply.pdf);
        else reject(new PdfError('not-set', reply.message));
        finish(true);
      };
      const timer = setTimeout(
        () => fail(new PdfError('too-slow', `The sheet took over ${patience_ms / 1000} s.`)),
        patience_ms,
      );
      signal.addEventListener('abort', onAbort);
      this.worker.on('message', onReply).once('exit', onExit).once('error', onError).ref();
      this.worker.postMessage(task);
    });
  }

  async end(): Promise<void> {
    await this.worker.terminate();
  }
}

function cancelled(): PdfError {
  return new PdfError('cancelled', 'Nobody waits for the sheet any more.');
}

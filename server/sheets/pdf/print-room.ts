import { once } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import type { PrintOrder } from './compile.ts';
import type { Printed } from './print-worker.ts';

/** Where PDF is printed: in a thread of its own, one order after another, so that nobody else waits. */
export interface PrintRoom {
  /**
   * Prints one order.
   *
   * @param signal an order that is called off before its turn is not printed
   * @throws Error where it can't be printed, takes too long, or was called off
   */
  print(order: PrintOrder, signal?: AbortSignal): Promise<Uint8Array>;
  close(): Promise<void>;
}

/** A printing thread keeps about 0.3 MB of each document, so it is replaced after some hundreds. */
const mostOfOneThread = 300;

/**
 * Opens a print room; its thread starts with the first order.
 *
 * @param longest_ms how long one order may take before its thread is stopped
 */
export function openPrintRoom(longest_ms = 30_000): PrintRoom {
  let thread: Worker | undefined;
  let printedHere = 0;
  let last: Promise<unknown> = Promise.resolve();

  const stop = async () => {
    const stopped = thread;
    [thread, printedHere] = [undefined, 0];
    await stopped?.terminate();
  };

  const printNow = async (order: PrintOrder): Promise<Uint8Array> => {
    if (printedHere >= mostOfOneThread) await stop();
    thread ??= startThread();
    printedHere += 1;
    try {
      const answer = await answerOf(thread, order, longest_ms);
      if (answer.ok) return answer.pdf;
      throw new Error(`The sheet can't be printed: ${answer.message}`);
    } catch (error) {
      await stop();
      throw error;
    }
  };

  return {
    print(order, signal) {
      const turn = last.then(() => {
        signal?.throwIfAborted();
        return printNow(order);
      });
      last = turn.catch(() => undefined);
      return turn;
    },
    close: stop,
  };
}

/** The thread reads TypeScript like the rest of the program; a loader is not handed down to threads, so it gets its own. */
const entry = [import.meta.resolve('tsx/esm/api'), new URL('./print-worker.ts', import.meta.url).href].map(
  (url) => JSON.stringify(url),
);

function startThread(): Worker {
  const [loader, worker] = entry;
  const thread = new Worker(
    `import(${loader}).then(({ register }) => { register(); return import(${worker}); })`,
    {
      eval: true,
      execArgv: [],
    },
  );
  thread.unref();
  return thread;
}

function answerOf(thread: Worker, order: PrintOrder, longest_ms: number): Promise<Printed> {
  const settled = new AbortController();
  const { signal } = settled;
  thread.ref();
  thread.postMessage(order);
  const tooLong = sleep(longest_ms, undefined, { signal }).then(() => {
    throw new Error('The sheet took too long to print.');
  });
  const stopped = once(thread, 'exit', { signal }).then(() => {
    throw new Error('The printing thread stopped.');
  });
  const answered = once(thread, 'message', { signal }).then(([answer]: Printed[]) => {
    if (answer === undefined) throw new Error('The printing thread gave no answer.');
    return answer;
  });
  return Promise.race([answered, stopped, tooLong]).finally(() => {
    settled.abort();
    for (const each of [answered, stopped, tooLong]) each.catch(() => undefined);
    thread.unref();
  });
}

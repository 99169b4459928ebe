import { once } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';

/** Where long work is done: in a thread of its own, one order after another, so that nobody else waits. */
export interface ThreadRoom<Order, Answer> {
  /**
   * Has one order done.
   *
   * @throws Error where it takes too long or the thread stopped
   */
  ask(order: Order): Promise<Answer>;
  close(): Promise<void>;
}

export interface RoomRules {
  /** How long one order may take before its thread is stopped. */
  readonly longest_ms: number;
  /** A thread is replaced after so many orders. */
  readonly mostOfOneThread: number;
}

/**
 * Opens a room; its thread starts with the first order.
 *
 * @param worker the program of the thread: it answers every message with one
 */
export function openThreadRoom<Order, Answer>(worker: URL, rules: RoomRules): ThreadRoom<Order, Answer> {
  let thread: Worker | undefined;
  let doneHere = 0;
  let last: Promise<unknown> = Promise.resolve();

  const stop = async () => {
    const stopped = thread;
    [thread, doneHere] = [undefined, 0];
    await stopped?.terminate();
  };

  const askNow = async (order: Order): Promise<Answer> => {
    if (doneHere >= rules.mostOfOneThread) await stop();
    thread ??= startThread(worker);
    doneHere += 1;
    try {
      return await answerOf<Answer>(thread, order, rules.longest_ms);
    } catch (error) {
      await stop();
      throw error;
    }
  };

  return {
    ask(order) {
      const turn = last.then(() => askNow(order));
      last = turn.catch(() => undefined);
      return turn;
    },
    close: stop,
  };
}

const loader = JSON.stringify(import.meta.resolve('tsx/esm/api'));

/** The thread reads TypeScript like the rest of the program; a loader is not handed down to threads, so it gets its own. */
function startThread(worker: URL): Worker {
  const thread = new Worker(
    `import(${loader}).then(({ register }) => { register(); return import(${JSON.stringify(worker.href)}); })`,
    { eval: true, execArgv: [] },
  );
  thread.unref();
  return thread;
}

function answerOf<Answer>(thread: Worker, order: unknown, longest_ms: number): Promise<Answer> {
  const settled = new AbortController();
  const { signal } = settled;
  thread.ref();
  thread.postMessage(order);
  const tooLong = sleep(longest_ms, undefined, { signal }).then(() => {
    throw new Error('It took too long.');
  });
  const stopped = once(thread, 'exit', { signal }).then(() => {
    throw new Error('The thread stopped.');
  });
  const answered = once(thread, 'message', { signal }).then(([answer]: Answer[]) => {
    if (answer === undefined) throw new Error('The thread gave no answer.');
    return answer;
  });
  return Promise.race([answered, stopped, tooLong]).finally(() => {
    settled.abort();
    for (const each of [answered, stopped, tooLong]) each.catch(() => undefined);
    thread.unref();
  });
}

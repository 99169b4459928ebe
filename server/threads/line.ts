import { fork } from 'node:child_process';
import { constants, getPriority, platform, setPriority } from 'node:os';
import { Worker } from 'node:worker_threads';

/** The line to a program that runs beside this one and answers every message with one. */
export interface Line<Order> {
  readonly send: (order: Order) => void;
  /** Whether this program waits for it before it ends. */
  readonly hold: (isHeld: boolean) => void;
  /** Ends the program, and is done when it has ended. */
  readonly end: () => Promise<void>;
}

export interface Listener<Answer> {
  readonly onAnswer: (answer: Answer) => void;
  /** Is called once, when the program has ended for whatever reason. */
  readonly onEnd: (reason: string) => void;
}

/** The priority of who stands back from this program: a higher number is less of one. */
const lowered = (niceness: number): number =>
  Math.min(constants.priority.PRIORITY_LOW, getPriority() + niceness);

/** Blanks out types, so that TypeScript runs as it stands: names and lines stay, and nothing is added that would cost time. */
const loader = import.meta.resolve('ts-blank-space/register');

/**
 * In a thread: for JavaScript, which can be stopped anywhere.
 *
 * @param niceness only on Linux has a thread one of its own, so that it counts there alone
 */
export function startThread<Order, Answer>(
  program: URL,
  { onAnswer, onEnd }: Listener<Answer>,
  niceness = 0,
): Line<Order> {
  const standsBack = niceness > 0 && platform() === 'linux';
  const standBack = standsBack ? `require('node:os').setPriority(${lowered(niceness)}); ` : '';
  // The program reads TypeScript like the rest; a loader is not handed down to threads, so each gets its own.
  const worker = new Worker(
    `${standBack}import(${JSON.stringify(loader)}).then(() => import(${JSON.stringify(program.href)}))`,
    { eval: true, execArgv: [] },
  );
  let reason = 'The thread has ended.';
  worker.on('message', onAnswer);
  worker.on('error', (error) => {
    reason = error.message;
  });
  worker.once('exit', () => onEnd(reason));
  return {
    send: (order) => worker.postMessage(order),
    hold: (isHeld) => (isHeld ? worker.ref() : worker.unref()),
    end: async () => {
      await worker.terminate();
    },
  };
}

/**
 * In a process of its own: for what is not JavaScript, which a thread can't be stopped in. What it kept of memory goes with it,
 * and if it crashes nothing else does.
 */
export function startProcess<Order extends object, Answer>(
  program: URL,
  { onAnswer, onEnd }: Listener<Answer>,
  niceness = 0,
): Line<Order> {
  const child = fork(program, [], {
    execArgv: ['--import', loader],
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
  });
  if (niceness > 0 && child.pid !== undefined) setPriority(child.pid, lowered(niceness));
  let reason = 'The process has ended.';
  child.on('message', onAnswer);
  child.on('error', (error) => {
    reason = error.message;
  });
  const ended = new Promise<void>((resolve) => {
    child.once('close', () => {
      onEnd(reason);
      resolve();
    });
  });
  return {
    send: (order) => void child.send(order),
    hold: (isHeld) => {
      const change = isHeld ? 'ref' : 'unref';
      child[change]();
      child.channel?.[change]();
    },
    end: () => {
      child.kill('SIGKILL');
      return ended;
    },
  };
}

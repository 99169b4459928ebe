import { Hand, type HandRules } from './hand.ts';
import { ThreadError } from './thread-error.ts';

/** Where long work is done: in threads or processes of its own, so that nobody else waits. */
export interface ThreadRoom<Order, Answer> {
  /**
   * Has one order done as soon as somebody is free.
   *
   * @throws ThreadError where no answer comes, with the reason
   */
  ask(order: Order, wait?: Wait): Promise<Answer>;
  /** Starts one ahead of the first order. */
  warm(): void;
  /** Ends everything; what was asked for is not answered any more. */
  close(): Promise<void>;
}

/** How an answer is waited for. */
export interface Wait {
  /** Ends the work where nobody waits for it any more. */
  readonly signal?: AbortSignal;
  /** How long it may take once it is begun, where that is not the room's usual. */
  readonly patience_ms?: number;
}

export interface RoomRules extends HandRules {
  readonly most: number;
  readonly mostWaiting: number;
  /** How long one order may take before whoever does it is ended. */
  readonly patience_ms: number;
  /** How long an order goes on that nobody waits for any more: to start anew takes longer than most orders do. */
  readonly grace_ms: number;
  /** Each keeps a little of every order, so that it is replaced after so many. */
  readonly mostOrders: number;
  /** Whether the one that replaces it is started at once, so that the next order does not wait for that. */
  readonly staysReady?: boolean;
  /** How long one may be idle before it is ended; not given: for ever. */
  readonly idle_ms?: number;
}

interface Waiting<Order, Answer> {
  readonly order: Order;
  readonly signal: AbortSignal;
  readonly patience_ms: number;
  readonly resolve: (answer: Answer) => void;
  readonly reject: (error: unknown) => void;
  /** While it waits; once it is begun, more is to be done than to leave. */
  readonly onAbort: () => void;
}

/**
 * Opens a room; hands are started when there is work for them, and an idle one keeps no program alive.
 *
 * @param program what each runs: it answers every message with one
 */
export function openThreadRoom<Order extends object, Answer>(
  program: URL,
  rules: RoomRules,
): ThreadRoom<Order, Answer> {
  const queue: Waiting<Order, Answer>[] = [];
  const idle: Hand<Order, Answer>[] = [];
  const all = new Set<Hand<Order, Answer>>();
  let isClosed = false;

  const start = (): Hand<Order, Answer> => {
    const hand = new Hand<Order, Answer>(rules, program, () => {
      all.delete(hand);
      if (idle.includes(hand)) idle.splice(idle.indexOf(hand), 1);
      serve();
    });
    all.add(hand);
    return hand;
  };

  const rest = (hand: Hand<Order, Answer>): void => {
    idle.push(hand);
    const { orders } = hand;
    if (rules.idle_ms === undefined) return;
    setTimeout(() => {
      if (idle.includes(hand) && hand.orders === orders) void hand.end();
    }, rules.idle_ms).unref();
  };

  const warm = (): void => {
    if (all.size === 0) rest(start());
  };

  const replace = async (hand: Hand<Order, Answer>): Promise<void> => {
    await hand.end();
    if (rules.staysReady === true && !isClosed) warm();
  };

  const leave = (waiting: Waiting<Order, Answer>): void => {
    queue.splice(queue.indexOf(waiting), 1);
    waiting.reject(cancelled());
  };

  const serve = (): void => {
    while (queue.length > 0 && (idle.length > 0 || all.size < rules.most)) {
      const next = queue.shift();
      if (next !== undefined) void work(next, idle.pop() ?? start());
    }
  };

  const work = async (
    { order, signal, patience_ms, resolve, reject, onAbort }: Waiting<Order, Answer>,
    hand: Hand<Order, Answer>,
  ): Promise<void> => {
    signal.removeEventListener('abort', onAbort);
    const abandon = (): void => {
      reject(cancelled());
      hand.hurry(rules.grace_ms);
    };
    signal.addEventListener('abort', abandon);
    await hand.run(order, patience_ms).then(resolve, reject);
    signal.removeEventListener('abort', abandon);
    if (!hand.isSound) return;
    if (hand.orders < rules.mostOrders) rest(hand);
    else void replace(hand);
    serve();
  };

  return {
    ask(order, { signal = new AbortController().signal, patience_ms = rules.patience_ms } = {}) {
      if (signal.aborted) return Promise.reject(cancelled());
      if (queue.length >= rules.mostWaiting) {
        return Promise.reject(new ThreadError('busy', 'Too much is waiting to be done.'));
      }
      return new Promise((resolve, reject) => {
        const waiting = { order, signal, patience_ms, resolve, reject, onAbort: () => leave(waiting) };
        queue.push(waiting);
        signal.addEventListener('abort', waiting.onAbort);
        serve();
      });
    },
    warm,
    async close() {
      isClosed = true;
      for (const { reject } of queue.splice(0)) reject(new ThreadError('ended', 'It was closed.'));
      await Promise.all([...all].map((hand) => hand.end()));
    },
  };
}

function cancelled(): ThreadError {
  return new ThreadError('cancelled', 'Nobody waits for it any more.');
}

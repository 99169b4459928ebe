import { startProcess, startThread, type Line } from './line.ts';
import { ThreadError } from './thread-error.ts';

export interface HandRules {
  /** A thread for JavaScript; a process for what can't be stopped in a thread. */
  readonly kind: 'thread' | 'process';
  /** How far it stands back from this program where both want the cores, from 0, not at all, to 19; not given: 0. */
  readonly niceness?: number;
}

/** One of those who work in a room: it does one order after another, until it is let go. */
export class Hand<Order extends object, Answer> {
  /** How many orders it was given. */
  orders = 0;
  private readonly line: Line<Order>;
  private fault: ThreadError | undefined;
  private answered: (answer: Answer) => void = () => undefined;
  private failed: (error: ThreadError) => void = () => undefined;
  private grace: NodeJS.Timeout | undefined;

  /** @param onEnd is called once, when it has ended for whatever reason */
  constructor({ kind, niceness }: HandRules, program: URL, onEnd: () => void) {
    const start = kind === 'thread' ? startThread<Order, Answer> : startProcess<Order, Answer>;
    const listener = {
      onAnswer: (answer: Answer) => this.answered(answer),
      onEnd: (reason: string) => {
        this.fail(new ThreadError('ended', reason));
        onEnd();
      },
    };
    this.line = start(program, listener, niceness);
    this.line.hold(false);
  }

  /** Whether it can be given another order. */
  get isSound(): boolean {
    return this.fault === undefined;
  }

  /**
   * Does one order.
   *
   * @throws ThreadError where it takes too long or the hand ends; it can't be given another then
   */
  async run(order: Order, patience_ms: number): Promise<Answer> {
    this.orders += 1;
    const patience = this.endAfter(patience_ms);
    this.line.hold(true);
    try {
      return await new Promise<Answer>((resolve, reject) => {
        [this.answered, this.failed] = [resolve, reject];
        if (this.fault === undefined) this.line.send(order);
        else reject(this.fault);
      });
    } finally {
      clearTimeout(patience);
      clearTimeout(this.grace);
      this.line.hold(false);
    }
  }

  /** Nobody waits any more for what it does: it has so long to come to an end by itself. */
  hurry(grace_ms: number): void {
    this.grace = this.endAfter(grace_ms);
  }

  async end(): Promise<void> {
    this.fail(new ThreadError('ended', 'It was ended.'));
    this.line.hold(true);
    await this.line.end();
  }

  private endAfter(time_ms: number): NodeJS.Timeout {
    return setTimeout(() => {
      this.fail(new ThreadError('too-slow', `It took over ${time_ms / 1000} s.`));
      void this.line.end();
    }, time_ms);
  }

  private fail(error: ThreadError): void {
    this.fault ??= error;
    this.failed(error);
  }
}

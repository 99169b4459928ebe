import { fork, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { z } from 'zod';

/** A program of the bench in a process of its own, which tells its parent things by message. */
export class Child {
  private readonly process: ChildProcess;

  constructor(file: URL, words: readonly string[]) {
    this.process = fork(file, words, {
      execArgv: ['--expose-gc', '--import', 'ts-blank-space/register'],
    });
  }

  /** The next message, checked. @throws Error where the program ends before it says anything */
  async next<T>(schema: z.ZodType<T>): Promise<T> {
    const waiting = new AbortController();
    const { signal } = waiting;
    const told: Promise<unknown[]> = once(this.process, 'message', { signal });
    const ended = once(this.process, 'exit', { signal }).then(([code]) => {
      throw new Error(`a program of the bench ended with ${String(code)}`);
    });
    try {
      const [message] = await Promise.race([told, ended]);
      return schema.parse(message);
    } finally {
      waiting.abort();
      await Promise.allSettled([told, ended]);
    }
  }

  ask(): void {
    this.process.send('tell');
  }

  async end(): Promise<void> {
    const ended = once(this.process, 'exit');
    this.process.disconnect();
    await ended;
  }
}

const told = z.object({ spent_ms: z.array(z.number()), blocked_ms: z.number() });

/** What a timed server tells: the time each request took, and the longest it answered nobody, since it was last asked. */
export type Told = z.infer<typeof told>;

export function tellOf(server: Child): Promise<Told> {
  server.ask();
  return server.next(told);
}

/** A server of the bench and where it listens. */
export async function startServer(...words: readonly string[]): Promise<{ child: Child; url: string }> {
  const child = new Child(new URL('./serve.ts', import.meta.url), words);
  const { port } = await child.next(z.object({ port: z.number() }));
  return { child, url: `http://127.0.0.1:${port}` };
}

import { openThreadRoom } from '../threads/thread-room.ts';
import type { PageOrder } from './page-orders.ts';
import type { MadePage } from './page-worker.ts';

/** Where checks become pages, so that nobody else waits for drawings and formulas. */
export interface PageMaker {
  /**
   * Makes a page as HTML in UTF-8.
   *
   * @param signal ends the work where nobody waits for it any more
   * @throws ThreadError where none comes
   */
  make(order: PageOrder, signal?: AbortSignal): Promise<Buffer>;
  /** Starts it ahead of the first page. */
  warm(): void;
  close(): Promise<void>;
}

const program = new URL('./page-worker.ts', import.meta.url);

/** Opens a page maker; its thread starts with the first page. */
export function openPageMaker(): PageMaker {
  const room = openThreadRoom<PageOrder, MadePage>(program, {
    kind: 'thread',
    most: 1,
    mostWaiting: 200,
    patience_ms: 60_000,
    grace_ms: 3000,
    mostOrders: Infinity,
  });
  return {
    async make(order, signal) {
      const page = await room.ask(order, signal === undefined ? {} : { signal });
      if ('fault' in page) throw new Error(page.fault);
      const { buffer, byteOffset, byteLength } = page.html;
      return Buffer.from(buffer, byteOffset, byteLength);
    },
    warm: () => room.warm(),
    close: () => room.close(),
  };
}

import { openThreadRoom } from '../../threads/thread-room.ts';
import type { PrintOrder } from './compile.ts';
import type { Printed } from './print-worker.ts';

/** Where PDF is printed. */
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
  const worker = new URL('./print-worker.ts', import.meta.url);
  const room = openThreadRoom<PrintOrder, Printed>(worker, {
    ...{ longest_ms, mostOfOneThread },
    isSpoilt: ({ ok }) => !ok,
  });
  return {
    async print(order, signal) {
      const answer = await room.ask(order, signal);
      if (answer.ok) return answer.pdf;
      throw new Error(`The sheet can't be printed: ${answer.message}`);
    },
    close: () => room.close(),
  };
}

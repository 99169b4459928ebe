import { parentPort } from 'node:worker_threads';
import { createPrinter, type PrintOrder } from './compile.ts';

/** What the printing thread answers. */
export type Printed =
  { readonly ok: true; readonly pdf: Uint8Array } | { readonly ok: false; readonly message: string };

const print = createPrinter();

parentPort?.on('message', (order: PrintOrder) => {
  parentPort?.postMessage(printed(order));
});

function printed(order: PrintOrder): Printed {
  try {
    return { ok: true, pdf: new Uint8Array(print(order)) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}

import { parentPort } from 'node:worker_threads';
import { workOut, type DocumentOrder } from './findings.ts';
import { studied } from './studied.ts';

/* The thread of what takes its time. */
parentPort?.on('message', (order: DocumentOrder) => {
  parentPort?.postMessage(studied(() => workOut(order)));
});

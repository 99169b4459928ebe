import { Buffer } from 'node:buffer';
import process from 'node:process';
import { parentPort } from 'node:worker_threads';

let made = 0;
parentPort?.on('message', ({ data: { order } }) => {
  if (order === 'end') process.exit(3);
  if (order === 'never') return;
  made += 1;
  parentPort?.postMessage(
    order === 'refuse' ? { ok: false, message: 'refused' } : { ok: true, pdf: Buffer.from(String(made)) },
  );
});

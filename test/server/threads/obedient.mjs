import { getPriority } from 'node:os';
import { performance } from 'node:perf_hooks';
import process from 'node:process';
import { setTimeout } from 'node:timers';
import { parentPort } from 'node:worker_threads';

/* Does what its order says: answers how many it has answered, ends, is busy for ever, answers late, or tells its process, age or niceness. */
const answer = (words) => (parentPort === null ? process.send(words) : parentPort.postMessage(words));
const listen = (heard) =>
  parentPort === null ? process.on('message', heard) : parentPort.on('message', heard);

let made = 0;
listen(({ order }) => {
  if (order === 'end') process.exit(3);
  if (order === 'throw') throw new Error('thrown');
  if (order === 'forever') for (;;);
  made += 1;
  const own = { who: process.pid, age: performance.now(), niceness: getPriority() };
  const words = String(own[order] ?? made);
  if (order === 'late') setTimeout(() => answer(words), 400);
  else answer(words);
});

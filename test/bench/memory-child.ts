import { check } from '../../calc/index.ts';
import { demoCheck } from '../../server/demo.ts';

/* Checks again and again, and tells its parent what the memory holds after each collection. */

const checks = Number(process.argv[2]);
const samples = Number(process.argv[3]);
const { gc } = globalThis;
if (gc === undefined) throw new Error('it takes --expose-gc');

/** Until the compiler has settled what is worth compiling, the heap grows. */
const warmUp = Math.min(2000, checks);
for (let i = 0; i < warmUp; i++) check(demoCheck);

const heap_B: number[] = [];
const rss_B: number[] = [];
for (let i = 1; i <= checks; i++) {
  check(demoCheck);
  if (i % Math.floor(checks / samples) !== 0) continue;
  gc();
  const { heapUsed, rss } = process.memoryUsage();
  heap_B.push(heapUsed);
  rss_B.push(rss);
}
process.send?.({ heap_B, rss_B });
process.disconnect();

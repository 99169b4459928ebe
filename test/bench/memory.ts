import { z } from 'zod';
import { Child } from './child.ts';
import { figures, type Row } from './report.ts';
import { median } from './timing.ts';

const mostResident_MB = 250;
/** A collection leaves a little more or less each time. One number kept of each of 50,000 checks would be this much. */
const mostGrowth_kB = 400;
const samples = 20;

/** Whether checks leave anything behind: resident memory, and the growth of the heap from one half to the next. */
export async function memory(checks: number): Promise<Row[]> {
  const child = new Child(new URL('./memory-child.ts', import.meta.url), [String(checks), String(samples)]);
  const { heap_B, rss_B } = await child.next(
    z.object({ heap_B: z.array(z.number()).min(samples), rss_B: z.array(z.number()).min(samples) }),
  );
  const half = samples / 2;
  const growth_kB = (median(heap_B.slice(half)) - median(heap_B.slice(0, half))) / 1000;
  const after_B = median(rss_B.slice(half));
  const count = checks.toLocaleString('en');
  return [
    {
      what: `Memory of a process that made ${count} checks, resident size in the second half of them, MB`,
      measured: figures(after_B / 1e6),
      target: `under ${mostResident_MB}`,
      met: after_B / 1e6 < mostResident_MB,
      information: `the largest on the way ${figures(Math.max(...rss_B) / 1e6)} MB; heap after the last collection ${figures((heap_B[samples - 1] ?? NaN) / 1e6)} MB`,
    },
    {
      what: `Heap after collection, growth from the first half of ${count} checks to the second, kB`,
      measured: figures(growth_kB),
      target: `at most ${mostGrowth_kB}`,
      met: growth_kB <= mostGrowth_kB,
      information: `${figures((growth_kB * 1000) / (checks / 2))} bytes a check`,
    },
  ];
}

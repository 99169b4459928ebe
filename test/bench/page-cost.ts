import { z } from 'zod';
import { demoCheck } from '../../server/demo.ts';
import { fillForm, queryOf } from '../../server/form/index.ts';
import { startServer } from './child.ts';
import { figures, type Row } from './report.ts';
import { median } from './timing.ts';

const most_ms = 10;

/** The server's time for the answer that is swapped in as a field changes; the pot is moved before each, never to a place it had */
export async function pageCost(requests: number): Promise<Row> {
  const warmUp = 2 * requests;
  const { child, url } = await startServer('app', 'timed');
  try {
    for (let i = 0; i < warmUp + requests; i++) await swap(url, i);
    child.ask();
    const { spent_ms } = await child.next(z.object({ spent_ms: z.array(z.number()) }));
    const measured = spent_ms.slice(warmUp);
    if (measured.length !== requests) throw new Error(`${measured.length} of ${requests} answers were timed`);
    const middle = median(measured);
    return {
      what: 'Answer on the page as a field changes, time in the server, ms',
      measured: figures(middle),
      target: `under ${most_ms}`,
      met: middle < most_ms,
      information: `${requests} answers, the slowest twentieth over ${figures(measured.sort((a, b) => a - b)[Math.floor(requests * 0.95)] ?? NaN)} ms`,
    };
  } finally {
    await child.end();
  }
}

async function swap(url: string, turn: number): Promise<void> {
  const loads = (demoCheck.loads ?? []).map((load) =>
    load.kind === 'point' ? { ...load, at: `${(34 + ((turn * 7) % 2900) / 100).toFixed(2)} in` } : load,
  );
  const response = await fetch(`${url}/check?${queryOf(fillForm({ ...demoCheck, loads }))}`, {
    headers: { 'HX-Request': 'true', 'HX-Target': 'section#answer' },
  });
  const body = await response.text();
  if (response.status !== 200 || body.includes('<html'))
    throw new Error(`the answer has status ${response.status}`);
}

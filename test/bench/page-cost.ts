import { demoCheck } from '../../server/demo.ts';
import { fillForm, queryOf } from '../../server/form/index.ts';
import { startServer, tellOf } from './child.ts';
import { figures, type Row } from './report.ts';
import { median, percentile } from './timing.ts';

const most_ms = 10;

/** The server's time for the answer that is swapped in as a field changes; the pot is moved before each, never to a place it had */
export async function pageCost(requests: number): Promise<Row> {
  const warmUp = 2 * requests;
  const { child, url } = await startServer('app', 'timed');
  try {
    for (let i = 0; i < warmUp; i++) await swap(url, i);
    await tellOf(child);
    for (let i = warmUp; i < warmUp + requests; i++) await swap(url, i);
    const { spent_ms } = await tellOf(child);
    if (spent_ms.length !== requests) throw new Error(`${spent_ms.length} of ${requests} answers were timed`);
    const middle = median(spent_ms);
    return {
      what: 'Answer on the page as a field changes, time in the server, ms',
      measured: figures(middle),
      target: `under ${most_ms}`,
      met: middle < most_ms,
      information: `${requests} answers, the slowest twentieth over ${figures(percentile(spent_ms, 95))} ms`,
    };
  } finally {
    await child.end();
  }
}

/** The demo check with the pot where it is not at another turn. */
export function movedDemo(turn: number): object {
  const loads = (demoCheck.loads ?? []).map((load) =>
    load.kind === 'point' ? { ...load, at: `${(34 + ((turn * 7) % 2900) / 100).toFixed(2)} in` } : load,
  );
  return { ...demoCheck, loads };
}

async function swap(url: string, turn: number): Promise<void> {
  const response = await fetch(`${url}/check?${queryOf(fillForm(movedDemo(turn)))}`, {
    headers: { 'HX-Request': 'true', 'HX-Target': 'section#answer' },
  });
  const body = await response.text();
  if (response.status !== 200 || body.includes('<html'))
    throw new Error(`the answer has status ${response.status}`);
}

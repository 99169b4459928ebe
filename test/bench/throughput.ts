import autocannon from 'autocannon';
import { demoCheck } from '../../server/demo.ts';
import { startServer } from './child.ts';
import { figures, type Row } from './report.ts';
import { median, medianRatio } from './timing.ts';

const least = 0.4;
const connections = 10;
const headers = { 'content-type': 'application/json' };
const body = JSON.stringify(demoCheck);

export interface ThroughputCounts {
  readonly rounds: number;
  /** How long one round loads each server. */
  readonly seconds: number;
}

/** Checks answered by the application over bodies given back by a bare server, both under the same load, in turns. */
export async function throughput({ rounds, seconds }: ThroughputCounts): Promise<Row> {
  const servers = await Promise.all([startServer('app'), startServer('echo')]);
  const [app, echo] = servers.map(({ url }) => `${url}/api/checks`);
  const rates: { app: number[]; echo: number[] } = { app: [], echo: [] };
  try {
    // The first answer takes as long as the threads that give it take to start.
    for (const url of [app, echo]) {
      await (await fetch(url ?? '', { method: 'POST', headers, body })).arrayBuffer();
      await rateOf(url ?? '', 1);
    }
    for (let round = 0; round < rounds; round++) {
      rates.app.push(await rateOf(app ?? '', seconds));
      rates.echo.push(await rateOf(echo ?? '', seconds));
    }
  } finally {
    await Promise.all(servers.map(({ child }) => child.end()));
  }
  const ratio = medianRatio(rates.app, rates.echo);
  return {
    what: 'POST /api/checks, answers a second over those of a bare JSON echo of the same body',
    measured: figures(ratio),
    target: `at least ${least}`,
    met: ratio >= least,
    information: `${figures(median(rates.app))} checks and ${figures(median(rates.echo))} echoes a second on ${connections} connections`,
  };
}

/** Answers a second. @throws Error where an answer is not a 2xx */
async function rateOf(url: string, seconds: number): Promise<number> {
  const result = await autocannon({
    url,
    method: 'POST',
    headers,
    body,
    connections,
    duration: seconds,
  });
  const failed = result.errors + result.timeouts + result.non2xx;
  if (failed > 0 || result['2xx'] === 0) throw new Error(`${failed} requests to ${url} failed`);
  return result['2xx'] / result.duration;
}

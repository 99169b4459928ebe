import { availableParallelism } from 'node:os';
import { setTimeout } from 'node:timers/promises';
import { fillForm, queryOf } from '../../server/form/index.ts';
import { startChecks } from '../../server/start-checks.ts';
import { visitor, type Visitor } from '../server/jobs/visitor.ts';
import { startServer, tellOf } from './child.ts';
import { movedDemo } from './page-cost.ts';
import { figures, type Row } from './report.ts';
import { median, percentile } from './timing.ts';

const mostAnswer_ms = 100;
const mostBlock_ms = 50;
const people = 10;
const others = 2;
const between_ms = 500;

/** How many rounds of so many seconds. */
export interface TypingCounts {
  readonly rounds: number;
  readonly seconds: number;
}

/**
 * Ten people write in shelves of a job, each a change every half second, evenly spread, while two others change a counter again
 * as soon as it is answered. Every change is saved. Measured is how long the ten wait, as they see it, and for how long at most
 * the server answered nobody. What they send is never the same twice, so that nothing is remembered.
 */
export async function typingCost({ rounds, seconds }: TypingCounts): Promise<Row[]> {
  const { child, url } = await startServer('app', 'timed');
  try {
    const office = await openOffice(url);
    const waited_ms: number[] = [];
    const counters_ms: number[] = [];
    const blocked_ms: number[] = [];
    for (let round = -1; round < rounds; round++) {
      await tellOf(child);
      const waits = await workOneRound(office, seconds * 1000);
      const { blocked_ms: blocked } = await tellOf(child);
      // The first warms up the server and its threads.
      if (round < 0) continue;
      waited_ms.push(...waits.shelves);
      counters_ms.push(...waits.counters);
      blocked_ms.push(blocked);
    }
    return rowsOf(waited_ms, counters_ms, blocked_ms);
  } finally {
    await child.end();
  }
}

type Change = () => Promise<void>;

interface Office {
  readonly shelves: readonly Change[];
  readonly counters: readonly Change[];
}

/** A job with a check for each of them; a change of one is saved and answered. */
async function openOffice(url: string): Promise<Office> {
  const visit = visitor({ home: url });
  const token = await visit.token();
  const job = (await visit.beginJob()).replace('/jobs/', '');
  let turn = 0;
  const person = async (documentAt: (turn: number) => unknown): Promise<Change> => {
    const address = await keep(visit, job, documentAt(0));
    return async () => {
      const body = new URLSearchParams(queryOf(fillForm(documentAt(++turn))));
      const save = { token, 'save.base': '1', 'save.editor': 'bench', 'save.turn': String(turn) };
      for (const [name, text] of Object.entries(save)) body.set(name, text);
      const headers = { 'HX-Request': 'true', 'HX-Target': 'section#answer' };
      const response = await fetch(url + address, { method: 'POST', body, headers });
      const html = await response.text();
      if (response.status !== 200 || html.includes('<html') || !html.includes('<p class="kept">Saved'))
        throw new Error(`a change came to status ${response.status}`);
    };
  };
  const many = (count: number, documentAt: (turn: number) => unknown): Promise<Change[]> =>
    Promise.all(Array.from({ length: count }, () => person(documentAt)));
  return { shelves: await many(people, movedDemo), counters: await many(others, movedCounter) };
}

async function keep(visit: Visitor, job: string, document: unknown): Promise<string> {
  const response = await visit.send('/keep', { job, check: queryOf(fillForm(document)) });
  const address = response.headers.get('location');
  if (address === null) throw new Error(`a check was not kept: status ${response.status}`);
  return address;
}

function movedCounter(turn: number): unknown {
  const start = startChecks['counter-overhang'];
  const front = `${(24 + ((turn * 7) % 400) / 100).toFixed(2)} in`;
  return { ...start, base: { ...start.base, front } };
}

/** @returns how long each change of each kind waited, ms */
async function workOneRound(
  { shelves, counters }: Office,
  round_ms: number,
): Promise<Record<keyof Office, number[]>> {
  const start = performance.now();
  const waited: Record<keyof Office, number[]> = { shelves: [], counters: [] };
  const faults: unknown[] = [];
  const timed = async (change: Change, waits: number[]): Promise<void> => {
    const sent = performance.now();
    await change().catch((error: unknown) => faults.push(error));
    waits.push(performance.now() - sent);
  };
  const writing = shelves.map(async (change, index) => {
    const under: Promise<void>[] = [];
    for (let at_ms = (index * between_ms) / people; at_ms < round_ms; at_ms += between_ms) {
      await setTimeout(Math.max(0, start + at_ms - performance.now()));
      under.push(timed(change, waited.shelves));
    }
    await Promise.all(under);
  });
  const changing = counters.map(async (change) => {
    while (performance.now() - start < round_ms) await timed(change, waited.counters);
  });
  await Promise.all([...writing, ...changing]);
  if (faults.length > 0) throw faults[0];
  return waited;
}

function rowsOf(
  waited_ms: readonly number[],
  counters_ms: readonly number[],
  blocked_ms: readonly number[],
): Row[] {
  const slow = percentile(waited_ms, 95);
  const blocked = median(blocked_ms);
  const office = `${people} people writing in shelves and ${others} changing counters`;
  return [
    {
      what: `${office}, 95th percentile of how long a shelf's answer takes, ms`,
      measured: figures(slow),
      target: `under ${mostAnswer_ms}`,
      met: slow < mostAnswer_ms,
      information: `${waited_ms.length} answers, the middle ${figures(median(waited_ms))} ms, the longest ${figures(Math.max(...waited_ms))} ms; ${counters_ms.length} of counters, the middle ${figures(median(counters_ms))} ms; ${availableParallelism()} cores for them and the server`,
    },
    {
      what: `${office}, the longest the server answers nobody, ms`,
      measured: figures(blocked),
      target: `under ${mostBlock_ms}`,
      met: blocked < mostBlock_ms,
      information: `${blocked_ms.length} rounds, ${blocked_ms.map(figures).join(', ')} ms`,
    },
  ];
}

import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readDocument } from '../../../shared/check-document/index.ts';
import { demoCheck } from '../../../server/demo.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { serve, type Served } from '../serve.ts';
import { formOf, visitor, type Visitor } from './visitor.ts';

let served: Served;
let someone: Visitor;
beforeAll(async () => {
  served = await serve();
  someone = visitor(served);
});
afterAll(() => served.close());

const words = {
  name: 'House by the mill',
  client: 'A. <b>Client</b>',
  address: '3 Long Lane',
  reference: 'K-17',
  preparedBy: 'A. Nyone',
  checkedBy: 'S. O. Else',
  edition: 'Building code of 2024',
  authority: 'The town',
  notes: 'Mind\nthe cat',
};
const job = { schema: 1, kind: 'job', job: words, checks: [{ document: demoCheck }] };
const countJobs = async (): Promise<number> =>
  (await served.store.db.selectFrom('job').select('id').execute()).length;
const countChecks = async (): Promise<number> =>
  (await served.store.db.selectFrom('jobCheck').select('id').execute()).length;

describe('a job as a file', () => {
  it('goes out and comes in again the same, sound checks and unfinished ones', async () => {
    const first = await someone.beginJob(words);
    await someone.addDemo(first);
    const unfinished = await someone.addDemo(first);
    const form = formOf(await someone.page(unfinished));
    form.set('board.length', '9 furlongs');
    form.set('title', 'Not yet');
    await someone.send(unfinished, form);
    const sent = await someone.get(`${first}/file`);
    expect(sent.headers.get('content-disposition')).toMatch(
      /^attachment; filename=job-\d+-house-by-the-mill\.json$/,
    );
    const text = await sent.text();
    const file = JSON.parse(text) as { job: unknown; checks: { document?: unknown; unfinished?: unknown }[] };
    expect(file.job).toEqual(words);
    expect(readDocument(file.checks[0]?.document).ok).toBe(true);
    expect(file.checks[1]?.unfinished).toMatchObject({ 'board.length': '9 furlongs' });
    const brought = await someone.upload('/jobs/bring', 'job', text);
    expect(brought.status).toBe(303);
    const again = await (await someone.get(`${brought.headers.get('location') ?? ''}/file`)).text();
    expect(again).toBe(text);
  });

  it.each<[string, string, number, RegExp]>([
    ['nothing', '', 400, /empty/],
    ['no JSON', '{"schema": 1,', 400, /it ends too early/],
    ['a list', '[]', 422, /no job that can be brought in/],
    ['a single check', JSON.stringify(demoCheck), 422, /A single check is opened from the first page/],
    ['the next version', JSON.stringify({ ...job, schema: 2 }), 422, /the number 1/],
    ['no name', JSON.stringify({ ...job, job: { ...words, name: ' ' } }), 422, /A job needs a name/],
    [
      'a field too many',
      JSON.stringify({ ...job, colour: 'white' }),
      422,
      /fields here that a job does not have/,
    ],
    [
      'a name with a control sign',
      JSON.stringify({ ...job, job: { ...words, name: 'a\u0007b' } }),
      422,
      /one line/,
    ],
    [
      'a check with an error in it',
      JSON.stringify({
        ...job,
        checks: [{ document: demoCheck }, { document: { ...demoCheck, board: {} } }],
      }),
      422,
      /\/checks\/1\/document\/board\/length/,
    ],
    ['a check that is none', JSON.stringify({ ...job, checks: ['x'] }), 422, /&quot;document&quot;/],
    [
      'too many checks',
      JSON.stringify({ ...job, checks: Array.from({ length: 201 }, () => ({ document: {} })) }),
      422,
      /at most 200 checks/,
    ],
  ])(
    'with %s in it is refused in words, and nothing is kept of it',
    async (_what, content, status, message) => {
      const [jobs, checks] = [await countJobs(), await countChecks()];
      const response = await someone.upload('/jobs/bring', 'job', content);
      expect(response.status).toBe(status);
      expect(await response.text()).toMatch(message);
      expect([await countJobs(), await countChecks()]).toEqual([jobs, checks]);
    },
  );

  it('of any size over the limit is refused before it is read', async () => {
    const jobs = await countJobs();
    const response = await someone.upload('/jobs/bring', 'job', `"${'x'.repeat(5_000_000)}"`);
    expect(response.status).toBe(413);
    expect(await countJobs()).toBe(jobs);
  });

  it('is brought in whole or not at all where the disk is full in the middle of it', async () => {
    const own = await serve();
    const visit = visitor(own);
    await visit.beginJob();
    const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(own.store.db);
    const [pages] = rows.map((row) => Number(Object.values(row)[0]));
    await sql.raw(`pragma max_page_count = ${(pages ?? 0) + 8}`).execute(own.store.db);
    const many = { ...job, checks: Array.from({ length: 20 }, () => ({ document: demoCheck })) };
    const response = await visit.upload('/jobs/bring', 'job', JSON.stringify(many));
    expect(response.status).toBe(503);
    expect(await response.text()).toContain('is full');
    const kept = await own.store.db.selectFrom('job').select('name').execute();
    expect(kept).toEqual([{ name: 'Kitchen' }]);
    expect(await own.store.db.selectFrom('jobCheck').select('id').execute()).toEqual([]);
    expect((await visit.get('/')).status).toBe(200);
    await own.close();
  });

  it('does not pollute what all objects share', async () => {
    const evil = JSON.stringify(job).replace('"kind"', '"__proto__": {"polluted": 1}, "kind"');
    await someone.upload('/jobs/bring', 'job', evil);
    expect('polluted' in {}).toBe(false);
  });
});

describe('text that is markup', () => {
  it.each(Object.keys(startChecks))(
    'is shown as it was written, in every field of a %s, on every page',
    async (element) => {
      const evil = `"><svg onload=alert(1)><img src=x><script>alert(1)</script>'{{x}}`;
      const own = await someone.beginJob(Object.fromEntries(Object.keys(words).map((name) => [name, evil])));
      const check = (await someone.send(`${own}/checks`, { from: element })).headers.get('location') ?? '';
      const start = formOf(await someone.page(check));
      const all = new URLSearchParams(start);
      const inNames = new URLSearchParams(start);
      for (const name of [...start.keys()]) {
        if (!/^(?:token|save\.|was|schema|element)/.test(name)) all.set(name, evil);
        // These leave the check sound, so that drawings and sheets are made of it.
        if (/^(?:title|preparedBy|checkedBy)$|\.name$/.test(name)) inNames.set(name, evil);
      }
      await someone.send(check, inNames);
      const sound = await someone.page(check);
      expect(sound).toContain('id="verdict"');
      all.set('save.base', '2');
      await someone.send(check, all);
      for (const name of ['token', 'save.editor', 'save.base']) {
        all.delete(name);
        inNames.delete(name);
      }
      const pages = [
        '/',
        own,
        `${own}/edit`,
        check,
        `${check}/history`,
        `/keep?${all.toString()}`,
        `/sheet?${inNames.toString()}`,
        `/installer?${inNames.toString()}`,
        `/?search=${encodeURIComponent(evil)}`,
      ];
      const shown = await Promise.all(pages.map((path) => someone.page(path)));
      for (const [index, html] of [sound, ...shown].entries()) {
        expect(html, pages[index - 1]).not.toMatch(/<img|<script>|<svg onload|onerror=alert\(1\)>/);
      }
      expect(await someone.page(own)).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
      expect(await someone.page(`/sheet?${inNames.toString()}`)).toContain('&lt;svg onload');
    },
  );
});

describe('a form from elsewhere', () => {
  const cases: readonly [string, Record<string, string>, string][] = [
    ['without a token', { 'Sec-Fetch-Site': 'same-origin' }, ''],
    ['with a token of another', { 'Sec-Fetch-Site': 'same-origin' }, 'a'.repeat(40)],
    ['of another site', { 'Sec-Fetch-Site': 'cross-site' }, 'own'],
    ['of another port of this machine', { 'Sec-Fetch-Site': 'same-site' }, 'own'],
    ['with another origin', { Origin: 'https://elsewhere.example' }, 'own'],
    ['with no origin to speak of', { Origin: 'null' }, 'own'],
  ];
  it.each(cases)('%s changes nothing', async (_what, headers, token) => {
    const jobs = await countJobs();
    const body = new URLSearchParams({
      name: 'Evil',
      token: token === 'own' ? await someone.token() : token,
    });
    const response = await fetch(`${served.home}/jobs`, {
      method: 'POST',
      body,
      headers,
      redirect: 'manual',
    });
    expect(response.status).toBe(403);
    expect(await countJobs()).toBe(jobs);
  });

  it.each(['X-Forwarded-For', 'Forwarded', 'Via'])('that a proxy passed on (%s) is refused', async (name) => {
    const response = await fetch(`${served.home}/`, { headers: { [name]: '192.0.2.1' } });
    expect(response.status).toBe(421);
    expect(await response.text()).toContain('SITE_ADDRESS');
  });

  it('that reaches this machine by a strange name is refused', async () => {
    const { request } = await import('node:http');
    const status = await new Promise<number | undefined>((resolve) => {
      request(`${served.home}/`, { headers: { Host: 'rebound.example' } }, (response) => {
        response.resume();
        resolve(response.statusCode);
      }).end();
    });
    expect(status).toBe(421);
  });
});

import { sql } from 'kysely';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createPdfWorkers } from '../../../server/sheets/pdf/workers.ts';
import { cookieOf, letIn, site } from '../accounts/office.ts';
import { formOf, visitor, type Visitor } from '../jobs/visitor.ts';
import { serve, type Served } from '../serve.ts';

const noon = new Date(2026, 2, 14, 12, 0, 0);
let served: Served;
let someone: Visitor;
beforeAll(async () => {
  served = await serve(undefined, { now: () => noon });
  someone = visitor(served);
});
afterAll(() => served.close());

const leaks = /\bundefined\b|\bNaN\b|\[object |\bInfinity\b/;
const text = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
const words = {
  name: 'House by the mill',
  client: 'A. Client',
  preparedBy: 'A. Nyone',
  checkedBy: 'S. O. Else',
};
const count = async (of: Served = served): Promise<number> =>
  (await of.store.db.selectFrom('issuedSheet').select('id').execute()).length;

async function change(check: string, fields: Readonly<Record<string, string>>, by = someone): Promise<void> {
  const form = formOf(await by.page(check));
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  expect((await by.send(check, form)).status).toBe(303);
}

describe('the page that issues a sheet', () => {
  it('says what will be frozen: number, verdict, the people of the job, today, and the words of the job', async () => {
    const job = await someone.beginJob(words);
    const check = await someone.addDemo(job);
    const html = await someone.page(`${check}/issue`);
    expect(html).not.toMatch(leaks);
    const form = formOf(html);
    expect(form.get('title')).toBe('Display shelf over the sideboard');
    expect(form.get('preparedBy')).toBe('A. Nyone');
    expect(form.get('checkedBy')).toBe('S. O. Else');
    expect(form.get('date')).toBe('2026-03-14');
    const shown = text(html);
    for (const each of [
      'revision A',
      'Holds',
      'House by the mill',
      'A. Client',
      'Cautions',
      'calculation aid',
    ]) {
      expect(shown).toContain(each);
    }
    expect(await someone.page(check)).toContain(`href="${check}/issue"`);
    expect(await someone.page(job)).toContain(`href="${check}/issue"`);
  });

  it('issues the sheet, which the pages of job and check then list, with its page and its file', async () => {
    const job = await someone.beginJob(words);
    const check = await someone.addDemo(job);
    const sheet = await someone.issue(check, {
      title: 'Shelf in the hall',
      checkedBy: '',
      date: '2026-03-20',
    });
    const html = await someone.page(sheet);
    expect(html).not.toMatch(leaks);
    const shown = text(html);
    for (const each of ['Shelf in the hall', '2026-03-20', 'A. Nyone', 'A. Client', 'House by the mill']) {
      expect(shown).toContain(each);
    }
    expect(shown).not.toContain('S. O. Else');
    expect(shown).not.toContain('Superseded');
    const number = /\d+-1 revision A/.exec(shown)?.[0] ?? 'none';
    for (const page of [job, check]) {
      const list = await someone.page(page);
      expect(list).toContain(`href="${sheet}"`);
      expect(list).toContain(`href="${sheet}/sheet.pdf"`);
      expect(text(list)).toContain(number);
    }
    const pdf = await someone.get(`${sheet}/sheet.pdf`);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    expect(pdf.headers.get('content-disposition')).toMatch(/^inline; filename="sheet-\d+-1-A\.pdf"$/);
    const frozen = await (await someone.get(`${sheet}/document`)).json();
    expect(frozen).toMatchObject({
      schema: 1,
      kind: 'issued-sheet',
      revision: 'A',
      title: 'Shelf in the hall',
      preparedBy: 'A. Nyone',
      checkedBy: '',
      date: '2026-03-20',
      job: { name: 'House by the mill', client: 'A. Client' },
      check: { title: 'Shelf in the hall', date: '2026-03-20', element: 'bracket-shelf' },
      result: { verdict: 'holds', remedies: [] },
      edition: { tool: expect.stringContaining('Shelf and overhang check') as string },
    });
  });

  it('tells that nothing changed since the last revision, and issues all the same on asking twice', async () => {
    const check = await someone.addDemo(await someone.beginJob(words));
    const first = await someone.issue(check);
    for (const date of ['2026-03-14', '2026-04-01']) {
      const told = await someone.sendIssue(check, { date });
      const html = await told.text();
      expect(told.status).toBe(409);
      expect(text(html)).toContain('Revision A of 2026-03-14 says the same already');
      expect(html).toContain(`href="${first}"`);
      expect(html).toContain('name="insist" value="A"');
      expect(text(html)).toContain('Issue revision B all the same');
    }
    const second = await someone.issue(check, { insist: 'A' });
    expect((await someone.sendIssue(check, { insist: 'A' })).status).toBe(409);
    expect(text(await someone.page(second))).toContain('revision B');
  });

  it('takes other names, another paper and another check as something new', async () => {
    const check = await someone.addDemo(await someone.beginJob(words));
    await someone.issue(check);
    await someone.issue(check, { checkedBy: 'S. Omeone' });
    await someone.issue(check, { checkedBy: 'S. Omeone', paper: 'a4' });
    await change(check, { 'board.length': '95 in' });
    expect(formOf(await someone.page(`${check}/issue`)).get('paper')).toBe('a4');
    const last = await someone.issue(check, { checkedBy: 'S. Omeone' });
    expect(text(await someone.page(last))).toContain('revision D');
  });

  it('says of a superseded sheet that it is: above its verdict, in lists, and where its file is', async () => {
    const job = await someone.beginJob(words);
    const check = await someone.addDemo(job);
    const first = await someone.issue(check);
    await change(check, { 'board.length': '95 in' });
    await someone.issue(check);
    const html = await someone.page(first);
    const notice = html.indexOf('Superseded by revision B');
    expect(notice).toBeGreaterThan(0);
    expect(notice).toBeLessThan(html.indexOf('sheet-verdict'));
    expect(text(html)).toContain('it can’t say so itself');
    expect(text(html)).toContain('PDF to file (superseded)');
    for (const page of [job, check]) {
      expect(text(await someone.page(page))).toContain('Superseded by revision B');
    }
    const pdf = await someone.get(`${first}/sheet.pdf`);
    expect(pdf.headers.get('content-disposition')).toContain('-A-superseded-by-B.pdf');
  });

  it('refuses a check that can’t be worked out, and says why', async () => {
    const check = await someone.addDemo(await someone.beginJob(words));
    const form = formOf(await someone.page(`${check}/issue`));
    await change(check, { 'board.length': '9 furlongs' });
    const before = await count();
    const page = await someone.get(`${check}/issue`);
    expect(page.status).toBe(422);
    const html = await page.text();
    expect(text(html)).toContain('board, length');
    expect(html).toContain(`href="${check}"`);
    form.set('check.version', '2');
    const sent = await someone.send(`${check}/issue`, form);
    expect([sent.status, text(await sent.text()).includes('board, length')]).toEqual([422, true]);
    expect(await count()).toBe(before);
  });

  it('lets a check be issued that does not hold, or of which it can’t be said, and says so before', async () => {
    const job = await someone.beginJob(words);
    const check = await someone.addDemo(job);
    await change(check, { 'board.thickness': '1/4 in' });
    expect(text(await someone.page(`${check}/issue`))).toContain(
      'This check does not hold. It can be issued',
    );
    const sheet = await someone.issue(check);
    expect(text(await someone.page(sheet))).toContain('Does not hold.');
    expect(text(await someone.page(job))).toMatch(/revision A [^]*Does not hold/);
    await change(check, { 'board.thickness': '3/4 in', 'brackets.capacity.basis': 'unknown' });
    const open = text(await someone.page(`${check}/issue`));
    expect(open).toContain('It can’t be said whether this holds.');
  });

  it('refuses names and days that are none, all at once, with what was written kept', async () => {
    const check = await someone.addDemo(await someone.beginJob(words));
    const before = await count();
    const sent = await someone.sendIssue(check, {
      title: '',
      preparedBy: 'x'.repeat(81),
      date: '2026-02-30',
    });
    const html = await sent.text();
    expect(sent.status).toBe(422);
    expect(text(html)).toContain('3 things are to be put right');
    expect(html).toContain('x'.repeat(81));
    expect(text(html)).toContain('It takes a day of the calendar');
    expect(html.match(/aria-invalid="true"/g)).toHaveLength(3);
    expect(await count()).toBe(before);
  });

  it('issues nothing unseen: what was changed meanwhile is shown first', async () => {
    const job = await someone.beginJob(words);
    const check = await someone.addDemo(job);
    const form = formOf(await someone.page(`${check}/issue`));
    await change(check, { 'board.length': '95 in' });
    const stale = await someone.send(`${check}/issue`, form);
    const html = await stale.text();
    expect([stale.status, text(html).includes('changed after this page was opened')]).toEqual([409, true]);
    const shown = formOf(html);
    await someone.send(`${job}/edit`, { ...words, name: 'Hall', version: '1' });
    expect((await someone.send(`${check}/issue`, shown)).status).toBe(409);
    await someone.issue(check);
  });

  it('gives two who issue at once A and B, and one sheet where both say the same', async () => {
    const check = await someone.addDemo(await someone.beginJob(words));
    const form = formOf(await someone.page(`${check}/issue`));
    const send = (preparedBy: string): Promise<Response> => {
      const own = new URLSearchParams(form);
      own.set('preparedBy', preparedBy);
      return someone.send(`${check}/issue`, own);
    };
    const both = await Promise.all(['One', 'Two'].map(send));
    expect(both.map(({ status }) => status)).toEqual([303, 303]);
    const sheets = await Promise.all(
      both.map(async (each) => (await someone.get(`${each.headers.get('location') ?? ''}/document`)).json()),
    );
    expect(sheets.map((each) => (each as { revision: string }).revision).toSorted()).toEqual(['A', 'B']);
    const twice = await Promise.all(['Three', 'Three'].map(send));
    expect(twice.map(({ status }) => status).toSorted()).toEqual([303, 409]);
  });

  it('shows text as text, whatever is in it', async () => {
    const hostile = `"'><script>alert(1)</script><img src=x onerror=alert(2)>{{title}}&amp;`;
    const job = await someone.beginJob({
      ...words,
      name: hostile,
      client: hostile,
      address: hostile,
      reference: hostile.slice(0, 80),
      edition: hostile,
      authority: hostile,
    });
    const check = await someone.addDemo(job);
    const names = { title: hostile, preparedBy: hostile.slice(0, 80), checkedBy: hostile.slice(0, 80) };
    const refused = await someone.sendIssue(check, { ...names, date: hostile });
    const sheet = await someone.issue(check, names);
    const again = await someone.sendIssue(check, names);
    const pages = [sheet, `${sheet}?today`, job, check, `${check}/issue`].map((page) => someone.page(page));
    for (const html of [await refused.text(), await again.text(), ...(await Promise.all(pages))]) {
      expect(html).not.toMatch(/<script>alert|<img src=x/);
      expect(html).toContain('&lt;script&gt;alert(1)');
    }
    const head = /href="(\/sheet-head\.css[^"]+)"/.exec(await someone.page(sheet))?.[1] ?? '';
    const css = await someone.page(head.replaceAll('&amp;', '&').replaceAll('&#x3D;', '='));
    expect(css).toContain('Fingerprint');
    expect(css).not.toContain('<script>');
  });
});

describe('readers of an office', () => {
  it('see issued sheets and no way to issue one', async () => {
    const own = await serve(site);
    const [member, reader] = [
      visitor(own, await cookieOf(own.store, await letIn(own.store, 'here', 'member', 'M. Ember'))),
      visitor(own, await cookieOf(own.store, await letIn(own.store, 'here', 'reader', 'R. Eader'))),
    ];
    const job = await member.beginJob(words);
    const check = await member.addDemo(job);
    const sheet = await member.issue(check);
    expect(text(await reader.page(sheet))).toContain('by M. Ember');
    for (const page of [job, check]) {
      const html = await reader.page(page);
      expect(html).toContain(`href="${sheet}"`);
      expect(html).not.toContain(`${check}/issue`);
    }
    expect((await reader.get(`${check}/issue`)).status).toBe(403);
    await own.close();
  });
});

describe('where a sheet can’t be issued', () => {
  const begun = async (pdfs?: ReturnType<typeof createPdfWorkers>) => {
    const own = await serve(undefined, pdfs === undefined ? {} : { pdfs });
    const by = visitor(own);
    const check = await by.addDemo(await by.beginJob(words));
    const form = formOf(await by.page(`${check}/issue`));
    form.set('token', await by.token());
    const send = (): Promise<Response> =>
      fetch(`${own.home}${check}/issue`, { method: 'POST', body: form, redirect: 'manual' });
    return { own, send };
  };

  it.each([
    ['read-only', 'pragma query_only = 1', 'can’t be written in', 'pragma query_only = 0'],
    ['full', 'pragma max_page_count = 1', 'is full', 'pragma max_page_count = 100000'],
  ])(
    'since the store is %s, it says so, nothing is written, and it goes on afterwards',
    async (_what, order, said, undo) => {
      const { own, send } = await begun();
      await sql.raw(order).execute(own.store.db);
      const refused = await send();
      expect([refused.status, refused.headers.get('retry-after')]).toEqual([503, '30']);
      expect(await refused.text()).toContain(said);
      expect(await count(own)).toBe(0);
      await sql.raw(undo).execute(own.store.db);
      expect((await send()).status).toBe(303);
      expect(await count(own)).toBe(1);
      await own.close();
    },
  );

  it('since the store is gone, it says so', async () => {
    const { own, send } = await begun();
    await own.store.close();
    expect((await send()).status).toBe(503);
    await own.close().catch(() => undefined);
  });

  it('since its PDF can’t be set, it says so, and nothing is written', async () => {
    const file = pathToFileURL(join(import.meta.dirname, 'no-such-thread.mjs'));
    const { own, send } = await begun(createPdfWorkers(undefined, file));
    const refused = await send();
    expect(refused.status).toBe(503);
    expect(await refused.text()).toContain('No sheet was issued');
    expect(await count(own)).toBe(0);
    await own.close();
  });
});

it('nothing of all that was a fault of the program', () => {
  expect(served.faults).toEqual([]);
});

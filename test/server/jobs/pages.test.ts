import { caution } from '../../../shared/cautions.ts';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoCheck } from '../../../server/demo.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { leaks, plainText } from '../page-text.ts';
import { serve, type Served } from '../serve.ts';
import { formOf, visitor, type Visitor } from './visitor.ts';

let served: Served;
let someone: Visitor;
beforeAll(async () => {
  served = await serve();
  someone = visitor(served);
});
afterAll(() => served.close());

const htmx = { 'HX-Request': 'true', 'HX-Target': 'section#answer' };

describe('the first page', () => {
  it('of someone without jobs shows what this is, the demo check and the way to a job', async () => {
    const fresh = await serve();
    const html = await visitor(fresh).page('/');
    expect(html).toContain('Will it hold');
    expect(html).toContain('href="/demo"');
    expect(html).toContain('href="/jobs/new"');
    await fresh.close();
  });

  it('lists jobs with how they stand and what governs, and keeps the demo check one click away', async () => {
    const job = await someone.beginJob({ name: 'House by the mill', client: 'A. Client', reference: 'K-17' });
    await someone.addDemo(job);
    const html = await someone.page('/?search=mill');
    expect(html).not.toMatch(leaks);
    expect(html).toContain('href="/demo"');
    const shown = plainText(html);
    for (const words of ['House by the mill', 'A. Client', 'K-17', 'One job', '% used'])
      expect(shown).toContain(words);
    expect(plainText(await someone.page('/?search=zinc'))).toContain('No job here fits “zinc”');
  });
});

describe('a job', () => {
  it('that is begun with a check is called by its title, until it is called otherwise', async () => {
    const check = new URLSearchParams({ title: 'Shelf by the stairs', preparedBy: 'O. Wner' }).toString();
    const html = await (await someone.send('/jobs/new', { check })).text();
    expect(html).toMatch(/id="name"[^>]*value="Shelf by the stairs"/);
    expect(html).toMatch(/id="preparedBy"[^>]*value="O. Wner"/);
    expect(html).toMatch(/id="client"[^>]*value=""/);
  });

  it('offers its PDF as soon as there is a check to put in it', async () => {
    const job = await someone.beginJob({ name: 'Empty house' });
    const asked = `action="${job}/papers"`;
    expect(await someone.page(job)).not.toContain(asked);
    await someone.addDemo(job);
    expect(await someone.page(job)).toContain(asked);
  });

  it('is refused without a name, all errors at once, with what was written kept', async () => {
    const response = await someone.send('/jobs', { client: 'x'.repeat(121), notes: 'Mind the cat' });
    const html = await response.text();
    expect(response.status).toBe(422);
    expect(html).toContain('2 things to put right');
    expect(html).toContain('Mind the cat');
  });

  it('is changed, unless somebody else did meanwhile: then both are shown and nothing is overwritten', async () => {
    const job = await someone.beginJob({ name: 'Hall' });
    const words = { name: 'Hall, ground floor', version: '1' };
    expect((await someone.send(`${job}/edit`, words)).status).toBe(303);
    const stale = await someone.send(`${job}/edit`, { name: 'Hall, attic', version: '1' });
    const html = await stale.text();
    expect(stale.status).toBe(409);
    expect(html).toContain('Hall, attic');
    expect(html).toContain('Hall, ground floor');
    expect(plainText(await someone.page(job))).toContain('Hall, ground floor');
    expect((await someone.send(`${job}/edit`, { name: 'Hall, attic', version: '2' })).status).toBe(303);
  });

  it('saves its words as they are written, again and again, and says so or what is in the way', async () => {
    const job = await someone.beginJob({ name: 'Attic' });
    const write = async (fields: Readonly<Record<string, string>>): Promise<[number, string]> => {
      const response = await someone.send(`${job}/edit`, fields, { 'HX-Request': 'true' });
      return [response.status, await response.text()];
    };
    const [, first] = await write({
      name: 'Attic',
      client: 'A. Client',
      notes: 'Mind\r\nthe cat',
      version: '1',
    });
    expect(first).toMatch(/name="version" value="2"[^]*Saved at \d\d:\d\d/);
    expect(first).not.toContain('<html');
    const [, again] = await write({
      name: 'Attic',
      client: 'A. Client',
      notes: 'Mind\r\nthe cat',
      version: '1',
    });
    expect(again).toMatch(/name="version" value="2"[^]*Saved/);
    const [nameless, problem] = await write({ name: '', version: '2' });
    expect([nameless, plainText(problem).includes('A job needs a name')]).toEqual([422, true]);
    const [stale, differs] = await write({ name: 'Attic', client: 'B. Client', version: '1' });
    expect([stale, differs.includes('name="over" value="2"')]).toEqual([200, true]);
    for (const words of ['Not saved', 'A. Client', 'B. Client']) expect(plainText(differs)).toContain(words);
    expect(plainText(await someone.page(job))).toContain('A. Client');
    expect((await someone.send(`${job}/edit`, { name: 'Loft', version: '1', over: '2' })).status).toBe(303);
    expect(plainText(await someone.page(job))).toContain('Loft');
  });

  it('is archived, deleted and brought back', async () => {
    const job = await someone.beginJob({ name: 'Scullery' });
    await someone.send(`${job}/archive`);
    expect(await someone.page('/?place=archived')).toContain('Scullery');
    const gone = (await someone.send(`${job}/delete`)).headers.get('location') ?? '';
    const undo = /action="(\/jobs\/[0-9a-f]+\/undelete)"/.exec(await someone.page(gone))?.[1] ?? '';
    expect(await someone.page('/?place=archived')).not.toContain('Scullery');
    expect((await someone.send(undo)).headers.get('location')).toBe(job);
    expect(await someone.page('/?place=archived')).toContain('Scullery');
  });

  it('is copied with its checks, which are copied, moved, deleted and brought back', async () => {
    const job = await someone.beginJob({ name: 'Pantry' });
    const check = await someone.addDemo(job);
    await someone.send(`${check}/copy`);
    await someone.send(`${check}/down`);
    const numbers = async (page: string): Promise<string[]> =>
      [...(await someone.page(page)).matchAll(/<span class="under">(\d+-\d+)<\/span>/g)].map(
        ([, label = '']) => label.replace(/^\d+-/, ''),
      );
    expect(await numbers(job)).toEqual(['2', '1']);
    const copy = (await someone.send(`${job}/copy`)).headers.get('location') ?? '';
    expect(await numbers(copy)).toEqual(['1', '2']);
    const gone = (await someone.send(`${check}/delete`)).headers.get('location') ?? '';
    expect(await numbers(job)).toEqual(['2']);
    expect((await someone.get(check)).status).toBe(404);
    const undo = /action="([^"]*\/undelete)"/.exec(await someone.page(gone))?.[1] ?? '';
    await someone.send(undo);
    expect(await numbers(job)).toEqual(['2', '1']);
  });
});

describe('a check in a job', () => {
  it('saves itself with the answer, and says when', async () => {
    const check = await someone.addDemo(await someone.beginJob());
    const form = formOf(await someone.page(check));
    form.set('board.length', '95 in');
    form.set('save.turn', '1');
    const response = await someone.send(check, form, htmx);
    const html = await response.text();
    expect(response.status).toBe(200);
    expect(response.headers.get('hx-push-url')).toBeNull();
    expect(html).toMatch(/<p class="kept">Saved at \d\d:\d\d<\/p>/);
    expect(html).toContain('name="save.base" value="2"');
    expect(html).not.toContain('<html');
    expect(formOf(await someone.page(check)).get('board.length')).toBe('95 in');
  });

  it('saves what is not finished too, and says so in the list', async () => {
    const job = await someone.beginJob({ name: 'Larder' });
    const check = await someone.addDemo(job);
    const form = formOf(await someone.page(check));
    form.set('board.length', '9 furlongs');
    const response = await someone.send(check, form, htmx);
    expect(response.status).toBe(422);
    expect(await response.text()).toContain('Saved');
    expect(formOf(await someone.page(check)).get('board.length')).toBe('9 furlongs');
    expect(plainText(await someone.page(job))).toContain('Unfinished');
  });

  it('works without scripts: the button saves and comes back to the page', async () => {
    const check = await someone.addDemo(await someone.beginJob());
    const form = formOf(await someone.page(check));
    form.set('do', 'add:loads');
    const response = await someone.send(check, form);
    expect(response.status).toBe(303);
    const next = response.headers.get('location') ?? '';
    expect(next).toContain(`${check}?at=`);
    expect(formOf(await someone.page(next)).get('loads.3.amount')).toBe('10 lbf/ft');
  });

  it('of two windows, refuses the one that is behind, shows both, and saves over on request alone', async () => {
    const check = await someone.addDemo(await someone.beginJob());
    const [one, two] = [formOf(await someone.page(check)), formOf(await someone.page(check))];
    one.set('board.length', '95 in');
    await someone.send(check, one, htmx);
    two.set('board.length', '94 in');
    const refused = await (await someone.send(check, two, htmx)).text();
    const shown = plainText(refused);
    expect(shown).toContain('Not saved.');
    for (const words of ['Length', '94 in', '95 in']) expect(shown).toContain(words);
    expect(shown).toMatch(/saved this check at \d\d:\d\d, after it was opened here/);
    expect(shown).toContain('What is here is kept nowhere until it is saved.');
    expect(refused).toContain('<a class="glance-unsaved" href="#not-saved">');
    expect(formOf(await someone.page(check)).get('board.length')).toBe('95 in');
    const whole = await someone.send(check, two);
    expect(whole.status).toBe(409);
    const over = /name="save.over" value="(\d+)"/.exec(refused)?.[1] ?? '';
    two.set('save.over', over);
    expect(plainText(await (await someone.send(check, two, htmx)).text())).toContain('Saved');
    expect(formOf(await someone.page(check)).get('board.length')).toBe('94 in');
  });

  it('has a history in the words of the form, and goes back', async () => {
    const check = await someone.addDemo(await someone.beginJob());
    const form = formOf(await someone.page(check));
    form.set('board.length', '95 in');
    form.set('loads.0.amount', '19 lbf/ft');
    await someone.send(check, form);
    const html = await someone.page(`${check}/history`);
    expect(html).not.toMatch(leaks);
    const shown = plainText(html);
    for (const words of ['Revision 2', 'Load 1, Weight per length', '18 lbf/ft', '19 lbf/ft', 'Length']) {
      expect(shown).toContain(words);
    }
    await someone.send(`${check}/restore`, { revision: '1', version: '2' });
    expect(formOf(await someone.page(check)).get('board.length')).toBe('96 in');
    expect(plainText(await someone.page(`${check}/history`))).toContain('Put back to revision 1');
    expect((await someone.send(`${check}/restore`, { revision: '2', version: '1' })).status).toBe(409);
  });

  it('offers to put back only what would change something', async () => {
    const check = await someone.addDemo(await someone.beginJob());
    const form = formOf(await someone.page(check));
    for (const [turn, length] of ['95 in', '94 in', '95 in'].entries()) {
      form.set('board.length', length);
      form.set('save.turn', String(turn + 1));
      await someone.send(check, form, htmx);
    }
    const other = formOf(await someone.page(check));
    other.set('board.length', '94 in');
    other.set('save.turn', '1');
    await someone.send(check, other, htmx);
    other.set('board.length', '95 in');
    other.set('save.turn', '2');
    await someone.send(check, other, htmx);
    const html = await someone.page(`${check}/history`);
    expect(plainText(html)).toContain('Nothing, in the end');
    const offered = [...html.matchAll(/name="revision" value="(\d+)"/g)].map(([, number]) => number);
    expect(offered).toEqual(['1']);
  });

  it('has the caution beside the verdicts of its job, and of the list of jobs', async () => {
    const job = await someone.beginJob({ name: 'Cautious' });
    await someone.addDemo(job);
    for (const page of [job, '/']) expect(plainText(await someone.page(page))).toContain(caution.aid);
  });

  it.each(Object.keys(startChecks))(
    'is begun of a %s, changed, and its history says what changed',
    async (element) => {
      const job = await someone.beginJob({ name: 'Workshop', preparedBy: 'R. Writer' });
      const check = (await someone.send(`${job}/checks`, { from: element })).headers.get('location') ?? '';
      const form = formOf(await someone.page(check));
      expect(form.get('element')).toBe(element);
      expect(form.get('preparedBy')).toBe('R. Writer');
      form.set('title', 'Over the bench');
      form.set('loads.0.name', 'Planes');
      await someone.send(check, form);
      const shown = plainText(await someone.page(`${check}/history`));
      for (const words of ['Title', 'Over the bench', 'Load 1', 'Planes']) expect(shown).toContain(words);
      expect(plainText(await someone.page(job))).toMatch(
        /Over the bench \d+-1 (?:Holds|Cannot say|Does not hold) \S/,
      );
    },
  );

  it('goes over to another element like any check, and back by its history', async () => {
    const check = await someone.addDemo(await someone.beginJob());
    const form = formOf(await someone.page(check));
    form.set('element', 'wall-fixing');
    await someone.send(check, form);
    const fixing = formOf(await someone.page(check));
    expect(fixing.get('element')).toBe('wall-fixing');
    expect(fixing.get('title')).toBe(demoCheck.title);
    await someone.send(`${check}/restore`, { revision: '1', version: '2' });
    expect(formOf(await someone.page(check)).get('board.length')).toBe('96 in');
  });

  it('comes from a check without a job, which keeps its own address', async () => {
    const job = await someone.beginJob({ name: 'Library' });
    const demo = (await someone.get('/demo')).headers.get('location') ?? '';
    const html = await someone.page(demo);
    const keep = (/href="(\/keep\?[^"]*)"/.exec(html)?.[1] ?? '')
      .replaceAll('&amp;', '&')
      .replaceAll('&#x3D;', '=');
    const page = await someone.page(keep);
    expect(page).toContain('Library');
    const query = formOf(page).get('check') ?? '';
    const kept = await someone.send('/keep', { check: query, job: job.replace('/jobs/', '') });
    const form = formOf(await someone.page(kept.headers.get('location') ?? ''));
    expect(form.get('title')).toBe(demoCheck.title);
    const found = await (await someone.send('/keep', { check: query, search: 'library' })).text();
    expect([found.includes('Library'), found.includes('Hall')]).toEqual([true, false]);
    expect(formOf(found).get('check')).toBe(query);
    const none = await someone.send('/keep', { check: query, search: 'zinc' });
    expect(plainText(await none.text())).toContain('No open job fits “zinc”');
    const begun = await someone.send('/jobs', { name: 'Study', check: query });
    expect(begun.headers.get('location')).toMatch(/\/checks\//);
  });
});

describe('trouble with the store', () => {
  it('does not hide how checks stand that another version of the tool had worked out', async () => {
    const own = await serve();
    const visit = visitor(own);
    const job = await visit.beginJob();
    await visit.addDemo(job);
    await own.store.db.updateTable('jobCheck').set({ tool: 'older', standing: 'does-not-hold' }).execute();
    await sql`pragma query_only = 1`.execute(own.store.db);
    expect(plainText(await visit.page(job))).toMatch(/Holds .*% used/);
    await sql`pragma query_only = 0`.execute(own.store.db);
    await visit.page(job);
    const { standing } = await own.store.db.selectFrom('jobCheck').selectAll().executeTakeFirstOrThrow();
    expect(standing).toBe('holds');
    await own.close();
  });

  it('is told beside the answer while a check is written, and on a page elsewhere', async () => {
    const own = await serve();
    const visit = visitor(own);
    const check = await visit.addDemo(await visit.beginJob());
    const form = formOf(await visit.page(check));
    await sql`pragma max_page_count = 1`.execute(own.store.db);
    let html = '';
    for (let turn = 1; turn < 60 && !html.includes('Not saved'); turn++) {
      form.set('title', `${turn} ${'x'.repeat(110)}`);
      html = await (await visit.send(check, form, htmx)).text();
      expect(html).toContain('id="verdict"');
      form.set('save.base', String(turn + 1));
    }
    const kept = plainText(/<div class="kept[\s\S]*?<\/div>/.exec(html)?.[0] ?? '');
    expect(kept).toContain('Not saved. The disk the jobs are kept on is full.');
    const response = await visit.send('/jobs', { name: 'Kitchen', notes: 'z'.repeat(4000) });
    expect(response.status).toBe(503);
    expect(await response.text()).toContain('The disk the jobs are kept on is full.');
    await own.store.close();
    const gone = await visit.get('/');
    expect(gone.status).toBe(503);
    expect((await visit.get('/demo')).status).toBe(303);
    await own.close().catch(() => undefined);
  });
});

import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cookieOf, letIn, site } from '../accounts/office.ts';
import { serve, type Served } from '../serve.ts';
import { hasPostgres, startPostgres, type PostgresServer } from '../store/postgres-server.ts';
import { formOf, visitor, type Visitor } from './visitor.ts';

const htmx = { 'HX-Request': 'true', 'HX-Target': 'section#answer' };

describe.skipIf(!hasPostgres)('an office on PostgreSQL', () => {
  let postgres: PostgresServer;
  let served: Served;
  let someone: Visitor;
  beforeAll(async () => {
    postgres = await startPostgres();
    served = await serve(site, { databaseUrl: await postgres.newDatabase() });
    const owner = await letIn(served.store, 'here', 'owner', 'O. Wner');
    someone = visitor(served, await cookieOf(served.store, owner));
  });
  afterAll(async () => {
    await served.close();
    await postgres.close();
  });

  it('loses nothing where the database goes away while a check is written, and goes on when it is back', async () => {
    const job = await someone.beginJob({ name: 'House by the mill' });
    const check = await someone.addDemo(job);
    const form = formOf(await someone.page(check));
    form.set('board.length', '95 in');
    expect(await (await someone.send(check, form, htmx)).text()).toContain('Saved');
    form.set('token', await someone.token());
    form.set('save.base', '2');
    form.set('board.length', '94 in');
    await postgres.crash();
    const meanwhile = await fetch(served.home + check, {
      method: 'POST',
      body: form,
      headers: { ...htmx, cookie: someone.cookie },
    });
    expect(meanwhile.status).toBe(503);
    expect(await meanwhile.text()).toContain('does not answer');
    expect((await someone.get('/')).status).toBe(503);
    expect((await someone.get('/ready')).status).toBe(503);
    await postgres.start();
    expect((await someone.get('/ready')).status).toBe(200);
    expect(formOf(await someone.page(check)).get('board.length')).toBe('95 in');
    expect(await (await someone.send(check, form, htmx)).text()).toContain('Saved');
    expect(formOf(await someone.page(check)).get('board.length')).toBe('94 in');
    expect(await someone.page('/?search=mill')).toContain('One job');
  });

  it('issues sheets: two at once get A and B, and each is kept and found byte for byte', async () => {
    const check = await someone.addDemo(await someone.beginJob({ name: 'Hall' }));
    const form = formOf(await someone.page(`${check}/issue`));
    const sent = await Promise.all(
      ['One', 'Two'].map((preparedBy) =>
        someone.send(`${check}/issue`, { ...Object.fromEntries(form), preparedBy }),
      ),
    );
    const sheets = sent.map(({ headers }) => headers.get('location') ?? '');
    const revisions: string[] = [];
    for (const sheet of sheets) {
      const text = await (await someone.get(`${sheet}/document`)).text();
      revisions.push((JSON.parse(text) as { revision: string }).revision);
      expect(await someone.page(sheet)).toContain(
        createHash('sha256').update(text).digest('hex').slice(0, 4),
      );
      const pdf = new Uint8Array(await (await someone.get(`${sheet}/sheet.pdf`)).arrayBuffer());
      for (const content of [text, pdf]) {
        const body = new FormData();
        body.set('file', new Blob([content]), 'file');
        const found = await fetch(`${served.home}/fingerprint`, { method: 'POST', body });
        expect(await found.text()).toContain('It was issued');
      }
    }
    expect(revisions.toSorted()).toEqual(['A', 'B']);
  });

  it('is asked for an id that is none, whatever is in it, and finds nothing', async () => {
    for (const path of [
      '/issued/%00',
      '/jobs/%00',
      '/jobs/x%00y/checks/%00',
      '/shared/%00',
      '/issued/%F0%9F%98%80',
    ]) {
      expect((await someone.get(path)).status, path).toBe(404);
    }
    const body = new FormData();
    body.set('file', new Blob(['{"kind": "issued-sheet", "id": "\\u0000"}']), 'file');
    const found = await fetch(`${served.home}/fingerprint`, { method: 'POST', body });
    expect([found.status, (await found.text()).includes('It is not known here')]).toEqual([200, true]);
  });
});

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
});

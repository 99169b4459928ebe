import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openLog } from '../../../server/log.ts';
import { formOf, visitor, type Visitor } from '../jobs/visitor.ts';
import { plainText } from '../page-text.ts';
import { serve, type Served } from '../serve.ts';
import { cookieOf, letIn, site } from './office.ts';

let served: Served;
let own: Visitor;
let job = '';
let check = '';
const anybody = (): Visitor => visitor(served);

beforeAll(async () => {
  served = await serve(site);
  const owner = await letIn(served.store, 'here', 'owner', 'O. Wner');
  own = visitor(served, await cookieOf(served.store, owner));
  job = await own.beginJob({ name: 'House by the mill', client: 'A. Client', notes: 'Never pays' });
  check = await own.addDemo(job);
});
afterAll(() => served.close());

async function makeLink(label = 'A. Client'): Promise<string> {
  const html = await (await own.send(`${job}/links`, { label, days: '30' })).text();
  return /http:\/\/shelves\.test(\/shared\/[\w-]{43})/.exec(html)?.[1] ?? '';
}

describe('a link to a job', () => {
  it('shows the job, its answers and its sheets to whoever has it, without the notes and with nothing to change', async () => {
    const link = await makeLink();
    const response = await anybody().get(link);
    const html = await response.text();
    expect(response.status).toBe(200);
    expect(response.headers.get('x-robots-tag')).toContain('noindex');
    expect(response.headers.get('referrer-policy')).toBe('same-origin');
    for (const words of ['House by the mill', 'A. Client', 'Display shelf over the sideboard', '% used']) {
      expect(plainText(html)).toContain(words);
    }
    expect(html).not.toMatch(/Never pays|href="\/jobs/);
    const forms = [...html.matchAll(/<form[^>]*action="([^"]*)"/g)].map(([, action]) => action);
    expect(forms).toEqual([`${link}/papers`]);
    expect(html.match(/<form/g)).toHaveLength(1);
    const sheet = /href="(\/shared\/[^"]+)"/.exec(html)?.[1] ?? '';
    const page = await anybody().page(sheet);
    expect(plainText(page)).toContain('Display shelf over the sideboard');
    const links = [...page.matchAll(/<a href="([^"]+)"/g)].map(([, address = '']) =>
      address.replaceAll('&#x3D;', '=').replaceAll('&amp;', '&'),
    );
    expect(links.length).toBeGreaterThan(2);
    for (const address of links.filter((each) => !each.startsWith('#'))) {
      expect(address).toMatch(/^\/shared\//);
      expect((await anybody().get(address)).status, address).toBe(200);
    }
  });

  it('leads to nothing else of the office', async () => {
    const link = await makeLink();
    const elsewhere = await own.addDemo(await own.beginJob({ name: 'Another house' }));
    const id = elsewhere.replace(/^.*\//, '');
    expect((await anybody().get(`${link}/checks/${id}`)).status).toBe(404);
    expect((await anybody().get(`${link}/checks/none`)).status).toBe(404);
    expect((await anybody().get(job)).status).toBe(303);
  });

  it('is kept nowhere as it is, and is listed for whom it was made', async () => {
    const link = await makeLink('Builder');
    const rows = await served.store.db.selectFrom('shareLink').selectAll().execute();
    expect(JSON.stringify(rows)).not.toContain(link.replace('/shared/', ''));
    const page = await own.page(`${job}/links`);
    expect(page).toContain('Builder');
    expect(page).not.toContain(link);
  });

  it('taken back, run out, or to a job that was deleted says that it has ended; one cut short that it leads nowhere', async () => {
    const [back, late, deleted] = [await makeLink('Back'), await makeLink('Late'), await makeLink('Deleted')];
    const revoke = /action="([^"]*\/revoke)"[^]*?: Back</.exec(
      (await own.page(`${job}/links`)).replace(/[^]*(<tr><th scope="row">Back)/, '$1'),
    )?.[1];
    await own.send(revoke ?? '');
    await served.store.db
      .updateTable('shareLink')
      .set({ endsAt: '2020-01-01T00:00:00.000Z' })
      .where('label', '=', 'Late')
      .execute();
    await own.send(`${job}/delete`);
    for (const link of [back, late, deleted]) {
      for (const path of [link, `${link}/checks/x`]) {
        const response = await anybody().get(path);
        expect(response.status).toBe(410);
        expect(plainText(await response.text())).toContain('Ask whoever sent it for another');
      }
    }
    await own.send(`${job}/undelete`);
    expect((await anybody().get(deleted)).status).toBe(200);
    expect((await anybody().get(deleted.slice(0, -1))).status).toBe(404);
    expect((await anybody().get('/shared/%00')).status).toBe(404);
  });

  it('to a check with an error in it says that it is not finished', async () => {
    const form = formOf(await own.page(check));
    form.set('board.length', '9 furlongs');
    await own.send(check, form);
    const response = await anybody().get(`${await makeLink()}/checks/${check.replace(/^.*\//, '')}`);
    expect(response.status).toBe(422);
    expect(plainText(await response.text())).toContain('This check is not finished');
  });

  it.each([
    ['for nobody', { label: '', days: '30' }],
    ['for no time', { label: 'A. Client', days: '0' }],
    ['for ever', { label: 'A. Client', days: '100000' }],
  ])('%s is refused', async (_what, fields) => {
    expect((await own.send(`${job}/links`, fields)).status).toBe(422);
  });
});

it('the log says what was done and how long it took, and nothing of whom or what', async () => {
  const lines: string[] = [];
  const logged = await serve(site, { ownLog: openLog({ write: (line) => lines.push(line) }) });
  const owner = await letIn(logged.store, 'here', 'owner', 'O. Wner');
  const someone = visitor(logged, await cookieOf(logged.store, owner));
  const begun = await someone.beginJob({ name: 'House by the mill', client: 'A. Client' });
  await someone.page(`${begun}?secret=1`);
  await someone.page('/check?title=Sideboard');
  await someone.page('/nowhere/Sideboard');
  const body = new URLSearchParams({ name: owner.signInName, password: 'a wrong password' });
  await fetch(`${logged.home}/sign-in`, { method: 'POST', body });
  await logged.close();
  const written = lines.join('');
  const routes = lines.map((line) => (JSON.parse(line) as { route?: string }).route);
  expect(routes).toContain('/jobs/:job');
  expect(written).not.toMatch(/mill|Client|Sideboard|secret|Wner|here\.example|wrong|127\.0\.0\.1|session/);
  expect(written).not.toContain(begun.replace('/jobs/', ''));
});

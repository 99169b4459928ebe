import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashPassword, isPassword, newPassword, passwordFault } from '../../../server/accounts/password.ts';
import type { Person } from '../../../server/store/people.ts';
import { formOf, visitor } from '../jobs/visitor.ts';
import { serve, type Served } from '../serve.ts';
import { cookieOf, letIn, password, site } from './office.ts';

let served: Served;
let owner: Person;
beforeAll(async () => {
  served = await serve(site);
  owner = await letIn(served.store, 'here', 'owner', 'O. Wner');
});
afterAll(() => served.close());

const signIn = (fields: Readonly<Record<string, string>>, own = ''): Promise<Response> =>
  fetch(`${served.home}/sign-in`, {
    method: 'POST',
    body: new URLSearchParams(fields),
    headers: own === '' ? {} : { cookie: own },
    redirect: 'manual',
  });
const keyIn = (response: Response): string =>
  /^([^;]*)/.exec(response.headers.get('set-cookie') ?? '')?.[1] ?? '';
const statusAt = async (path: string, own: string): Promise<number> =>
  (await fetch(served.home + path, { headers: { cookie: own }, redirect: 'manual' })).status;

describe('a password', () => {
  it('is known again by the scrypt of RFC 7914', async () => {
    // RFC 7914, section 12, the third of its test vectors.
    const key =
      '7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2' +
      'd5432955613f0fcf62d49705242a9af9e61e85dc0d651e40dfcf017b45575887';
    const kept = [
      'scrypt',
      '16384',
      '8',
      '1',
      Buffer.from('SodiumChloride').toString('base64'),
      Buffer.from(key, 'hex').toString('base64'),
    ].join('$');
    expect(await isPassword('pleaseletmein', kept)).toBe(true);
    expect(await isPassword('pleaseletmeim', kept)).toBe(false);
  });

  it('is kept with a salt of its own, and nobody’s is nothing', async () => {
    const [one, two] = await Promise.all([hashPassword(password), hashPassword(password)]);
    expect(one).not.toBe(two);
    expect(one).not.toContain(password);
    expect(await isPassword(password, two)).toBe(true);
    expect(await isPassword('', undefined)).toBe(false);
    expect(newPassword()).toMatch(/^(?:[a-z2-9]{4}-){4}[a-z2-9]{4}$/);
  });

  it.each([
    ['too short', 'eleven char'],
    ['one letter over and over', 'aaaaaaaaaaaaaaa'],
    ['the sign-in name', 'my name is Mason1'],
    ['too long', 'ab cd ef '.repeat(30)],
  ])('that is %s is refused', (_what, chosen) => {
    expect(passwordFault(chosen, 'mason1')).not.toBe('');
  });
});

describe('signing in', () => {
  it('gives a session that no script can read and no other site can use, and goes on', async () => {
    const response = await signIn({ name: owner.signInName.toUpperCase(), password, next: '/jobs/new?a=1' });
    expect(response.status).toBe(303);
    expect(response.headers.get('location')).toBe('/jobs/new?a=1');
    const cookie = response.headers.get('set-cookie') ?? '';
    expect(cookie).toMatch(/^session=[\w-]{43};/);
    expect(cookie).toContain('HttpOnly');
    expect(cookie).toContain('SameSite=Lax');
    expect(await statusAt('/people', keyIn(response))).toBe(200);
    const { keyHash } = await served.store.db
      .selectFrom('session')
      .select('keyHash')
      .executeTakeFirstOrThrow();
    expect(cookie).not.toContain(keyHash);
  });

  it.each([
    'https://elsewhere.example/',
    '//elsewhere.example/',
    '/\\elsewhere.example',
    '/\t/elsewhere.example',
    'javascript:alert(1)',
    '',
  ])('does not lead to %j', async (next) => {
    expect((await signIn({ name: owner.signInName, password, next })).headers.get('location')).toBe('/');
  });

  it('with the wrong name or the wrong password says the same, and keeps the name alone', async () => {
    const wrong = await (await signIn({ name: owner.signInName, password: 'not it at all' })).text();
    const nobody = await (await signIn({ name: 'nobody', password: 'not it at all' })).text();
    expect(wrong).toContain('Name and password don’t go together');
    expect(nobody.replace('nobody', '')).toBe(wrong.replace(owner.signInName, ''));
    expect(wrong).not.toContain('not it at all');
  });

  it('is refused after many wrong passwords for one name, the right one too', async () => {
    const person = await letIn(served.store, 'here', 'reader', 'G. Uessed');
    const name = person.signInName;
    for (let tries = 0; tries < 10; tries++)
      expect((await signIn({ name, password: 'no' })).status).toBe(422);
    const refused = await signIn({ name, password });
    expect(refused.status).toBe(429);
    expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(0);
    expect(await refused.text()).toContain('Wait a while');
    expect((await signIn({ name: owner.signInName, password })).status).toBe(303);
  });

  it('is taken back by signing out, by another password, and by being shut out', async () => {
    const person = await letIn(served.store, 'here', 'member', 'M. Ember');
    const [one, two] = [await cookieOf(served.store, person), await cookieOf(served.store, person)];
    await visitor(served, one).send('/sign-out');
    expect([await statusAt('/account', one), await statusAt('/account', two)]).toEqual([303, 200]);
    const three = await cookieOf(served.store, person);
    const short = await visitor(served, two).send('/account/password', { old: password, new: 'short' });
    expect(short.status).toBe(422);
    const fresh = { old: password, new: 'quite another sentence' };
    expect((await visitor(served, two).send('/account/password', fresh)).status).toBe(200);
    expect([await statusAt('/account', two), await statusAt('/account', three)]).toEqual([200, 303]);
    expect((await signIn({ name: person.signInName, password })).status).toBe(422);
    await visitor(served, await cookieOf(served.store, owner)).send(`/people/${person.id}/shut-out`);
    expect(await statusAt('/account', two)).toBe(303);
    expect((await signIn({ name: person.signInName, password: fresh.new })).status).toBe(422);
  });

  it('again in another window lets a page be saved that was open before', async () => {
    const first = await cookieOf(served.store, owner);
    const before = visitor(served, first);
    const check = await before.addDemo(await before.beginJob());
    const form = formOf(await before.page(check));
    await before.send('/sign-out');
    form.set('title', 'Written meanwhile');
    const post = (cookie: string): Promise<Response> =>
      fetch(served.home + check, { method: 'POST', body: form, headers: { cookie }, redirect: 'manual' });
    const lost = await post(first);
    expect(lost.status).toBe(401);
    expect(await lost.text()).toContain('what you wrote is still here');
    const again = await cookieOf(served.store, owner);
    expect((await post(again)).status).toBe(303);
    expect(formOf(await visitor(served, again).page(check)).get('title')).toBe('Written meanwhile');
  });
});

describe('the people of an office', () => {
  it('are let in with a password that is shown once and signs them in', async () => {
    const own = visitor(served, await cookieOf(served.store, owner));
    const html = await (
      await own.send('/people', { name: 'A. Prentice', 'sign-in': 'New@here.example', role: 'reader' })
    ).text();
    const given = /(?:[a-z2-9]{4}-){4}[a-z2-9]{4}/.exec(html)?.[0] ?? '';
    expect(await own.page('/people')).not.toContain(given);
    expect((await signIn({ name: 'new@here.example', password: given })).status).toBe(303);
    const twice = await own.send('/people', { name: 'Twin', 'sign-in': 'new@HERE.example' });
    expect([twice.status, (await twice.text()).includes('is taken')]).toEqual([422, true]);
    const nameless = await own.send('/people', { name: ' ', 'sign-in': 'x y' });
    expect(nameless.status).toBe(422);
  });

  it('always have an owner among them', async () => {
    const alone = await letIn(served.store, 'alone', 'owner', 'O. Nly');
    const own = visitor(served, await cookieOf(served.store, alone));
    for (const [word, fields] of [
      ['role', { role: 'reader' }],
      ['shut-out', {}],
    ] as const) {
      expect((await own.send(`/people/${alone.id}/${word}`, fields)).status).toBe(409);
    }
    expect((await own.get('/people')).status).toBe(200);
  });

  it('whose names are markup are shown as they were written', async () => {
    const evil = `<svg onload=alert(1)><img src=x>'"{{x}}`;
    const person = await letIn(served.store, evil, 'owner', evil);
    const own = visitor(served, await cookieOf(served.store, person));
    const job = await own.beginJob({ name: 'Plain' });
    const check = await own.addDemo(job);
    await own.send(`${job}/links`, { label: evil, days: '3' });
    const pages = ['/', '/account', '/people', check, `${check}/history`, `${job}/links`];
    for (const path of [...pages, `/sign-in?next=${encodeURIComponent(`/${evil}`)}`]) {
      const html = await own.page(path);
      expect(html, path).not.toMatch(/<svg onload|<img/);
    }
    expect(await own.page('/people')).toContain('&lt;svg onload');
    const failed = await (await signIn({ name: evil, password: evil, next: `/${evil}` })).text();
    expect(failed).not.toMatch(/<svg onload|<img/);
  });
});

describe('a request from another site', () => {
  it.each([
    ['says so', { 'Sec-Fetch-Site': 'cross-site' }],
    ['names another origin', { Origin: 'https://elsewhere.example' }],
    ['names the machine behind the proxy', { Origin: 'http://127.0.0.1:3000' }],
  ])('that %s signs nobody in', async (_what, headers) => {
    const body = new URLSearchParams({ name: owner.signInName, password });
    const sent = { method: 'POST', body, headers, redirect: 'manual' } as const;
    const response = await fetch(`${served.home}/sign-in`, sent);
    expect([response.status, response.headers.get('set-cookie')]).toEqual([403, null]);
    const ours = await fetch(`${served.home}/sign-in`, { ...sent, headers: { Origin: site.origin } });
    expect(ours.status).toBe(303);
  });
});

describe('asking too often', () => {
  it('for what takes long to work out is refused for a while, for one person alone', async () => {
    const [often, seldom] = [
      await cookieOf(served.store, await letIn(served.store, 'here', 'reader', 'O. Ften')),
      await cookieOf(served.store, await letIn(served.store, 'here', 'reader', 'S. Eldom')),
    ];
    const ask = (cookie: string): Promise<Response> =>
      fetch(`${served.home}/api/layouts`, { method: 'POST', body: '{', headers: { cookie } });
    for (let times = 0; times < 60; times++) expect((await ask(often)).status).toBe(415);
    const refused = await ask(often);
    expect(refused.status).toBe(429);
    expect(refused.headers.get('content-type')).toContain('application/problem+json');
    expect(await statusAt('/layouts', often)).toBe(429);
    expect(await statusAt('/', often)).toBe(200);
    expect((await ask(seldom)).status).toBe(415);
  });
});

describe('a site reached by https', () => {
  it('keeps the cookie to itself and asks a browser to insist on https', async () => {
    const own = await serve({ origin: 'https://shelves.test', isSecure: true, proxies: 1 });
    const person = await letIn(own.store, 'here', 'reader', 'R. Eader');
    const body = new URLSearchParams({ name: person.signInName, password });
    const response = await fetch(`${own.home}/sign-in`, { method: 'POST', body, redirect: 'manual' });
    expect(response.headers.get('set-cookie')).toMatch(/^__Host-session=.*Path=\/;.*Secure/);
    expect(response.headers.get('strict-transport-security')).toContain('max-age');
    const policy = response.headers.get('content-security-policy') ?? '';
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain('unsafe');
    await own.close();
  });
});

describe('trouble with the store', () => {
  it('in the middle of it all is a page or a problem, signs nobody in, and shows in /ready', async () => {
    const own = await serve(site);
    const person = await letIn(own.store, 'here', 'owner', 'O. Wner');
    const cookie = await cookieOf(own.store, person);
    const ready = async (): Promise<number> => (await fetch(`${own.home}/ready`)).status;
    expect(await ready()).toBe(200);
    await sql`pragma query_only = 1`.execute(own.store.db);
    const body = new URLSearchParams({ name: person.signInName, password });
    const sent = { method: 'POST', body, redirect: 'manual' } as const;
    const readOnly = await fetch(`${own.home}/sign-in`, sent);
    expect([readOnly.status, readOnly.headers.get('set-cookie')]).toEqual([503, null]);
    expect(await readOnly.text()).toContain('can’t be written in');
    await own.store.close();
    expect(await ready()).toBe(503);
    expect((await fetch(`${own.home}/health`)).status).toBe(200);
    expect((await fetch(`${own.home}/`, { headers: { cookie } })).status).toBe(503);
    const problem = await fetch(`${own.home}/api/schema`, { headers: { cookie } });
    expect([problem.status, problem.headers.get('content-type')]).toEqual([
      503,
      expect.stringContaining('application/problem+json'),
    ]);
    await own.close().catch(() => undefined);
  });
});

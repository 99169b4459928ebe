import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Person } from '../../../server/store/people.ts';
import { makeLink } from '../../../server/store/share-links.ts';
import { visitor } from '../jobs/visitor.ts';
import { serve, type Served } from '../serve.ts';
import { cookieOf, everythingKept, letIn, site } from './office.ts';
import { routesOf } from './routes-of.ts';

type Least = 'anybody' | 'reader' | 'member' | 'owner';

/** Who may ask for what, said once more than in the program. A route that is not here fails. */
const rules: Readonly<Record<string, Least>> = {
  'GET /health': 'anybody',
  'GET /ready': 'anybody',
  'GET /sheet-head.css': 'anybody',
  'GET /sign-in': 'anybody',
  'POST /sign-in': 'anybody',
  'GET /fingerprint': 'anybody',
  'POST /fingerprint': 'anybody',
  'GET /shared/:key': 'anybody',
  'GET /shared/:key/issued/:sheet': 'anybody',
  'GET /shared/:key/issued/:sheet/sheet.pdf': 'anybody',
  'GET /shared/:key/checks/:check': 'anybody',
  'GET /shared/:key/checks/:check/installer': 'anybody',
  'GET /shared/:key/checks/:check/sheet.pdf': 'anybody',
  'GET /shared/:key/checks/:check/installer.pdf': 'anybody',
  'POST /shared/:key/papers': 'anybody',
  'GET /shared/:key/papers/:sharedWork': 'anybody',
  'GET /shared/:key/papers/:sharedWork/file': 'anybody',
  'POST /shared/:key/papers/:sharedWork/cancel': 'anybody',
  'POST /api/checks': 'reader',
  'POST /api/layouts': 'reader',
  'POST /api/reach': 'reader',
  'POST /api/props': 'reader',
  'GET /api/schema': 'reader',
  'GET /api/catalogue': 'reader',
  'GET /demo': 'reader',
  'GET /check': 'reader',
  'POST /check': 'reader',
  'GET /document': 'reader',
  'POST /document': 'reader',
  'POST /open': 'reader',
  'GET /layouts': 'reader',
  'POST /layouts': 'reader',
  'GET /working': 'reader',
  'POST /working': 'reader',
  'GET /reach': 'reader',
  'GET /props': 'reader',
  'POST /reach': 'reader',
  'POST /props': 'reader',
  'GET /boards': 'reader',
  'GET /sheet': 'reader',
  'GET /sheet.pdf': 'reader',
  'GET /installer': 'reader',
  'GET /installer.pdf': 'reader',
  'GET /': 'reader',
  'GET /jobs/:job': 'reader',
  'GET /jobs/:job/file': 'reader',
  'POST /jobs/:job/papers': 'reader',
  'GET /jobs/:job/papers/:work': 'reader',
  'GET /jobs/:job/papers/:work/file': 'reader',
  'POST /jobs/:job/papers/:work/cancel': 'reader',
  'GET /jobs/:job/checks/:check': 'reader',
  'GET /jobs/:job/checks/:check/history': 'reader',
  'GET /issued/:sheet': 'reader',
  'GET /issued/:sheet/sheet.pdf': 'reader',
  'GET /issued/:sheet/document': 'reader',
  'GET /account': 'reader',
  'POST /account/password': 'reader',
  'POST /sign-out': 'reader',
  'GET /jobs/new': 'member',
  'POST /jobs/new': 'member',
  'POST /jobs': 'member',
  'POST /jobs/bring': 'member',
  'GET /jobs/:job/edit': 'member',
  'POST /jobs/:job/edit': 'member',
  'GET /keep': 'member',
  'POST /keep': 'member',
  'POST /jobs/:job/checks': 'member',
  'POST /jobs/:job/checks/:check': 'member',
  'POST /jobs/:job/checks/:check/restore': 'member',
  'GET /jobs/:job/checks/:check/issue': 'member',
  'POST /jobs/:job/checks/:check/issue': 'member',
  'POST /jobs/:job/archive': 'member',
  'POST /jobs/:job/unarchive': 'member',
  'POST /jobs/:job/copy': 'member',
  'POST /jobs/:job/checks/:check/copy': 'member',
  'POST /jobs/:job/checks/:check/up': 'member',
  'POST /jobs/:job/checks/:check/down': 'member',
  'POST /jobs/:job/checks/:check/delete': 'member',
  'POST /jobs/:job/checks/:check/undelete': 'member',
  'POST /jobs/:job/delete': 'member',
  'POST /jobs/:job/undelete': 'member',
  'GET /jobs/:job/links': 'member',
  'POST /jobs/:job/links': 'member',
  'POST /jobs/:job/links/:link/revoke': 'member',
  'GET /people': 'owner',
  'POST /people': 'owner',
  'POST /people/:person/role': 'owner',
  'POST /people/:person/shut-out': 'owner',
  'POST /people/:person/let-in': 'owner',
  'POST /people/:person/password': 'owner',
};
const order: readonly Least[] = ['anybody', 'reader', 'member', 'owner'];
const routes = Object.entries(rules);
/** Forms that change nothing that is kept need no token: there is nothing another site's page could do with them. */
const changesNothing =
  /^POST \/(?:shared\/|api\/|check$|document$|open$|layouts$|reach$|props$|working$|sign-in$|fingerprint$|jobs\/new$)/;

let served: Served;
let parts: Readonly<Record<string, string>>;
let people: Readonly<Record<string, Person>>;

beforeAll(async () => {
  served = await serve(site);
  const { store } = served;
  people = {
    reader: await letIn(store, 'here', 'reader', 'R. Eader'),
    member: await letIn(store, 'here', 'member', 'M. Ember'),
    owner: await letIn(store, 'here', 'owner', 'O. Wner'),
    other: await letIn(store, 'there', 'owner', 'S. Else'),
  };
  const spare = await letIn(store, 'here', 'reader', 'S. Pare');
  const someone = visitor(served, await cookie('owner'));
  const job = await someone.beginJob({ name: 'Kitchen' });
  const check = await someone.addDemo(job);
  const jobId = job.replace('/jobs/', '');
  const owner = { officeId: 'here', name: 'O. Wner' };
  const key = (await makeLink(store, owner, jobId, 'A. Client', 30)) ?? '';
  const link = await store.db.selectFrom('shareLink').select('id').executeTakeFirstOrThrow();
  const work = await beginning(`/jobs/${jobId}/papers`, await someone.token(), someone.cookie);
  const sharedWork = await beginning(`/shared/${key}/papers`, '', '');
  const sheet = (await someone.issue(check)).replace('/issued/', '');
  const id = check.replace(/^.*\//, '');
  parts = { job: jobId, check: id, person: spare.id, key, link: link.id, sheet, work, sharedWork };
});
afterAll(() => served.close());

/** Begins a PDF of a job. @returns the last part of the address where it is */
async function beginning(path: string, token: string, own: string): Promise<string> {
  const body = new URLSearchParams({ token });
  const sent = { method: 'POST', body, headers: { cookie: own }, redirect: 'manual' } as const;
  return ((await fetch(served.home + path, sent)).headers.get('location') ?? '').replace(/^.*\//, '');
}

async function cookie(who: string): Promise<string> {
  const person = people[who];
  return person === undefined ? '' : cookieOf(served.store, person);
}

async function tokenOf(own: string): Promise<string> {
  const html = await (await fetch(`${served.home}/account`, { headers: { cookie: own } })).text();
  return /name="token" value="([0-9a-f]+)"/.exec(html)?.[1] ?? '';
}

/** Asks for a route with a form that would do, in a session of its own, since one of the routes ends it. */
async function ask(route: string, who: string, hasToken = true): Promise<Response> {
  const [method = '', pattern = ''] = route.split(' ');
  const path = pattern.replace(/:(\w+)/g, (_, name: string) => parts[name] ?? '');
  const own = await cookie(who);
  const fields = { name: 'Hall', version: '1', role: 'reader', label: 'A. Client', days: '1', revision: '1' };
  const token = hasToken && own !== '' ? await tokenOf(own) : '';
  const body = new URLSearchParams({ ...fields, job: parts['job'] ?? '', token });
  const sent = method === 'POST' ? { method, body } : { method };
  return fetch(served.home + path, { ...sent, headers: { cookie: own }, redirect: 'manual' });
}

const isTurnedAway = (response: Response): boolean =>
  response.status === 401 || (response.headers.get('location') ?? '').startsWith('/sign-in');

it('has a rule for every route of the application, and for nothing else', () => {
  expect(routesOf(served.app).toSorted()).toEqual(Object.keys(rules).toSorted());
});

describe.each(['anybody', 'reader', 'member', 'owner'] as const)('%s', (who) => {
  it.each(routes.filter(([, least]) => order.indexOf(least) > order.indexOf(who)))(
    'is refused %s, and nothing changes',
    async (route) => {
      const before = await everythingKept(served.store);
      const response = await ask(route, who);
      if (who === 'anybody') expect(isTurnedAway(response)).toBe(true);
      else expect(response.status).toBe(403);
      if (route.includes('/api/')) {
        expect(response.headers.get('content-type')).toContain('application/problem+json');
      }
      expect(await everythingKept(served.store)).toBe(before);
    },
  );

  it.each(routes.filter(([, least]) => order.indexOf(least) <= order.indexOf(who)))(
    'may ask for %s',
    async (route) => {
      const response = await ask(route, who);
      expect([401, 403, 404, 429, 500, 503]).not.toContain(response.status);
      if (route !== 'POST /sign-out') expect(isTurnedAway(response)).toBe(false);
    },
  );
});

it.each(routes.filter(([route]) => route.startsWith('POST') && !changesNothing.test(route)))(
  'an owner without the token of our own form is refused %s, and nothing changes',
  async (route) => {
    const before = await everythingKept(served.store);
    expect((await ask(route, 'owner', false)).status).toBe(403);
    expect(await everythingKept(served.store)).toBe(before);
  },
);

describe('an owner of another office', () => {
  it.each(routes.filter(([route, least]) => route.includes('/:') && least !== 'anybody'))(
    'finds nothing at %s, and changes nothing',
    async (route) => {
      const before = await everythingKept(served.store);
      expect((await ask(route, 'other')).status).toBe(404);
      expect(await everythingKept(served.store)).toBe(before);
    },
  );

  it('can put no check in a job of this one, and sees no job or person of it', async () => {
    const before = await everythingKept(served.store);
    const own = visitor(served, await cookie('other'));
    expect((await own.send('/keep', { job: parts['job'] ?? '', check: 'title=x' })).status).toBe(404);
    expect(await own.page('/')).not.toContain('Kitchen');
    expect(await own.page('/people')).not.toContain('S. Pare');
    expect(await everythingKept(served.store)).toBe(before);
  });
});

it('nothing of all that was a fault of the program', () => {
  expect(served.faults).toEqual([]);
});

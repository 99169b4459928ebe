import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { addressOf } from '../../server/check/addresses.ts';
import { startChecks } from '../../server/start-checks.ts';
import { cautions } from '../../shared/cautions.ts';
import type { WallFixingInput } from '../../shared/check-document/index.ts';
import { leaks, plainText } from './page-text.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const get = (path: string): Promise<Response> => fetch(served.home + path, { redirect: 'manual' });

const start = startChecks['wall-fixing'];
/** Every branch of the form in use, off its stud. */
const full: WallFixingInput = {
  ...start,
  title: 'Coat rail in the hall',
  plate: { ...start.plate, thickness: '1/4 in', metal: 'a36' },
  screws: {
    fastener: 'common-nail-16d',
    length: '3-1/2 in',
    driven: 'toe',
    heights: ['7 in', '1 in'],
    perHeight: 2,
    across: '3/4 in',
    allowable: { tension: '100 lbf', shear: '80 lbf', report: 'report of the nail' },
  },
  wall: {
    ...start.wall,
    grain: 'side',
    studs: { at: ['10 in', '26 in'] },
    bearing: { allowable: '100 psi', source: 'a test' },
  },
  position: '12 in',
  loads: [
    { name: 'Coats', shear: '40 lbf', couple: '160 lbf.in', duration: 'ten-years' },
    { name: 'Tug', pull: '30 lbf', duration: 'seven-days' },
  ],
};

describe.each([
  ['the one to start from', start],
  ['one with every field', full],
])('a wall fixing on its pages: %s', (_, document) => {
  const result = check(document);
  const address = addressOf(document);

  it('says in its address what it is', () => {
    expect(address).toContain('element=wall-fixing');
  });

  it('says verdict and cautions once on its sheet, which has no readings to end with', async () => {
    const html = await (await get(address.replace('/check?', '/sheet?'))).text();
    expect(html).not.toContain('id="summary"');
    const text = plainText(html);
    for (const caution of cautions) expect(text.split(plainText(caution))).toHaveLength(2);
  });

  it('shows form, drawing, verdict, every check, assumption and caution', async () => {
    const response = await get(address);
    const html = await response.text();
    const text = plainText(html);
    expect(response.status).toBe(200);
    expect(html).not.toMatch(leaks);
    expect(html).toContain('name="plate.height"');
    expect(html).toContain('name="loads.0.shear"');
    expect(html).toContain('<svg');
    for (const { title } of result.checks) expect(text).toContain(title);
    for (const each of [...result.assumptions, ...cautions]) expect(text).toContain(each);
    expect(html).not.toContain('/installer?');
    expect(html).not.toContain('/layouts');
  });

  it('has a calculation sheet with the setting of the screws, and a document to keep', async () => {
    const sheet = await get(address.replace('/check', '/sheet'));
    const html = await sheet.text();
    expect(sheet.status).toBe(200);
    expect(html).not.toMatch(leaks);
    for (const { title } of result.worksheet.sections) expect(plainText(html)).toContain(title);
    const kept: unknown = await (await get(address.replace('/check', '/document'))).json();
    expect(kept).toEqual(document);
  });

  it('goes to the sheet where somebody asks for an installer’s page', async () => {
    const response = await get(address.replace('/check', '/installer'));
    expect(response.status).toBe(303);
    expect(response.headers.get('location')).toContain('/sheet?');
  });
});

describe('the ways into one', () => {
  it('begin at the home page', async () => {
    expect(await (await get('/')).text()).toContain('element&#x3D;wall-fixing');
  });

  it('and by opening a document', async () => {
    const response = await fetch(`${served.home}/open`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(full),
      redirect: 'manual',
    });
    expect(response.status).toBe(303);
    expect(response.headers.get('location')).toBe(addressOf(full));
  });

  it('over HTTP: the same answer, and errors with their places', async () => {
    const post = (body: unknown) =>
      fetch(`${served.home}/api/checks`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      });
    const answer = (await (await post(full)).json()) as { element: string; verdict: string };
    expect(answer).toMatchObject({ element: 'wall-fixing', verdict: check(full).verdict });
    const refused = await post({ ...full, loads: [{ name: 'Nothing' }] });
    expect(refused.status).toBe(422);
    expect(await refused.json()).toMatchObject({ errors: [{ path: '/loads/0/shear' }] });
  });
});

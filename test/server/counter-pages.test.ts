import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { addressOf } from '../../server/check/addresses.ts';
import { startChecks } from '../../server/start-checks.ts';
import { cautions } from '../../shared/cautions.ts';
import type { CounterOverhangInput } from '../../shared/check-document/index.ts';
import { leaks, plainText } from './page-text.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const get = (path: string): Promise<Response> => fetch(served.home + path, { redirect: 'manual' });

const start = startChecks['counter-overhang'];
/** Every branch of the form in use, on a base that stands back from both ends. */
const full: CounterOverhangInput = {
  ...start,
  title: 'Island <b>under</b> the window',
  units: 'metric',
  base: {
    ...start.base,
    from: '100 mm',
    to: '1700 mm',
    panels: ['100 mm', '900 mm', '1700 mm'],
    heldToFloor: false,
    weightAt: '300 mm',
    push: '200 N',
  },
  screws: {
    ...start.screws,
    length: '45 mm',
    at: [
      ['200 mm', '50 mm'],
      ['1600 mm', '50 mm'],
    ],
  },
  props: [
    { kind: 'flat-bar', at: '400 mm', from: '50 mm', to: '850 mm', width: '50 mm', thickness: '10 mm' },
    { kind: 'bracket', at: '800 mm', to: '800 mm', allowable: '1000 N', gives: '2 mm', source: 'a test' },
    { kind: 'corbel', at: '1200 mm', to: '800 mm', allowable: '1500 N', source: 'a test' },
    { kind: 'leg', at: '1650 mm', to: '880 mm', allowable: '2000 N', source: 'a test' },
  ],
};

const { appearance: _, ...wood } = start.top;
/** Stone on two sheets of plywood. */
const covered: CounterOverhangInput = {
  ...start,
  top: {
    ...wood,
    build: 'panel',
    material: 'birch-plywood',
    thickness: '36 mm',
    sheets: 2,
    bond: 'none',
    finish: { kind: 'natural-stone', thickness: '10 mm', bed: '3 mm' },
  },
};

describe.each([
  ['the one to start from', start],
  ['stone on plywood', covered],
  ['one with every kind of prop', full],
])('a counter overhang on its pages: %s', (_, document) => {
  const result = check(document);
  const address = addressOf(document);

  it('shows form, plan, bands, section, verdict, every check, assumption and caution', async () => {
    const response = await get(address);
    const html = await response.text();
    const text = plainText(html);
    expect(response.status).toBe(200);
    expect(html).not.toMatch(leaks);
    for (const name of ['top.length', 'base.front', 'screws.at.0.0', 'loads.1.amount']) {
      expect(html).toContain(`name="${name}"`);
    }
    for (const kind of ['plan', 'movement', 'across-grain']) {
      expect(html).toContain(`drawing-${kind}-wide`);
      expect(html).toContain(`drawing-${kind}-narrow`);
    }
    expect(html).toContain('drawing-counter-section');
    for (const { title } of result.checks) expect(text).toContain(title);
    for (const each of [...result.assumptions, ...cautions]) expect(text).toContain(each);
    expect(html).not.toContain('/installer?');
    expect(html).not.toContain('<b>under</b>');
  });

  it('has a calculation sheet, and a document to keep', async () => {
    const sheet = await get(address.replace('/check', '/sheet'));
    const html = await sheet.text();
    expect(sheet.status).toBe(200);
    expect(html).not.toMatch(leaks);
    for (const { title } of result.worksheet.sections) expect(plainText(html)).toContain(title);
    const kept: unknown = await (await get(address.replace('/check', '/document'))).json();
    expect(kept).toEqual(document);
  });

  it('prints as a PDF', async () => {
    const response = await get(address.replace('/check', '/sheet.pdf'));
    expect(response.status).toBe(200);
    expect(new TextDecoder('latin1').decode((await response.arrayBuffer()).slice(0, 5))).toBe('%PDF-');
  });
});

describe('the ways into one', () => {
  it('begin at the home page', async () => {
    expect(await (await get('/')).text()).toContain('element&#x3D;counter-overhang');
  });

  it('over HTTP: the same answer, and errors with their places', async () => {
    const post = (body: unknown) =>
      fetch(`${served.home}/api/checks`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      });
    const answer = (await (await post(full)).json()) as { element: string; verdict: string };
    expect(answer).toMatchObject({ element: 'counter-overhang', verdict: check(full).verdict });
    const refused = await post({ ...full, top: { ...full.top, thickness: '0 in' } });
    expect(refused.status).toBe(422);
    expect(await refused.json()).toMatchObject({ errors: [{ path: '/top/thickness' }] });
  });
});

describe.each([
  ['the run to start from', startChecks['counter-run']],
  [
    'a bowed run in metric',
    {
      ...startChecks['counter-run'],
      units: 'metric' as const,
      rails: 'front' as const,
      bow: { measured: '3 mm' },
    },
  ],
])('panels under tile or stone on their pages: %s', (_, document) => {
  const result = check(document);

  it('show form, drawings, verdict, every check and caution; print; and keep their document', async () => {
    const address = addressOf(document);
    const html = await (await get(address)).text();
    const text = plainText(html);
    expect(html).not.toMatch(leaks);
    for (const name of ['substrate.thickness', 'opening', 'rails', 'bow.measured', 'finish.kind']) {
      expect(html).toContain(`name="${name}"`);
    }
    for (const kind of ['run-section', 'movement', 'across-grain'])
      expect(html).toContain(`drawing-${kind}-narrow`);
    for (const { title } of result.checks) expect(text).toContain(title);
    for (const each of [...result.assumptions, ...cautions]) expect(text).toContain(each);
    const sheet = await (await get(address.replace('/check', '/sheet'))).text();
    for (const { title } of result.worksheet.sections) expect(plainText(sheet)).toContain(title);
    expect((await get(address.replace('/check', '/sheet.pdf'))).status).toBe(200);
    expect(await (await get(address.replace('/check', '/document'))).json()).toEqual(document);
  });
});

describe('what it wants under it', () => {
  it(
    'is worked out when it is opened, with a change to be made by one click',
    { timeout: 180_000 },
    async () => {
      const page = await (await get(addressOf(start))).text();
      expect(page).toContain('hx-get="/props"');
      const part = await fetch(served.home + addressOf(start).replace('/check', '/props'), {
        headers: { 'HX-Request': 'true' },
      });
      const html = await part.text();
      expect(html).not.toContain('<html');
      expect(html).toContain('brackets at');
      expect(html).toContain('name="do" value="set:');
      expect(html).toContain('How far it could stand out');
      expect(html).toMatch(/6 flat bars of A36 steel[^]*Bending across the grain, \d+\s% used/);
    },
  );
});

describe('its form', () => {
  it('tells a screw with half a place what it takes', async () => {
    const address = addressOf(start).replace(/&screws\.at\.3\.1=[^&]*/, '');
    const response = await get(address);
    expect(response.status).toBe(422);
    expect(await response.text()).toContain('href="#screws.at.3.1"');
  });

  it('says whose length is wrong where two fields are called so', async () => {
    const address = addressOf(start)
      .replace(/top\.length=[^&]*/, 'top.length=long')
      .replace(/screws\.length=[^&]*/, 'screws.length=long');
    const html = await (await get(address)).text();
    expect(html).toContain('href="#top.length">The top, Length<');
    expect(html).toMatch(/href="#screws\.length">[^<]*[Ss]crews[^<]*, Length</);
  });

  it('takes another material where the top becomes a panel, and asks other questions', async () => {
    const panel = addressOf(start).replace('top.build=edge-glued-staves', 'top.build=panel');
    const html = await (await get(`${panel}&top.build.was=edge-glued-staves`)).text();
    expect(html).toMatch(/name="top\.material"[^>]*value="birch-plywood"/);
    expect(html).toContain('name="top.sheets"');
    expect(html).not.toContain('name="top.appearance"');
  });

  it('puts another prop where there is none yet', async () => {
    const first = (await get(`${addressOf(start)}&do=add:props`)).headers.get('location') ?? '';
    const second = (await get(`${first}&do=add:props`)).headers.get('location') ?? '';
    const at = (row: number): string | null =>
      new URL(second, served.home).searchParams.get(`props.${row}.at`);
    // A top of 72 in: the middle of it, then the middle of what is left on one side.
    expect([at(0), at(1)]).toEqual(['36 in', '18 in']);
  });

  it('fills in the sizes of a bar where a prop becomes one', async () => {
    const added = await get(`${addressOf(start)}&do=add:props`);
    expect(added.status).toBe(303);
    const bracket = added.headers.get('location') ?? '';
    expect(bracket).toContain('props.0.kind=bracket');
    const bar = bracket.replace('props.0.kind=bracket', 'props.0.kind=flat-bar&props.0.was=bracket');
    const html = await (await get(bar)).text();
    expect(html).toMatch(/name="props\.0\.width"[^>]*value="2 in"/);
  });
});

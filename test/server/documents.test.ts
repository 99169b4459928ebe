import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shelf, shelfAddress } from './fixtures/shelf.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const open = (body: FormData | string, headers: Record<string, string> = {}): Promise<Response> =>
  fetch(`${served.home}/open`, { method: 'POST', body, headers, redirect: 'manual' });
const asFile = (text: string): FormData => {
  const form = new FormData();
  form.append('other', 'ignored');
  form.append('document', new Blob([text], { type: 'application/json' }), 'shelf.json');
  return form;
};
const manyLoads = Array.from({ length: 40 }, (_, row) => ({
  name: `Load ${row} ${'with a long name '.repeat(3)}`,
  kind: 'line',
  things: Array.from({ length: 12 }, () => ({
    thing: 'dinner-plate',
    count: 2,
    diameter: '10-1/2 in',
    wall: '1/4 in',
    density: '2400 kg/m3',
  })),
}));

describe('a check as a file', () => {
  it('is the document behind the address, named after its title', async () => {
    const response = await fetch(served.home + shelfAddress.replace('/check', '/document'));
    expect(response.headers.get('content-type')).toContain('application/json');
    expect(response.headers.get('content-disposition')).toBe(
      'attachment; filename=display-shelf-over-the-sideboard.json',
    );
    expect(await response.json()).toEqual(shelf);
  });

  it('opens again as the same check, as a file of the form or as it is', async () => {
    const text = JSON.stringify(shelf);
    const bodies = [await open(asFile(text)), await open(text, { 'content-type': 'application/json' })];
    for (const response of bodies) {
      expect(response.status).toBe(303);
      expect(response.headers.get('location')).toBe(shelfAddress);
    }
  });

  it('is refused with every error where it is no check', async () => {
    const wrong = { ...shelf, colour: '<b>red</b>', board: { ...shelf.board, length: '96' } };
    const response = await open(asFile(JSON.stringify(wrong)));
    const html = await response.text();
    expect(response.status).toBe(422);
    expect(html).toContain('/board/length');
    expect(html).toContain('/colour');
    expect(html).not.toContain('<b>red');
  });

  it.each([
    ['not JSON', '{ "schema": 1, ', 400],
    ['empty', '', 400],
    ['too large', `"${'x'.repeat(300 * 1024)}"`, 413],
    ['larger than anything read', 'x'.repeat(600 * 1024), 413],
    ['a list', '[]', 422],
  ])('is refused on a page of its own where it is %s', async (_what, text, status) => {
    const response = await open(asFile(text));
    expect(response.status).toBe(status);
    expect(await response.text()).toContain('<h1>');
  });

  it('can be longer than an address: it opens, is checked and is kept without one', async () => {
    const response = await open(asFile(JSON.stringify({ ...shelf, loads: manyLoads })));
    const html = await response.text();
    expect(response.status).toBe(200);
    expect(html).toContain('too long for an address');
    expect(html).toContain('method="post"');
    expect(html).toContain('id="verdict"');
    expect(html).not.toContain('href="/sheet?');
  });

  it('that is too long is sent by the form, which keeps every field', async () => {
    const html = await (await open(asFile(JSON.stringify({ ...shelf, loads: manyLoads })))).text();
    const fields = [...html.matchAll(/<input type="(?:text|hidden)"[^>]*name="([^"]+)" value="([^"]*)"/g)];
    expect(fields.length).toBeGreaterThan(500);
    const document = { ...shelf, loads: manyLoads };
    const names = new URLSearchParams();
    for (const [, name = '', value = ''] of fields) names.append(name, value);
    const chosen = [...html.matchAll(/<select id="([^"]+)"[\s\S]*?<\/select>/g)];
    for (const [select, name = ''] of chosen) {
      names.append(name, /<option value="([^"]*)" selected/.exec(select)?.[1] ?? '');
    }
    const response = await fetch(`${served.home}/document`, { method: 'POST', body: names });
    expect(await response.json()).toEqual(
      JSON.parse(JSON.stringify(document).replaceAll(/with a long name "/g, 'with a long name"')),
    );
  });

  it('whose address is too long for any server is told so', async () => {
    const response = await fetch(`${served.home}/check?title=${'x'.repeat(70_000)}`);
    expect(response.status).toBe(431);
    expect(await response.text()).toContain('too long for an address');
  });
});

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { addressOf } from '../../../server/check/addresses.ts';
import { demoCheck } from '../../../server/demo.ts';
import { escaped } from '../../../server/drawings/index.ts';
import { serve, type Served } from '../serve.ts';
import { manyShelves } from '../sheets/many-shelves.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const addressFor = (document: unknown): string => addressOf(document).replace('/check?', '/installer?');

async function fetched(path: string): Promise<{ status: number; html: string; raw: string }> {
  const response = await fetch(served.home + path, {
    redirect: 'manual',
    headers: { connection: 'close' },
  });
  const raw = await response.text();
  // Words alone are looked at: which spaces hold a number to its unit is looked at once, below.
  return { status: response.status, html: raw.replaceAll('\u00a0', ' '), raw };
}

describe('the installer’s sheet', () => {
  it.each(manyShelves)('invites work only where the check holds: $name', async ({ document }) => {
    const { verdict, cautions } = check(document, { waysOut: false });
    const { status, html } = await fetched(addressFor(document));
    expect(status).toBe(200);
    const holds = verdict === 'holds';
    expect(html.includes('<h2 id="work">')).toBe(holds);
    expect(html.includes('type="checkbox"')).toBe(holds);
    expect(html.includes('installer-label')).toBe(holds);
    expect(html.includes('What may stand on it')).toBe(holds);
    expect(html.includes('Do not put this shelf up')).toBe(!holds);
    expect(html.includes('is-stopped')).toBe(!holds);
    expect(html).toContain(escaped(cautions[0] ?? ''));
    expect(html).not.toMatch(/NaN|undefined|\[object|\bnull\b/);
    expect(html).not.toMatch(/ style=|<style|<script|javascript:/);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('says what fails, and cannot be misread where nothing can be said', async () => {
    const bare = {
      ...demoCheck,
      wall: undefined,
      brackets: { ...demoCheck.brackets, plate: undefined, screws: undefined },
    };
    const { html } = await fetched(addressFor(bare));
    expect(html).toContain('<strong>Cannot say.</strong>');
    expect(html).toContain('it has not been shown to hold');
    expect(html).not.toContain('bracket-detail');
    expect(html).not.toMatch(/No more than|Drill/);
  });

  it('has the numbers of the check: loads, screws, heights, places', async () => {
    const { html } = await fetched(addressFor(demoCheck));
    expect(html).toContain('No more than 18 lb a foot');
    expect(html).toContain('At 48 in from the left: Stock pot, 22 lb');
    expect(html).toContain('2 × #10 wood screw, 3 in; 8 in all');
    expect(html).toContain('the holes 1 in and 7 in up');
    for (const place of ['4', '36', '60', '92', '96', '32', '56', '88'])
      expect(html).toContain(`>${place}</text>`);
  });

  it('parts no number from its unit at the end of a line', async () => {
    for (const units of ['inch-pound', 'metric']) {
      const { raw } = await fetched(addressFor({ ...demoCheck, units }));
      const said = /id="work"[^]*installer-end/.exec(raw)?.[0] ?? '';
      expect(said).toMatch(units === 'metric' ? /\d\u00a0mm\b/ : /\d\u00a0in\b/);
      expect(said).not.toMatch(/\d (?:in|lb|mm|kg|%)(?![a-z])/);
    }
  });

  it('speaks metric where the check does', async () => {
    const { html } = await fetched(addressFor({ ...demoCheck, units: 'metric' }));
    expect(html).toContain('26 kg a metre');
    expect(html).toContain('installer-a4');
    expect(html).not.toMatch(/\d\/\d+ in\b|\d lb/);
  });

  it('escapes whatever a user writes, and holds the longest of it', async () => {
    const hostile = `</title><script>alert(1)</script> & "'\\}`;
    const loads = [{ name: hostile, kind: 'point' as const, at: '10 in', amount: '10 lbf' }];
    const { status, html } = await fetched(addressFor({ ...demoCheck, title: hostile, loads }));
    expect(status).toBe(200);
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;script&gt;');
  });

  it('is reached from the check and from the calculation sheet, and leads back', async () => {
    const check = await fetched(addressOf(demoCheck));
    expect(check.html).toContain('<a href="/installer?');
    const sheet = await fetched(addressOf(demoCheck).replace('/check?', '/sheet?'));
    expect(sheet.html).toContain('<a href="/installer?');
    const { html } = await fetched(addressFor(demoCheck));
    expect(html).toContain('<a href="/check?');
    expect(html).toContain('<a href="/sheet?');
  });

  it('says what is to be put right where there is an error', async () => {
    const { status, html } = await fetched(`${addressFor(demoCheck)}&board.length=banana`);
    expect(status).toBe(422);
    expect(html).not.toContain('Holds');
  });
});

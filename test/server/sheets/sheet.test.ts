import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { addressOf } from '../../../server/check/addresses.ts';
import { demoCheck } from '../../../server/demo.ts';
import { escaped } from '../../../server/drawings/index.ts';
import { tableValue } from '../../../server/view-models/sheet-prose.ts';
import { showUsed } from '../../../shared/quantity/index.ts';
import { serve, type Served } from '../serve.ts';
import { loosened } from '../page-text.ts';
import { manyShelves } from './many-shelves.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const sheetAddress = (document: unknown): string => addressOf(document).replace('/check?', '/sheet?');

async function fetched(path: string): Promise<{ status: number; html: string; headers: Headers }> {
  const response = await fetch(served.home + path, { redirect: 'manual' });
  return { status: response.status, html: loosened(await response.text()), headers: response.headers };
}

describe('the sheet', () => {
  it.each(manyShelves)(
    'holds every check, every line of working and every caution: $name',
    async ({ document }) => {
      const result = check(document, { waysOut: false });
      const { status, html } = await fetched(sheetAddress(document));
      expect(status).toBe(200);
      for (const each of result.checks) {
        const [row = ''] = new RegExp(`<tr id="row-${each.id}".*?</tr>`, 's').exec(html) ?? [];
        expect(row).toContain(escaped(each.title));
        expect(row).toContain(each.ratio === null ? '–' : showUsed(each.ratio));
        expect(row).toContain(escaped(each.clause));
      }
      const steps = result.worksheet.sections.flatMap((section) => section.steps);
      expect(html.match(/<div class="sheet-step[" ]/g)).toHaveLength(steps.length);
      for (const words of [...result.cautions, ...result.assumptions, ...result.warnings]) {
        expect(html).toContain(`<li>${escaped(words)}</li>`);
      }
      expect(html.split(escaped(result.cautions[0] ?? ''))).toHaveLength(3);
      for (const { what, source } of result.provenance.values) {
        expect(html).toContain(`<td>${escaped(what)}</td>`);
        expect(html).toContain(`<td>${escaped(source)}</td>`);
      }
      expect(html).not.toMatch(/NaN|undefined|\[object|\bnull\b/);
      expect(html).not.toMatch(/ style=|<style|<script|javascript:/);
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
    },
  );

  it('leaves nothing of the calculation out', async () => {
    const { html } = await fetched(sheetAddress(demoCheck));
    for (const { title, statements, tables } of check(demoCheck).worksheet.sections) {
      expect(html).toContain(escaped(title));
      for (const { source } of statements) expect(html).toContain(escaped(source));
      for (const cell of tables.flatMap(({ rows }) => rows.flat())) {
        expect(html).toContain(`<td>${escaped(tableValue(cell))}</td>`);
      }
    }
  });

  it('carries title, date, names, edition, version and fingerprint in its head', async () => {
    const { html } = await fetched(
      sheetAddress({ ...demoCheck, date: '2026-03-14', preparedBy: 'A. Nyone', checkedBy: 'S. Omeone' }),
    );
    const { edition } = check(demoCheck);
    const [head = ''] = /<header class="title-block">.*?<\/header>/s.exec(html) ?? [];
    for (const words of [
      demoCheck.title ?? '',
      '2026-03-14',
      'A. Nyone',
      'S. Omeone',
      edition.code,
      edition.tool,
    ]) {
      expect(head).toContain(escaped(words));
    }
    expect(head).toMatch(/<dd>[0-9a-f]{3} [0-9a-f]{3} [0-9a-f]{3} [0-9a-f]{3}<\/dd>/);
  });

  it('escapes whatever a user writes', async () => {
    const hostile = `</title><script>alert(1)</script> & "'\\}`;
    const loads = [{ name: hostile, kind: 'line' as const, amount: '10 lbf/ft' }];
    const { html } = await fetched(
      sheetAddress({ ...demoCheck, title: hostile, preparedBy: hostile, checkedBy: hostile, loads }),
    );
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;script&gt;');
  });

  it('is laid out for the paper of its units, or for the one asked for', async () => {
    const isFor = async (address: string): Promise<string> =>
      /<article class="sheet sheet-(\w+)">/.exec((await fetched(address)).html)?.[1] ?? '';
    const metric = { ...demoCheck, units: 'metric' };
    expect(await isFor(sheetAddress(demoCheck))).toBe('letter');
    expect(await isFor(sheetAddress(metric))).toBe('a4');
    expect(await isFor(`${sheetAddress(metric)}&paper=letter`)).toBe('letter');
    expect(await isFor(`${sheetAddress(demoCheck)}&paper=a4`)).toBe('a4');
  });

  it('leads back to the check it came from', async () => {
    const { html } = await fetched(`${sheetAddress(demoCheck)}&paper=a4`);
    const back = /<a href="([^"]+)">Back to the check/
      .exec(html)?.[1]
      ?.replaceAll('&amp;', '&')
      .replaceAll('&#x3D;', '=');
    const { status, html: page } = await fetched(back ?? '');
    expect(status).toBe(200);
    expect(page).toContain(demoCheck.title);
  });

  it('says what is to be put right where there is an error, and has no verdict then', async () => {
    const { status, html } = await fetched(
      `${sheetAddress({ ...demoCheck, title: 'A <b>bold</b> one' })}&board.length=banana`,
    );
    expect(status).toBe(422);
    expect(html).toContain('board, length');
    expect(html).toContain('Back to the check');
    expect(html).not.toMatch(/Holds|<b>bold/);
  });

  it('goes home where no check is named', async () => {
    const { status, headers } = await fetched('/sheet');
    expect(status).toBe(303);
    expect(headers.get('location')).toBe('/');
  });
});

describe('what the sheet needs', () => {
  it('is served: stylesheets, and the fonts they name', async () => {
    const { html } = await fetched(sheetAddress(demoCheck));
    const styles = [...html.matchAll(/<link rel="stylesheet" href="([^"]+)">/g)].map(([, address = '']) =>
      address.replaceAll('&amp;', '&').replaceAll('&#x3D;', '='),
    );
    expect(styles).toHaveLength(2);
    const sheets = await Promise.all(styles.map(fetched));
    for (const { status, headers } of sheets) {
      expect(status).toBe(200);
      expect(headers.get('content-type')).toContain('text/css');
    }
    const fonts = [...(sheets[0]?.html ?? '').matchAll(/url\('([^']+)'\)/g)].map(
      ([, address = '']) => address,
    );
    expect(fonts).toHaveLength(4);
    for (const font of fonts) {
      const response = await fetch(served.home + font);
      expect(response.status).toBe(200);
      expect(
        Buffer.from(await response.arrayBuffer())
          .subarray(0, 4)
          .toString(),
      ).toBe('wOF2');
    }
  });
});

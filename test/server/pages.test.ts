import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { addressOf, demoAddress } from '../../server/check/addresses.ts';
import { demoCheck } from '../../server/demo.ts';
import { shelfAddress } from './fixtures/shelf.ts';
import { caution, cautions } from '../../shared/cautions.ts';
import { leaks, plainText } from './page-text.ts';
import { serve, type Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const get = (path: string, headers: Record<string, string> = {}): Promise<Response> =>
  fetch(served.home + path, { headers, redirect: 'manual' });
const partial = (path: string, target: string): Promise<Response> =>
  get(path, { 'HX-Request': 'true', 'HX-Target': target });

/** What must never reach a page: a value that was not there, or a failed number. */

describe('the pages', () => {
  it('begin at one that names the three ways into a check', async () => {
    const response = await get('/');
    const html = await response.text();
    expect(response.status).toBe(200);
    expect(html).toContain('href="/demo"');
    expect(html).toContain('enctype="multipart/form-data"');
    expect(html).not.toMatch(leaks);
  });

  it('say that a weight is missing at the field in which it is to be given', async () => {
    const loads = [{ name: 'Books', kind: 'line', total: '', duration: 'permanent' }];
    const html = await (await get(`${addressOf({ ...demoCheck, loads })}&loads.0.by=total`)).text();
    expect(html).toContain('href="#loads.0.total"');
    expect(html).toMatch(/id="loads\.0\.total"[^>]*aria-invalid="true"/);
    expect(plainText(html)).not.toContain('This check: ');
  });

  it('never let the share of a check that cannot say stand alone', async () => {
    const { brackets } = demoCheck;
    const capacity = { basis: 'rated', allowable: '500 lbf', at: '4 in' } as const;
    const document = {
      ...demoCheck,
      brackets: { ...brackets, positions: ['20 in', '52 in', '70 in'], capacity },
    };
    const lift = check(document, { waysOut: false }).checks.find(({ id }) => id === 'bracket-lift');
    expect(lift?.outcome).toBe('cannot-say');
    const text = plainText(await (await get(addressOf(document))).text());
    expect(text).toContain(`Cannot say, ${Math.round(100 * (lift?.ratio ?? NaN))}`);
  });

  it('show the demo check with its verdict, every check and every caution', async () => {
    const result = check(demoCheck);
    const html = await (await get(demoAddress)).text();
    const text = plainText(html);
    expect(html).not.toMatch(leaks);
    for (const { title } of result.checks) expect(text).toContain(title);
    for (const caution of cautions) expect(text).toContain(caution);
    for (const warning of result.warnings) expect(text).toContain(warning);
    for (const assumption of result.assumptions) expect(text).toContain(assumption);
  });

  it('write what is known of a wood as people write it (Wood Handbook FPL-GTR-282, Table 5-3b: sugar maple 1.83 Mpsi)', async () => {
    const text = plainText(await (await get(demoAddress)).text());
    expect(text).toContain('stiffness 1,830,000 psi');
  });

  it('put the warnings beside the verdict, and on the installer’s sheet and its label', async () => {
    const loads = (demoCheck.loads ?? []).filter(({ kind }) => kind !== 'roaming');
    const document = { ...demoCheck, loads };
    const { verdict, warnings } = check(document);
    expect([verdict, warnings.length]).toEqual(['holds', 1]);
    const address = addressOf(document);
    const html = await (await get(address)).text();
    const beside = plainText(/id="verdict"[^]*?id="used"/.exec(html)?.[0] ?? '');
    for (const words of ['One warning.', ...warnings, caution.aid]) expect(beside).toContain(words);
    const glance = plainText(/<div class="glance[^]*?<\/div>/.exec(html)?.[0] ?? '');
    expect(glance).toContain('One warning. This is a calculation aid.');
    const installer = await (await get(address.replace('/check?', '/installer?'))).text();
    const [first = '', label = ''] = [/installer-first[^]*?<h1>/, /installer-label"[^]*/].map((part) =>
      plainText(part.exec(installer)?.[0] ?? ''),
    );
    for (const warning of warnings) expect(first).toContain(warning);
    expect(label).toContain('One warning stands on the installer’s sheet.');
    const sheet = plainText(await (await get(address.replace('/check?', '/sheet?'))).text());
    for (const warning of warnings) expect(sheet.indexOf(warning)).toBeLessThan(sheet.indexOf(caution.aid));
  });

  describe('and the lines of working of the checks', () => {
    const lists = (html: string): number => html.split('aria-label="Lines of working"').length - 1;
    const working = demoAddress.replace('/check?', '/working?of=bending&');
    const withLines = check(demoCheck).checks.length;

    it('are all on a page, which may be read without a script', async () => {
      const html = await (await get(demoAddress)).text();
      expect(lists(html)).toBe(withLines);
      expect(html).not.toContain('/working');
    });

    it('come with an answer that is swapped in where a check is open, and are fetched of the others', async () => {
      const headers = { 'HX-Request': 'true', 'HX-Target': 'section#answer' };
      const closed = await get(demoAddress, headers);
      const html = await closed.text();
      expect(closed.headers.get('vary')).toContain('Opened-Checks');
      expect(lists(html)).toBe(0);
      expect(html.split('hx-get="/working?').length - 1).toBe(withLines);
      const opened = await get(demoAddress, { ...headers, 'Opened-Checks': 'bending,fixing' });
      expect(lists(await opened.text())).toBe(2);
    });

    it('are those of the calculation', async () => {
      const section = check(demoCheck).worksheet.sections.find((each) => each.check === 'bending');
      const response = await get(working, { 'HX-Request': 'true' });
      const text = plainText(await response.text());
      expect(response.status).toBe(200);
      expect(section?.steps.length).toBeGreaterThan(3);
      for (const { caption } of section?.steps ?? []) expect(text).toContain(caption.split(/[_:]/)[0]);
      const [address = '', body = ''] = working.split('?');
      const posted = await fetch(served.home + address, { method: 'POST', body });
      expect(plainText(await posted.text())).toBe(text);
    });

    it('are none of what is no check, and of a check in which something is wrong', async () => {
      const none = await get(working.replace('bending', 'no-such-check'), { 'HX-Request': 'true' });
      expect([none.status, await none.text()]).toEqual([200, expect.stringContaining('no lines of working')]);
      const wrong = await get(`${working}&board.length=tall`, { 'HX-Request': 'true' });
      expect([wrong.status, lists(await wrong.text())]).toEqual([422, 0]);
    });
  });

  // Without a script the button beside a check of a job sends all of its form.
  it.each(['/working?of=bending&', '/layouts?', '/reach?', '/check?'])(
    'pass over what a check of a job is saved by: %s',
    async (start) => {
      const [address = '', body = ''] = demoAddress.replace('/check?', start).split('?');
      const sent = `${body}&token=0a1b&save.editor=2c3d&save.base=4`;
      const posted = await fetch(served.home + address, { method: 'POST', body: sent, redirect: 'manual' });
      expect(posted.status).toBe(200);
    },
  );

  it('give the demo check a short address', async () => {
    const response = await get('/demo');
    expect(response.status).toBe(303);
    expect(response.headers.get('location')).toBe(demoAddress);
  });

  it('begin a new check with values to be changed, and an answer', async () => {
    const started = await get('/check');
    expect(started.status).toBe(303);
    const page = await get(started.headers.get('location') ?? '');
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('id="verdict"');
  });

  it('say so where nothing is', async () => {
    const response = await get('/nothing/here');
    expect(response.status).toBe(404);
    expect(response.headers.get('content-type')).toContain('text/html');
    const problem = await get('/api/nothing');
    expect(problem.status).toBe(404);
    expect(problem.headers.get('content-type')).toContain('application/problem+json');
  });
});

describe('the headers', () => {
  it('let nothing run but our own files, and ask for no https', async () => {
    const { headers } = await get('/');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain('unsafe');
    expect(policy).not.toContain('upgrade-insecure-requests');
    expect(headers.get('strict-transport-security')).toBeNull();
    expect(headers.get('x-powered-by')).toBeNull();
  });

  it('tell a cache that a region is not the page', async () => {
    const { headers } = await get(demoAddress);
    expect(headers.get('vary')).toContain('HX-Request');
    expect(headers.get('vary')).toContain('HX-Target');
  });

  it('keep inline scripts and styles out of every page', async () => {
    for (const path of ['/', demoAddress, '/nothing']) {
      const html = await (await get(path)).text();
      expect(html).not.toMatch(/<script(?![^>]*\bsrc=)/);
      expect(html).not.toMatch(/<style|\sstyle=|\son[a-z]+=/);
    }
  });

  it('keep the files of a page for good, under an address that changes with them', async () => {
    const html = await (await get('/')).text();
    const files = [...html.matchAll(/(?:src|href)="(\/assets\/[^"]+)"/g)].map((match) => match[1] ?? '');
    expect(files.length).toBeGreaterThanOrEqual(7);
    for (const file of files) {
      const response = await get(file);
      expect(response.status).toBe(200);
      expect(response.headers.get('cache-control')).toContain('immutable');
    }
  });
});

describe('what is sent for a change', () => {
  it('is the answer alone while someone types, with the address it has then', async () => {
    const response = await partial(shelfAddress, 'section#answer');
    const html = await response.text();
    expect(html).toContain('id="verdict"');
    expect(html).not.toContain('<form');
    expect(html).not.toContain('<html');
    expect(response.headers.get('hx-push-url')).toBe(shelfAddress);
  });

  it('is form and answer where fields come or go', async () => {
    const html = await (await partial(shelfAddress, 'main#work')).text();
    expect(html).toContain('<form');
    expect(html).toContain('id="verdict"');
    expect(html).not.toContain('<html');
  });

  it('is a whole page where history is restored', async () => {
    const headers = { 'HX-Request': 'true', 'HX-Target': 'body', 'HX-History-Restore-Request': 'true' };
    const html = await (await get(shelfAddress, headers)).text();
    expect(html).toContain('<html');
    expect(html).toContain('<form');
  });

  it('keeps the text of whoever wrote it, says what the field takes, and links to it', async () => {
    const wrong = shelfAddress.replace('board.length=96+in', 'board.length=eight+feet');
    for (const response of [await get(wrong), await partial(wrong, 'main#work')]) {
      const html = await response.text();
      expect(response.status).toBe(422);
      expect(html).toContain('value="eight feet"');
      expect(html).toContain('href="#board.length"');
      expect(plainText(html)).toContain('It takes a length with its unit');
      expect(html).toMatch(/id="board\.length"[^>]*aria-invalid="true"/);
      for (const caution of cautions) expect(plainText(html)).toContain(caution);
      expect(html).not.toContain('id="used"');
    }
  });

  it('refuses to answer where the address holds a field that no check has', async () => {
    const response = await get(`${shelfAddress}&loads.3.amont=900+lbf`);
    expect(response.status).toBe(422);
    expect(plainText(await response.text())).toContain('loads.3.amont');
  });
});

describe('the form without a script', () => {
  it('adds, moves and removes rows by its buttons, and goes on to an address that can be loaded again', async () => {
    const added = await get(`${shelfAddress}&do=add%3Abrackets.positions`);
    expect(added.status).toBe(303);
    const address = added.headers.get('location') ?? '';
    expect(address).toContain('brackets.positions.4=48+in');
    expect(address).not.toContain('do=');
    const page = await (await get(address)).text();
    expect(page).toMatch(/id="brackets\.positions\.4"[^>]*autofocus/);
    const removed = await get(`${shelfAddress}&do=remove%3Aloads.0`);
    expect(removed.headers.get('location')).toContain('loads.0.name=Stock+pot');
    const moved = await get(`${shelfAddress}&do=down%3Aloads.0`);
    expect(moved.headers.get('location')).toContain('loads.1.name=Plates+and+jugs');
  });

  it('gives a button of the form an answer in place where a script asks', async () => {
    const response = await partial(`${shelfAddress}&do=remove%3Aloads.0`, 'main#work');
    expect(response.status).toBe(200);
    expect(response.headers.get('hx-push-url')).toContain('loads.0.name=Stock+pot');
    expect(response.headers.get('hx-push-url')).not.toContain('do=');
  });
});

describe('hostile text', () => {
  it('comes out as text, in every field', async () => {
    const hostile = `"'><script>alert(1)</script><img src=x onerror=alert(2)>{{title}}&amp;`;
    const fields = [...new URLSearchParams(shelfAddress.split('?')[1]).keys()];
    const others = [
      'preparedBy',
      'checkedBy',
      'date',
      'brackets.capacity.source',
      'board.grade',
      'at',
      'was',
    ];
    for (const field of [...fields, ...others]) {
      const query = new URLSearchParams(shelfAddress.split('?')[1]);
      query.set(field, hostile);
      const response = await get(`/check?${query.toString()}`);
      const html = await response.text();
      expect(response.status, field).toBeLessThan(500);
      expect(html, field).not.toContain('<script>alert');
      expect(html, field).not.toContain('<img');
    }
    expect(served.faults).toEqual([]);
  });

  it('does no harm as the name of a field', async () => {
    for (const name of [
      '__proto__.x',
      'constructor',
      'board.__proto__',
      '<b>',
      'loads.0.things.0.toString',
    ]) {
      const response = await get(`${shelfAddress}&${encodeURIComponent(name)}=1`);
      const html = await response.text();
      expect(response.status, name).toBe(422);
      expect(html).not.toContain('<b>');
    }
    expect(served.faults).toEqual([]);
  });
});

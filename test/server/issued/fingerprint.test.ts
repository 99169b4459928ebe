import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeLink } from '../../../server/store/share-links.ts';
import { cookieOf, letIn, site } from '../accounts/office.ts';
import { formOf, visitor, type Visitor } from '../jobs/visitor.ts';
import { serve, type Served } from '../serve.ts';

const text = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
const words = {
  name: 'House by the mill',
  client: 'A. Client',
  address: '3 Long Lane',
  preparedBy: 'A. Nyone',
};

let served: Served;
let own: Visitor;
let job = '';
let sheet = '';
let digits = '';
let document = '';
let pdf: Buffer;

beforeAll(async () => {
  served = await serve({ ...site, proxies: 1 });
  const member = await letIn(served.store, 'here', 'member', 'M. Ember');
  own = visitor(served, await cookieOf(served.store, member));
  job = await own.beginJob(words);
  sheet = await own.issue(await own.addDemo(job), { date: '2026-03-14' });
  document = await (await own.get(`${sheet}/document`)).text();
  pdf = Buffer.from(await (await own.get(`${sheet}/sheet.pdf`)).arrayBuffer());
  digits = (/Fingerprint ((?:[0-9a-f]{4} ){15}[0-9a-f]{4})/.exec(text(await own.page(sheet))) ?? [])[1] ?? '';
});
afterAll(() => served.close());

interface Said {
  readonly status: number;
  readonly html: string;
  readonly shown: string;
}
/** Asks as somebody without an account, from a place of its own, so that the limit of one place does not tell in the tests. */
let places = 0;
async function ask(body: FormData | URLSearchParams, home = served.home): Promise<Said> {
  places += 1;
  const response = await fetch(`${home}/fingerprint`, {
    method: 'POST',
    body,
    headers: { 'X-Forwarded-For': `10.0.${places >> 8}.${places & 255}` },
  });
  const html = await response.text();
  return { status: response.status, html, shown: text(html) };
}
const type = (fingerprint: string): Promise<Said> => ask(new URLSearchParams({ fingerprint }));
const upload = (content: string | Uint8Array, home?: string): Promise<Said> => {
  const body = new FormData();
  body.set('file', new Blob([typeof content === 'string' ? content : new Uint8Array(content)]), 'file');
  return ask(body, home);
};

describe('looking a fingerprint up', () => {
  it('is open to anybody', async () => {
    const response = await fetch(`${served.home}/fingerprint`);
    expect(response.status).toBe(200);
    expect(await response.text()).not.toMatch(/House by the mill|\d-\d/);
  });

  it('finds the sheet, however the digits are written, and tells no more than its number, day and verdict', async () => {
    const bare = digits.replaceAll(' ', '');
    expect(bare).toMatch(/^[0-9a-f]{64}$/);
    for (const typed of [digits, bare.toUpperCase(), bare.replace(/.{16}/g, '$&\r\n')]) {
      const { status, shown } = await type(typed);
      expect(status).toBe(200);
      for (const said of [
        'It was issued',
        'nothing supersedes it',
        '1-1',
        '2026-03-14',
        'Holds',
        'calculation aid',
      ]) {
        expect(shown).toContain(said);
      }
      expect(shown).not.toMatch(/Display shelf|mill|Client|Lane|Nyone|Ember|Office/);
    }
  });

  it('finds nothing by another one, and says what it takes of one that is none', async () => {
    const other = await type(digits.replace(/.$/, (last) => (last === '0' ? '1' : '0')));
    expect([other.status, other.shown.includes('It is not known here')]).toEqual([200, true]);
    const short = await type(digits.slice(0, -1));
    expect([
      short.status,
      short.shown.includes('It takes 64 digits, in whatever groups; here are 63'),
    ]).toEqual([422, true]);
    const hostile = await type('"><script>alert(1)</script>');
    expect(hostile.status).toBe(422);
    expect(hostile.html).not.toContain('<script>alert');
  });

  it('knows the document again, laid out in whatever way', async () => {
    for (const content of [document, `\ufeff${JSON.stringify(JSON.parse(document), null, 2)}\r\n`]) {
      expect((await upload(content)).shown).toContain('nothing supersedes it');
    }
  });

  it('knows the PDF again', async () => {
    const { shown } = await upload(pdf);
    expect(shown).toContain('nothing supersedes it');
    expect(shown).toContain('2026-03-14');
  });

  it('refuses a document with one byte changed, wherever it is', async () => {
    const bytes = Buffer.from(document);
    for (let at = 0; at < bytes.length; at += Math.floor(bytes.length / 60)) {
      for (const flip of [1, 0x20]) {
        const changed = Buffer.from(bytes);
        changed.writeUInt8((bytes[at] ?? 0) ^ flip, at);
        const { shown, status } = await upload(changed);
        expect(shown, `${at} ${flip}`).not.toContain('supersedes it');
        expect([200, 422]).toContain(status);
      }
    }
  });

  it('says that a document was changed which still names its sheet', async () => {
    const spelled = (from: string | RegExp, to: string): string => {
      const changed = document.replace(from, to);
      expect(changed).not.toBe(document);
      return changed;
    };
    const changes = [
      spelled('"verdict":"holds"', '"verdict":"does-not-hold"'),
      spelled('House by the mill', 'House by the hill'),
      spelled('"schema":1', '"schema":1.0'),
      spelled('{', '{"title":"Twice",'),
      spelled('96 in', '96  in'),
    ];
    for (const changed of changes) {
      const { status, shown } = await upload(changed);
      expect([status, shown.includes('It is not what was issued')]).toEqual([200, true]);
      expect(shown).toContain('1-1');
    }
  });

  it('refuses a PDF with one byte changed, and says whose it was where that is left', async () => {
    for (let at = 6; at < pdf.length; at += Math.floor(pdf.length / 40)) {
      const changed = Buffer.from(pdf);
      changed.writeUInt8((pdf[at] ?? 0) ^ 1, at);
      const { shown } = await upload(changed);
      expect(shown, String(at)).not.toContain('supersedes it');
      expect(shown).toMatch(/It is not what was issued|It is not known here/);
    }
    const longer = await upload(Buffer.concat([pdf, Buffer.from('\n')]));
    expect(longer.shown).toContain('its bytes are not those that were issued');
  });

  it.each<[string, string | Uint8Array, number, string]>([
    ['nothing', '', 422, 'No file was chosen'],
    ['neither', 'Dear office', 422, 'is no PDF, and no document'],
    ['bytes', new Uint8Array([0xff, 0xfe, 0, 1]), 422, 'not UTF-8'],
    ['half a document', '{"kind": "issued-sheet",', 422, 'ends too early'],
    ['a list', '[]', 422, 'not the document of an issued sheet'],
    ['a number', '1e999', 422, 'not the document of an issued sheet'],
    ['a job', '{"schema": 1, "kind": "job"}', 422, 'is no issued sheet'],
    ['one of elsewhere', '{"kind": "issued-sheet", "id": "abc"}', 200, 'It is not known here'],
    ['an odd id', '{"kind": "issued-sheet", "id": "\\u0000\\ud800"}', 200, 'It is not known here'],
    ['deep brackets', '['.repeat(100_000), 422, 'is no PDF, and no document'],
    [
      'a PDF of elsewhere',
      '%PDF-1.7\nFingerprint 0000 0000\n',
      200,
      'No sheet was issued here with these bytes',
    ],
  ])('says clearly what it makes of %s', async (_what, content, status, said) => {
    const found = await upload(content);
    expect([found.status, found.shown.includes(said)]).toEqual([status, true]);
  });

  it('takes no file over 4 MB', async () => {
    expect((await upload(new Uint8Array(4 * 1024 * 1024 + 1))).status).toBe(413);
  });

  it('says of a superseded sheet by which revision, by its digits, document and PDF', async () => {
    const check = await own.addDemo(job);
    const first = await own.issue(check);
    const [old, oldPdf] = [
      await (await own.get(`${first}/document`)).text(),
      Buffer.from(await (await own.get(`${first}/sheet.pdf`)).arrayBuffer()),
    ];
    const form = formOf(await own.page(check));
    form.set('board.length', '95 in');
    await own.send(check, form);
    await own.issue(check);
    const printed = /Fingerprint ((?:[0-9a-f]{4} ){15}[0-9a-f]{4})/.exec(text(await own.page(first)))?.[1];
    for (const { shown } of [await upload(old), await upload(oldPdf), await type(printed ?? '')]) {
      expect(shown).toContain('It was issued, and is superseded');
      expect(shown).toContain('Superseded by revision B: ask for that one');
    }
  });

  it('of a copy of this program that issued nothing knows nothing', async () => {
    const elsewhere = await serve();
    const response = await fetch(`${elsewhere.home}/fingerprint`, {
      method: 'POST',
      body: new URLSearchParams({ fingerprint: digits }),
    });
    expect(await response.text()).toContain('It is not known here');
    await elsewhere.close();
  });

  it('too often in a short time is refused for a while', async () => {
    const often = await serve(site);
    const statuses: number[] = [];
    for (let times = 0; times < 121; times++) {
      statuses.push((await fetch(`${often.home}/fingerprint`)).status);
    }
    expect(statuses.slice(0, 120).every((status) => status === 200)).toBe(true);
    expect(statuses.at(-1)).toBe(429);
    await often.close();
  });
});

describe('a link to a job', () => {
  it('shows its issued sheets, with page and PDF and nothing to change, and no other job’s', async () => {
    const id = job.replace('/jobs/', '');
    const key = await makeLink(served.store, { officeId: 'here', name: 'M. Ember' }, id, 'A. Client', 30);
    const anybody = visitor(served);
    const page = await anybody.page(`/shared/${key ?? ''}`);
    expect(text(page)).toContain('Issued sheets');
    const address = `/shared/${key ?? ''}${sheet}`;
    expect(page).toContain(`href="${address}"`);
    const shown = await anybody.page(address);
    expect(text(shown)).toContain('1-1 revision A, issued');
    const article = (html: string): string =>
      html.slice(html.indexOf('<article'), html.indexOf('</article>'));
    expect(article(shown)).toBe(article(await own.page(sheet)));
    expect(shown).not.toMatch(/<form|<button|href="\/jobs|href="\/issued/);
    const file = Buffer.from(await (await anybody.get(`${address}/sheet.pdf`)).arrayBuffer());
    expect(file.equals(pdf)).toBe(true);
    const elsewhere = await own.issue(await own.addDemo(await own.beginJob({ name: 'Another house' })));
    for (const path of [`/shared/${key ?? ''}${elsewhere}`, `/shared/${key ?? ''}${elsewhere}/sheet.pdf`]) {
      expect((await anybody.get(path)).status).toBe(404);
    }
    expect((await anybody.get(sheet)).status).toBe(303);
  });
});

it('nothing of all that was a fault of the program', () => {
  expect(served.faults).toEqual([]);
});

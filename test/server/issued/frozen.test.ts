import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { version } from '../../../calc/version.ts';
import { newIssued } from '../store/new-issued.ts';
import { formOf, visitor } from '../jobs/visitor.ts';
import { serve, type Served } from '../serve.ts';
import { localOffice } from '../../../server/store/offices.ts';
import { insertIssued } from '../../../server/store/issued.ts';
import { readCheck } from '../../../server/store/checks.ts';

const text = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
const digest = (content: string | Buffer): string => createHash('sha256').update(content).digest('hex');

/** What was frozen of a sheet, as it comes out of the application. */
async function frozenOf(
  served: Served,
  sheet: string,
): Promise<{ page: string; pdf: string; document: string }> {
  const own = visitor(served);
  const page = await own.page(sheet);
  const article = page.slice(page.indexOf('<article'), page.indexOf('</article>'));
  expect(article.length).toBeGreaterThan(20_000);
  const pdf = await own.get(`${sheet}/sheet.pdf`);
  expect(pdf.status).toBe(200);
  const document = await own.get(`${sheet}/document`);
  expect(document.status).toBe(200);
  return {
    page: digest(article),
    pdf: digest(Buffer.from(await pdf.arrayBuffer())),
    document: digest(await document.text()),
  };
}

describe('an issued sheet', () => {
  const folder = mkdtempSync(join(tmpdir(), 'frozen-'));
  let served: Served;
  beforeAll(async () => {
    served = await serve(undefined, { folder });
  });
  afterAll(async () => {
    await served.close();
    rmSync(folder, { recursive: true });
  });

  it.each(['demo', 'counter-overhang', 'wall-fixing'])(
    'stays as it is, byte for byte, whatever becomes of its check, its job and the program: %s',
    async (from) => {
      const someone = visitor(served);
      const job = await someone.beginJob({ name: 'House by the mill', preparedBy: 'A. Nyone' });
      const check = (await someone.send(`${job}/checks`, { from })).headers.get('location') ?? '';
      const sheet = await someone.issue(check);
      const before = await frozenOf(served, sheet);
      const fingerprint = /Fingerprint<\/dt><dd>([0-9a-f ]{79})</.exec(await someone.page(sheet))?.[1] ?? '';
      expect(before.document).toBe(fingerprint.replaceAll(' ', ''));

      const form = formOf(await someone.page(check));
      form.set('title', 'Another thing');
      expect((await someone.send(check, form)).status).toBe(303);
      await someone.send(`${job}/edit`, { name: 'Hall', client: 'B. Client', version: '1' });
      expect(await frozenOf(served, sheet)).toEqual(before);
      await someone.issue(check);
      await someone.send(`${check}/delete`);
      expect(await someone.page(job)).toContain(`href="${sheet}"`);
      await someone.send(`${job}/delete`);
      expect(await someone.page(job)).toContain(`href="${sheet}"`);
      expect(await frozenOf(served, sheet)).toEqual(before);

      await served.close();
      served = await serve(undefined, { folder });
      expect(await frozenOf(served, sheet)).toEqual(before);
      expect(served.faults).toEqual([]);
    },
  );

  it('is not in the file of its job, nor in a copy of it', async () => {
    const someone = visitor(served);
    const job = await someone.beginJob({ name: 'House by the mill' });
    await someone.issue(await someone.addDemo(job));
    const file = await (await someone.get(`${job}/file`)).text();
    expect(file).not.toContain('issued');
    const brought = await someone.upload('/jobs/bring', 'job', file);
    const copy = await someone.send(`${job}/copy`);
    for (const { headers } of [brought, copy]) {
      const page = await someone.page(headers.get('location') ?? '');
      expect(page).toContain('Display shelf over the sideboard');
      expect(page).not.toContain('Issued sheets');
    }
    expect(await someone.page('/')).toContain('Issued sheets stay where they were issued');
  });
});

describe('the numbers of an issued sheet, today', () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it('are worked out on asking alone where the version is the same, and are the same then', async () => {
    const someone = visitor(served);
    for (const from of ['demo', 'counter-run']) {
      const job = await someone.beginJob();
      const check = (await someone.send(`${job}/checks`, { from })).headers.get('location') ?? '';
      const sheet = await someone.issue(check);
      const page = await someone.page(sheet);
      expect(text(page)).toContain(`Worked out by version ${version}, which is the one that runs here.`);
      expect(page).toContain(`href="${sheet}?today"`);
      const asked = text(await someone.page(`${sheet}?today`));
      expect(asked).toContain('gives the same verdict and the same numbers today');
    }
  });

  /** A sheet as an older version would have issued it: another answer to the demo check, or a document it took then. */
  async function older(change: (frozen: FrozenText) => void): Promise<string> {
    const someone = visitor(served);
    const address = await someone.addDemo(await someone.beginJob());
    const [jobId = '', checkId = ''] = /jobs\/(.*)\/checks\/(.*)/.exec(address)?.slice(1) ?? [];
    const actor = { officeId: localOffice, name: '' };
    const check = await readCheck(served.store, actor, jobId, checkId);
    if (check === undefined) throw new Error('no check');
    const issued = await someone.issue(address);
    const frozen = (await (await someone.get(`${issued}/document`)).json()) as FrozenText;
    frozen.revision = 'B';
    change(frozen);
    const document = JSON.stringify(frozen);
    const sheet = newIssued(check, 2, { document, tool: '0.0.9', fingerprint: digest(document) });
    expect(await insertIssued(served.store, actor, sheet, { job: 1, check: 1 })).toBe('issued');
    return `/issued/${sheet.id}`;
  }
  interface FrozenText {
    revision: string;
    check: { board: Record<string, unknown> };
    result: {
      verdict: string;
      checks: { title: string; ratio: number; demand: { value: number; shown: string } }[];
    };
  }

  it('are told with what differs where a newer version gives others', async () => {
    let [title, percent] = ['', 0];
    const sheet = await older(({ result }) => {
      const [, second] = result.checks;
      if (second === undefined) throw new Error('too few checks');
      title = second.title;
      percent = Math.round(second.ratio * 100);
      second.ratio /= 2;
      second.demand = { ...second.demand, value: second.demand.value / 2, shown: '1/2 of it' };
      result.verdict = 'cannot-say';
    });
    const html = await visitor(served).page(sheet);
    const shown = text(html);
    expect(shown).toContain(
      `Issued by version 0.0.9; version ${version} gives another verdict: Holds, not Cannot say.`,
    );
    expect(shown).toMatch(new RegExp(`${title} .*1/2 of it.*${percent} % used.*100 % more`));
    expect(html.match(/<tr><th scope="row">/g)).toHaveLength(1);
  });

  it('are told to be the same by a newer version that gives the same', async () => {
    const sheet = await older(() => undefined);
    expect(text(await visitor(served).page(sheet))).toContain(
      `Issued by version 0.0.9; version ${version} gives the same verdict and the same numbers today.`,
    );
  });

  it('can’t be given by a version that does not take the document any more', async () => {
    const sheet = await older(({ check }) => {
      check.board['material'] = 'a wood that is not kept any more';
    });
    const shown = text(await visitor(served).page(sheet));
    expect(shown).toContain('does not take the frozen document any more: /board/material');
    expect(served.faults).toEqual([]);
  });
});

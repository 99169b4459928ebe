import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../../calc/index.ts';
import { demoCheck } from '../../../../server/demo.ts';
import { findProgram } from '../../../run/programs.ts';
import { visitor, type Visitor } from '../../jobs/visitor.ts';
import { serve, type Served } from '../../serve.ts';
import { readPdf, wordsOverWords } from './read-pdf.ts';

let served: Served;
let someone: Visitor;
beforeAll(async () => {
  served = await serve();
  someone = visitor(served);
});
afterAll(() => served.close());

const letters = (text: string): string => text.replace(/[\s-]/g, '');
const job = {
  name: 'House by the mill',
  client: 'A. Client',
  address: '3 Long Lane',
  reference: 'K-17',
  edition: 'Building code of 2024',
  authority: 'The town',
};

async function issued(changes: Readonly<Record<string, string>>, words = job) {
  const check = await someone.addDemo(await someone.beginJob(words));
  const sheet = await someone.issue(check, changes);
  const pdf = Buffer.from(await (await someone.get(`${sheet}/sheet.pdf`)).arrayBuffer());
  const document = await (await someone.get(`${sheet}/document`)).text();
  return { pdf, document, frozen: JSON.parse(document) as { number: string } };
}

describe.skipIf(findProgram('pdftotext') === undefined)('the PDF of an issued sheet', () => {
  it.each(['letter', 'a4'])(
    'has number, revision, all digits of the fingerprint and its place among the sheets on every page of %s',
    async (paper) => {
      const { pdf, document, frozen } = await issued({
        paper,
        preparedBy: 'A. Nyone',
        checkedBy: 'S. O. Else',
        date: '2026-03-14',
      });
      const digest = createHash('sha256').update(document, 'utf8').digest('hex');
      const { text, pages, info, metadata } = await readPdf(pdf);
      const parts = text.split(/Sheet \d+ of \d+/).slice(0, -1);
      expect(pages).toBeGreaterThan(4);
      for (let page = 1; page <= pages; page++) expect(text).toContain(`Sheet ${page} of ${pages}`);
      expect(parts).toHaveLength(pages);
      for (const part of parts) {
        expect(letters(part)).toContain(letters(`Sheet ${frozen.number} · Revision A`));
        expect(letters(part)).toContain(letters(`Fingerprint ${digest}`));
      }
      for (const words of [...Object.values(job), 'A. Nyone', 'S. O. Else', '2026-03-14']) {
        expect(letters(parts[0] ?? '')).toContain(letters(words));
      }
      for (const caution of check(demoCheck).cautions)
        expect(letters(parts[0] ?? '')).toContain(letters(caution));
      expect(info).toMatch(paper === 'a4' ? /Page size: +595/ : /Page size: +612/);
      expect(metadata).toMatch(/pdfaid:part>2</);
      expect(letters(info)).toContain(digest);
      expect(await wordsOverWords(pdf)).toEqual([]);
    },
  );

  it('holds words as long as a job may have, with the cautions on its first page', async () => {
    const long = (length: number): string => 'Wide words '.repeat(20).slice(0, length - 1) + '.';
    const { pdf } = await issued(
      { title: long(120), preparedBy: long(80), checkedBy: long(80) },
      {
        name: long(120),
        client: long(120),
        address: long(200),
        reference: long(80),
        edition: long(120),
        authority: long(120),
      },
    );
    const { text, pages } = await readPdf(pdf);
    const first = letters(text.split(/Sheet \d+ of \d+/)[0] ?? '');
    for (const caution of check(demoCheck).cautions) expect(first).toContain(letters(caution));
    expect(pages).toBeGreaterThan(4);
    expect(await wordsOverWords(pdf)).toEqual([]);
  });
});

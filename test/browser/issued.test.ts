import { beforeAll, expect, it } from 'vitest';
import { findProgram } from '../run/programs.ts';
import { formOf, visitor } from '../server/jobs/visitor.ts';
import { readPdf } from '../server/sheets/pdf/read-pdf.ts';
import { expectFits, expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

describeInBrowser('issued sheets in a browser', ({ visit, home }) => {
  let job = '';
  let check = '';
  let first = '';
  beforeAll(async () => {
    const someone = visitor({ home: home() });
    const name = 'Lengthyhousename'.repeat(6);
    job = await someone.beginJob({ name, client: name, address: '3 Long Lane', authority: name });
    check = await someone.addDemo(job);
    first = await someone.issue(check, { paper: 'letter' });
    const form = formOf(await someone.page(check));
    form.set('board.thickness', '1/4 in');
    await someone.send(check, form);
    await someone.issue(check);
  });

  const pages: readonly [string, () => string][] = [
    ['the job', () => job],
    ['the check', () => check],
    ['the form that issues', () => `${check}/issue`],
    ['a sheet that is superseded', () => first],
    ['where fingerprints are looked up', () => '/fingerprint'],
  ];

  it.each(pages)('%s fits phone and desk and shuts nobody out', async (_, path) => {
    const page = await visit(path());
    await expectFits(page);
    await expectOpenToAll(page);
  });

  it('a sheet is issued, named as superseded by the next, and found by the digits of its page', async () => {
    const page = await visit(check);
    await page.locator('a', { hasText: 'Issue a sheet' }).click();
    await page.locator('#checkedBy').fill('S. O. Else');
    await page.locator('button.go', { hasText: 'Issue revision C' }).click();
    await page.locator('.sheet-notice', { hasText: 'revision C, issued' }).waitFor();
    const digits = await page.locator('dt', { hasText: 'Fingerprint' }).locator('+ dd').innerText();
    await page.locator('a', { hasText: 'Look up a fingerprint' }).click();
    await page.locator('#fingerprint').fill(digits);
    await page.locator('button', { hasText: 'Look it up' }).click();
    await page.locator('.found', { hasText: 'nothing supersedes it' }).waitFor();
    await expectOpenToAll(page);
    await page.goto(home() + first);
    await page.locator('.sheet-superseded', { hasText: 'Superseded by revision C' }).waitFor();
  });

  it.skipIf(findProgram('pdftotext') === undefined)(
    'printed by the browser has number and fingerprint on every page, and says first that it is superseded',
    async () => {
      const page = await visit(first);
      const digits = await page.locator('dt', { hasText: 'Fingerprint' }).locator('+ dd').innerText();
      const { text, pages: count } = await readPdf(await page.pdf({ preferCSSPageSize: true }));
      expect(count).toBeGreaterThan(4);
      for (let each = 1; each <= count; each++) expect(text).toContain(`Sheet ${each} of ${count}`);
      const mark = (words: string): number => text.split(words).length - 1;
      // At every foot, and in the head of the first page.
      expect(mark(`Fingerprint ${digits}`)).toBe(count + 1);
      expect(mark('Sheet 1-1 · Revision A')).toBe(count);
      expect(text.indexOf('Superseded by revision')).toBeLessThan(text.indexOf('Cautions'));
      expect(text).not.toContain('Work it out again');
    },
  );
});

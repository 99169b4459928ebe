import { expect, it } from 'vitest';
import { visitor } from '../server/jobs/visitor.ts';
import { expectFits, expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

describeInBrowser('the PDF of a whole job in a browser', ({ visit, home }) => {
  it('is told of while it is made, without loading the page again, until it is ready', async () => {
    const someone = visitor({ home: home() });
    const job = await someone.beginJob();
    for (let i = 0; i < 3; i++) await someone.addDemo(job);
    const page = await visit(job, { viewport: { width: 360, height: 800 } });
    await page.getByRole('button', { name: 'on Letter' }).click();
    expect(await page.getByRole('progressbar').count()).toBe(1);
    await expectOpenToAll(page);
    await page.evaluate("document.body.dataset.same = 'yes'");
    await page.getByRole('link', { name: 'Take the PDF' }).waitFor();
    expect(await page.evaluate('document.body.dataset.same')).toBe('yes');
    await expectOpenToAll(page);
    await expectFits(page);
  });

  it('is told of without scripts too', async () => {
    const someone = visitor({ home: home() });
    const job = await someone.beginJob();
    await someone.addDemo(job);
    const page = await visit(job, { javaScriptEnabled: false });
    await page.getByRole('button', { name: 'on A4' }).click();
    await page.getByRole('link', { name: 'Take the PDF' }).waitFor();
  });
});

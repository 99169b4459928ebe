import { AxeBuilder } from '@axe-core/playwright';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { visitor } from '../server/jobs/visitor.ts';
import { serve, type Served } from '../server/serve.ts';
import { chromiumPath, launch, open } from './browser.ts';

let served: Served;
let browser: Browser;

describe.skipIf(chromiumPath === undefined)('the PDF of a whole job in a browser', () => {
  beforeAll(async () => {
    [served, browser] = await Promise.all([serve(), launch()]);
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });

  it('is told of while it is made, without loading the page again, until it is ready', async () => {
    const someone = visitor(served);
    const job = await someone.beginJob();
    for (let i = 0; i < 3; i++) await someone.addDemo(job);
    const { page, complaints, close } = await open(browser, { viewport: { width: 360, height: 800 } });
    await page.goto(served.home + job);
    await page.getByRole('button', { name: 'on Letter' }).click();
    expect(await page.getByRole('progressbar').count()).toBe(1);
    const going = await new AxeBuilder({ page }).analyze();
    await page.evaluate("document.body.dataset.same = 'yes'");
    await page.getByRole('link', { name: 'Take the PDF' }).waitFor();
    expect(await page.evaluate('document.body.dataset.same')).toBe('yes');
    const ready = await new AxeBuilder({ page }).analyze();
    for (const { violations } of [going, ready]) expect(violations.map(({ id }) => id)).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(360);
    expect(complaints).toEqual([]);
    await close();
  });

  it('is told of without scripts too', async () => {
    const someone = visitor(served);
    const job = await someone.beginJob();
    await someone.addDemo(job);
    const { page, close } = await open(browser, { javaScriptEnabled: false });
    await page.goto(served.home + job);
    await page.getByRole('button', { name: 'on A4' }).click();
    await page.getByRole('link', { name: 'Take the PDF' }).waitFor();
    await close();
  });
});

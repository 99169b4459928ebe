import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { visitor } from '../server/jobs/visitor.ts';
import { serve, type Served } from '../server/serve.ts';
import { chromiumPath, launch, open, type Opened } from './browser.ts';

let served: Served;
let browser: Browser;
let opened: Opened | undefined;
let job = '';
let check = '';

const visit = async (path: string, options: Parameters<typeof open>[1] = {}): Promise<Page> => {
  opened = await open(browser, options);
  await opened.page.goto(served.home + path);
  return opened.page;
};

describe.skipIf(chromiumPath === undefined)('the pages of jobs in a browser', () => {
  beforeAll(async () => {
    [served, browser] = await Promise.all([serve(), launch()]);
    const someone = visitor(served);
    const long = 'Lengthyhousename'.repeat(6);
    job = await someone.beginJob({
      name: long,
      client: 'A. Client',
      address: '3 Long Lane',
      notes: 'Mind\nthe cat',
    });
    check = await someone.addDemo(job);
    await someone.send(`${check}/copy`);
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  afterEach(async () => {
    const complaints = opened?.complaints ?? [];
    await opened?.close();
    opened = undefined;
    expect(complaints).toEqual([]);
    expect(served.faults).toEqual([]);
  });

  const pages: readonly [string, () => string][] = [
    ['the list', () => '/'],
    ['a new job', () => '/jobs/new'],
    ['a job', () => job],
    ['a check', () => check],
    ['its history', () => `${check}/history`],
  ];

  it.each(pages)('%s fits phone and desk and shuts nobody out', async (_, path) => {
    const page = await visit(path(), { viewport: { width: 1440, height: 800 } });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(1440);
    await page.setViewportSize({ width: 360, height: 800 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(360);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });

  it('a job is begun by its form, and a check in it by a button', async () => {
    const page = await visit('/jobs/new');
    await page.locator('#name').fill('By hand');
    await page.locator('button.go').click();
    await page.locator('h1', { hasText: 'By hand' }).waitFor();
    await page.locator('a', { hasText: 'Change its words' }).click();
    await page.locator('#client').pressSequentially('A. Client');
    await page.locator('[name="version"][value="2"]').waitFor({ state: 'attached' });
    await page.locator('#reference').fill('K-17');
    await page.locator('button.go').click();
    await page.locator('dd', { hasText: 'K-17' }).waitFor();
    await page.locator('#from').selectOption('wall-fixing');
    await page.locator('button.go').click();
    await page.locator('#verdict').waitFor();
    expect(page.url()).toMatch(/\/jobs\/[0-9a-f]+\/checks\/[0-9a-f]+$/);
  });

  it('a check saves itself while it is written, again and again, and the page stays where it is', async () => {
    const page = await visit(check);
    const address = page.url();
    for (const [length, base] of [
      ['95 in', '2'],
      ['94 in', '3'],
    ]) {
      await page.locator('[name="board.length"]').fill(length ?? '');
      await page.locator(`[name="save.base"][value="${base}"]`).waitFor({ state: 'attached' });
      expect(await page.locator('.kept').textContent()).toMatch(/^Saved \d\d:\d\d/);
    }
    await page.locator('button[id="add:loads"]').first().click();
    await page.locator('[name="loads.3.amount"]').waitFor();
    expect(page.url()).toBe(address);
    await page.reload();
    expect(await page.locator('[name="board.length"]').inputValue()).toBe('94 in');
    expect(await page.locator('[name="loads.3.amount"]').count()).toBe(1);
  });

  it('of two windows on one check, the second is told and can save over or give way', async () => {
    const [first, second] = [await open(browser), await open(browser)];
    for (const { page } of [first, second]) await page.goto(served.home + check);
    await first.page.locator('[name="board.length"]').fill('93 in');
    await first.page.locator('.kept', { hasText: 'Saved' }).waitFor();
    await first.page.waitForFunction(`document.querySelector('[name="save.base"]').value !== ''`);
    await first.page.waitForTimeout(1500);
    await second.page.locator('[name="board.length"]').fill('92 in');
    await second.page.locator('.not-kept').waitFor();
    await second.page.locator('button[name="save.over"]').click();
    await second.page.locator('.kept:not(.not-kept)').waitFor();
    await second.page.reload();
    expect(await second.page.locator('[name="board.length"]').inputValue()).toBe('92 in');
    await Promise.all([first.close(), second.close()]);
  });
});

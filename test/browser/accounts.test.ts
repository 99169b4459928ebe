import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { letIn, password, site } from '../server/accounts/office.ts';
import { serve, type Served } from '../server/serve.ts';
import { chromiumPath, launch, open, type Opened } from './browser.ts';
import { expectFits, expectOpenToAll } from './sound-page.ts';

let served: Served;
let browser: Browser;
let opened: Opened;
let page: Page;

async function isSound(): Promise<void> {
  await expectFits(page);
  await expectOpenToAll(page);
}

describe.skipIf(chromiumPath === undefined)('an office in a browser', () => {
  beforeAll(async () => {
    [served, browser] = await Promise.all([serve(site), launch()]);
    await letIn(served.store, 'here', 'owner', 'O. Wner');
    opened = await open(browser);
    page = opened.page;
  });
  afterAll(async () => {
    await opened.close();
    await browser.close();
    await served.close();
  });

  it('signs in, lets somebody in, shows a job by a link, and is told when it is signed out while writing', async () => {
    await page.goto(`${served.home}/jobs/new`);
    await isSound();
    await page.locator('#name').fill('OWner@here.example');
    await page.locator('#password').fill(password);
    await page.locator('button.go').click();
    await page.locator('#client').waitFor();
    await page.locator('#name').fill('House by the mill');
    await page.locator('button.go').click();
    await page.locator('#from').selectOption('demo');
    await page.locator('button.go').click();
    await page.locator('#verdict').waitFor();
    const check = page.url();

    await page.goto(`${served.home}/people`);
    await page.locator('#name').fill('A. Prentice');
    await page.locator('#sign-in').fill('a.prentice.with.a.long.name.before.it@here.example');
    await page.locator('button.go').click();
    await page.locator('.notice code').first().waitFor();
    await isSound();
    await page.goto(`${served.home}/account`);
    await isSound();

    await page.goto(`${check.replace(/\/checks.*/, '')}/links`);
    await page.locator('#label').fill('A. Client');
    await page.locator('button.go').click();
    const link = (await page.locator('code.link').textContent()) ?? '';
    await isSound();
    const other = await open(browser);
    await other.page.goto(link.replace(site.origin, served.home));
    await other.page.locator('table a').click();
    await other.page.locator('.sheet').waitFor();
    await other.close();

    await page.goto(check);
    await page.context().clearCookies();
    await page.locator('[name="board.length"]').fill('95 in');
    await page.locator('#signed-out').waitFor();
    expect(await page.locator('[name="board.length"]').inputValue()).toBe('95 in');
    expect(served.faults).toEqual([]);
    expect(opened.complaints.filter((each) => !each.includes('401'))).toEqual([]);
  });
});

import { beforeAll, expect, it } from 'vitest';
import { visitor } from '../server/jobs/visitor.ts';
import { expectFits, expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

describeInBrowser('the pages of jobs in a browser', ({ visit, home }) => {
  let job = '';
  let check = '';
  beforeAll(async () => {
    const someone = visitor({ home: home() });
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

  const pages: readonly [string, () => string][] = [
    ['the list', () => '/'],
    ['a new job', () => '/jobs/new'],
    ['a job', () => job],
    ['a check', () => check],
    ['its history', () => `${check}/history`],
  ];

  it.each(pages)('%s fits phone and desk and shuts nobody out', async (_, path) => {
    const page = await visit(path());
    await expectFits(page);
    await expectOpenToAll(page);
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
      expect(await page.locator('.kept').textContent()).toMatch(/^Saved at \d\d:\d\d/);
    }
    await page.locator('button[id="add:loads"]').first().click();
    await page.locator('[name="loads.3.amount"]').waitFor();
    expect(page.url()).toBe(address);
    await page.reload();
    expect(await page.locator('[name="board.length"]').inputValue()).toBe('94 in');
    expect(await page.locator('[name="loads.3.amount"]').count()).toBe(1);
  });

  it('what is fetched beside a check comes in a job too, and nothing of its save is in an address', async () => {
    const page = await visit(check);
    const asked: string[] = [];
    page.on('request', (request) => asked.push(`${request.method()} ${request.url().replace(home(), '')}`));
    const base = Number(await page.locator('[name="save.base"]').inputValue());
    await page.locator('[name="loads.0.amount"]').fill('17 lbf/ft');
    await page.locator(`[name="save.base"][value="${base + 1}"]`).waitFor({ state: 'attached' });
    await page.locator('[id="check:bending"] > summary').click();
    await page.locator('[id="check:bending"] .steps > li').first().waitFor();
    await page.locator('[id="more:layouts"] > summary').click();
    await page.locator('#layouts .strip').first().waitFor();
    const fetched = asked.filter((each) => /^GET \/(?:working|layouts)\?/.test(each));
    expect(new Set(fetched.map((each) => each.split('?')[0]))).toEqual(
      new Set(['GET /working', 'GET /layouts']),
    );
    for (const address of fetched) expect(address).not.toMatch(/[?&](?:token|save\.)/);
  });

  it('a check that is left and come back to shows what was kept, in its choices too', async () => {
    const page = await visit(check);
    const duration = page.locator('[name="loads.0.duration"]');
    const depth = page.locator('[name="board.depth"]');
    const change = async (words: string, chosen: string): Promise<void> => {
      const base = Number(await page.locator('[name="save.base"]').inputValue());
      await depth.fill(words);
      await page.locator(`[name="save.base"][value="${base + 1}"]`).waitFor({ state: 'attached' });
      await duration.selectOption(chosen);
      await page.locator(`[name="save.base"][value="${base + 2}"]`).waitFor({ state: 'attached' });
    };
    await change('9 in', 'ten-years');
    await page.goto(`${home()}${check}/history`);
    await page.goto(home() + check);
    await change('8 in', 'two-months');
    await page.goBack();
    await page.goBack();
    await page.locator('#verdict').waitFor();
    expect([await depth.inputValue(), await duration.inputValue()]).toEqual(['8 in', 'two-months']);
    await page.goForward();
    await page.goForward();
    await page.locator('#verdict').waitFor();
    expect([await depth.inputValue(), await duration.inputValue()]).toEqual(['8 in', 'two-months']);
    expect(await page.locator('h1').count()).toBe(1);
  });

  it('of two windows on one check, the second is told and can save over or give way', async () => {
    const [first, second] = [await visit(check), await visit(check)];
    await first.locator('[name="board.length"]').fill('93 in');
    await first.locator('.kept', { hasText: 'Saved' }).waitFor();
    await first.waitForFunction(`document.querySelector('[name="save.base"]').value !== ''`);
    await first.waitForTimeout(1500);
    await second.locator('[name="board.length"]').fill('92 in');
    await second.locator('.not-kept').waitFor();
    await second.setViewportSize({ width: 360, height: 740 });
    const unsaved = second.locator('.glance a', { hasText: 'Not saved.' });
    const { y = 740, height = 0 } = (await unsaved.boundingBox()) ?? {};
    expect(y + height).toBeLessThanOrEqual(740);
    await unsaved.click();
    expect(await second.evaluate('document.activeElement.id')).toBe('not-saved');
    await second.locator('button[name="save.over"]').click();
    await second.locator('.kept:not(.not-kept)').waitFor();
    expect(await unsaved.count()).toBe(0);
    await second.reload();
    expect(await second.locator('[name="board.length"]').inputValue()).toBe('92 in');
  });
});

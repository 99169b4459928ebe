import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shelf, shelfAddress } from '../server/fixtures/shelf.ts';
import { addressOf } from '../../server/check/addresses.ts';
import { studShelf } from '../calc/layout/documents.ts';
import { eventually, field } from './check-page.ts';
import { expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

/** A board too thin for its brackets; its length takes the unit printed beside the field. */
const thinAddress = addressOf(
  studShelf({
    board: { thickness: '1 in' },
    brackets: { capacity: { basis: 'rated', allowable: '900 lbf', at: '4 in' } },
  }),
).replace('length=96+in', 'length=96');

const button = (page: Page, doing: string) => page.locator(`button[value="${doing}"]`);
const used = (page: Page): Promise<string> => page.locator('.checks').innerText();
const focused = (page: Page): Promise<string | null> => page.locator(':focus').getAttribute('id');
const setOpen = (page: Page, id: string, isOpen: boolean): Promise<unknown> =>
  page.evaluate(`document.getElementById(${JSON.stringify(id)}).open = ${isOpen}`);

/** Does something and waits for the answer to it. */
async function answered(page: Page, act: () => Promise<unknown>): Promise<void> {
  const answer = page.waitForResponse((response) => response.url().includes('/check'));
  await act();
  await answer;
  await eventually(() => page.locator('.htmx-request').count()).toBe(0);
}

/** Holds back the first request for an answer until it is released; the later ones pass. */
async function holdFirst(
  page: Page,
): Promise<{ readonly isHeld: Promise<void>; readonly release: () => void }> {
  let [hold, release] = [(): void => undefined, (): void => undefined];
  const isHeld = new Promise<void>((resolve) => (hold = resolve));
  const isReleased = new Promise<void>((resolve) => (release = resolve));
  let isFirst = true;
  await page.route(/\/check\?/, async (route) => {
    if (isFirst) {
      isFirst = false;
      hold();
      await isReleased;
    }
    await route.continue().catch(() => undefined);
  });
  return { isHeld, release: () => release() };
}

describeInBrowser('the check page in a browser', ({ visit, home, forgiveComplaints }) => {
  it('answers while someone types, and leaves the field alone', async () => {
    const page = await visit(shelfAddress);
    const before = await used(page);
    const length = field(page, 'loads.0.amount');
    await length.fill('');
    await answered(page, () => length.pressSequentially('60 lbf/ft', { delay: 15 }));
    await eventually(() => used(page)).not.toBe(before);
    expect(await length.inputValue()).toBe('60 lbf/ft');
    expect(await focused(page)).toBe('loads.0.amount');
    expect(await page.evaluate('document.activeElement.selectionStart')).toBe(9);
    expect(page.url()).toContain('loads.0.amount=60+lbf/ft');
  });

  it('fetches the lines of working of a check as it is opened, and sends them along while it is', async () => {
    const page = await visit(shelfAddress);
    const lines = (id: string) => page.locator(`[id="check:${id}"] .steps > li`);
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    const change = (amount: string) =>
      answered(page, async () => {
        await field(page, 'loads.0.amount').fill(amount);
        await field(page, 'loads.0.amount').press('Tab');
      });
    const onPage = await lines('bending').count();
    expect(onPage).toBeGreaterThan(0);
    await change('21 lbf/ft');
    await eventually(() => lines('bending').count()).toBe(0);
    await page.locator('[id="check:bending"] > summary').click();
    await eventually(() => lines('bending').count()).toBe(onPage);
    expect(asked.filter((path) => path.startsWith('/working/'))).toEqual(['/working/bending']);
    const before = await lines('bending').allInnerTexts();
    await change('42 lbf/ft');
    await eventually(() => lines('bending').allInnerTexts()).not.toEqual(before);
    expect(await lines('bending').count()).toBe(onPage);
    expect(await lines('shear').count()).toBe(0);
    expect(asked.filter((path) => path.startsWith('/working/'))).toEqual(['/working/bending']);
  });

  it('says what was understood once the field is left, and keeps the text', async () => {
    const page = await visit(shelfAddress);
    const length = field(page, 'board.length');
    await length.fill('100.5');
    await answered(page, () => length.press('Tab'));
    await eventually(() => page.locator('[id="note:board.length"]').innerText()).toBe('= 8 ft 4-1/2 in');
    expect(await length.inputValue()).toBe('100.5');
  });

  it('says beside the field and over the answer what is wrong, and leads to it', async () => {
    const page = await visit(shelfAddress);
    await setOpen(page, 'more:nosing', true);
    await field(page, 'board.nosing.height').fill('tall');
    await answered(page, () => field(page, 'board.nosing.height').press('Tab'));
    const error = page.locator('[id="error:board.nosing.height"]');
    await eventually(() => error.innerText()).toContain('It takes a length');
    expect(await field(page, 'board.nosing.height').getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('#used').count()).toBe(0);
    await setOpen(page, 'more:nosing', false);
    await page.locator('.problems a').first().click();
    expect(await focused(page)).toBe('board.nosing.height');
    await field(page, 'board.nosing.height').fill('2 in');
    await answered(page, () => field(page, 'board.nosing.height').press('Tab'));
    await eventually(() => page.locator('#used').count()).toBe(1);
    expect(await page.locator('[id="said:nosing"]').innerText()).toBe('2 in high, 3/4 in thick.');
    expect(await error.innerText()).toBe('');
    expect(await field(page, 'board.nosing.height').getAttribute('aria-invalid')).toBeNull();
  });

  it('adds, moves and removes rows from the keyboard alone', async () => {
    const page = await visit(shelfAddress);
    await button(page, 'add:brackets.positions').focus();
    await answered(page, () => page.keyboard.press('Enter'));
    await eventually(() => focused(page)).toBe('brackets.positions.4');
    expect(await field(page, 'brackets.positions.4').inputValue()).toBe('48 in');
    await button(page, 'up:brackets.positions.4').focus();
    await answered(page, () => page.keyboard.press('Enter'));
    await eventually(() => field(page, 'brackets.positions.3').inputValue()).toBe('48 in');
    expect(await focused(page)).toBe('up:brackets.positions.3');
    await button(page, 'remove:brackets.positions.3').focus();
    await answered(page, () => page.keyboard.press('Enter'));
    await eventually(() => field(page, 'brackets.positions.4').count()).toBe(0);
    expect(await focused(page)).toBe('remove:brackets.positions.3');
  });

  it('never lets an old answer win, nor a new one wait for it', async () => {
    const page = await visit(shelfAddress);
    const held = await holdFirst(page);
    const amount = field(page, 'loads.2.amount');
    await amount.fill('5000 lbf');
    await held.isHeld;
    await amount.fill('1 lbf');
    await eventually(() => page.url()).toContain('loads.2.amount=1+lbf');
    const right = await used(page);
    held.release();
    await page.waitForTimeout(800);
    expect(await used(page)).toBe(right);
    expect(page.url()).toContain('loads.2.amount=1+lbf');
  });

  it('loses nothing that is typed while a new form is on its way', async () => {
    const page = await visit(shelfAddress);
    const held = await holdFirst(page);
    await field(page, 'brackets.hold').selectOption('resting');
    await held.isHeld;
    await field(page, 'title').fill('Typed meanwhile');
    held.release();
    await eventually(() => page.locator('[id="more:board-screws"]').count()).toBe(0);
    expect(await field(page, 'title').inputValue()).toBe('Typed meanwhile');
    expect(page.url()).toContain('title=Typed+meanwhile');
  });

  it('takes a change back, however it was typed, and again forward', async () => {
    const page = await visit(shelfAddress);
    const length = field(page, 'board.length');
    await length.fill('10');
    await eventually(() => page.url()).toContain('board.length=10&');
    await length.fill('100');
    await eventually(() => page.url()).toContain('board.length=100&');
    await answered(page, () => length.press('Tab'));
    await answered(page, () => field(page, 'brackets.hold').selectOption('resting'));
    await eventually(() => page.url()).toContain('hold=resting');
    await page.goBack();
    await eventually(() => field(page, 'brackets.hold').inputValue()).toBe('screwed');
    expect(await length.inputValue()).toBe('100');
    await page.goBack();
    await eventually(() => length.inputValue()).toBe('96 in');
    expect(page.url()).toBe(home() + shelfAddress);
    await page.goForward();
    await eventually(() => length.inputValue()).toBe('100');
  });

  it('says so when no answer comes, and marks the old one', async () => {
    const page = await visit(shelfAddress);
    await page.route(/\/check\?/, (route) => route.abort());
    await field(page, 'board.length').fill('90 in');
    await eventually(() => page.locator('#lost').isVisible()).toBe(true);
    expect(await page.locator('#answer').getAttribute('class')).toContain('stale');
    await page.unroute(/\/check\?/);
    await answered(page, () => field(page, 'board.length').fill('91 in'));
    await eventually(() => page.locator('#lost').isVisible()).toBe(false);
    forgiveComplaints();
  });

  it('says so where a search beside the answer comes to nothing, and tries again', async () => {
    const page = await visit(shelfAddress);
    await page.route('**/layouts?**', (route) => route.fulfill({ status: 503, body: 'busy' }));
    await page.route('**/reach?**', (route) => route.abort());
    for (const search of ['layouts', 'reach']) {
      await page.locator(`[id="more:${search}"] summary`).first().click();
      await eventually(() => page.locator(`#${search}`).innerText()).toContain('No answer came');
    }
    await field(page, 'board.length').focus();
    await page.unroute('**/layouts?**');
    await page.locator('#layouts button').focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('#layouts').innerText()).toContain('It can take half a minute');
    expect(await page.evaluate('document.activeElement.parentElement.id')).toBe('more:layouts');
    await eventually(() => page.locator('#layouts .strip').count()).toBeGreaterThan(0);
    await page.locator('#reach button').click();
    await eventually(() => page.locator('#reach').innerText()).toContain('No answer came');
    forgiveComplaints();
  });

  it('keeps open what was opened', async () => {
    const page = await visit(shelfAddress);
    await page.locator('.check').first().locator('summary').click();
    const id = await page.locator('.check').first().getAttribute('id');
    await answered(page, () => field(page, 'board.depth').fill('9 in'));
    await eventually(() => page.url()).toContain('board.depth=9+in');
    expect(await page.locator(`[id="${id}"]`).getAttribute('open')).toBe('');
  });

  it('switches the units of what is shown, never a value', async () => {
    const page = await visit(shelfAddress);
    await field(page, 'board.length').fill('96');
    await answered(page, () => field(page, 'board.length').press('Tab'));
    const before = await page.locator('.check-used').allInnerTexts();
    await field(page, 'units').focus();
    await answered(page, () => field(page, 'units').selectOption('metric'));
    await eventually(() => page.locator('[id="unit:board.length"]').innerText()).toBe('mm');
    expect(await field(page, 'board.length').inputValue()).toBe('96 in');
    expect(await page.locator('[id="note:board.length"]').innerText()).toBe('= 2438.4 mm');
    expect(await page.locator('.check-used').allInnerTexts()).toEqual(before);
    expect(await focused(page)).toBe('units');
  });

  it('finds a board by a common name and takes it, or none', async () => {
    const page = await visit(shelfAddress);
    const material = field(page, 'board.material');
    await material.fill('');
    await material.pressSequentially('red oak', { delay: 10 });
    const first = page.locator('#boards .board').first();
    await eventually(() => first.innerText()).toMatch(/red oak[\s\S]*stiffness/i);
    await answered(page, () => first.getByRole('button').click());
    await eventually(() => material.inputValue()).toMatch(/red oak/i);
    expect(await field(page, 'board.basis').inputValue()).toBe('clear-wood');
    await setOpen(page, 'more:boards', true);
    await answered(page, () => page.locator('button[value="board:="]').click());
    await eventually(() => material.inputValue()).toBe('');
    expect(await page.locator('#used').count()).toBe(1);
  });

  it('weighs what stands on the shelf in the open', async () => {
    const page = await visit(shelfAddress);
    await answered(page, () => field(page, 'loads.0.by').selectOption('things'));
    await eventually(() => field(page, 'loads.0.things.0.thing').count()).toBe(1);
    await field(page, 'loads.0.things.0.count').fill('24');
    await answered(page, () => field(page, 'loads.0.things.0.count').press('Tab'));
    await eventually(() => page.locator('[id="note:loads.0.things.0:row"]').innerText()).toMatch(
      /^24 × .* lb = .* lb$/,
    );
    await setOpen(page, 'more:loads.0.things.0', true);
    await answered(page, () => field(page, 'loads.0.things.0.by').selectOption('weighed'));
    await field(page, 'loads.0.things.0.each').fill('2');
    await answered(page, () => field(page, 'loads.0.things.0.each').press('Tab'));
    await eventually(() => page.locator('[id="note:loads.0.things.0:row"]').innerText()).toBe(
      '24 × 2 lb = 48 lb',
    );
  });

  it('makes a change that was offered with one click, and takes it back', async () => {
    const page = await visit(thinAddress);
    await page.locator('[id="more:layouts"] summary').first().click();
    await eventually(() => page.locator('#layouts .strip').count()).toBeGreaterThan(1);
    await page.locator('[id="more:reach"] summary').first().click();
    await eventually(() => page.locator('#reach .limit-value').count()).toBe(3);
    await expectOpenToAll(page);
    const offered = page.locator('.ways-out .change').filter({ hasText: 'Holds' }).first();
    await answered(page, () => offered.getByRole('button').click());
    await eventually(() => page.locator('#verdict h2').innerText()).toBe('Holds');
    expect(await focused(page)).toBe('verdict');
    expect(await field(page, 'board.length').inputValue()).toBe('96');
    await page.goBack();
    await eventually(() => page.locator('#verdict h2').innerText()).toBe('Does not hold');
  });

  it('makes a change and shows layouts without a script too', async () => {
    const page = await visit(thinAddress, { javaScriptEnabled: false });
    const offered = page.locator('.ways-out .change').filter({ hasText: 'Holds' }).first();
    await offered.getByRole('button').click();
    await page.waitForURL(/#verdict$/);
    expect(await page.locator('#verdict h2').innerText()).toBe('Holds');
    await page.locator('[id="more:layouts"] summary').first().click();
    await page.getByRole('button', { name: 'Try layouts' }).click();
    await page.waitForURL('**/layouts?**');
    await page
      .getByRole('link', { name: /^Use this layout/ })
      .first()
      .click();
    await page.waitForURL('**/check?**');
    expect(await page.locator('#verdict h2').innerText()).toBe('Holds');
  });

  it('opens the same check from its link and from its file', async () => {
    const page = await visit('/');
    await page.locator('#document').setInputFiles({
      name: 'shelf.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(shelf)),
    });
    await page.getByRole('button', { name: 'Open from disk' }).click();
    await page.waitForURL('**/check?**');
    expect(page.url()).toBe(home() + shelfAddress);
    const link = await page.getByRole('link', { name: 'Link to this check' }).getAttribute('href');
    const shown = await used(page);
    await page.goto(home() + (link ?? ''));
    expect(await used(page)).toBe(shown);
  });

  it('works without a script: a button sends the form, the rows come and go', async () => {
    const page = await visit(shelfAddress, { javaScriptEnabled: false });
    const verdict = await page.locator('.checks').innerText();
    await field(page, 'loads.0.amount').fill('80');
    await field(page, 'title').press('Enter');
    await page.waitForURL(/amount=80/);
    expect(await page.locator('.checks').innerText()).not.toBe(verdict);
    await button(page, 'remove:loads.1').click();
    await page.waitForURL((url) => !url.search.includes('Stock'));
    await field(page, 'board.length').fill('long');
    await page.getByRole('button', { name: 'Check' }).first().click();
    await page.waitForURL(/length=long/);
    expect(await field(page, 'board.length').inputValue()).toBe('long');
    expect(await page.locator('.problems').innerText()).toContain('Length');
    forgiveComplaints();
  });
});

import { expect, it } from 'vitest';
import { shelfAddress } from '../server/fixtures/shelf.ts';
import { eventually, field, openAll } from './check-page.ts';
import { expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

describeInBrowser('the check page as it is seen', ({ visit, home }) => {
  it.each([320, 360, 768, 1440])('fits a screen of %i px, whatever is open', async (width) => {
    const things = 'loads.0.by=things&loads.0.things.0.thing=jug&loads.0.things.0.count=3';
    const page = await visit(`${shelfAddress}&${things}`, { viewport: { width, height: 800 } });
    const overflow = (): Promise<number> =>
      page.evaluate('document.documentElement.scrollWidth - innerWidth');
    expect(await overflow()).toBeLessThanOrEqual(0);
    await openAll(page);
    expect(await overflow()).toBeLessThanOrEqual(0);
    const form = await page.locator('#form').boundingBox();
    for (const row of await page.locator('.row, .row button').all()) {
      const box = await row.boundingBox();
      expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual((form?.x ?? 0) + (form?.width ?? 0) + 1);
    }
    await page.goto(`${home()}/`);
    expect(await overflow()).toBeLessThanOrEqual(0);
  });

  it('keeps verdict and most used check in sight on a phone', async () => {
    const page = await visit(shelfAddress, { viewport: { width: 360, height: 740 } });
    const glance = page.locator('.glance');
    expect(await glance.isVisible()).toBe(true);
    expect(await glance.innerText()).toMatch(/\d+\s?%/);
    const word = await page.locator('#verdict h2').innerText();
    expect(await glance.innerText()).toContain(word);
    const cut = await page.evaluate<string[]>(`[...document.querySelectorAll('.glance span')]
      .filter((each) => each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1)
      .map((each) => each.textContent)`);
    expect(cut).toEqual([]);
    await glance.locator('a').click();
    await eventually(async () => (await page.locator('#verdict').boundingBox())?.y).toBeLessThan(740);
  });

  it('has targets of 24 px and more', async () => {
    const page = await visit(shelfAddress, { viewport: { width: 360, height: 740 } });
    const targets = page.locator(
      'button, input:not([type=hidden]), select, summary, .link-list a, .glance a',
    );
    const boxes = await Promise.all((await targets.all()).map((target) => target.boundingBox()));
    const heights = boxes.flatMap((box) => (box === null || box.height === 0 ? [] : [box.height]));
    expect(heights.length).toBeGreaterThan(60);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(24);
  });

  it.each([360, 1440])(
    'has nothing that shuts anyone out at %i px',
    async (width) => {
      const page = await visit(shelfAddress, { viewport: { width, height: 800 }, reducedMotion: 'reduce' });
      await openAll(page);
      await expectOpenToAll(page);
      for (const path of ['/', `${shelfAddress}&board.length=long`]) {
        await page.goto(home() + path);
        await expectOpenToAll(page);
      }
    },
    240_000,
  );

  it.each([360, 1440])(
    'can be read in the dark at %i px',
    async (width) => {
      const page = await visit(shelfAddress, { colorScheme: 'dark', viewport: { width, height: 800 } });
      for (const path of ['/', `${shelfAddress}&board.length=long`, shelfAddress]) {
        await page.goto(home() + path);
        await expectOpenToAll(page, ['color-contrast']);
      }
    },
    240_000,
  );

  it.each([360, 1440])(
    'takes a row in the order it is seen in at %i px: its field, then its buttons',
    async (width) => {
      const page = await visit(shelfAddress, { viewport: { width, height: 800 } });
      const rows = await page.locator('.narrow .row').all();
      expect(rows.length).toBeGreaterThan(5);
      for (const row of rows) {
        const [first] = await row.locator('input, button').all();
        expect(await first?.getAttribute('type')).toBe('text');
        const [field, note, buttons] = await Promise.all(
          ['input', '.row-note', '.row-buttons'].map((each) => row.locator(each).boundingBox()),
        );
        if (width === 360 && note) expect(note.y).toBeLessThan(buttons?.y ?? 0);
        expect((buttons?.x ?? 0) > (field?.x ?? 0) || (buttons?.y ?? 0) > (field?.y ?? 0)).toBe(true);
      }
    },
  );

  it('gives choices and names the whole width of a phone, and errors too', async () => {
    const page = await visit(`${shelfAddress}&board.length=long`, { viewport: { width: 360, height: 800 } });
    const section = await page.locator('.section').first().boundingBox();
    for (const field of ['element', 'title', 'board.material', 'brackets.hold']) {
      const box = await page.locator(`.box:has([id="${field}"])`).boundingBox();
      expect(box?.width, field).toBeGreaterThan((section?.width ?? 0) * 0.95);
    }
    const error = await page.locator('[id="error:board.length"]').boundingBox();
    expect(error?.width).toBeGreaterThan((section?.width ?? 0) * 0.95);
  });

  it('leaves room for a ring of focus beside whatever is in the answer', async () => {
    const page = await visit(shelfAddress);
    const answer = await page.locator('#answer').boundingBox();
    const inside = await page.locator('#answer summary, #answer a, #answer [tabindex="0"]').all();
    const lefts = await Promise.all(inside.map(async (each) => (await each.boundingBox())?.x));
    const seen = lefts.flatMap((left) => (left === undefined ? [] : [left]));
    expect(seen.length).toBeGreaterThan(15);
    // 3 px of ring, 2 px off its element (paper.css).
    expect(Math.min(...seen) - (answer?.x ?? 0)).toBeGreaterThanOrEqual(5);
  });

  it('parts no number of the fixings from its unit on a phone', async () => {
    const page = await visit(shelfAddress, { viewport: { width: 360, height: 800 } });
    const heights = await page.evaluate<number[]>(
      `[...document.querySelectorAll('.fixings-table tbody td:not(:last-child)')].map((cell) => {
        const range = document.createRange();
        range.selectNodeContents(cell);
        return new Set([...range.getClientRects()].map((box) => Math.round(box.top))).size;
      })`,
    );
    expect(heights.length).toBeGreaterThan(8);
    expect(Math.max(...heights)).toBe(1);
  });

  it('draws the section no wider than it is drawn for', async () => {
    const page = await visit(shelfAddress);
    await page.locator('[id="more:section"] > summary').click();
    const box = await page.locator('[id="more:section"] .figure').boundingBox();
    expect(box?.width).toBeLessThanOrEqual(480);
  });

  it('prints the answer without the form', async () => {
    const page = await visit(shelfAddress);
    await page.emulateMedia({ media: 'print' });
    expect(await field(page, 'board.length').isVisible()).toBe(false);
    expect(await page.locator('#verdict').isVisible()).toBe(true);
    expect(await page.locator('.cautions').isVisible()).toBe(true);
    expect(await page.locator('.glance').isVisible()).toBe(false);
  });
});

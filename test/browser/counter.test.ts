import { expect, it } from 'vitest';
import { startOverhangAddress } from '../../server/check/addresses.ts';
import { expectOpenToAll } from './sound-page.ts';
import { describeInBrowser } from './visitor.ts';

describeInBrowser('the page of a counter in a browser', ({ visit }) => {
  it.each([320, 1440])(
    'fits a screen of %i px and has nothing that shuts anyone out',
    async (width) => {
      const page = await visit(startOverhangAddress, { viewport: { width, height: 800 } });
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
      await expectOpenToAll(page);
    },
    240_000,
  );

  it.each(['light', 'dark'] as const)(
    'edges labels on tones in the colour under them, in the %s',
    async (colorScheme) => {
      const page = await visit(startOverhangAddress, { colorScheme });
      const pairs = await page.evaluate<[string, string, string][]>(
        `[...document.querySelectorAll('.only-wide .drawing .clear')].map((each) => [getComputedStyle(each).stroke,
        getComputedStyle(each.closest('.figure')).backgroundColor, getComputedStyle(each).paintOrder])`,
      );
      expect(pairs.length).toBeGreaterThan(1);
      for (const [edge, ground, order] of pairs) {
        expect(edge).toBe(ground);
        // Otherwise the edge is painted over its own letters.
        expect(order).toMatch(/^stroke/);
      }
    },
  );

  it('answers a thicker top, and takes a bar as a prop with its sizes in sight', async () => {
    const page = await visit(startOverhangAddress);
    expect(await page.locator('#verdict h2').innerText()).toContain('Does not hold');
    await page.getByRole('button', { name: 'Add a prop' }).click();
    await page.locator('[name="props.0.kind"]').selectOption('flat-bar');
    await expect.poll(() => page.locator('[name="props.0.width"]').inputValue()).toBe('2 in');
    const tested = page.locator('.drawing-plan-wide .pen-outline');
    expect(await tested.count()).toBeGreaterThan(1);
    await page.locator('[name="top.thickness"]').fill('3 in');
    await expect.poll(() => page.locator('#verdict').innerText(), { timeout: 20_000 }).not.toContain('206 %');
  });
});

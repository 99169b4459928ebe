import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** A page fits a desk and a phone. */
export async function expectFits(page: Page): Promise<void> {
  for (const width of [1440, 360]) {
    await page.setViewportSize({ width, height: 800 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
  }
}

/** A page shuts nobody out, as far as axe can tell; of formulas it cannot. */
export async function expectOpenToAll(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).exclude('math').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}

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

/**
 * A page shuts nobody out, as far as axe can tell. There are no frames of another origin, so axe looks at the whole page at once,
 * which takes a third of the time.
 *
 * @param rules the only rules looked at; not given: all
 */
export async function expectOpenToAll(page: Page, rules?: string[]): Promise<void> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({
    resultTypes: ['violations'],
    ...(rules !== undefined && { runOnly: rules }),
  });
  const { violations } = await axe.analyze();
  const found = violations.map(({ id, nodes }) => [
    id,
    nodes.slice(0, 3).map(({ html }) => html.slice(0, 200)),
  ]);
  expect(found).toEqual([]);
}

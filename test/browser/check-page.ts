import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** A field of the form by its name. */
export const field = (page: Page, name: string) => page.locator(`[id="${name}"]`);

/** What comes true within a time that a busy machine keeps too. */
export const eventually = <T>(get: () => T) => expect.poll(get, { timeout: 20_000 });

/** Opens everything there is to open, and waits for what is worked out then. */
export async function openAll(page: Page): Promise<void> {
  await page.evaluate('for (const details of document.querySelectorAll("details")) details.open = true');
  await eventually(() => page.locator('#layouts .strip').count()).toBeGreaterThan(0);
  await expect.poll(() => page.locator('#reach .limit-value').count(), { timeout: 60_000 }).toBe(3);
}

import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect } from 'vitest';
import { serve, type Served } from '../server/serve.ts';
import { chromiumPath, launch, open, type Opened } from './browser.ts';

/** Whoever visits the pages of one test file. */
export interface Visitor {
  /** Opens a page of the application, its letters loaded, in a context of its own. */
  readonly visit: (path: string, options?: Parameters<typeof open>[1]) => Promise<Page>;
  readonly home: () => string;
  /** Complaints of the page that the test provoked are no fault. */
  readonly forgiveComplaints: () => void;
}

/**
 * Tests in a browser, with the application served for them: skipped where there is none. No test may leave a complaint of
 * its page or a fault of the server behind.
 */
export function describeInBrowser(name: string, tests: (visitor: Visitor) => void): void {
  describe.skipIf(chromiumPath === undefined)(name, () => {
    let served: Served;
    let browser: Browser;
    let opened: Opened | undefined;
    beforeAll(async () => {
      [served, browser] = await Promise.all([serve(), launch()]);
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
    tests({
      visit: async (path, options = {}) => {
        opened = await open(browser, options);
        await opened.page.goto(served.home + path);
        await opened.page.evaluate('document.fonts.ready');
        return opened.page;
      },
      home: () => served.home,
      forgiveComplaints: () => void opened?.complaints.splice(0),
    });
  });
}

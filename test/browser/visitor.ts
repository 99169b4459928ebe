import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect } from 'vitest';
import { serve, type Served } from '../server/serve.ts';
import { chromiumPath, launch, open, type Opened } from './browser.ts';

/** Whoever visits the pages of one test file. */
export interface Visitor {
  /** Opens a page of the application, its letters loaded, in a context of its own: one more window in the same test. */
  readonly visit: (path: string, options?: Parameters<typeof open>[1]) => Promise<Page>;
  readonly home: () => string;
  /** Complaints of its pages that the test provoked are no fault. */
  readonly forgiveComplaints: () => void;
}

/**
 * Tests in a browser, with the application served for them: skipped where there is none. No test may leave a complaint of
 * its pages or a fault of the server behind.
 */
export function describeInBrowser(name: string, tests: (visitor: Visitor) => void): void {
  describe.skipIf(chromiumPath === undefined)(name, () => {
    let served: Served;
    let browser: Browser;
    const opened: Opened[] = [];
    beforeAll(async () => {
      [served, browser] = await Promise.all([serve(), launch()]);
    });
    afterAll(async () => {
      await browser.close();
      await served.close();
    });
    afterEach(async () => {
      const windows = opened.splice(0);
      await Promise.all(windows.map(({ close }) => close()));
      expect(windows.flatMap(({ complaints }) => complaints)).toEqual([]);
      expect(served.faults).toEqual([]);
    });
    tests({
      visit: async (path, options = {}) => {
        const window = await open(browser, options);
        opened.push(window);
        await window.page.goto(served.home + path);
        await window.page.evaluate('document.fonts.ready');
        return window.page;
      },
      home: () => served.home,
      forgiveComplaints: () => opened.forEach(({ complaints }) => complaints.splice(0)),
    });
  });
}

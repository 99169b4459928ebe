import { existsSync } from 'node:fs';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';

const places = [
  process.env['CHROMIUM_PATH'],
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

/** Where the browser is; undefined where there is none, and the tests that need it are skipped. */
export const chromiumPath: string | undefined = places.find(
  (place) => place !== undefined && existsSync(place),
);

if (chromiumPath === undefined) {
  console.warn(
    'No Chromium was found (CHROMIUM_PATH, /usr/bin/chromium): the tests in a browser are skipped.',
  );
}

/** Starts the browser. It makes no calls of its own, and runs as any user. */
export function launch(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error('There is no Chromium here.');
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-quic',
    ],
  });
}

/** A page in a context of its own, and everything that went wrong in it. */
export interface Opened {
  readonly page: Page;
  readonly complaints: string[];
  readonly close: () => Promise<void>;
}

export async function open(browser: Browser, options: BrowserContextOptions = {}): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    const isRefusal = message.text().includes('status of 422');
    if (['error', 'warning'].includes(message.type()) && !isRefusal) complaints.push(message.text());
  });
  return { page, complaints, close: () => context.close() };
}

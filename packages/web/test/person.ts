import { test as base, chromium, type Browser, type Page } from '@playwright/test';
import { browserSwitches } from './browser.ts';

interface WorkerFixtures {
  readonly chrome: Browser;
}

/** A test with a page of the built site, in a browser that was unpacked once. */
export const test = base.extend<{ page: Page }, WorkerFixtures>({
  chrome: [
    async ({}, use) => {
      const executablePath = process.env['HITCHWRIGHT_CHROMIUM'];
      if (executablePath === undefined) throw new Error('invariant: globalSetup names the browser');
      const chrome = await chromium.launch({ executablePath, args: browserSwitches });
      await use(chrome);
      await chrome.close();
    },
    { scope: 'worker' },
  ],
  page: async ({ chrome }, use) => {
    const context = await chrome.newContext({ viewport: { width: 1440, height: 900 } });
    await use(await context.newPage());
    await context.close();
  },
});

/** The address of the site, with a fragment. */
export function site(fragment = ''): string {
  const address = process.env['HITCHWRIGHT_SITE'];
  if (address === undefined) throw new Error('invariant: globalSetup serves the site');
  return fragment === '' ? address : `${address}#${fragment}`;
}

export { expect } from '@playwright/test';

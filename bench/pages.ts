// Search in the list of records as it is typed, in a real browser over the real server: `npx tsx bench/pages.ts [records]`. Timed from a key until the lines on the
// page are those of what was typed.
import { chromium, type Page } from '@playwright/test';
import { openServer } from '@hitchwright/server';
import { openStore } from '@hitchwright/store';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { browserPath, browserSwitches } from '../packages/web/test/browser.ts';
import { medianOf } from './timing.ts';

const records = Number(process.argv[2] ?? 10_000);
const pages = 'packages/web/dist';
if (!existsSync(join(pages, 'index.html')))
  throw new Error('Build the pages first: npm run build --workspace @hitchwright/web');
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-bench-'));
let given = 0;
const ids = (): string => String((given += 1)).padStart(9, '0');
const clock = (): string => new Date().toISOString();
const store = await openStore({ url: `sqlite:${join(folder, 'yard.db')}`, clock, ids });
const server = await openServer({ store, site: pages, folder, sample: null, clock, ids });
const browser = await chromium.launch({ executablePath: await browserPath(), args: browserSwitches });

/** Names of made-up kinds with a number that is found nowhere else. */
const kinds = ['rake', 'plough', 'mower', 'blade', 'spear', 'tiller', 'auger'];
const nameAt = (i: number): string => `Gable ${kinds[i % kinds.length] ?? ''} ${String(i).padStart(6, '0')}`;

/** From the last letter of what is typed until the first line is the one that is looked for [ms]. */
function timed(page: Page, typed: string, found: string): Promise<number> {
  return page.evaluate(
    async ([text, wanted]) => {
      const field = document.querySelector<HTMLInputElement>('.records-search input');
      const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
      const started = performance.now();
      setter?.call(field, text);
      field?.dispatchEvent(new Event('input', { bubbles: true }));
      while (document.querySelector('.record-name')?.textContent !== wanted)
        await new Promise((resolve) => requestAnimationFrame(resolve));
      return performance.now() - started;
    },
    [typed, found] as const,
  );
}

try {
  for (let start = 0; start < records; start += 10_000)
    await store.imports.write(
      { who: 'bench' },
      {
        source: 'bench',
        rows: Array.from({ length: Math.min(10_000, records - start) }, (_, i) => ({
          kind: 'implement' as const,
          name: nameAt(start + i),
          fields: { category: '1' },
          readings: [],
        })),
      },
    );
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(`${server.address}#records`);
  await page.locator('.record-name').first().waitFor();
  const times: number[] = [];
  for (let i = 0; i < 21; i += 1) {
    const name = nameAt(Math.floor((i * records) / 21));
    times.push(await timed(page, name.slice(-9), name));
  }
  console.log(
    `search among ${records} on the page, from the key to the lines: median ${medianOf(times).toFixed(1)} ms, worst ${Math.max(...times).toFixed(1)} ms`,
  );
} finally {
  await browser.close();
  await server.close();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
}

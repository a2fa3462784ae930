// How soon the built pages answer on a slow phone: `npm run bench:load`, or `npm run bench:load -- --json` for one object a line.
//
// A phone is a window of 390 × 844 whose page runs four times slower, on a line of 1.6 Mbit/s down, 750 kbit/s up and 150 ms: what tools for page
// speed take for a middling phone on “slow 4G” (common practice, no source). The processor is slowed down through the browser’s devtools protocol.
// The line is that of the host (packingHost.ts), shared by page, worker and service worker: the browser’s own emulation, tried first, let the worker’s
// script come in beside the page’s fonts twice as fast as the line is. The host packs what it sends (gzip), as hosts do. Measured from the
// navigation to the front page, each the middle one of three visits by new visitors:
//
// - transferred: bytes that left the host until the page was interactive, with their headers; what is kept for use without a signal comes later.
// - first paint: the first letter or line on the screen (first-contentful-paint).
// - verdict: the answer to the sample check has been painted. It is worked out on the spot, by a worker.
// - interactive: after that, the search for an implement has been opened, a letter typed into its field, and a frame with the lines that it leaves
//   painted within 50 ms of the letter (three frames); where it took longer, the next letter counts.
// - with the worker as slow: the browser slows down the page, not its worker, so three times the worker’s share is added.
//
// The second visit is a new page after the first one’s service worker has kept the site. Ratios are to the same without throttling, in the same run.
import { chromium, type Browser, type BrowserContext, type Page } from '@playwright/test';
import { browserPath, browserSwitches } from '../packages/web/test/browser.ts';
import { openPackingHost, type PackingHost } from './packingHost.ts';
import { medianOf } from './timing.ts';

const visits = 3;
const throttling = 4;
const slowLine = { down: 1.6e6 / 8, up: 750e3 / 8, latency: 150 };

/** What a page has seen of its own load, from the navigation [ms]. */
interface Seen {
  readonly paint: number;
  readonly verdict: number;
  readonly interactive: number;
  /** What the worker took for the first answer, once its script was there. */
  readonly worker: number;
}

interface Visit extends Seen {
  /** What the host had sent by then [kB]. */
  readonly transferred: number;
}

/** A first visit by somebody new, and a second one. */
async function visitTwice(browser: Browser, host: PackingHost, isSlow: boolean): Promise<readonly [Visit, Visit]> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  // What compiles this file puts a helper beside named functions, which the page has not.
  await context.addInitScript('globalThis.__name = (one) => one;');
  await context.addInitScript(watchLoad);
  const first = await visit(context, host, isSlow);
  host.use(null);
  await first.page.getByText('Works without a signal now').waitFor({ timeout: 120_000 });
  await first.page.close();
  const second = await visit(context, host, isSlow);
  await context.close();
  return [first.visit, second.visit];
}

async function visit(
  context: BrowserContext,
  host: PackingHost,
  isSlow: boolean,
): Promise<{ page: Page; visit: Visit }> {
  const page = await context.newPage();
  host.use(isSlow ? slowLine : null);
  if (isSlow) await slowDown(page);
  const before = host.sent();
  await page.goto(host.address, { waitUntil: 'commit' });
  const seen = await page.evaluate(() => (globalThis as unknown as { load: Promise<Seen> }).load);
  return { page, visit: { ...seen, transferred: (host.sent() - before) / 1000 } };
}

async function slowDown(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });
}

/** Follows the load from inside the page; runs there before anything else, and hands over when it is interactive. */
function watchLoad(): void {
  const worker = { asked: 0, replied: 0 };
  const { Worker: Original } = globalThis;
  globalThis.Worker = class extends Original {
    constructor(...made: ConstructorParameters<typeof Original>) {
      super(...made);
      this.addEventListener('message', () => (worker.replied ||= performance.now()));
    }
    override postMessage(message: unknown): void {
      worker.asked ||= performance.now();
      super.postMessage(message);
    }
  };
  const painted = (): Promise<unknown> => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  const until = async (isSo: () => boolean): Promise<void> => {
    while (!isSo()) await painted();
    await painted();
  };
  const field = (): HTMLInputElement | null => document.querySelector('.search-field');
  const typed = async (letters: string): Promise<number> => {
    const started = performance.now();
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field(), letters);
    field()?.dispatchEvent(new Event('input', { bubbles: true }));
    await until(() => document.querySelector('.choice-name')?.textContent?.toLowerCase().includes(letters) === true);
    return performance.now() - started;
  };
  const follow = async (): Promise<Seen> => {
    await until(() => document.querySelector('.sheet-example .answer') !== null);
    const verdict = performance.now();
    document.querySelector<HTMLButtonElement>('[data-machine=implement]')?.click();
    await until(() => field() !== null);
    for (const letters of ['b', 'bo', 'box', 'bo', 'b', 'bo', 'box']) if ((await typed(letters)) <= 50) break;
    const interactive = performance.now();
    const script = performance.getEntriesByType('resource').find(({ name }) => name.includes('assess.worker'));
    const arrived = (script as PerformanceResourceTiming | undefined)?.responseEnd ?? 0;
    return {
      paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN,
      verdict,
      interactive,
      worker: worker.replied - Math.max(worker.asked, arrived),
    };
  };
  Object.assign(globalThis, { load: follow() });
}

/** One figure of some visits with its ratio to the same without throttling. */
interface Row {
  readonly name: string;
  readonly plain: number;
  readonly throttled: number;
  readonly unit: string;
  readonly ratio: number | null;
}

const figures: readonly (readonly [string, string, (one: Visit, isSlow: boolean) => number])[] = [
  ['transferred', 'kB', (one) => one.transferred],
  ['first paint', 'ms', (one) => one.paint],
  ['verdict', 'ms', (one) => one.verdict],
  ['interactive', 'ms', (one) => one.interactive],
  [
    'interactive with the worker as slow, reckoned',
    'ms',
    (one, isSlow) => one.interactive + (isSlow ? (throttling - 1) * one.worker : 0),
  ],
];

function rowsOf(which: string, plain: readonly Visit[], throttled: readonly Visit[]): Row[] {
  return figures.map(([name, unit, figure]) => {
    const [fast, slow] = [
      medianOf(plain.map((one) => figure(one, false))),
      medianOf(throttled.map((one) => figure(one, true))),
    ];
    const ratio = fast === 0 ? null : Number((slow / fast).toPrecision(3));
    return { name: `${which} visit, ${name}`, plain: Math.round(fast), throttled: Math.round(slow), unit, ratio };
  });
}

const host = await openPackingHost();
const browser = await chromium.launch({ executablePath: await browserPath(), args: browserSwitches });
try {
  const [plain, throttled]: [(readonly [Visit, Visit])[], (readonly [Visit, Visit])[]] = [[], []];
  for (let i = 0; i < visits; i += 1) {
    plain.push(await visitTwice(browser, host, false));
    throttled.push(await visitTwice(browser, host, true));
  }
  const rows = (['first', 'second'] as const).flatMap((which, i) =>
    rowsOf(
      which,
      plain.map((both) => both[i] as Visit),
      throttled.map((both) => both[i] as Visit),
    ),
  );
  if (process.argv.includes('--json')) for (const row of rows) console.log(JSON.stringify(row));
  else console.table(rows);
} finally {
  await browser.close();
  host.close();
}

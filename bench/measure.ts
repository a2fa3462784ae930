import { chromium, type Page } from '@playwright/test';
import { linkOf } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';
import { readFileSync } from 'node:fs';
import { browserPath, browserSwitches } from '../packages/web/test/browser.ts';
import { serveSite } from '../packages/web/test/site.ts';
import { medianOf, type Timing } from './timing.ts';

/** How much slower than this machine the phone is taken to be [times]. */
const throttling = 4;
/** Figures that are answered in a row, each with a press that brings the next question. */
const presses = 6;

/** What one press took until the next question stood on the page, and of that the worker [ms]. */
interface Press {
  readonly whole: number;
  readonly worker: number;
}

/**
 * From a press to the next question on a page that is throttled four times. The browser throttles the page but not its worker:
 * the worker’s share is told apart, and the whole with the worker four times as slow is reckoned.
 */
export async function nextQuestionTimings(): Promise<Timing[]> {
  const { server, address } = await serveSite();
  const browser = await chromium.launch({ executablePath: await browserPath(), args: browserSwitches });
  try {
    const document = JSON.parse(readFileSync('examples/setups/flail-measure-first.json', 'utf8')) as SetupDocument;
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    // What compiles this file puts a helper beside named functions, which the page has not.
    await page.addInitScript('globalThis.__name = (one) => one;');
    await page.addInitScript(watchWorkers);
    await page.goto(`${address}#${linkOf(document)}`);
    await page.getByRole('button', { name: 'Measure step by step' }).click();
    await page.getByRole('button', { name: 'It is safe: begin' }).click();
    await page.locator('#figure-title').waitFor();
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });
    const all: Press[] = [];
    for (let i = 0; i < presses; i += 1) all.push(await press(page));
    const whole = all.map((one) => one.whole);
    const reckoned = all.map((one) => one.whole + (throttling - 1) * one.worker);
    return [
      { name: 'next question, page 4 times slower, median', value: medianOf(whole), unit: 'ms' },
      { name: 'next question, page 4 times slower, worst', value: Math.max(...whole), unit: 'ms' },
      { name: 'of that in the worker, median', value: medianOf(all.map((one) => one.worker)), unit: 'ms' },
      {
        name: 'next question, page and worker 4 times slower, reckoned, median',
        value: medianOf(reckoned),
        unit: 'ms',
      },
      {
        name: 'next question, page and worker 4 times slower, reckoned, worst',
        value: Math.max(...reckoned),
        unit: 'ms',
      },
    ];
  } finally {
    await browser.close();
    server.close();
  }
}

/** Answers what is asked, and times the press that finishes it until the next question and verdict stand. */
async function press(page: Page): Promise<Press> {
  if ((await page.locator('.keypad').count()) > 0) await readOnce(page);
  return page.evaluate(async () => {
    const headline = (): string => document.querySelector('h1')?.textContent ?? '';
    const isBusy = (): boolean => document.querySelector('.measure-verdict')?.getAttribute('aria-busy') !== 'false';
    const before = headline();
    const bar = [...document.querySelectorAll<HTMLButtonElement>('.screen-bar button')];
    const last = bar.find(({ textContent }) => textContent === 'Once is enough' || textContent === 'Next');
    const finish = last ?? document.querySelector<HTMLButtonElement>('.way-list .big-choice');
    const started = performance.now();
    Object.assign(globalThis, { workerTime: 0 });
    finish?.click();
    while (headline() === before || isBusy()) {
      if (performance.now() - started > 20_000) throw new Error(`No next question came after “${before}”.`);
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    const { workerTime } = globalThis as unknown as { workerTime: number };
    return { whole: performance.now() - started, worker: workerTime };
  });
}

/** Types a figure and answers what is asked about it, up to where one reading is enough. */
async function readOnce(page: Page): Promise<void> {
  const enough = page.getByRole('button', { name: 'Once is enough' });
  for (const digit of ['2', '6'])
    await page.locator('.keypad-digits').getByRole('button', { name: digit, exact: true }).click();
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  const asked = page.locator('.way-list .big-choice').or(page.getByRole('button', { name: 'It is as I typed it' }));
  for (;;) {
    await asked
      .or(enough)
      .or(page.getByRole('button', { name: 'Next' }))
      .first()
      .waitFor();
    if ((await asked.count()) === 0) return;
    await asked.first().click();
  }
}

/** Adds up how long workers take to reply; runs in the page before anything else. */
function watchWorkers(): void {
  const { Worker: Original } = globalThis;
  globalThis.Worker = class extends Original {
    private asked = 0;
    constructor(...made: ConstructorParameters<typeof Original>) {
      super(...made);
      this.addEventListener('message', () => {
        const page = globalThis as unknown as { workerTime?: number };
        page.workerTime = (page.workerTime ?? 0) + performance.now() - this.asked;
      });
    }
    override postMessage(message: unknown): void {
      this.asked = performance.now();
      super.postMessage(message);
    }
  };
}

import type { CDPSession, Page } from '@playwright/test';
import { checkOf } from './sample.ts';
import { expect, site, test } from './person.ts';

/** How much slower the page is made than this machine [times]. */
const throttling = 4;
/** Far above the budget of 8 ms a frame: only what is broken is slower, whatever else the machine does [ms]. */
const sanityLimit = 60;

/** Wall time under throttling, and processor time of the page's own thread without it. */
const runs = [
  { title: `wall time at ${throttling} times throttling`, rate: throttling, timeDomain: 'timeTicks' },
  { title: 'processor time, not throttled', rate: 1, timeDomain: 'threadTicks' },
] as const;

/** Time spent in scripts, styles and layout so far [ms]. */
async function spent(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string): number => metrics.find((metric) => metric.name === name)?.value ?? 0;
  return 1000 * (of('ScriptDuration') + of('LayoutDuration') + of('RecalcStyleDuration'));
}

/** What each frame of a drag through the whole lift takes, shortest first [ms]. */
async function framesOf(page: Page, { rate, timeDomain }: (typeof runs)[number]): Promise<number[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain });
  await session.send('Emulation.setCPUThrottlingRate', { rate });
  const frames: number[] = [];
  for (let frame = 0; frame < 60; frame += 1) {
    const before = await spent(session);
    await page.keyboard.press('ArrowUp');
    await page.waitForTimeout(60);
    frames.push((await spent(session)) - before);
  }
  await session.detach();
  return frames.sort((a, b) => a - b);
}

for (const [name, viewport] of [
  ['desk', { width: 1440, height: 900 }],
  ['phone', { width: 390, height: 844 }],
] as const) {
  for (const run of runs) {
    test(`a frame of the lift slider is measured: ${name}, ${run.title}`, async ({ page }) => {
      await page.setViewportSize(viewport);
      await page.goto(site(checkOf('tiller', '35', 'U-28')));
      await page.getByRole('button', { name: 'Side, through the lift' }).click();
      const slider = page.getByRole('slider', { name: 'Height of the lift' });
      await slider.focus();
      await page.keyboard.press('Home');
      await page.waitForTimeout(1500);
      const frames = await framesOf(page, run);
      const [median = NaN, worst = NaN] = [frames[30], frames.at(-1)];
      console.log(
        `lift slider, ${name}, ${run.title}: median ${median.toFixed(1)} ms, worst ${worst.toFixed(1)} ms a frame`,
      );
      await expect(slider).toHaveValue('60');
      expect(median).toBeLessThan(sanityLimit);
    });
  }
}

import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from './person.ts';

/** Sizes and colours that every page has to stand. */
export const looks = [390, 1440].flatMap((width) =>
  (['light', 'dark'] as const).map((colorScheme) => ({ width, colorScheme })),
);

/** A page that bars nobody’s way: nothing that axe finds, nothing that scrolls sideways, nothing too small for a thumb. */
export async function expectOpen(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' | ')}`)).toEqual([]);
  const width = page.viewportSize()?.width ?? 0;
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  const least = width < 700 ? 56 : 44;
  expect(await smallerThan(page, least)).toEqual([]);
}

/** What is pressed in the page itself and lower than it should be; a tick box is as large as its label. */
function smallerThan(page: Page, least: number): Promise<(string | null)[]> {
  return page.evaluate((height) => {
    const pressed =
      'main :is(button, summary, select, .button, input:not([type=checkbox]), label:has([type=checkbox]))';
    return [...document.querySelectorAll(pressed)]
      .filter(
        (target) => target.getBoundingClientRect().height > 0 && target.getBoundingClientRect().height < height - 0.5,
      )
      .map((target) => `${target.tagName} ${target.textContent?.slice(0, 40)}`);
  }, least);
}

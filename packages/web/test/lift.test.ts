import type { Locator, Page } from '@playwright/test';
import { checkOf, unplaced } from './sample.ts';
import { expect, site, test } from './person.ts';

async function openSide(page: Page, fragment: string): Promise<Locator> {
  await page.goto(site(fragment));
  await page.getByRole('button', { name: 'Side, through the lift' }).click();
  return page.getByRole('slider', { name: 'Height of the lift' });
}

function tiller(): string {
  return checkOf('tiller', '35', 'U-28');
}

/** The side view as it is drawn now. */
async function drawn(page: Page): Promise<string> {
  return page
    .locator('.lift-drawing svg')
    .first()
    .evaluate((svg) => svg.outerHTML);
}

test('the keyboard moves the drawing and what the slider says', async ({ page }) => {
  const slider = await openSide(page, tiller());
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(slider).toHaveValue('0');
  await expect(slider).toHaveAttribute(
    'aria-valuetext',
    /^\d.* in \(\d+ mm\): .*lift .* to spare; shaft overlap .* joints .*°$/,
  );
  const [picture, words] = [await drawn(page), await slider.getAttribute('aria-valuetext')];
  await page.keyboard.press('ArrowUp');
  await expect(slider).toHaveValue('1');
  await expect.poll(() => drawn(page)).not.toBe(picture);
  await expect(slider).not.toHaveAttribute('aria-valuetext', words ?? '');
  await page.keyboard.press('PageUp');
  expect(Number(await slider.inputValue())).toBeGreaterThan(4);
  await page.keyboard.press('End');
  await expect(slider).toHaveValue('60');
  await page.keyboard.press('ArrowDown');
  await expect(slider).toHaveValue('59');
});

test('a patched drawing is the drawing that would have been written anew', async ({ page }) => {
  const slider = await openSide(page, tiller());
  await expect(page.locator('.lift-drawing svg')).toHaveCount(4);
  const fresh = await drawn(page);
  const start = await slider.inputValue();
  await slider.focus();
  for (const key of ['Home', 'PageUp', 'ArrowUp', 'End', 'PageDown', 'ArrowDown']) await page.keyboard.press(key);
  await slider.fill(start);
  await expect(slider).toHaveValue(start);
  await expect.poll(() => drawn(page)).toBe(fresh);
});

test('the drawn pointer is dragged to another height', async ({ page }) => {
  const slider = await openSide(page, tiller());
  await expect(page.locator('.lift-drawing svg')).toHaveCount(4);
  const box = await slider.boundingBox();
  if (box === null) throw new Error('the slider has no box');
  const start = Number(await slider.inputValue());
  const thumb = 48;
  const at = box.y + box.height - thumb / 2 - (start / 60) * (box.height - thumb);
  const picture = await drawn(page);
  await page.mouse.move(box.x + box.width / 2, at);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2, at + (box.height - thumb) / 4, { steps: 4 });
  await page.mouse.up();
  expect(Math.abs(Number(await slider.inputValue()) - (start - 15))).toBeLessThanOrEqual(1);
  await expect.poll(() => drawn(page)).not.toBe(picture);
});

for (const [name, fragment] of [
  ['between view and plots', tiller],
  ['beside a long implement', () => checkOf('rotary cutter', '35', 'U-28')],
] as const) {
  test(`the slider lies over the drawn pointer: ${name}`, async ({ page }) => {
    const slider = await openSide(page, fragment());
    await expect(page.locator('.lift-drawing svg')).toHaveCount(4);
    const box = await slider.boundingBox();
    const tag = await page.locator('.lift-ruled', { has: slider }).evaluate((ruled) => {
      const tags = [...ruled.querySelectorAll('path.heavy.on-sheet')].filter(
        (path) => (path.getAttribute('d') ?? '').split('L').length === 5,
      );
      const { x, y, width, height } = tags.at(-1)?.getBoundingClientRect() ?? new DOMRect();
      return { x, y, width, height };
    });
    if (box === null) throw new Error('the slider has no box');
    const station = Number(await slider.inputValue());
    const middle = box.y + box.height - 24 - (station / 60) * (box.height - 48);
    expect(Math.abs(tag.y + tag.height / 2 - middle)).toBeLessThan(2);
    expect(tag.x).toBeGreaterThan(box.x - 1);
    expect(tag.x + tag.width).toBeLessThan(box.x + box.width + 4);
  });
}

test('the lift is played, held, and played to its end', async ({ page }) => {
  const slider = await openSide(page, tiller());
  await slider.focus();
  await page.keyboard.press('Home');
  await page.getByRole('button', { name: 'Play the lift' }).click();
  await expect.poll(async () => Number(await slider.inputValue())).toBeGreaterThan(3);
  await page.getByRole('button', { name: 'Hold the lift' }).click();
  const held = await slider.inputValue();
  await page.waitForTimeout(300);
  await expect(slider).toHaveValue(held);
  await page.getByRole('button', { name: 'Play the lift' }).click();
  await expect(slider).toHaveValue('60', { timeout: 15_000 });
  await expect(page.getByRole('button', { name: 'Play the lift' })).toBeVisible();
});

test('a hand on the slider holds a lift that is played', async ({ page }) => {
  const slider = await openSide(page, tiller());
  await slider.focus();
  await page.keyboard.press('Home');
  await page.getByRole('button', { name: 'Play the lift' }).click();
  await expect(page.getByRole('button', { name: 'Hold the lift' })).toBeVisible();
  await slider.focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('button', { name: 'Play the lift' })).toBeVisible();
});

test('where motion is reduced nothing plays by itself, and playing steps from height to height', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const slider = await openSide(page, tiller());
  await slider.focus();
  await page.keyboard.press('Home');
  await page.waitForTimeout(300);
  await expect(slider).toHaveValue('0');
  await page.evaluate(() => {
    const seen: string[] = [];
    Object.assign(window, { seen });
    const input = document.querySelector<HTMLInputElement>('.lift-slider');
    new MutationObserver(() => seen.push(input?.value ?? '')).observe(input as Node, { attributes: true });
  });
  await page.getByRole('button', { name: 'Play the lift' }).click();
  await expect(slider).toHaveValue('60', { timeout: 15_000 });
  const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
  // Where it begins, and its four named heights.
  expect(new Set(seen).size).toBeLessThanOrEqual(5);
});

test('buttons bring the lift to its named heights, and say so', async ({ page }) => {
  const slider = await openSide(page, tiller());
  const jumps = page.getByRole('group', { name: 'Go to' });
  await expect(jumps.getByRole('button')).toHaveText([/^Pick-up/, /^Work/, /^Carry/, /^Full lift/]);
  await jumps.getByRole('button', { name: /^Full lift/ }).click();
  await expect(slider).toHaveValue('60');
  await expect(jumps.getByRole('button', { name: /^Full lift/ })).toHaveAttribute('aria-current', 'true');
  const words = (await slider.getAttribute('aria-valuetext')) ?? '';
  await expect(page.getByRole('status').filter({ hasText: words })).toHaveCount(1);
  await jumps.getByRole('button', { name: /^Work/ }).click();
  await expect(slider).not.toHaveValue('60');
});

test('a carrying height above the lift is marked out of reach', async ({ page }) => {
  await openSide(page, checkOf('auger', '35', 'U-28'));
  await expect(page.getByRole('button', { name: /^Carry/ })).toContainText('out of reach');
});

test('the slider stays under the thumb of a phone, large enough for it', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const slider = await openSide(page, tiller());
  await expect(page.locator('.lift-drawing svg')).toHaveCount(6);
  const box = await slider.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  expect(box?.width).toBeGreaterThanOrEqual(240);
  for (const y of [0, 200, 420]) {
    await page.evaluate((top) => scrollTo({ top, behavior: 'instant' }), y);
    await expect(slider).toBeInViewport({ ratio: 1 });
  }
  const pointer = page.locator('.lift-pointer');
  const before = await pointer.textContent();
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await expect(pointer).not.toHaveText(before ?? '');
});

test('links that are not placed: one sentence says what to measure, and leads there', async ({ page }) => {
  await openSide(page, unplaced());
  const view = page.getByRole('region', { name: 'Side view through the lift' });
  await expect(view).toContainText(
    'To draw the lift from the side, measure on the tractor: lower link length, lower link pivot behind the axle, lower link pivot height, top link pivot behind the axle and top link pivot height.',
  );
  await expect(view).toContainText('from its ratings alone');
  await view.getByRole('button', { name: 'Type the lower link length' }).click();
  await expect(page.getByLabel('lower link length', { exact: true })).toBeFocused();
});

test('an implement without an upper pin has no side view, and the page says why', async ({ page }) => {
  await openSide(page, checkOf('auger', '35', ''));
  await expect(page.getByRole('region', { name: 'Side view through the lift' })).toContainText('no upper pin');
});

test('a figure typed beside the side view is drawn, and the lift stays where it stands', async ({ page }) => {
  const slider = await openSide(page, tiller());
  await page.getByRole('group', { name: 'Plots' }).getByRole('button', { name: 'Lift' }).click();
  await page.getByRole('button', { name: /^Full lift/ }).click();
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  const before = await slider.getAttribute('aria-valuetext');
  await page.getByLabel('mass', { exact: true }).fill('900 lb');
  await expect(slider).not.toHaveAttribute('aria-valuetext', before ?? '');
  await expect(slider).toHaveValue('60');
  await expect(page.locator('[data-drawing=plots]')).toContainText('load 900 lb');
});

test('paper gets three heights of the lift and the drive shaft under the view from behind', async ({ page }) => {
  await openSide(page, tiller());
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.drawing-strip svg')).toHaveCount(2);
  await expect(page.locator('.drawing-strip').first()).toContainText('Three heights of the lift');
  await expect(page.locator('.drawing-strip').last()).toContainText('Drive shaft by itself');
  await expect(page.locator('.drawing-picture svg').first()).toContainText('Rear view');
});

test('the allowance on a lift rating is a plain choice that changes what is to spare', async ({ page }) => {
  await page.goto(site(tiller()));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /tractor/ })
    .click();
  const lifts = page.locator('.answer', { hasText: 'Lifts' });
  await expect(lifts).toContainText('to spare');
  const before = await lifts.textContent();
  await page.getByLabel('how much of a rating is counted on').selectOption('asRated');
  await expect(lifts).not.toHaveText(before ?? '');
  await expect(lifts).toContainText('to spare');
});

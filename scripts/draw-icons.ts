// Draws the icons of the installed site from packages/web/public/icon.svg: run it by hand when the mark changes.
import { chromium } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { browserPath, browserSwitches } from '../packages/web/test/browser.ts';

const folder = 'packages/web/public';
const paper = '#f3ecdd';

/** Files with their width and the part of it that the mark fills: a launcher may cut a maskable icon down to a circle of 80 %. */
const icons = [
  { file: 'icon-180.png', width: 180, share: 0.74 },
  { file: 'icon-192.png', width: 192, share: 0.8 },
  { file: 'icon-512.png', width: 512, share: 0.8 },
  { file: 'icon-maskable-512.png', width: 512, share: 0.62 },
];

const mark = `data:image/svg+xml;base64,${readFileSync(`${folder}/icon.svg`).toString('base64')}`;
const browser = await chromium.launch({ executablePath: await browserPath(), args: browserSwitches });
const page = await browser.newPage();
for (const { file, width, share } of icons) {
  await page.setViewportSize({ width, height: width });
  await page.setContent(
    `<body style="margin:0;height:100vh;background:url(${mark}) center/${share * 100}% no-repeat ${paper}">`,
  );
  await page.screenshot({ path: `${folder}/${file}` });
  console.log(`${folder}/${file}: ${width} px`);
}
await browser.close();

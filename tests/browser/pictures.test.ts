import { mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, scriptsRun } from './openPage.js';

// Pictures of every page, to be looked at: overlaps, cut text and poor contrast no test sees.
const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));
const folder = fileURLToPath(new URL('../../pictures/', import.meta.url));

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
  await mkdir(folder, { recursive: true });
});

afterAll(() => browser.close());

const paths = (await readdir(built, { recursive: true }))
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith('index.html'))
  .map((path) => path.slice(0, -'index.html'.length))
  // The reference's pages are of two kinds: its front, and entries.
  .filter((path) => !/^reference\/(?!$|core\/live\/$)/.test(path))
  .sort();

const screens = [
  { name: 'phone', width: 390, height: 844 },
  { name: 'desktop', width: 1280, height: 800 },
] as const;

test.each(paths)('%s', async (path) => {
  const page = await (await newVisitor(browser)).newPage();
  await page.goto(inject('site') + path);
  await scriptsRun(page);
  for (const { name, ...viewport } of screens) {
    await page.setViewportSize(viewport);
    for (const theme of ['light', 'dark'] as const) {
      await page.evaluate((chosen) => {
        document.documentElement.dataset.theme = chosen;
      }, theme);
      const file = `${path.replaceAll('/', '-') || 'start-'}${name}-${theme}.png`;
      const picture = await page.screenshot({ path: join(folder, file), fullPage: true });
      expect(picture.length).toBeGreaterThan(5000);
    }
  }
  await page.context().close();
});

import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, openPage, scriptsRun } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

/** What takes long to work out, with something to type and what only the answer to that says. */
const slow = [
  ['calculators/plan-the-hook-up/', 'track', '4k7', /at least 530\sΩ/],
  ['calculators/make-dirt-visible/', 'track', '4k7', /577\sµV/],
  ['calculators/which-instrument/', 'width', '0.5 %', /worn spot of 0\.5\s%/],
] as const;

test.each(slow)(
  '%s asks a worker, and shows what the page came with until a key is pressed',
  async (path, entry, text, answer) => {
    const { page, complaints } = await openPage(browser, path);
    expect(await page.locator('.answer').textContent()).not.toMatch(answer);
    expect(await page.locator('.answer p').count()).toBeGreaterThan(0);
    expect(await page.locator('.below table').count()).toBeGreaterThan(0);
    await page.locator(`#entry-${entry}`).fill(text);
    await expect.poll(() => page.locator('.answer').textContent()).toMatch(answer);
    expect(await page.locator('.below table').count()).toBeGreaterThan(0);
    await expect.poll(() => page.workers().length).toBe(1);
    expect(complaints).toEqual([]);
    await page.context().close();
  },
);

test.each(slow)('%s answers where no worker starts too', async (path, entry, text, answer) => {
  const page = await (await newVisitor(browser)).newPage();
  await page.addInitScript(() => {
    const Real = Worker;
    window.Worker = class extends Real {
      constructor() {
        super('missing.js');
      }
    };
  });
  await page.goto(inject('site') + path);
  await scriptsRun(page);
  await page.locator(`#entry-${entry}`).fill(text);
  await expect.poll(() => page.locator('.answer').textContent()).toMatch(answer);
  await page.context().close();
});

import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, scriptsRun } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

test('what is searched for from any page is found, in the browser', async () => {
  const { page, complaints } = await openPage(browser, 'cautions/');
  await page.getByRole('searchbox').fill('scan tool');
  await page.keyboard.press('Enter');
  await page.waitForURL(/search\/\?q=scan\+tool/);
  await scriptsRun(page);
  const found = page.locator('.found a');
  await expect.poll(() => found.count()).toBeGreaterThan(0);
  expect(await found.allTextContents()).toContain('What will the vehicle see?');
  await page.fill('#wanted', '"no page holds this"');
  await expect.poll(() => page.getByRole('status').textContent()).toBe('No page has that.');
  expect(complaints).toEqual([]);
});

import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

test('every page that the start page leads to exists, below the sub-path, and asks no other host', async () => {
  const site = inject('site');
  const page = await browser.newPage();
  const asked: string[] = [];
  const failed: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', (response) => {
    if (response.status() >= 400) failed.push(response.url());
  });
  const seen = new Set([site]);
  for (const address of seen) {
    await page.goto(address);
    const links = await page
      .locator('a[href]')
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href.split('#')[0]!));
    for (const link of links) seen.add(link);
  }
  expect(seen.size).toBeGreaterThan(5);
  expect(
    asked.filter((address) => !address.startsWith(site) && !address.startsWith('data:')),
  ).toEqual([]);
  expect(failed).toEqual([]);
});

test('no page is wider than a narrow screen', async () => {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  for (const path of ['', 'cautions/', 'calculators/expected-readings/']) {
    await page.goto(inject('site') + path);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width, path).toBeLessThanOrEqual(360);
  }
});

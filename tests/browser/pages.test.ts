import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const mainPages = [
  '',
  'cautions/',
  'calculators/find-the-terminals/',
  'calculators/plan-the-hook-up/',
  'calculators/expected-readings/',
  'calculators/which-instrument/',
  'calculators/make-dirt-visible/',
  'calculators/check-a-sweep/',
  'calculators/set-the-closed-position/',
  'calculators/supply-and-ground-drop/',
  'calculators/bench-to-vehicle/',
];

test('the main pages load below the sub-path and ask no other host', async () => {
  const site = inject('site');
  const page = await browser.newPage();
  const asked: string[] = [];
  const failed: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', (response) => {
    if (response.status() >= 400) failed.push(response.url());
  });
  // A breach of the page's own policy is an error of the console.
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  for (const path of mainPages) await page.goto(site + path, { waitUntil: 'networkidle' });
  expect(asked.length).toBeGreaterThan(mainPages.length);
  expect(asked.filter((url) => !url.startsWith(site) && !url.startsWith('data:'))).toEqual([]);
  expect(failed).toEqual([]);
  expect(complaints).toEqual([]);
});

test('no link of the site leads nowhere', async () => {
  const site = inject('site');
  const seen = new Set([site]);
  const broken: string[] = [];
  for (const address of seen) {
    const answer = await fetch(address);
    if (!answer.ok) broken.push(address);
    const links = (await answer.text()).matchAll(/<a [^>]*?href="([^"#]+)/g);
    for (const [, link] of links) seen.add(new URL(link!, address).href);
  }
  expect(broken).toEqual([]);
  expect([...seen].filter((address) => !address.startsWith(site))).toEqual([]);
  expect(seen.size).toBeGreaterThan(20);
});

test('no page is wider than a narrow screen', async () => {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  for (const path of mainPages) {
    await page.goto(inject('site') + path);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width, path).toBeLessThanOrEqual(360);
  }
});

import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, scriptsRun } from './openPage.js';

// Pictures of the states that a page comes to, to be looked at, beside those of the pages as they open.
const folder = fileURLToPath(new URL('../../pictures/', import.meta.url));
const judging = 'calculators/check-a-sweep/';
const screens = [
  { name: 'phone', width: 390, height: 844 },
  { name: 'desktop', width: 1280, height: 800 },
] as const;

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
  await mkdir(folder, { recursive: true });
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

async function open(path: string): Promise<Page> {
  const page = await (await newVisitor(browser)).newPage();
  await page.goto(inject('site') + path);
  await scriptsRun(page);
  return page;
}

async function picture(page: Page, name: string): Promise<void> {
  for (const { name: screen, ...viewport } of screens) {
    await page.setViewportSize(viewport);
    // A drawing follows its place.
    await page.waitForTimeout(150);
    for (const theme of ['light', 'dark'] as const) {
      await page.evaluate((chosen) => {
        document.documentElement.dataset.theme = chosen;
      }, theme);
      const path = join(folder, `state-${name}-${screen}-${theme}.png`);
      expect((await page.screenshot({ path, fullPage: true })).length).toBeGreaterThan(5000);
    }
  }
}

const file = (name: string, content: string) => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(content, 'latin1'),
});

test.each(['sound', 'interference', 'dropout', 'too-slow'])('verdict of %s', async (slug) => {
  const page = await open(`${judging}?example=${slug}`);
  await page.locator('.trace-view svg').first().waitFor();
  await picture(page, `judged-${slug}`);
  if (slug !== 'dropout') return;
  await page.getByRole('button', { name: 'Lay passes' }).click();
  await page.locator('.passes-drawing').waitFor();
  await page.locator('details.evidence > summary').first().click();
  await page.locator('details.label > summary').click();
  await page.locator('.square-code').waitFor();
  await picture(page, 'judged-unfolded');
});

test('a recording that was read and waits for its sensor', async () => {
  const page = await open(judging);
  await page.setInputFiles('.drop input', 'examples/recordings/worn.csv');
  await page.locator('.which-sensor').waitFor();
  await page.getByText('Read it otherwise').click();
  await picture(page, 'read');
});

test.each([
  ['spreadsheet', file('sweep.xlsx', 'PK\x03\x04xxxx')],
  ['damaged', file('sweep.csv', 'time (ms),wiper (V)\n0,0.4\n1,x\n2,0.4\n')],
] as const)('a wrong file: %s', async (name, wrong) => {
  const page = await open(judging);
  await page.setInputFiles('.drop input', wrong);
  await page.locator('.look .refusal').waitFor();
  expect(await page.locator('.verdict-card:visible').count()).toBe(0);
  await picture(page, `wrong-${name}`);
});

test('busy', async () => {
  const page = await open(judging);
  await page.route(/checkSweep\.worker/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `${await response.text()}\nself.onmessage = () => {};` });
  });
  await page.setInputFiles('.drop input', [
    'examples/outboard-sensor.job.json',
    'examples/recordings/worn.csv',
  ]);
  await page.locator('progress').waitFor();
  await picture(page, 'busy');
});

test('every step of the guided way', async () => {
  const page = await open('guided-way/');
  for (let step = 1; step <= 8; step++) {
    await page.locator('.way :is(.answer, .ticks, .drop)').first().waitFor();
    await picture(page, `way-${step}`);
    if (step < 8) await page.locator('.way .onward .main').click();
  }
});

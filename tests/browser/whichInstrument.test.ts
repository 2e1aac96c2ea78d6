import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const address = 'calculators/which-instrument/';

async function open(javaScriptEnabled: boolean): Promise<Page> {
  return (await openPage(browser, address, { javaScriptEnabled })).page;
}

async function rowsOf(page: Page): Promise<readonly string[][]> {
  const rows = await page.locator('#instruments tbody tr').all();
  return await Promise.all(rows.map((row) => row.locator('th, td').allTextContents()));
}

test('ranks traces before digits, before any script runs', async () => {
  const rows = await rowsOf(await open(false));
  expect(rows.length).toBeGreaterThan(6);
  expect(rows[0]).toContain('surely');
  const verdictOf = (name: string) => rows.find(([one]) => one === name)?.[1];
  expect(verdictOf('digital meter')).toBe('too slow');
  expect(verdictOf('logger, 1 kHz')).toBe('surely');
});

test('a slower hand lets more instruments see it; an entry out of bounds is refused beside its field', async () => {
  const page = await open(true);
  const sure = async () => (await rowsOf(page)).filter((row) => row[1] === 'surely').length;
  const before = await sure();
  await page.fill('#entry-stroke', '30 s');
  await page.fill('#entry-width', '5 %');
  await expect.poll(sure).toBeGreaterThan(before);
  await page.fill('#entry-width', '90 %');
  await expect.poll(() => page.locator('#refusal-width').textContent()).toContain('50');
  expect(await page.locator('#instruments').count()).toBe(0);
});

test('a recorder of one’s own is ranked among them and draws the trace', async () => {
  const page = await open(true);
  await page.getByText('A recorder of your own').click();
  await page.fill('#entry-ownInterval', '0,1 s');
  const own = async () => (await rowsOf(page)).find(([name]) => name === 'your recorder')?.[1];
  await expect.poll(own).toBe('by chance');
  await page.fill('#entry-ownInterval', '1 ms');
  await expect.poll(own).toBe('surely');
  expect(await page.locator('.displays figcaption').last().textContent()).toBe('your recorder');
});

test('passes an automatic check of accessibility', async () => {
  const page = await open(true);
  expect(await violationsOf(page)).toEqual([]);
});

/** The page's simulated displays as they stand. */
async function displays(page: Page) {
  return {
    digits: await page.locator('.meter-digits').textContent(),
    needle: await page.locator('.displays .needle').getAttribute('d'),
    trace: (await page.locator('.displays .trace').getAttribute('d'))?.length ?? 0,
  };
}

test('digits, needle and trace are moved by the slider and by playing; who wants no motion has the slider alone', async () => {
  const page = await open(true);
  await page.locator('.readings[aria-busy="false"]').waitFor();
  const slider = page.getByRole('slider');
  await slider.fill('0');
  const before = await displays(page);
  await slider.fill('2');
  await expect.poll(() => displays(page)).not.toEqual(before);
  const between = await displays(page);
  expect(between.trace).toBeGreaterThan(before.trace);
  await page.getByRole('button', { name: 'Play' }).click();
  await expect.poll(async () => (await displays(page)).trace).toBeLessThan(between.trace);
  await expect.poll(async () => (await displays(page)).trace).toBeGreaterThan(between.trace);

  const { page: still } = await openPage(browser, address, { reducedMotion: 'reduce' });
  expect(await still.getByRole('button', { name: 'Play' }).count()).toBe(0);
  expect(await still.getByRole('slider').count()).toBe(1);
});

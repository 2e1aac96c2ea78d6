import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

async function open(javaScriptEnabled: boolean): Promise<Page> {
  const context = await browser.newContext({ javaScriptEnabled });
  const page = await context.newPage();
  await page.goto(`${inject('site')}calculators/which-instrument/`);
  if (javaScriptEnabled)
    await page.locator('astro-island:not([ssr])').waitFor({ state: 'attached' });
  return page;
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

test('passes an automatic check of accessibility', async () => {
  const page = await open(true);
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof axe }).axe.run(
      document.querySelector('main') ?? document,
    );
    return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
  expect(violations).toEqual([]);
});

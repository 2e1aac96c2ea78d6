import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

/** Where each entry of the form stands. */
const placesOf = (page: Page) =>
  page.locator('.readings .entry input').evaluateAll((inputs) =>
    inputs.map((input) => {
      const { x, y } = input.getBoundingClientRect();
      return `${input.getAttribute('name')} ${x.toFixed(0)},${y.toFixed(0)}`;
    }),
  );

/** With drawings beside the form, and without. */
const forms = [
  'bench-to-vehicle',
  'expected-readings',
  'make-dirt-visible',
  'plan-the-hook-up',
  'two-states',
];

test.each(forms)('while %s is still arriving, its form stands where it will stay', async (name) => {
  const path = `calculators/${name}/`;
  const html = await (await fetch(inject('site') + path)).text();
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  await page.route('**/*.js', (route) => route.abort());
  const arrived = async (body: string) => {
    await page.route(`**/${path}`, (route) => route.fulfill({ body, contentType: 'text/html' }));
    await page.goto(inject('site') + path);
    return placesOf(page);
  };
  const whole = await arrived(html);
  expect(whole.length).toBeGreaterThan(5);
  expect(await arrived(html.slice(0, html.lastIndexOf('</form>')))).toEqual(whole);
  await page.close();
});

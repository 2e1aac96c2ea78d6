import {
  expectedCurve,
  expectedWindows,
  formatQuantity,
  operatingPoint,
  positionAt,
} from '@truesweep/core';
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
  await page.goto(`${inject('site')}calculators/expected-readings/`);
  return page;
}

/** What core says of the form's first answer, with another limiter. */
function saidByCore(limiter: number) {
  const circuit = {
    source: { volts: 5 },
    limiter,
    sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 10e6 },
  };
  const { closed, open } = expectedWindows(circuit, {
    source: 0.01,
    limiter: 0.05,
    track: 0.2,
    closedPosition: 0.02,
    openPosition: 0.02,
  });
  const window = ({ low, nominal, high }: typeof closed) =>
    [low, nominal, high].map((volts) => formatQuantity(volts, 'V'));
  const current = (part: 'limiter' | 'contact') =>
    [0, 1].map((travel) => {
      const { amps } = operatingPoint(circuit, positionAt(circuit.sensor, travel)).parts[part]!;
      return formatQuantity(amps as number, 'A');
    });
  return {
    windows: [window(closed), window(open)],
    curve: Array.from(expectedCurve(circuit, 5).volts, (volts) => [formatQuantity(volts, 'V')]),
    currents: [current('limiter'), current('contact')],
  };
}

async function cells(page: Page, table: string): Promise<string[][]> {
  const rows = await page.locator(`#${table} tbody tr`).all();
  return Promise.all(rows.map((row) => row.locator('td').allTextContents()));
}

async function shown(page: Page) {
  return {
    windows: await cells(page, 'windows'),
    curve: await cells(page, 'curve'),
    currents: await cells(page, 'currents'),
  };
}

test('with scripts off the first answer is right', async () => {
  const page = await open(false);
  expect(await shown(page)).toEqual(saidByCore(1000));
});

test('with scripts on, another limiter changes windows, curve and currents to what core says', async () => {
  const page = await open(true);
  await page.locator('astro-island:not([ssr])').waitFor({ state: 'attached' });
  await page.locator('input[name=limiter]').fill('2k2');
  await expect.poll(() => shown(page)).toEqual(saidByCore(2200));
  expect(saidByCore(2200)).not.toEqual(saidByCore(1000));
});

test('an entry that has two readings is refused in words, and no answer stands beside it', async () => {
  const page = await open(true);
  await page.locator('astro-island:not([ssr])').waitFor({ state: 'attached' });
  await page.locator('input[name=track]').fill('1,500');
  const alert = page.locator('.readings [role=alert]');
  await expect.poll(() => alert.textContent()).toContain('1,500');
  expect(await page.locator('#windows').count()).toBe(0);
});

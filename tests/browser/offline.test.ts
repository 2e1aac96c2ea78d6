import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, scriptsRun } from './openPage.js';
import { serve } from './serve.js';

let browser: Browser;
let folder: string;
let server: Server;
let url: string;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
  folder = await mkdtemp(join(tmpdir(), 'truesweep-site-'));
  await cp(fileURLToPath(new URL('../../site/dist', import.meta.url)), folder, { recursive: true });
  ({ server, url } = await serve(folder, '/truesweep/'));
});

afterAll(async () => {
  await browser.close();
  server.close();
  await rm(folder, { recursive: true, force: true });
});

/** Waits until the service worker answers for the page. */
async function isKept(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

test('without a connection a visited page reloads and calculates, and one never visited opens', async () => {
  const { page, complaints } = await openPage(browser, 'calculators/expected-readings/', {
    serviceWorkers: 'allow',
  });
  await isKept(page);
  await page.context().setOffline(true);
  await page.reload();
  await scriptsRun(page);
  await page.fill('#entry-limiter', '2k2');
  await expect
    .poll(() => page.locator('#circuit-drawing').textContent())
    .toMatch(/Limiting resistor2.2.kΩ/);
  await page.goto(`${inject('site')}calculators/find-the-terminals/`);
  expect(await page.locator('h1').textContent()).toBe('Which terminal is which?');
  await page.goto(`${inject('site')}calculators/check-a-sweep/`);
  await scriptsRun(page);
  await page.getByRole('button', { name: /demo/ }).click();
  await expect
    .poll(() => page.locator('.answer').textContent(), { timeout: 30_000 })
    .toMatch(/Fail worn\.csv/);
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('a newer version waits until it is asked for, and nothing entered is lost', async () => {
  const address = `${url}calculators/set-the-closed-position/`;
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(address);
  await isKept(page);
  // Beside it one tab that holds a recording, one that holds nothing but entries, and one with two forms on it.
  const [judging, entering, way] = await Promise.all([
    besides(context, 'calculators/check-a-sweep/'),
    besides(context, 'calculators/expected-readings/'),
    besides(context, 'guided-way/'),
  ]);
  await judging.setInputFiles('input[type=file]', [
    'examples/outboard-sensor.job.json',
    'examples/recordings/worn.csv',
  ]);
  const verdict = () => judging.locator('.answer').textContent();
  await expect.poll(verdict, { timeout: 30_000 }).toMatch(/Fail worn\.csv/);
  await entering.fill('#entry-limiter', '2k2');
  await expect.poll(() => new URL(entering.url()).hash).toContain('limiter');

  const file = join(folder, 'calculators/set-the-closed-position/index.html');
  const [html, worker] = await Promise.all([
    readFile(file, 'utf8'),
    readFile(join(folder, 'service-worker.js'), 'utf8'),
  ]);
  await writeFile(file, html.replaceAll('How far must I turn it?', 'How far to turn it?'));
  const kept = /(calculators\/set-the-closed-position\/ )[\w-]{8}/;
  expect(worker).toMatch(kept);
  await writeFile(join(folder, 'service-worker.js'), worker.replace(kept, '$1another'));

  await page.reload();
  await scriptsRun(page);
  expect(await page.locator('h1').textContent()).toBe('How far must I turn it?');
  await page.fill('#entry-turned', '3°');
  const change = page.getByRole('button', { name: /Change to it/ });
  await change.waitFor();
  await expect.poll(() => new URL(page.url()).hash).toContain('turned');
  await expect.poll(() => way.locator('.notice').count()).toBe(1);
  await expect
    .poll(() => judging.locator('.notice').allTextContents())
    .toContainEqual(expect.stringContaining('recordings must be chosen again'));
  await entering.evaluate(() => {
    (window as unknown as { isOld: boolean }).isOld = true;
  });
  await change.click();
  await expect.poll(() => page.locator('h1').textContent()).toBe('How far to turn it?');
  await scriptsRun(page);
  // The form takes what the address holds once its scripts run.
  await expect.poll(() => page.inputValue('#entry-turned')).toBe('3°');
  expect(await page.getByRole('button', { name: /Change to it/ }).count()).toBe(0);

  // A tab with nothing to lose follows; the one that holds a recording keeps it, and says what to do.
  await expect.poll(() => entering.evaluate(() => 'isOld' in window)).toBe(false);
  await scriptsRun(entering);
  expect(await entering.inputValue('#entry-limiter')).toBe('2k2');
  await expect
    .poll(() => judging.locator('.notice').allTextContents())
    .toContainEqual(expect.stringContaining('Keep your report first'));
  expect(await verdict()).toMatch(/Fail worn\.csv/);
  expect(await judging.locator('.trace-place svg').count()).toBe(1);
  await judging.getByRole('button', { name: 'Load this page anew' }).click();
  await expect.poll(verdict).toMatch(/Pass sound\.csv/);
  await context.close();
});

/** Another tab of the same visitor. */
async function besides(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(url + path);
  await scriptsRun(page);
  return page;
}

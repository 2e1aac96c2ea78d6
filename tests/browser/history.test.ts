import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { HistoryRecord } from '@truesweep/history';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, violationsOf } from './openPage.js';

let browser: Browser;
const folder = mkdtempSync(join(tmpdir(), 'truesweep-history-page-'));

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await browser.close();
});

const record = (sensor: string, season: number, volts: number): HistoryRecord => ({
  kind: 'truesweep-record',
  form: 1,
  sensor,
  recording: `${season}`.padStart(64, '0'),
  date: `${2022 + season}-05-03`,
  dateFrom: 'told',
  file: `${season}.csv`,
  verdict: 'pass',
  closed: { volts, uncertainty: 0.001, low: 0.44, high: 0.56 },
  open: { volts: 4.5 + 0.001 * (season % 2), uncertainty: 0.001, low: 4.3, high: 4.7 },
  noise: 0.001,
  visible: 0.02,
  roughness: 0,
  findings: 0,
  recorder: { interval: 0.001, resolution: 0.001 },
});
const lines = (records: readonly HistoryRecord[]) =>
  records.map((one) => `${JSON.stringify(one)}\n`).join('');
const drifting = [0.5, 0.511, 0.519, 0.53].map((volts, i) => record('Tender', i, volts));
const still = [0.501, 0.5, 0.502, 0.5].map((volts, i) => record('A spare', i, volts));

async function give(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  const files = Object.entries(texts).map(([name, text]) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  });
  await page.setInputFiles('.history input[type=file]', files);
}

const sensors = (page: Page) => page.locator('.history table').first().locator('tbody tr');

test('before any script runs it shows an example, told as one', async () => {
  const { page } = await openPage(browser, 'history/', { javaScriptEnabled: false });
  expect(await page.locator('.answer').textContent()).toContain('An example: two invented sensors');
  expect(await sensors(page).count()).toBe(2);
  const words = await page.locator('.sensor-history').textContent();
  expect(words).toContain('Port engine');
  expect(words).toMatch(/Rises by 0\.\d+ ± 0\.\d+ % of the span a year/);
  expect(words).toContain('No change that these recordings can show');
});

test('files take the place of the example; a damaged line and another file lose nothing', async () => {
  const { page, complaints } = await openPage(browser, 'history/');
  await give(page, {
    'season.jsonl': `${lines(drifting)}{"cut\n${lines(still)}`,
    'other.csv': 'time,signal\n0,1\n',
  });
  await expect.poll(() => sensors(page).count()).toBe(2);
  await expect
    .poll(() => page.getByRole('status').textContent())
    .toContain('other.csv: This is no file');
  const said = await page.getByRole('status').textContent();
  expect(said).toContain('season.jsonl: 8 records.');
  expect(said).toContain('season.jsonl, line 5: This line is no JSON. It is left out.');
  expect(await page.locator('.answer').count()).toBe(0);
  // What changed comes first.
  expect(await sensors(page).allTextContents()).toEqual([
    expect.stringMatching(/^Tender42022-05-032025-05-03.*closed$/),
    expect.stringMatching(/^A spare42022-05-032025-05-03.*none told$/),
  ]);
  expect(complaints).toEqual([]);
  expect(await violationsOf(page)).toEqual([]);
});

test('a sensor is chosen by the keyboard; its change is drawn as far as it is told', async () => {
  const { page } = await openPage(browser, 'history/');
  await give(page, { 'season.jsonl': lines([...drifting, ...still]) });
  await expect.poll(() => page.locator('.sensor-history h2').textContent()).toBe('Tender');
  const closed = page.locator('.sensor-history section').first();
  expect(await closed.locator('svg circle').count()).toBe(4);
  expect(await closed.locator('svg .band').count()).toBe(1);
  expect(await closed.locator('svg').textContent()).toContain('2028-05-03');
  expect(await closed.locator('svg').getAttribute('aria-label')).toContain(
    'Its upper limit may be met',
  );
  const spare = page.getByRole('button', { name: 'A spare' });
  await spare.focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.sensor-history h2').textContent()).toBe('A spare');
  expect(await spare.getAttribute('aria-pressed')).toBe('true');
  expect(await closed.locator('svg .band').count()).toBe(0);
  expect(await closed.locator('svg').textContent()).toContain('2025-05-03');
});

test('of 2,000 sensors the first 200 are listed, those with a change before the others', async () => {
  const { page } = await openPage(browser, 'history/');
  const many = Array.from({ length: 2000 }, (_, i) =>
    [0, 1, 2, 3].map((season) =>
      record(`Sensor ${i}`, season, 0.5 + 0.001 * ((i * 7 + season * 3) % 5)),
    ),
  ).flat();
  await give(page, { 'many.jsonl': lines(many) });
  await expect
    .poll(() => page.locator('.history').textContent(), { timeout: 30_000 })
    .toContain('of 2000 sensors');
  expect(await sensors(page).count()).toBe(200);
});

test('on a phone nothing is too wide, with files too', async () => {
  const { page } = await openPage(browser, 'history/', { viewport: { width: 390, height: 780 } });
  await give(page, { 'season.jsonl': lines([...drifting, ...still]) });
  await expect.poll(() => page.locator('.sensor-history h2').textContent()).toBe('Tender');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

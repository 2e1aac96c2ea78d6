import { cp, mkdtemp, rm } from 'node:fs/promises';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expectedWindows, formatQuantity } from '@truesweep/core';
import { verdictMeanings } from '@truesweep/wording';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { serve } from './serve.js';

let browser: Browser;
let folder: string;
let server: Server;
let url: string;

/** The examples with the published folder of the library beside them, as their pages say. */
beforeAll(async () => {
  const from = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
  browser = await chromium.connect(inject('browser'));
  folder = await mkdtemp(join(tmpdir(), 'truesweep-embedding-'));
  await cp(from('examples/browser'), folder, { recursive: true });
  await cp(from('packages/core/dist'), join(folder, 'core'), { recursive: true });
  for (const name of ['core', 'recordings', 'wording', 'drawings']) {
    const file = join('@truesweep', name, 'dist', 'browser.min.js');
    await cp(from(`packages/${name}/dist/browser.min.js`), join(folder, file));
  }
  ({ server, url } = await serve(folder, '/'));
});

afterAll(async () => {
  await browser.close();
  server.close();
  await rm(folder, { recursive: true, force: true });
});

test('readings.html shows the windows, and what is wrong with an entry', async () => {
  const page = await browser.newPage();
  await page.goto(`${url}readings.html`);
  const { closed } = expectedWindows(
    {
      source: { volts: 5 },
      limiter: 2200,
      sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
      load: { pullDown: 10e6 },
    },
    { track: 0.2, closedPosition: 0.02, openPosition: 0.02 },
  );
  await page.fill('#limiter', '2k2');
  expect(await page.textContent('#answer')).toContain(formatQuantity(closed.low, 'V'));
  await page.fill('#limiter', '1,500');
  expect(await page.textContent('#answer')).toContain('1.500');
});

test('worker.html has its sweep judged in a worker', async () => {
  const page = await browser.newPage();
  await page.goto(`${url}worker.html`);
  await expect.poll(() => page.textContent('#verdict')).toBe('fail: track');
});

test('withoutBundler.html judges a file with the minified modules alone, and says what is wrong with one', async () => {
  const page = await browser.newPage();
  const errors: Error[] = [];
  page.on('pageerror', (error) => errors.push(error));
  await page.goto(`${url}withoutBundler.html`);
  const worn = fileURLToPath(new URL('../../examples/recordings/worn.csv', import.meta.url));
  await page.setInputFiles('#file', worn);
  await expect.poll(() => page.textContent('#answer')).toBe(verdictMeanings.fail);
  await expect.poll(() => page.locator('#trace svg .finding').count()).toBeGreaterThan(0);
  await page.setInputFiles('#file', {
    name: 'none.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('no numbers here'),
  });
  await expect.poll(() => page.textContent('#answer')).toContain('number');
  expect(errors).toEqual([]);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { openPage, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));

/** Gzipped, KB, of the scripts among addresses, each once. */
function scriptSize(asked: readonly string[]): number {
  const site = inject('site');
  const paths = [...new Set(asked)]
    .filter((url) => url.startsWith(site) && url.endsWith('.js'))
    .map((url) => url.slice(site.length));
  const size = (path: string) =>
    gzipSync(readFileSync(join(built, path)), { level: 9 }).length / 1024;
  return paths.reduce((sum, path) => sum + size(path), 0);
}

/** Each calculator that computes something: how many workings it has at first, an entry with another text, and a line that then stands there. */
const calculators: readonly (readonly [
  path: string,
  count: number,
  entry: string,
  text: string,
  line: string,
])[] = [
  ['find-the-terminals', 2, 'ABclosed', '5.01 kΩ', '5.01 kΩ'],
  ['plan-the-hook-up', 9, 'wiperCurrent', '1 mA', '1 mA'],
  ['expected-readings', 6, 'limiter', '2 kΩ', '2 kΩ'],
  ['which-instrument', 6, 'stroke', '0.7 s', '7 ms'],
  ['make-dirt-visible', 2, 'dirt', '22 kΩ', '22 kΩ'],
  ['set-the-closed-position', 1, 'turned', '3.1°', '3.1°'],
  ['supply-and-ground-drop', 1, 'sensorGround', '50 mV', '50 mV'],
  ['bench-to-vehicle', 2, 'benchReading', '510 mV', '510 mV'],
  ['temperature-now', 1, 'now', '30 °C', '30 °C'],
  ['ice-and-boiling', 3, 'iceOhms', '6.1 kΩ', '6.1'],
  ['cold-soak', 1, 'oneOhms', '2.75 kΩ', '4.4 K'],
  ['pressure-sensor', 9, 'supply', '5.1 V', '5.1 V'],
  ['coil', 2, 'feed', '10 V', '10 V'],
  ['two-states', 6, 'atRest', '1.1 V', '1.1 V'],
];

const opened = async (page: Page): Promise<void> => {
  await page.locator('details.workings > summary').click();
  await page.locator('.workings .working math').first().waitFor();
};

/** Unfolds every working. */
const unfoldAll = (page: Page): Promise<void> =>
  page.locator('.workings .working').evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true;
  });

test.each(calculators)(
  '%s shows its working when it is asked for, and not before',
  async (path, count, entry, text, line) => {
    const { page, asked, complaints } = await openPage(browser, `calculators/${path}/`, {
      viewport: { width: 390, height: 900 },
    });
    expect(await page.locator('.workings .working').count()).toBe(0);
    const before = scriptSize(asked);
    await opened(page);
    const added = scriptSize(asked) - before;
    console.log(
      `${path}: its working brings ${added.toFixed(1)} KB of script (holds: at most 28, goal: at most 70)`,
    );
    expect(added).toBeGreaterThan(5);
    expect(added).toBeLessThanOrEqual(28);
    expect(await page.locator('.workings .working').count()).toBe(count);
    await unfoldAll(page);
    expect(await violationsOf(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    const all = page.locator('.workings');
    const shown = async () => (await all.textContent())?.replaceAll(/\s+/g, ' ');
    expect(await shown()).not.toContain(line);
    await page.locator(`[name="${entry}"]`).fill(text);
    await expect.poll(shown).toContain(line);
    await page.locator(`[name="${entry}"]`).fill('much');
    await page.locator('.workings').getByText('Mend the entries above first.').waitFor();
    expect(complaints).toEqual([]);
  },
);

/** Nothing is computed there, or it has a test of its own. */
const others = [
  'check-a-sweep',
  'fit-a-curve',
  'potentiometer-or-not',
  'trouble-code',
  'watch-a-sweep',
];

test('no calculator is left out', () => {
  const pages = readdirSync(join(built, 'calculators'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  expect([...calculators.map(([path]) => path), ...others].sort()).toEqual(pages.sort());
});

test('fit-a-curve shows its working of three points, and says that none is written of more', async () => {
  const { page, complaints } = await openPage(browser, 'calculators/fit-a-curve/');
  await page.locator('details.workings > summary').click();
  await page.locator('.workings').getByText('No working is written').waitFor();
  for (const name of ['temperature4', 'ohms4', 'temperature5', 'ohms5'])
    await page.locator(`[name="${name}"]`).fill('');
  await page.locator('.workings .working math').first().waitFor();
  await unfoldAll(page);
  expect(await violationsOf(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a judged sweep shows how it came about, and its report has that as an appendix', async () => {
  const { page, complaints } = await openPage(browser, 'calculators/check-a-sweep/', {
    viewport: { width: 390, height: 900 },
    acceptDownloads: true,
  });
  await page.getByRole('button', { name: /demo/ }).click();
  const worn = page.locator('.judged', { hasText: 'worn' });
  await worn.locator('details.workings > summary').click();
  const titles = worn.locator('.workings .working > summary');
  await titles.first().waitFor();
  const said = await titles.allTextContents();
  expect(said).toContain('Closed reading, beside its limits');
  expect(said).toContain('What speaks for track, connection and interference');
  expect(said.some((title) => /^A dropout at 5\.9/.test(title))).toBe(true);
  await unfoldAll(page);
  expect(await violationsOf(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  const kept = async (): Promise<string> => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: /Keep the report|Save the report/ }).click(),
    ]);
    // The browser runs by itself: what it kept is fetched from it.
    return await text(await download.createReadStream());
  };
  expect(await kept()).not.toContain('<math');
  await page.getByRole('checkbox', { name: /how the numbers come about/ }).check();
  const html = await kept();
  expect(html).toContain('Appendix: how the numbers come about');
  expect(html).toContain('<math displaystyle="true">');
  expect(complaints).toEqual([]);
});

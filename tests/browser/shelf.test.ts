import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, scriptsRun, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const judging = 'calculators/check-a-sweep/';
const worn = 'examples/recordings/worn.csv';
const sound = 'examples/recordings/sound.csv';
/** Entries that say of the bench what the demo's job says. */
const asDemo = '#v1&openPosition=88+%25';

async function open(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject('site') + path);
  await scriptsRun(page);
  return page;
}

/** Keeps a sensor of this name, entered as the demo's bench. */
async function keepSensor(page: Page, name: string): Promise<void> {
  await page.locator('.job-entries > summary').click();
  await page.locator('.keep-on-shelf > summary').click();
  const fields = page.locator('.keep-on-shelf');
  await fields.getByLabel('Name').fill(name);
  await fields.getByLabel('Serial number').fill('S-12');
  await fields.getByRole('button', { name: 'Keep this sensor on the shelf' }).click();
}

async function savedShelf(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the shelf as a file' }).click(),
  ]);
  return await text(await download.createReadStream());
}

const openFile = (page: Page, content: string) =>
  page.setInputFiles('.shelf input[type=file]', {
    name: 'sensors.shelf.json',
    mimeType: 'application/json',
    buffer: Buffer.from(content),
  });

test('a sensor is kept once and chosen from then on; its results come to it, are compared, saved and opened elsewhere', async () => {
  const context = await newVisitor(browser);
  const page = await open(context, judging + asDemo);
  await keepSensor(page, 'Port engine');
  await page.setInputFiles('.drop input[type=file]', sound);
  // What was kept as one's own is one's own.
  await expect.poll(() => page.locator('.answer').textContent()).toMatch(/Pass sound\.csv/);
  await expect
    .poll(() => page.locator('.notice').allTextContents())
    .toContain('This result is kept with the sensor on the shelf.');

  const later = await open(context, judging);
  await later.setInputFiles('.drop input[type=file]', worn);
  await later.locator('#shelf-sensor option', { hasText: 'Port engine (S-12)' }).waitFor({
    state: 'attached',
  });
  expect(await violationsOf(later)).toEqual([]);
  await later.selectOption('#shelf-sensor', { label: 'Port engine (S-12)' });
  await expect.poll(() => later.locator('.answer').textContent()).toMatch(/Fail worn\.csv/);
  await expect.poll(() => later.locator('.notice').count()).toBe(1);
  // The record knows it too.
  await expect.poll(() => later.inputValue('#filing-serial')).toBe('S-12');

  const shelf = await open(context, 'shelf/');
  const rows = shelf.locator('.shelf-sensor tbody tr');
  await expect.poll(() => rows.count()).toBe(2);
  expect(await rows.first().textContent()).toMatch(/Fail.*V.*worn\.csv/s);
  expect(await shelf.locator('.seasons circle').count()).toBe(4);
  await shelf.getByText('Compared with the one before').click();
  await expect
    .poll(() => shelf.locator('.shelf-sensor li').allTextContents())
    .toEqual(expect.arrayContaining([expect.stringMatching(/^Verdict: Pass, then Fail/)]));
  expect((await shelf.locator('.shelf-sensor li').allTextContents()).join(' ')).toMatch(
    /5\.9.%: dropout appeared/,
  );
  expect(await violationsOf(shelf)).toEqual([]);
  const saved = await savedShelf(shelf);

  const elsewhere = await open(await newVisitor(browser), 'shelf/');
  await expect.poll(() => elsewhere.locator('.answer').textContent()).toContain('Nothing stands');
  await openFile(elsewhere, saved);
  await expect.poll(() => elsewhere.locator('.notice').textContent()).toContain('1 sensor');
  expect(await savedShelf(elsewhere)).toBe(saved);
  // Once more is the same once more.
  await openFile(elsewhere, saved);
  await expect.poll(() => elsewhere.locator('.shelf-sensor').count()).toBe(1);
  expect(await savedShelf(elsewhere)).toBe(saved);
  await openFile(elsewhere, await readFile('examples/outboard-sensor.job.json', 'utf8'));
  await expect.poll(() => elsewhere.locator('.notice').textContent()).toContain('no shelf');
});

/** Writes into the page's database as it is. */
const put = (page: Page, key: string, value: unknown, version = 1) =>
  page.evaluate(
    ([id, stored, of]) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('truesweep-shelf', of as number);
        opening.onupgradeneeded = () => {
          if (!opening.result.objectStoreNames.contains('sensors'))
            opening.result.createObjectStore('sensors');
        };
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const step = opening.result.transaction('sensors', 'readwrite');
          step.objectStore('sensors').put(stored, id as string);
          step.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    [key, value, version] as const,
  );

const sensor = {
  id: 'one',
  name: 'Starboard',
  serial: '',
  machine: '',
  note: '',
  changedAt: '2026-01-01T00:00:00.000Z',
  texts: {},
  results: [],
};

test('a damaged entry is told and can be saved; the others are read', async () => {
  const page = await open(await newVisitor(browser), 'shelf/');
  await put(page, 'one', sensor);
  await put(page, 'two', { name: 7, was: 'something' });
  await page.reload();
  await expect.poll(() => page.locator('.shelf-sensor').count()).toBe(1);
  expect(await page.locator('.damaged').textContent()).toContain('can’t be read');
  expect(await violationsOf(page)).toEqual([]);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save it as a file' }).click(),
  ]);
  expect(JSON.parse(await text(await download.createReadStream()))).toEqual({
    name: 7,
    was: 'something',
  });
});

test('what a newer version keeps is left as it is, and that is said', async () => {
  const page = await open(await newVisitor(browser), 'shelf/');
  await put(page, 'one', sensor, 2);
  await page.reload();
  await expect.poll(() => page.locator('.refusal').textContent()).toContain('newer version');
  await openFile(page, '{"kind":"truesweep-shelf","version":1,"sensors":[]}');
  await expect.poll(() => page.locator('.refusal').textContent()).toContain('nothing was changed');
});

test('two tabs do not undo what the other wrote', async () => {
  const context = await newVisitor(browser);
  const one = await open(context, 'shelf/');
  await put(one, 'one', sensor);
  await one.reload();
  const other = await open(context, 'shelf/');
  await other.locator('.shelf-sensor > details > summary').last().click();
  await one.locator('.shelf-sensor > details > summary').last().click();
  await other.getByLabel('Serial number').fill('S-1');
  await expect.poll(() => one.locator('.shelf-sensor > p').first().textContent()).toContain('S-1');
  await one.getByLabel('Note').fill('cleaned');
  await expect
    .poll(() => other.locator('.shelf-sensor > p').first().textContent())
    .toMatch(/S-1 · cleaned/);
});

test('where the storage is full nothing is changed, and that is said', async () => {
  const context = await newVisitor(browser);
  await context.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const page = await open(context, judging + asDemo);
  await keepSensor(page, 'Port engine');
  await expect
    .poll(() => page.locator('.keep-on-shelf .refusal').textContent())
    .toContain('no room left');
});

test('every calculator takes the parts from the shelf', async () => {
  const context = await newVisitor(browser);
  const kept = await open(context, 'shelf/');
  await put(kept, 'one', { ...sensor, texts: { track: '4k7', source: '5 V', flexedFrom: '' } });
  for (const name of ['plan-the-hook-up', 'expected-readings', 'which-instrument']) {
    const page = await open(context, `calculators/${name}/`);
    await page.fill('#entry-source', '9 V');
    await page.getByRole('button', { name: 'Take the parts from the shelf' }).click();
    await page.locator('#shelf-sensor option', { hasText: 'Starboard' }).waitFor({
      state: 'attached',
    });
    await page.selectOption('#shelf-sensor', { label: 'Starboard' });
    expect(await page.inputValue('#entry-track'), name).toBe('4k7');
    expect(await page.inputValue('#entry-source'), name).toBe('5 V');
    expect(await violationsOf(page)).toEqual([]);
  }
});

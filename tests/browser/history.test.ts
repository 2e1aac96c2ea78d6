import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { scoreSweep } from '@truesweep/core';
import type { HistoryRecord } from '@truesweep/history';
import { jobCriteria, jobExpectation, parseJob, readJobRecording } from '@truesweep/jobs';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, openPage, openPageOf, scriptsRun, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const address = 'history/';

/** A record of each season from 2022 on. */
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
const drifting = [0.5, 0.511, 0.519, 0.53].map((volts, i) => record('Tender', i, volts));
const still = [0.501, 0.5, 0.502, 0.5].map((volts, i) => record('A spare', i, volts));
const lines = (records: readonly unknown[]) =>
  records.map((one) => `${JSON.stringify(one)}\n`).join('');

async function give(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  const files = Object.entries(texts).map(([name, text]) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  }));
  await page.setInputFiles('.history input[type=file]', files);
}

const sensors = (page: Page) => page.locator('.history .history-list tbody tr');
const status = (page: Page) => page.locator('.history > [role=status]').last().textContent();
const part = (page: Page, label: string) =>
  page.locator('.history').getByRole('region', { name: label, exact: true });

test('before any script runs it shows an example, told as one, with a change and none', async () => {
  const { page } = await openPage(browser, address, { javaScriptEnabled: false });
  const example = page.locator('.history-example');
  expect(await example.locator('h2').first().textContent()).toBe('An example, not yours');
  expect(await example.locator('.history-list tbody tr').allTextContents()).toEqual([
    expect.stringMatching(/^Port engine52022-04-112026-04-13.*closed$/),
    expect.stringMatching(/^Starboard engine52022-04-112026-04-13.*none told$/),
  ]);
  const [port, starboard] = await example.locator('.history-sensor').allTextContents();
  expect(port).toMatch(/Rises by 0\.\d+ ± 0\.\d+ % of the span a year/);
  expect(starboard).not.toMatch(/Rises|Falls/);
});

test('files take the place of the example until they are forgotten; what is damaged is told and loses nothing', async () => {
  const { page, complaints, asked } = await openPage(browser, address);
  await give(page, {
    'season.jsonl': `${lines(drifting)}{"cut\n${lines(still)}`,
    'other.csv': 'time,signal\n0,1\n',
  });
  await expect.poll(() => sensors(page).count()).toBe(2);
  const said = await status(page);
  expect(said).toContain('season.jsonl: 8 records.');
  expect(said).toContain('season.jsonl, line 5: This line is no JSON. It is left out.');
  expect(said).toContain('other.csv: This is no file of results');
  expect(await page.locator('.history-example').isVisible()).toBe(false);
  // What changed comes first.
  expect(await sensors(page).allTextContents()).toEqual([
    expect.stringMatching(/^Tender42022-05-032025-05-03.*closed$/),
    expect.stringMatching(/^A spare42022-05-032025-05-03.*none told$/),
  ]);
  expect(await page.locator('.history .answer').textContent()).toBe(
    'Of 1 of 2 sensors a change is told.',
  );
  expect(await violationsOf(page)).toEqual([]);
  // More is taken besides; another record of a recording takes the place of the first.
  await give(page, { 'more.jsonl': lines([record('A spare', 4, 0.501), drifting[0]]) });
  await expect
    .poll(() => sensors(page).last().textContent())
    .toMatch(/^A spare52022-05-032026-05-03/);
  expect(await sensors(page).first().textContent()).toMatch(/^Tender4/);
  await give(page, { 'nothing.jsonl': '' });
  await expect.poll(() => status(page)).toContain('nothing.jsonl: 0 records.');
  expect(await sensors(page).count()).toBe(2);
  await page.getByRole('button', { name: 'Forget the files' }).click();
  await expect.poll(() => page.locator('.history-example').isVisible()).toBe(true);
  expect(await sensors(page).count()).toBe(0);
  expect(asked.filter((url) => !url.startsWith(inject('site')))).toEqual([]);
  expect(complaints).toEqual([]);
});

test('files are dropped too', async () => {
  const { page } = await openPage(browser, address);
  await page.locator('.history .drop').evaluate((place, text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], 'dropped.jsonl'));
    place.dispatchEvent(new DragEvent('drop', { bubbles: true, dataTransfer }));
  }, lines(drifting));
  // There is nothing to choose from one.
  await expect
    .poll(() => page.locator('.history #history-sensor').allTextContents())
    .toEqual(['Tender']);
});

test('a sensor is chosen by the keyboard; a change is drawn with its forecast and limits, and none where none is told', async () => {
  const { page } = await openPage(browser, address);
  await give(page, { 'season.jsonl': lines([...drifting, ...still]) });
  await expect.poll(() => sensors(page).count()).toBe(2);
  await page.getByRole('button', { name: 'Tender' }).focus();
  await page.keyboard.press('Enter');
  const heading = page.locator('.history #history-sensor');
  await expect.poll(() => heading.allTextContents()).toEqual(['Tender']);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('history-sensor');
  const closed = part(page, 'Closed reading');
  const text = await closed.locator('> p').first().textContent();
  expect(text).toMatch(/^Rises by 0\.2\d ± 0\.\d+ % of the span a year \(4 recordings/);
  const drawing = closed.getByRole('img', { name: 'Closed reading' });
  expect(await drawing.locator('.band.ahead').count()).toBe(1);
  expect(await drawing.locator('.limit').count()).toBe(2);
  expect(await drawing.locator('.dots').getAttribute('d')).toMatch(/^(M[\d.]+,[\d.]+h0){4}$/);
  const described = await drawing.locator('desc').textContent();
  expect(described).toContain('4 values from 2022-05-03 to 2025-05-03, from 0');
  expect(described).toContain('The forecast for 2028-05-03 is +1.');
  expect(described).toMatch(/The limits are −1\.5\s% and \+1\.5\s%\.$/);
  const rows = page.locator('.history .history-sensor > table tbody tr');
  expect(await rows.allTextContents()).toEqual([
    expect.stringMatching(/^2025-05-03.*Pass530\.0\smV4\.501\sV–1\.0\smV–$/),
    expect.stringMatching(/^2024-05-03/),
    expect.stringMatching(/^2023-05-03/),
    expect.stringMatching(/^2022-05-03/),
  ]);
  const hysteresis = part(page, 'Closed reading by hand less by spring');
  expect(await hysteresis.textContent()).toContain('0 values so far.');
  expect(await hysteresis.locator('svg').count()).toBe(0);
  expect(await violationsOf(page)).toEqual([]);

  await page.getByRole('button', { name: 'Back to the sensors' }).press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('find-sensor');
  await page.keyboard.type('spare');
  await expect.poll(() => sensors(page).count()).toBe(1);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => heading.allTextContents()).toEqual(['A spare']);
  expect(await closed.textContent()).toContain('No change that these recordings can show');
  expect(await drawing.locator('.fitted').count()).toBe(1);
  expect(await drawing.locator('.ahead').count()).toBe(0);
  await page.fill('#find-sensor', 'nobody');
  await expect.poll(() => sensors(page).count()).toBe(0);
  expect(await page.getByText('No sensor has that in its name.').count()).toBe(1);
});

/** A shelf with one sensor whose worn recording was judged in three seasons; and an entry that can't be read. */
async function shelfEntries(): Promise<readonly unknown[]> {
  const job = parseJob(JSON.parse(await readFile('examples/outboard-sensor.job.json', 'utf8')));
  const bytes = await readFile('examples/recordings/worn.csv');
  const { sweep, recorder } = readJobRecording(bytes, { file: 'worn.csv' }, job);
  const score = scoreSweep(sweep, jobExpectation(job), recorder, jobCriteria(job));
  const results = ['2024', '2025', '2026'].map((year) => ({
    at: `${year}-04-02T10:00:00.000Z`,
    recording: 'worn.csv',
    sha256: year.padStart(64, '0'),
    verdict: score.verdict,
    said: 'Found worn.',
    restsOn: [],
    score: JSON.parse(JSON.stringify(score)),
  }));
  const changedAt = '2026-04-02T10:00:00.000Z';
  const sensor = { id: 'one', name: 'Port engine', serial: 'S-12', machine: '', note: '' };
  return [{ ...sensor, changedAt, texts: {}, results }, { name: 7 }];
}

test('what stands on the shelf is there at once, and goes with it', async () => {
  const visitor = await newVisitor(browser);
  const { page: shelf } = await openPageOf(visitor, 'shelf/');
  await expect.poll(() => shelf.locator('.answer').count()).toBe(1);
  await shelf.evaluate(
    (entries) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('truesweep-shelf', 1);
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const step = opening.result.transaction('sensors', 'readwrite');
          for (const [i, entry] of entries.entries())
            step.objectStore('sensors').put(entry, ['one', 'two'][i] as string);
          step.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    await shelfEntries(),
  );
  const { page, complaints } = await openPageOf(visitor, address);
  await expect
    .poll(() => sensors(page).allTextContents())
    .toEqual([expect.stringMatching(/^S-1232024-04-022026-04-02.*Fail/)]);
  expect(await page.locator('.history-sensor > table').first().textContent()).toMatch(
    /2026-04-02 \(judged then\).*dropout, \d+\s% at 5\.9\s%/,
  );
  expect(await status(page)).toContain('An entry that can’t be read.');
  // A file of results beside it.
  await give(page, { 'season.jsonl': lines(drifting) });
  await expect.poll(() => sensors(page).count()).toBe(2);
  await page.getByRole('button', { name: 'Forget the files' }).click();
  await expect.poll(() => sensors(page).count()).toBe(1);
  // What another tab takes off the shelf goes here too.
  await shelf.reload();
  await scriptsRun(shelf);
  const own = shelf.locator('.shelf-sensor', { hasText: 'Port engine' });
  await own.locator('> details > summary').last().click();
  await own.getByRole('button', { name: 'Take it off the shelf' }).click();
  await own.getByRole('button', { name: /^Sure/ }).click();
  await expect.poll(() => page.locator('.history-example').isVisible()).toBe(true);
  expect(complaints).toEqual([]);
});

test('of 2,000 sensors of 8,000 records fifty are listed at a time, found by name, and the page answers meanwhile', async () => {
  const { page } = await openPage(browser, address);
  const many = Array.from({ length: 2000 }, (_, i) =>
    [0, 1, 2, 3].map((season) =>
      record(`Sensor ${i}`, season, 0.5 + 0.001 * ((i * 7 + season * 3) % 5)),
    ),
  ).flat();
  await page.evaluate(() => {
    const held = { longest: 0 };
    Object.assign(window, { held });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) held.longest = Math.max(held.longest, duration);
    }).observe({ type: 'longtask' });
  });
  const begun = Date.now();
  // From a disk, as people have it: handing megabytes into the page would hold it up by itself.
  const folder = await mkdtemp(join(tmpdir(), 'truesweep-history-page-'));
  const file = join(folder, 'many.jsonl');
  await writeFile(file, lines(many));
  await page.setInputFiles('.history input[type=file]', file);
  await expect
    .poll(() => page.locator('.history').textContent(), { timeout: 60_000 })
    .toContain('of 2000 sensors');
  const seconds = (Date.now() - begun) / 1000;
  expect(await sensors(page).count()).toBe(50);
  await page.getByRole('button', { name: 'Show more sensors' }).click();
  await expect.poll(() => sensors(page).count()).toBe(100);
  await page.fill('#find-sensor', 'sensor 1999');
  await expect.poll(() => sensors(page).count()).toBe(1);
  const longest = await page.evaluate(
    () => (window as unknown as { held: { longest: number } }).held.longest,
  );
  console.log(
    `8,000 records: listed after ${seconds.toFixed(1)} s, longest task of the page ${longest.toFixed(0)} ms (holds: at most 200)`,
  );
  await rm(folder, { recursive: true });
  expect(longest).toBeLessThan(200);
});

test('of one sensor with 2,000 records the newest are listed, more when asked for, and the drawings hold the extremes', async () => {
  const { page } = await openPage(browser, address);
  const day = 86_400_000;
  const many = Array.from({ length: 2000 }, (_, i) => ({
    ...record('Tender', i, i === 777 ? 0.52 : 0.5 + 0.001 * ((i * 7) % 5)),
    date: new Date(Date.UTC(2020, 0, 1) + i * day).toISOString().slice(0, 10),
  }));
  await give(page, { 'many.jsonl': lines(many) });
  const rows = page.locator('.history .history-sensor > table tbody tr');
  await expect.poll(() => rows.count()).toBe(12);
  await page.getByRole('button', { name: 'Show more records' }).click();
  await expect.poll(() => rows.count()).toBe(62);
  expect(await page.locator('.history .history-sensor').textContent()).toContain(
    'The newest 200 of 2000 records are listed; what changed is told of all.',
  );
  const closed = part(page, 'Closed reading');
  expect(await closed.textContent()).toContain('Of 2000 values the lowest and the highest');
  const drawn = await closed.locator('.dots').getAttribute('d');
  expect(drawn?.match(/M/g)?.length).toBeLessThanOrEqual(602);
  expect(await closed.locator('desc').textContent()).toMatch(
    /^2000 values from 2020-01-01 to 2025-06-22, from 0\s% to \+0\.5\s%/,
  );
});

test('on a phone nothing is too wide, with long names and files too', async () => {
  const { page } = await openPage(browser, address, { viewport: { width: 390, height: 780 } });
  const named = drifting.map((one) => ({ ...one, sensor: 'Tender'.repeat(12) }));
  await give(page, { [`${'season'.repeat(12)}.jsonl`]: `${lines(named)}{"cut\n` });
  await expect.poll(() => page.locator('.history #history-sensor').count()).toBe(1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

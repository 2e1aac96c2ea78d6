import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, openPage, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const path = 'calculators/check-a-sweep/';
const job = 'examples/outboard-sensor.job.json';
const sound = 'examples/recordings/sound.csv';
const worn = 'examples/recordings/worn.csv';
/** Entries that say of the bench what the demo's job says. */
const asDemo = '#v1&openPosition=88+%25';

const given = (name: string, content: string | Buffer) => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(content),
});

const answerOf = async (page: Page) => (await page.locator('.answer').textContent()) ?? '';
const choose = (page: Page, files: Parameters<Page['setInputFiles']>[1]) =>
  page.setInputFiles('.drop input[type=file]', files);
const mine = (page: Page) => page.getByRole('button', { name: 'Judge with this sensor' });
const restsOn = (page: Page) => page.locator('.rests-on').first();

/** What a person sees of any verdict, wherever on the page it stands. */
async function verdictsSeen(page: Page): Promise<readonly string[]> {
  const boxes = await page.locator('.verdict-card:visible').allTextContents();
  const words = (await answerOf(page)).match(/\b(Pass|Marginal|Fail|Inconclusive)\b/g) ?? [];
  return [...boxes, ...words];
}

test('one’s own recording is not judged by the example in the entries, but once they are said to be one’s own', async () => {
  const { page, complaints } = await openPage(browser, path);
  await choose(page, [worn]);
  await expect.poll(() => answerOf(page)).toContain('No verdict yet');
  // Longer than it takes to judge.
  await page.waitForTimeout(2000);
  expect(await verdictsSeen(page)).toEqual([]);
  expect(await page.locator('#entry-source').isVisible()).toBe(true);
  expect(await violationsOf(page)).toEqual([]);
  await mine(page).click();
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv/);
  for (const value of [
    /Source\s*5.V ± 1.%/,
    /Limiting resistor\s*1.kΩ ± 5.%/,
    /throttle closed\s*10.% ± 2.%/,
    /Closed reading must lie in/,
  ])
    expect(await restsOn(page).textContent()).toMatch(value);
  expect(await violationsOf(page)).toEqual([]);
  expect(await mine(page).count()).toBe(0);
  expect(complaints).toEqual([]);
});

test('numbers in another unit get no verdict, and one tap reads them in a unit that fits', async () => {
  const { page, complaints } = await openPage(browser, path + asDemo);
  const rows = (await readFile(sound, 'utf8')).trimEnd().split('\n');
  const inMillivolts = rows.map((row) => {
    const [time, signal, ...more] = row.split(',');
    const volts = Number(signal);
    return Number.isFinite(volts) && volts !== 0
      ? [time, (1000 * volts).toFixed(3), ...more].join(',')
      : row.replace(/\bm?V\b/g, 'V');
  });
  await choose(page, [given('logger.csv', `${inMillivolts.join('\n')}\n`)]);
  await mine(page).click();
  await expect.poll(() => answerOf(page)).toMatch(/Inconclusive logger\.csv/);
  expect(await answerOf(page)).toContain('The readings can’t be volts of this hook-up');
  expect(await violationsOf(page)).toEqual([]);
  await page.getByRole('button', { name: 'Read the signal in mV' }).click();
  await expect.poll(() => answerOf(page)).toMatch(/Pass logger\.csv/);
  expect(await answerOf(page)).toContain('1 snap (3 are asked for)');
  expect(await restsOn(page).textContent()).toMatch(/Unit of the signal, as told here\s*mV/);
  expect(await page.getByRole('button', { name: /^Read the signal/ }).count()).toBe(0);
  expect(complaints).toEqual([]);
});

test('a verdict is gone at once when an entry changes, and the recording is judged anew by what stands there', async () => {
  const { page } = await openPage(browser, path + asDemo);
  await choose(page, [sound]);
  await mine(page).click();
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  await page.fill('#entry-closedPosition', '3 %');
  expect(await verdictsSeen(page)).toEqual([]);
  expect(await page.getByRole('button', { name: 'Keep the report' }).count()).toBe(0);
  await expect.poll(() => answerOf(page)).toMatch(/Fail sound\.csv/);
  expect(await restsOn(page).textContent()).toMatch(/throttle closed\s*3.%/);
  await page.fill('#entry-closedPosition', '300 %');
  await expect.poll(() => answerOf(page)).toMatch(/^No answer yet/);
  expect(await verdictsSeen(page)).toEqual([]);
  await page.fill('#entry-closedPosition', '10 %');
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  await page.getByRole('button', { name: 'Start again' }).click();
  expect(await verdictsSeen(page)).toEqual([]);
  await expect.poll(() => answerOf(page)).toContain('No verdict yet');
});

test('a link that is followed while a verdict stands takes the verdict away', async () => {
  const { page } = await openPage(browser, path + asDemo);
  await choose(page, [sound]);
  await mine(page).click();
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  await page.evaluate(() => {
    location.hash = '#v1&closedPosition=3+%25';
  });
  await expect.poll(() => answerOf(page)).toContain('No verdict yet');
  expect(await mine(page).isVisible()).toBe(true);
});

test('leaving the job for the entries takes the verdict by the job away', async () => {
  const { page } = await openPage(browser, path);
  await choose(page, [job, sound]);
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  await page.getByRole('button', { name: /entries instead/ }).click();
  await expect.poll(() => answerOf(page)).toContain('No verdict yet');
  expect(await verdictsSeen(page)).toEqual([]);
});

test("the demo's job does not judge one's own recording", async () => {
  const { page } = await openPage(browser, path);
  await page.getByRole('button', { name: /demo/ }).click();
  await expect.poll(() => answerOf(page)).toMatch(/not yours.*Fail worn\.csv/s);
  await page.locator('.trace-view svg').first().waitFor();
  await choose(page, [sound]);
  await expect.poll(() => answerOf(page)).toContain('No verdict yet');
  expect(await verdictsSeen(page)).toEqual([]);
});

test('beside what is wrong with a file no verdict stands, neither the demo’s nor one’s own', async () => {
  const { page } = await openPage(browser, path);
  const jobFile = given('a.job.json', await readFile(job));
  const wrong = given('picture.png', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]));
  await choose(page, [jobFile, wrong]);
  await expect.poll(() => page.locator('.answer .refusal').count()).toBe(1);
  expect(await verdictsSeen(page)).toEqual([]);
  await choose(page, [job, sound]);
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  await choose(page, [jobFile, wrong]);
  await expect.poll(() => page.locator('.answer .refusal').count()).toBe(1);
  expect(await verdictsSeen(page)).toEqual([]);
});

test.each([
  ['spreadsheet', 'sweep.xlsx', 'PK\x03\x04xxxx', /is a spreadsheet.*save the sheet as CSV/],
  ['damaged recording', 'sweep.csv', 'time (ms),wiper (V)\n0,0.4\n1,x\n', /sweep\.csv, line 3/],
] as const)(
  'a %s chosen alone is told for what it is, and nothing is judged',
  async (_, name, content, said) => {
    const { page } = await openPage(browser, path);
    await choose(page, [given(name, Buffer.from(content, 'latin1'))]);
    await expect.poll(() => page.locator('.look .refusal').textContent()).toMatch(said);
    expect(await page.locator('.verdict-card:visible').count()).toBe(0);
    expect(await page.locator('.which-sensor').count()).toBe(0);
    expect(await violationsOf(page)).toEqual([]);
  },
);

async function keptReport(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Keep the report' }).click(),
  ]);
  return await text(await download.createReadStream());
}

test("the page's own report opens, whatever it is called, with its values and its recordings judged again", async () => {
  const { page, complaints } = await openPage(browser, path);
  await choose(page, [job, worn]);
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv/);
  const html = await keptReport(page);

  const again = await openPage(browser, path);
  await choose(again.page, [given('last season.txt', html)]);
  await expect
    .poll(() => answerOf(again.page))
    .toMatch(/Opened from the report written 20.*Fail worn\.csv.*scored again/s);
  await again.page.locator('.trace-view svg').first().waitFor();
  expect(await restsOn(again.page).textContent()).toMatch(/throttle open\s*88.%/);
  expect(await keptReport(again.page)).toBe(html);

  const changed = html.replace('"verdict":"fail"', '"verdict":"pass"');
  expect(changed).not.toBe(html);
  await choose(again.page, [given('report.html', changed)]);
  await expect.poll(() => answerOf(again.page)).toMatch(/do not rely on the report/);
  expect(await again.page.locator('.verdict-card:visible').allTextContents()).toEqual([
    expect.stringMatching(/^Fail/),
  ]);

  await choose(again.page, [given('report.html', html), given('a.csv', 't,V\n0,1\n')]);
  await expect.poll(() => answerOf(again.page)).toContain('by itself');
  await choose(again.page, [given('page.html', '<!doctype html><p>Hello</p>')]);
  await expect.poll(() => answerOf(again.page)).toMatch(/no report of this program.*no-report/);
  expect(await verdictsSeen(again.page)).toEqual([]);
  expect([...complaints, ...again.complaints]).toEqual([]);
});

test('a report without samples is shown and said not to be checked again', async () => {
  const { page } = await openPage(browser, path);
  await choose(page, [job, worn]);
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv/);
  const html = await keptReport(page);
  const lean = html.replace(/,"samples":\{[^}]*\}/, '');
  expect(lean.length).toBeLessThan(html.length);
  await choose(page, [given('report.html', lean)]);
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv.*shown, not re-checked/s);
  await page.locator('.trace-view svg').first().waitFor();
});

/** A page in which something is done before any script runs. */
async function openAfter(script: () => void, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await newVisitor(browser, options);
  await context.addInitScript(script);
  const page = await context.newPage();
  await page.goto(inject('site') + path);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  return page;
}

test("without a worker the page says so, and the demo's verdicts don't stay", async () => {
  const page = await openAfter(() => {
    Reflect.deleteProperty(window, 'Worker');
  });
  await choose(page, [job, worn]);
  await expect.poll(() => answerOf(page)).toContain('starts no worker');
  expect(await verdictsSeen(page)).toEqual([]);
});

/** Lets the page's worker be the built one with a script of ours behind it. */
async function changeWorker(page: Page, script: string): Promise<void> {
  await page.route(/checkSweep\.worker/, async (route) => {
    const response = await route.fetch();
    await route
      .fulfill({ response, body: `${await response.text()}\n${script}` })
      // Who asked may be gone meanwhile.
      .catch(() => {});
  });
}

test('where the worker ends without a word the page is not busy for ever', async () => {
  const { page } = await openPage(browser, path);
  await changeWorker(
    page,
    "self.onmessage = () => {}; addEventListener('message', () => setTimeout(() => self.close(), 500));",
  );
  await choose(page, [job, worn]);
  await expect.poll(() => answerOf(page)).toContain('broke off');
  expect(await page.locator('[aria-busy=true]').count()).toBe(0);
  await page.unroute(/checkSweep\.worker/);
  await page.getByRole('button', { name: 'Judge again' }).click();
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv/);
});

test('judging can be stopped, and begun again', async () => {
  const { page } = await openPage(browser, path);
  await changeWorker(page, 'self.onmessage = () => {};');
  await choose(page, [job, worn]);
  await page.getByRole('button', { name: 'Stop judging' }).click();
  await expect.poll(() => answerOf(page)).toContain('You stopped the judging');
  expect(await verdictsSeen(page)).toEqual([]);
  await page.unroute(/checkSweep\.worker/);
  await page.getByRole('button', { name: 'Judge again' }).click();
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv/);
});

test('a file that was changed or removed since it was chosen is told', async () => {
  const { page } = await openPage(browser, path);
  await changeWorker(
    page,
    "File.prototype.arrayBuffer = () => Promise.reject(new DOMException('gone', 'NotReadableError'));",
  );
  await choose(page, [job, worn]);
  await expect.poll(() => answerOf(page)).toMatch(/can no longer be read.*Choose it again/);
});

test('a link with ten thousand names and a very long file name leave the page readable', async () => {
  const names = Array.from({ length: 10_000 }, (_, i) => `name${'x'.repeat(60)}${i}=1`).join('&');
  const { page } = await openPage(browser, `${path}#v1&${names}`, {
    viewport: { width: 390, height: 800 },
  });
  await expect.poll(() => page.locator('.notice').textContent()).toContain('and 9995 more');
  expect((await page.locator('.notice').textContent())?.length).toBeLessThan(400);
  const long = `${'w'.repeat(240)}.csv`;
  const bytes = await text(createReadStream(worn));
  await choose(page, [given('a.job.json', await readFile(job)), given(long, bytes)]);
  await expect.poll(() => answerOf(page)).toContain('Fail');
  await page.locator('.trace-view svg').first().waitFor();
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);
  // The name doesn't push the verdict's word out of sight.
  const answer = (await page.locator('.answer').boundingBox())!;
  const word = (await page.locator('.answer .verdict-card strong').first().boundingBox())!;
  expect(word.y - answer.y).toBeLessThan(150);
});

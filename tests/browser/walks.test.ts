import { type Browser, chromium, type Locator, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, scriptsRun } from './openPage.js';

// Walks as a technician takes them, with a phone in one hand: every tap and every screen counted.

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const phone = { width: 390, height: 844 };
const worn = 'examples/recordings/worn.csv';

/** A visitor with a phone, and the taps so far. */
async function withPhone() {
  const context = await newVisitor(browser, { viewport: phone, hasTouch: true });
  const page = await context.newPage();
  const walk = { taps: 0, screens: 0 };
  const tap = async (on: Locator) => {
    walk.taps++;
    await on.tap();
  };
  return { context, page, walk, tap };
}

/** Keeps a sensor on the shelf, as a visit before did it. */
async function keepSensor(page: Page): Promise<void> {
  await page.goto(`${inject('site')}calculators/check-a-sweep/#v1&openPosition=88+%25`);
  await scriptsRun(page);
  await page.locator('.job-entries > summary').click();
  await page.locator('.keep-on-shelf > summary').click();
  await page.locator('.keep-on-shelf').getByLabel('Name').fill('Port engine');
  await page.getByRole('button', { name: 'Keep this sensor on the shelf' }).click();
  await page.getByText('Kept on the shelf.').waitFor();
}

test('from the start page to the verdict of one’s own file: at most 6 taps with a sensor from the shelf', async () => {
  const { page, walk, tap } = await withPhone();
  await keepSensor(page);
  await page.goto(inject('site'));
  const begun = performance.now();
  await tap(page.getByRole('link', { name: 'Judge a recording' }));
  await scriptsRun(page);
  // One tap opens the system's chooser, a second one takes the file there.
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    tap(page.locator('.drop input')),
  ]);
  walk.taps++;
  await chooser.setFiles(worn);
  await page.locator('#shelf-sensor option', { hasText: 'Port engine' }).waitFor({
    state: 'attached',
  });
  // One opens the list, one takes the sensor.
  await tap(page.locator('#shelf-sensor'));
  walk.taps++;
  await page.selectOption('#shelf-sensor', { label: 'Port engine' });
  await page.locator('.answer .verdict-card.fail').waitFor();
  const took = performance.now() - begun;
  // The verdict came into view by itself.
  await expect
    .poll(async () => {
      const box = await page.locator('.answer .verdict-card strong').first().boundingBox();
      return box !== null && box.y > 0 && box.y + box.height < phone.height;
    })
    .toBe(true);
  console.log(
    `start page to verdict: ${walk.taps} taps (goal: at most 6), 0 scrolls by hand, ${(took / 1000).toFixed(1)} s with the machine's own time`,
  );
  expect(walk.taps).toBeLessThanOrEqual(6);
}, 60_000);

test('the whole guided way: at most 20 taps, 14 screens of questions, two phone screens a step', async () => {
  const { page, walk, tap } = await withPhone();
  await page.goto(`${inject('site')}guided-way/`);
  await scriptsRun(page);
  const heights: number[] = [];
  const arrive = async () => {
    walk.screens++;
    await page.locator('.way :is(.answer, .ticks, .drop)').first().waitFor();
    await page.waitForTimeout(300);
    heights.push(
      await page.locator('.way').evaluate((element) => element.getBoundingClientRect().height),
    );
  };
  const onward = () => tap(page.locator('.way .onward .main'));
  /** A field is tapped once; its keys are no taps. */
  const enter = async (name: string, value: string) => {
    walk.taps++;
    await page.fill(`#entry-${name}`, value);
  };
  await arrive();
  await onward();
  await arrive();
  await enter('ABclosed', '5k');
  // From field to field leads the keyboard's own key.
  await page.fill('#entry-ACclosed', '1.3k');
  await page.fill('#entry-BCclosed', '5.3k');
  await onward();
  await arrive();
  await enter('ABopen', '5k');
  await page.fill('#entry-ACopen', '5.2k');
  await page.fill('#entry-BCopen', '1.4k');
  for (let i = 0; i < 4; i++) {
    await onward();
    await arrive();
  }
  expect(await page.locator('.way h2').first().textContent()).toBe('Record the sweep');
  for (const task of ['rest', 'passes', 'snaps']) await tap(page.locator(`input[name=${task}]`));
  await onward();
  await arrive();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    tap(page.locator('.drop input')),
  ]);
  walk.taps++;
  await chooser.setFiles(worn);
  await tap(page.getByRole('button', { name: 'Judge with this sensor' }));
  await page.locator('.answer .verdict-card').first().waitFor();
  await onward();
  await arrive();
  await enter('closedLow', '0.4');
  const most = Math.max(...heights);
  console.log(
    `guided way: ${walk.taps} taps (goal: at most 20), ${walk.screens} screens (goal: at most 14), the longest ${(most / phone.height).toFixed(2)} phone screens (goal: at most 2)`,
  );
  expect(walk.taps).toBeLessThanOrEqual(20);
  expect(walk.screens).toBeLessThanOrEqual(14);
  expect(most).toBeLessThanOrEqual(2 * phone.height);
}, 90_000);

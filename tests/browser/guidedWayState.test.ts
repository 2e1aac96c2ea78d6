import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor, scriptsRun, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const sound = 'examples/recordings/sound.csv';

const answerOf = async (page: Page) => (await page.locator('.answer').textContent()) ?? '';
const mine = (page: Page) => page.getByRole('button', { name: 'Judge with this sensor' });

async function openWay(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${inject('site')}guided-way/`);
  await scriptsRun(page);
  return page;
}

async function goTo(page: Page, name: string): Promise<void> {
  await page.locator('.way nav summary').click();
  await page.locator('.way nav button', { hasText: name }).first().click();
  await page.locator('.way :is(.answer, .drop, .ticks)').first().waitFor();
}

/** Unfolds the entries that the step does not ask for. */
const others = (page: Page) => page.getByText('The other values').click();

const openStage = async (options = {}) => openWay(await newVisitor(browser, options));

/** On from what lies on the bench, which is a throttle's potentiometer at first. */
async function beginThrottle(page: Page): Promise<void> {
  await page.locator('.way .onward .main').click();
  await page.locator('#entry-ABclosed').waitFor();
}

/** Enters the readings of a track of 10 kΩ. */
async function measure(page: Page): Promise<void> {
  for (const [name, value] of Object.entries({ AB: '10k', AC: '2k', BC: '9.6k' }))
    await page.fill(`#entry-${name}closed`, value);
  await goTo(page, 'Find the terminals, open');
  for (const [name, value] of Object.entries({ AB: '10k', AC: '9.6k', BC: '2k' }))
    await page.fill(`#entry-${name}open`, value);
}

test('before anything was measured the first step says nothing of the sensor; what is measured goes on by itself', async () => {
  const page = await openStage();
  await beginThrottle(page);
  expect(await answerOf(page)).toContain('No reading yet');
  expect(await answerOf(page)).not.toContain('potentiometer');
  expect(await page.getAttribute('#entry-ABclosed', 'placeholder')).toMatch(/^5.kΩ$/);
  expect(await page.inputValue('#entry-ABclosed')).toBe('');
  expect(await violationsOf(page)).toEqual([]);
  await measure(page);
  await expect.poll(() => answerOf(page)).toContain('Wiper: C');
  await expect
    .poll(() => page.locator('.goes-on').textContent())
    .toMatch(/Goes on to the next steps: track 10.kΩ/);
  await goTo(page, 'Plan the hook-up');
  await expect.poll(() => page.inputValue('#entry-track')).toMatch(/^10.kΩ$/);
  // What one writes oneself stays until something else is measured.
  await others(page);
  await page.fill('#entry-track', '9k');
  await goTo(page, 'Find the terminals, open');
  await expect.poll(() => page.getByRole('button', { name: /^Take over/ }).count()).toBe(1);
  await page.fill('#entry-ABopen', '11k');
  await page.fill('#entry-ACopen', '10.6k');
  await goTo(page, 'Find the terminals, closed');
  await page.fill('#entry-ABclosed', '11k');
  await page.fill('#entry-BCclosed', '10.6k');
  await goTo(page, 'Work out the readings');
  await expect.poll(() => page.inputValue('#entry-track')).toMatch(/^11.kΩ$/);
  // What is no longer measured is no longer carried on.
  await goTo(page, 'Find the terminals, closed');
  await page.getByText('The other values').click();
  for (const name of ['ABclosed', 'ABopen', 'ACclosed', 'ACopen', 'BCclosed', 'BCopen'])
    await page.fill(`#entry-${name}`, '');
  await goTo(page, 'Plan the hook-up');
  await expect.poll(() => page.inputValue('#entry-track')).toMatch(/^5.kΩ$/);
});

test('after refitting nothing is met of a window that nobody entered', async () => {
  const page = await openStage();
  await goTo(page, 'After refitting');
  await page.fill('#entry-coldReading', '0.5 V');
  await page.fill('#entry-coldReference', '5 V');
  await others(page);
  await page.fill('#entry-warmReading', '0.5 V');
  await page.fill('#entry-warmReference', '5 V');
  await page.getByLabel(/snaps fully shut/).check();
  await page.waitForTimeout(500);
  expect(await answerOf(page)).toContain('service manual');
  expect(await answerOf(page)).not.toContain('is met');
  expect(await page.locator('#refit').count()).toBe(0);
  await page.fill('#entry-closedLow', '0.4 V');
  await page.fill('#entry-closedHigh', '0.6 V');
  await page.waitForTimeout(500);
  expect(await answerOf(page)).not.toContain('is met');
  await page.fill('#entry-statedReference', '5 V');
  await expect.poll(() => answerOf(page)).toContain('Every check after refitting is met');
  expect(await violationsOf(page)).toEqual([]);
});

test('the verdict of the way is one of its entries: judged anew on return, kept with its values, struck out once they change', async () => {
  const page = await openStage();
  await goTo(page, 'Judge it');
  await page.locator('.job-entries summary').first().click();
  await page.fill('#entry-openPosition', '88 %');
  await page.setInputFiles('.drop input[type=file]', sound);
  await mine(page).click();
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  // Another step, and back: the recording is there, the verdict with all that it rests on too.
  await goTo(page, 'Work out the readings');
  await goTo(page, 'Judge it');
  await expect.poll(() => answerOf(page)).toMatch(/Pass sound\.csv/);
  await page.locator('.trace-view svg').first().waitFor();
  // An entry changed in another step: nobody said of these values that they are theirs.
  await goTo(page, 'Work out the readings');
  await others(page);
  await page.fill('#entry-closedPosition', '3 %');
  await goTo(page, 'Judge it');
  await expect.poll(() => answerOf(page)).toContain('No verdict yet');
  await mine(page).click();
  await expect.poll(() => answerOf(page)).toMatch(/Fail sound\.csv/);

  // After a reload the recording is gone: what it came to is told as kept, with its values.
  await page.reload();
  await scriptsRun(page);
  await expect.poll(() => answerOf(page)).toMatch(/Judged before.*Fail sound\.csv/s);
  expect(await page.locator('.rests-on').textContent()).toMatch(/throttle closed\s*3.%/);
  await goTo(page, 'Work out the readings');
  await others(page);
  await page.fill('#entry-closedPosition', '10 %');
  await goTo(page, 'Judge it');
  await expect.poll(() => answerOf(page)).toContain('no longer holds');
  expect(await answerOf(page)).not.toMatch(/Pass|Fail/);
  expect(await violationsOf(page)).toEqual([]);
});

test("the demo's verdicts are not kept as one's own", async () => {
  const page = await openStage();
  await goTo(page, 'Judge it');
  await page.getByRole('button', { name: /demo/ }).click();
  await expect.poll(() => answerOf(page)).toMatch(/Fail worn\.csv/);
  await page.reload();
  await scriptsRun(page);
  await page.locator('.drop').waitFor();
  expect(await answerOf(page)).not.toMatch(/worn/);
});

test('two tabs on the way do not undo what the other entered, and each stays at its step', async () => {
  const context = await newVisitor(browser);
  const one = await openWay(context);
  const other = await openWay(context);
  await goTo(one, 'Plan the hook-up');
  await one.fill('#entry-limiter', '1k2');
  await one.waitForTimeout(600);
  await goTo(other, 'Work out the readings');
  await expect.poll(() => other.inputValue('#entry-limiter')).toBe('1k2');
  await others(other);
  await other.fill('#entry-source', '4.9 V');
  await other.waitForTimeout(600);
  await expect.poll(() => one.inputValue('#entry-source')).toBe('4.9 V');
  expect(await one.locator('.way h2').first().textContent()).toBe('Plan the hook-up');
  await one.reload();
  await scriptsRun(one);
  await goTo(one, 'Plan the hook-up');
  await expect.poll(() => one.inputValue('#entry-source')).toBe('4.9 V');
  expect(await one.inputValue('#entry-limiter')).toBe('1k2');
});

test.each([
  [
    'blocked',
    () =>
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
  ],
  [
    'full',
    () => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    },
  ],
] as const)('where the storage is %s the page says that nothing is kept', async (_, script) => {
  const context = await newVisitor(browser);
  await context.addInitScript(script);
  const page = await openWay(context);
  await beginThrottle(page);
  await page.fill('#entry-ABclosed', '4k7');
  await expect.poll(() => page.locator('.way .notice').allTextContents()).toHaveLength(1);
  expect(await page.locator('.way .notice').textContent()).toContain('storage is blocked or full');
  expect(await page.getByText('is kept in this browser alone').count()).toBe(0);
});

test('what a newer version kept is left as it is, and that is said', async () => {
  const newer = JSON.stringify({ kind: 'truesweep-way', version: 2, sensors: ['port'] });
  const context = await newVisitor(browser);
  const page = await openWay(context);
  await page.evaluate((kept) => localStorage.setItem('truesweep-way', kept), newer);
  await page.reload();
  await scriptsRun(page);
  await expect.poll(() => page.locator('.way .notice').textContent()).toContain('newer version');
  await beginThrottle(page);
  await page.fill('#entry-ABclosed', '4k7');
  await goTo(page, 'Plan the hook-up');
  await page.waitForTimeout(600);
  expect(await page.evaluate(() => localStorage.getItem('truesweep-way'))).toBe(newer);
});

test('a tab of this version writes nothing over what a newer one keeps meanwhile', async () => {
  const newer = JSON.stringify({ kind: 'truesweep-way', version: 2 });
  const context = await newVisitor(browser);
  const page = await openWay(context);
  await beginThrottle(page);
  await page.fill('#entry-ABclosed', '4k7');
  await page.waitForTimeout(600);
  await page.evaluate((kept) => localStorage.setItem('truesweep-way', kept), newer);
  await others(page);
  await page.fill('#entry-ABopen', '4k7');
  await expect.poll(() => page.locator('.way .notice').textContent()).toContain('newer version');
  expect(await page.evaluate(() => localStorage.getItem('truesweep-way'))).toBe(newer);
});

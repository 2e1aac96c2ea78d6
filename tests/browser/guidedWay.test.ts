import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, scriptsRun, tableOf, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const path = 'guided-way/';
const heading = (page: Page) => page.locator('.way h2').first().textContent();

/** Presses Tab until what has the focus is named so; what the hand passes on the way must all be reachable. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 200; i++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const at = document.activeElement as HTMLElement & {
        labels?: NodeListOf<HTMLLabelElement>;
      };
      return at.labels?.[0]?.textContent ?? at.textContent ?? '';
    });
    if (name.test(focused)) return;
  }
  throw new Error(`No Tab leads to ${name}.`);
}

test('the whole way is walked by the keyboard alone, and every step is accessible', async () => {
  const { page, complaints } = await openPage(browser, path);
  const onward = async (name: string) => {
    await tabTo(page, new RegExp(`^On to: ${name}`));
    await page.keyboard.press('Enter');
    await expect.poll(() => heading(page)).toBe(name);
    // The heading has the focus, so that reading goes on from there.
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H2');
    await page.locator('.way :is(.answer, .ticks, .drop)').first().waitFor();
    expect(await violationsOf(page), name).toEqual([]);
  };
  expect(await violationsOf(page)).toEqual([]);
  await onward('Find the terminals, closed');
  for (const [stop, ab, ac, bc] of [
    ['closed', '4k7', '1k3', '5k'],
    ['open', '4k7', '5k', '1k3'],
  ] as const) {
    if (stop === 'open') await onward('Find the terminals, open');
    await tabTo(page, new RegExp(`^A to B, throttle ${stop}`));
    await page.keyboard.type(ab);
    await tabTo(page, new RegExp(`^A to C, throttle ${stop}`));
    await page.keyboard.type(ac);
    await tabTo(page, new RegExp(`^B to C, throttle ${stop}`));
    await page.keyboard.type(bc);
  }
  await expect
    .poll(() => page.locator('.goes-on').textContent())
    .toMatch(/track 4\.7.kΩ, wiper at/);
  await onward('Plan the hook-up');
  await expect.poll(() => page.inputValue('#entry-track')).toMatch(/^4\.7.kΩ$/);
  await tabTo(page, /^Limiting resistor/);
  await page.keyboard.type('1k2');
  await onward('Work out the readings');
  await expect.poll(() => page.inputValue('#entry-limiter')).toBe('1k2');
  await expect.poll(() => page.inputValue('#entry-track')).toMatch(/^4\.7.kΩ$/);
  await onward('Choose the instrument');
  await expect.poll(() => page.inputValue('#entry-limiter')).toBe('1k2');
  await onward('Record the sweep');
  await tabTo(page, /flex the harness/);
  await page.keyboard.press('Space');
  await onward('Judge it and keep the record');
  await expect.poll(() => page.inputValue('#entry-limiter')).toBe('1k2');
  await tabTo(page, /^Try it with the demo/);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.answer').textContent()).toMatch(/Fail worn\.csv/);
  // No key chooses a file in a test; what comes of it is reached by keys again.
  await page.setInputFiles('.drop input[type=file]', 'examples/recordings/worn.csv');
  await expect.poll(() => page.locator('.answer').textContent()).toContain('No verdict yet');
  await tabTo(page, /^Judge with this sensor/);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.answer').textContent()).toMatch(/Fail worn\.csv/);
  await onward('After refitting');
  await tabTo(page, /snaps fully shut/);
  await page.keyboard.press('Space');
  await tabTo(page, /^Lowest closed reading/);
  await page.keyboard.type('400 mV');
  await tabTo(page, /^Highest closed reading/);
  await page.keyboard.type('600 mV');
  await tabTo(page, /^Reference that they are stated for/);
  await page.keyboard.type('5 V');
  await tabTo(page, /^Closed reading, engine cold/);
  await page.keyboard.type('0,49');
  await tabTo(page, /^Reference beside it, engine cold/);
  await page.keyboard.type('4.9 V');
  await expect
    .poll(async () => (await tableOf(page, 'refit')).map((row) => row.at(-1)))
    .toEqual(['met', 'to do', 'met']);
  expect(complaints).toEqual([]);

  // Nothing is lost on a reload, nor in a file.
  await page.reload();
  await scriptsRun(page);
  await expect.poll(() => heading(page)).toBe('After refitting');
  await page.locator('#entry-coldReading').waitFor();
  await expect.poll(() => page.inputValue('#entry-coldReading')).toBe('0,49');
  await page.getByRole('button', { name: /^Back to: Judge it/ }).click();
  await expect
    .poll(() => page.locator('.answer').textContent())
    .toMatch(/Judged before.*Fail worn\.csv/s);

  await page.getByText('Keep or resume').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save all of it as a file' }).click(),
  ]);
  const saved = await text(await download.createReadStream());
  await page.getByRole('button', { name: 'Forget all of it' }).click();
  await expect.poll(() => heading(page)).toBe('What is on the bench?');
  await page.locator('.way .onward .main').click();
  await page.locator('#entry-ABclosed').waitFor();
  await expect.poll(() => page.inputValue('#entry-ABclosed')).toBe('');
  await page.setInputFiles('.way input[type=file]', {
    name: 'sensor.way.json',
    mimeType: 'application/json',
    buffer: Buffer.from(saved),
  });
  await expect.poll(() => heading(page)).toBe('Judge it and keep the record');
  await expect.poll(() => page.inputValue('#entry-limiter')).toBe('1k2');
}, 120_000);

test('a file that is no saved way is refused, and nothing is lost', async () => {
  const { page } = await openPage(browser, path);
  await page.locator('.way .onward .main').click();
  await page.fill('#entry-ABclosed', '4k7');
  await page.setInputFiles('.way input[type=file]', {
    name: 'job.json',
    mimeType: 'application/json',
    buffer: await readFile('examples/outboard-sensor.job.json'),
  });
  await expect
    .poll(() => page.locator('.keep-way .refusal').textContent())
    .toContain('no saved way');
  await expect.poll(() => page.inputValue('#entry-ABclosed')).toBe('4k7');
});

test('the first step stands there before any script runs', async () => {
  const { page } = await openPage(browser, path, { javaScriptEnabled: false });
  expect(await heading(page)).toBe('What is on the bench?');
  expect(await page.getByRole('radio').count()).toBe(6);
});

test('what is no potentiometer of a throttle leads to its own pages, and stays chosen', async () => {
  const { page, complaints } = await openPage(browser, path);
  const onward = page.locator('.way .onward .main');
  expect(await onward.count()).toBe(1);
  for (const [kind, calculator, title] of [
    ['A temperature sensor', 'ice-and-boiling', 'In ice and boiling water'],
    ['A pressure sensor', 'pressure-sensor', 'Port open and pumped'],
    ['A switch', 'two-states', 'In both states'],
    ['A coil', 'coil', 'At its temperature'],
  ] as const) {
    await page.getByRole('radio', { name: kind }).check();
    await expect.poll(() => onward.count()).toBe(0);
    await page.getByRole('link', { name: title }).click();
    await page.waitForURL(`**/calculators/${calculator}/`);
    expect(await page.locator('h1').textContent()).toMatch(/^Is this/);
    await page.goBack();
    await scriptsRun(page);
    await expect.poll(() => page.getByRole('radio', { name: kind }).isChecked()).toBe(true);
  }
  expect(await violationsOf(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a contactless sensor is refused as a potentiometer, with the reason and how it is told', async () => {
  const { page } = await openPage(browser, path);
  await page.getByRole('radio', { name: 'Hall or inductive' }).check();
  const said = page.locator('.way [role=status]').last();
  await expect.poll(() => said.textContent()).toMatch(/no potentiometer/);
  expect(await said.textContent()).toMatch(/leads are changed over.*starves it/s);
  expect(await page.locator('.way .onward .main').count()).toBe(0);
  expect(await page.getByRole('link', { name: 'Is it a potentiometer?' }).count()).toBe(1);
});

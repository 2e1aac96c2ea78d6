import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { openPage, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const place = (page: Page) => page.locator('.trace-view .trace-place').first();
const drawn = (page: Page) => place(page).locator('path.trace').getAttribute('d');
/** The texts of the axis of readings. */
const voltTicks = (page: Page) =>
  place(page)
    .locator('.axes > g > text')
    .evaluateAll((texts) => texts.map((text) => text.textContent));

async function openTrace(width: number): Promise<Page> {
  const { page } = await openPage(browser, 'calculators/check-a-sweep/?example=dropout', {
    viewport: { width, height: 844 },
    hasTouch: true,
  });
  await place(page).locator('svg').waitFor();
  await place(page).evaluate((element) => element.scrollIntoView({ block: 'center' }));
  // The verdict scrolls into view first.
  await page.waitForTimeout(800);
  await place(page).evaluate((element) => element.scrollIntoView({ block: 'center' }));
  return page;
}

test('at 360 px its words have at least 12 pixels, and it is as wide as its place', async () => {
  const page = await openTrace(360);
  const sizes = await place(page)
    .locator('text')
    .evaluateAll((texts) => texts.map((text) => text.getBoundingClientRect().height));
  // A line of 13 pixels is some 15 high.
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
  const [width, box] = await place(page).evaluate((element) => [
    element.clientWidth,
    element.querySelector('svg')?.viewBox.baseVal.width,
  ]);
  expect(box).toBe(width);
  expect(await violationsOf(page)).toEqual([]);
});

/** Two fingers from places to places, in the middle of the trace. */
async function pinch(page: Page, from: readonly [number, number], to: readonly [number, number]) {
  const box = (await place(page).boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const client = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove', [dx, dy]: readonly [number, number]) =>
    client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: [
        { x: x - dx, y: y - dy, id: 1 },
        { x: x + dx, y: y + dy, id: 2 },
      ],
    });
  await touch('touchStart', from);
  for (let i = 1; i <= 4; i++)
    await touch('touchMove', [
      from[0] + ((to[0] - from[0]) * i) / 4,
      from[1] + ((to[1] - from[1]) * i) / 4,
    ]);
  await client.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

test('keys and buttons zoom time and voltage, two taps show all again', async () => {
  const page = await openTrace(390);
  const whole = await drawn(page);
  const allVolts = await voltTicks(page);
  await page.getByRole('button', { name: '+ volts' }).click();
  await expect.poll(() => voltTicks(page)).not.toEqual(allVolts);
  await place(page).focus();
  const before = await drawn(page);
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => drawn(page)).not.toBe(before);
  await page.keyboard.press('+');
  await page.waitForTimeout(300);
  await place(page).dblclick({ position: { x: 150, y: 150 } });
  await expect.poll(() => drawn(page)).toBe(whole);
});

test('a pinch aside zooms time, and voltage stays', async () => {
  const page = await openTrace(390);
  const [whole, allVolts] = [await drawn(page), await voltTicks(page)];
  await pinch(page, [40, 0], [120, 0]);
  await expect.poll(() => drawn(page)).not.toBe(whole);
  expect(await voltTicks(page)).toEqual(allVolts);
});

test('the wheel moves the page until the trace has the focus, then zooms; with Shift it zooms voltage', async () => {
  const page = await openTrace(1280);
  const whole = await drawn(page);
  const box = (await place(page).boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.wheel(0, -40);
  await page.waitForTimeout(300);
  expect(await drawn(page)).toBe(whole);
  await place(page).focus();
  await place(page).evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const again = (await place(page).boundingBox())!;
  await page.mouse.move(again.x + again.width / 2, again.y + again.height / 2);
  await page.mouse.wheel(0, -400);
  await expect.poll(() => drawn(page)).not.toBe(whole);
  const volts = await voltTicks(page);
  await page.keyboard.down('Shift');
  await page.mouse.wheel(0, -400);
  await page.keyboard.up('Shift');
  await expect.poll(() => voltTicks(page)).not.toEqual(volts);
});

test('from finding to finding, and all passes over one another with the expected curve', async () => {
  const page = await openTrace(390);
  const count = await page.locator('.trace-buttons output').textContent();
  expect(count).toMatch(/^\d+ findings$/);
  await page.getByRole('button', { name: 'Next finding' }).click();
  await expect
    .poll(() => page.locator('.trace-buttons output').textContent())
    .toMatch(/^Finding 1 of/);
  await page.getByRole('button', { name: 'Previous finding' }).click();
  await expect
    .poll(() => page.locator('.trace-buttons output').textContent())
    .toMatch(/^Finding (\d+) of \1$/);
  await page.getByRole('button', { name: 'Lay passes over one another' }).click();
  await expect.poll(() => place(page).locator('.passes-drawing .pass').count()).toBeGreaterThan(5);
  expect(await place(page).locator('.passes-drawing .curve').count()).toBe(1);
});

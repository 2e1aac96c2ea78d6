import {
  expectedCurve,
  formatQuantity,
  loadingErrors,
  operatingPoint,
  sourceResistance,
} from '@truesweep/core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { openPage, violationsOf } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

const path = 'concepts/loaded-divider/';

/** What core says of a load: the words that must stand in the answer and in the steps. */
function toldBy(load: number, position: number, limiter: number): readonly string[] {
  const bare = { source: { volts: 5 }, limiter, sensor: { track: 5000 }, load: {} };
  const circuit = { ...bare, load: { pullDown: load } };
  const output = (of: typeof circuit | typeof bare) =>
    operatingPoint(of, position).output as number;
  const volts = (value: number) => formatQuantity(value, 'V', { trim: true });
  const seen = formatQuantity(sourceResistance(bare, position), 'Ω', { trim: true });
  return [
    `reads ${volts(output(circuit))}.`,
    `by ${volts(loadingErrors(circuit).fromUnloaded.volts)}.`,
    `= ${volts(output(bare))}`,
    `= ${seen}`,
    `= ${volts(output(circuit))}`,
    `= ${volts(output(bare) - output(circuit))}`,
  ];
}

async function expectTold(page: Page, told: readonly string[]) {
  for (const words of told)
    await expect.poll(() => page.locator('.divider').textContent()).toContain(words);
}

test('it is right before any script runs', async () => {
  const { page } = await openPage(browser, path, { javaScriptEnabled: false });
  await expectTold(page, toldBy(10e3, 0.67, 1000));
});

test('sliding it by the keyboard changes sentences, steps and drawings alike, and they are what core says', async () => {
  const { page, complaints } = await openPage(browser, path);
  const [load, position] = [page.locator('#divider-load'), page.locator('#divider-position')];
  const before = await page.locator('#divider-curve .curve').getAttribute('d');
  await load.press('Home');
  await expectTold(page, toldBy(1000, 0.67, 1000));
  expect(await page.locator('#divider-curve .curve').getAttribute('d')).not.toBe(before);
  for (let i = 0; i < 8; i++) await load.press('ArrowRight');
  await position.press('ArrowLeft');
  await page.getByLabel('none').check();
  await expectTold(page, toldBy(4700, 0.66, 0));
  expect(await page.locator('output[for=divider-load]').textContent()).toBe('4.7\u00a0kΩ');
  expect(await load.getAttribute('aria-valuetext')).toMatch(
    /^4\.7\u00a0kΩ: the load takes \d+\u00a0mV$/,
  );
  expect(await page.locator('.played-caution').textContent()).toContain(
    'Never feed a sensor without',
  );
  await load.press('End');
  await expectTold(page, toldBy(10e6, 0.66, 0));
  expect(complaints).toEqual([]);
});

test('the line drawn dashed is the reading without the load, the other the reading with it', async () => {
  const { page } = await openPage(browser, path, { javaScriptEnabled: false });
  const endOf = async (line: string) => {
    const d = (await page.locator(`#divider-curve .${line}`).getAttribute('d')) ?? '';
    return Number(/([\d.]+)$/.exec(d)?.[1]);
  };
  const bare = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
  const open = (of: Parameters<typeof expectedCurve>[0]) => expectedCurve(of, 2).volts[1]!;
  const [bent, straight] = [await endOf('curve'), await endOf('compared')];
  const [foot, top] = [296, 68];
  const volts = (y: number) => ((foot - y) / (foot - top)) * 5;
  expect(volts(straight)).toBeCloseTo(open(bare), 1);
  expect(volts(bent)).toBeCloseTo(open({ ...bare, load: { pullDown: 10e3 } }), 1);
});

test('on a phone fingers find it and eyes can read it, in both themes', async () => {
  const { page } = await openPage(browser, path, { viewport: { width: 360, height: 740 } });
  const low = await page
    .locator('.divider input[type=range], .divider fieldset label')
    .evaluateAll((targets) =>
      targets
        .map((target) => target.getBoundingClientRect().height)
        .filter((height) => height < 44),
    );
  expect(low).toEqual([]);
  const small = await page.locator('.divider').evaluate((divider) =>
    [...divider.querySelectorAll('*')]
      .filter((element) =>
        [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()),
      )
      .map((element) => {
        const svg = element.closest('svg');
        const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
        return {
          said: element.textContent,
          size: Number.parseFloat(getComputedStyle(element).fontSize) * scale,
        };
      })
      // What a drawing says to a screen reader only has no size.
      .filter(({ said, size }) => size < 12 && said !== ''),
  );
  expect(
    small.filter(
      ({ said }) =>
        !/^(The sensor on the bench|Expected reading|A source of|The reading goes)/.test(
          said ?? '',
        ),
    ),
  ).toEqual([]);
  expect(await violationsOf(page)).toEqual([]);
  await page.evaluate(() => {
    document.documentElement.dataset.theme = 'dark';
  });
  expect(await violationsOf(page, ['color-contrast'])).toEqual([]);
});

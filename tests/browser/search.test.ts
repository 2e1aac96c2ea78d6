import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, scriptsRun } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

test('what is searched for from any page is found, in the browser', async () => {
  const { page, complaints } = await openPage(browser, 'cautions/');
  await page.getByRole('searchbox').fill('scan tool');
  await page.keyboard.press('Enter');
  await page.waitForURL(/search\/\?q=scan\+tool/);
  await scriptsRun(page);
  const found = page.locator('.found a');
  await expect.poll(() => found.count()).toBeGreaterThan(0);
  expect(await found.allTextContents()).toContain('What will the vehicle see?');
  await page.fill('#wanted', '"no page holds this"');
  await expect.poll(() => page.getByRole('status').textContent()).toBe('No page has that.');
  expect(complaints).toEqual([]);
});

/** What people at a bench search for, each with a page that answers it. */
const searches = [
  ['stumble', 'how-to/test-a-sensor/'],
  ['hesitation', 'how-to/test-a-sensor/'],
  ['flat spot', 'calculators/make-dirt-visible/'],
  ['idle', 'calculators/set-the-closed-position/'],
  ['adjustment', 'calculators/set-the-closed-position/'],
  ['multimeter', 'calculators/which-instrument/'],
  ['oscilloscope', 'calculators/which-instrument/'],
  ['TPS', 'how-to/test-a-sensor/'],
  ['throttle position sensor', 'how-to/test-a-sensor/'],
  ['limp', 'how-to/test-a-sensor/'],
  ['trouble code', 'how-to/read-the-verdict/'],
  ['dead spot', 'gallery/'],
  ['glitch', 'calculators/check-a-sweep/'],
  ['strip chart', 'calculators/watch-a-sweep/'],
  ['microphone', 'calculators/watch-a-sweep/'],
  ['intermittent', 'how-to/read-the-verdict/'],
  ['pinout', 'calculators/find-the-terminals/'],
  ['ohmmeter', 'calculators/find-the-terminals/'],
  ['bad ground', 'calculators/supply-and-ground-drop/'],
  ['voltage drop', 'calculators/supply-and-ground-drop/'],
  ['scan tool', 'calculators/bench-to-vehicle/'],
  ['reference voltage', 'calculators/expected-readings/'],
  ['resistor', 'calculators/plan-the-hook-up/'],
  ['potentiometer', 'concepts/loaded-divider/'],
  ['sample rate', 'how-to/record-a-sweep/'],
  ['offline', 'how-to/work-without-a-connection/'],
  ['safety', 'cautions/'],
  ['coolant sensor', 'calculators/temperature-now/'],
  ['IAT', 'calculators/temperature-now/'],
  ['NTC', 'calculators/temperature-now/'],
  ['ice bath', 'calculators/ice-and-boiling/'],
  ['Steinhart-Hart', 'calculators/fit-a-curve/'],
  ['MAP sensor', 'calculators/pressure-sensor/'],
  ['vacuum pump', 'calculators/pressure-sensor/'],
  ['crank sensor', 'calculators/coil/'],
  ['injector', 'calculators/coil/'],
  ['tip-over', 'calculators/two-states/'],
  ['side stand', 'calculators/two-states/'],
  ['Hall sensor', 'calculators/potentiometer-or-not/'],
  ['P0118', 'calculators/trouble-code/'],
  ['drift', 'history/'],
  ['last season', 'history/'],
] as const;

test('words of the bench lead to guides, calculators and concepts first, never to the library', async () => {
  const waiting = searches.values();
  const astray: string[] = [];
  // The page waits for the hand to rest; meanwhile others search.
  const search = async () => {
    const { page } = await openPage(browser, 'search/');
    for (const [word, wanted] of waiting) {
      const found = await addressesFor(page, word);
      if (!found.slice(0, 3).includes(wanted))
        astray.push(`${word}: ${found.slice(0, 5).join(' ')}`);
      expect(found.filter((path) => path.startsWith('reference/'))).toEqual([]);
    }
  };
  await Promise.all(Array.from({ length: 6 }, search));
  expect(astray).toEqual([]);
});

test('the library is searched where that is asked for, by itself, each name in its place', async () => {
  const { page } = await openPage(browser, 'search/?q=loadingErrors&library=');
  const inLibrary = page.locator('h2 + .found a');
  await expect.poll(() => inLibrary.count()).toBeGreaterThan(0);
  expect(await inLibrary.first().getAttribute('href')).toMatch(
    /reference\/core\/model\/#loadingErrors$/i,
  );
  const hrefs = await inLibrary.evaluateAll((links) =>
    links.map((link) => link.getAttribute('href')),
  );
  for (const href of hrefs) expect(href).toContain('/reference/');
  // A name that no page for the bench has is found there unasked.
  await page.getByRole('checkbox').uncheck();
  await page.fill('#wanted', 'drawingEnvelope');
  await expect
    .poll(() => inLibrary.allTextContents())
    .toContain('drawingEnvelope (@truesweep/core/envelope)');
  await page.fill('#wanted', 'stumble');
  await expect.poll(() => inLibrary.count()).toBe(0);
});

/** Where a search leads, the best first, below the site's own address. What was found before is gone first. */
async function addressesFor(page: Page, word: string): Promise<readonly string[]> {
  const status = () => page.locator('p[role=status]').textContent();
  await page.fill('#wanted', '');
  await expect.poll(status, { message: `before ${word}` }).toBe('');
  await page.fill('#wanted', word);
  await expect.poll(status, { message: word }).not.toBe('');
  return await page
    .locator('.found a')
    .evaluateAll(
      (links, site) => links.map((link) => (link as HTMLAnchorElement).href.slice(site.length)),
      inject('site'),
    );
}

import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { newVisitor } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterEach(() => Promise.all(browser.contexts().map((visitor) => visitor.close())));

afterAll(() => browser.close());

/** Each text of the drawings that meets another text of its drawing or leaves its frame. */
function crowdedWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const crowded: string[] = [];
    for (const svg of document.querySelectorAll('.readings svg')) {
      const frame = svg.getBoundingClientRect();
      const words = [...svg.querySelectorAll('text')].map((text) => {
        const { left, right, top, bottom } = text.getBoundingClientRect();
        return { said: text.textContent ?? '', left, right, top, bottom };
      });
      for (const [i, a] of words.entries()) {
        // The browser puts a line of text on whole pixels, the frame on parts of one.
        const inside =
          a.left >= frame.left - 0.5 &&
          a.right <= frame.right + 0.5 &&
          a.top >= frame.top - 0.5 &&
          a.bottom <= frame.bottom + 0.5;
        if (!inside) crowded.push(`${a.said} leaves the drawing`);
        for (const b of words.slice(i + 1)) {
          const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          // The box of a line of text has some air above and below its letters.
          if (across > 0 && down > 4) crowded.push(`${a.said} meets ${b.said}`);
        }
      }
    }
    return crowded;
  });
}

const hookUps: readonly Readonly<Record<string, string>>[] = [
  {},
  {
    supplyLead: '22.2 mΩ',
    groundLead: '22.2 mΩ',
    contact: '888 kΩ',
    pullUp: '47.8 kΩ',
    source: '23.4 V',
  },
  { closedPosition: '48.9 %', openPosition: '51.1 %', contact: '100', limiter: '0' },
  { closedPosition: '48.9 %', openPosition: '51.1 %', contact: '0' },
  { closedPosition: '60 %', openPosition: '40 %', contact: '0', pullUp: '47.8 kΩ' },
  { closedPosition: '100 %', openPosition: '0 %', track: '388 kΩ', input: '88.8 kΩ' },
];

test.each(hookUps)('at phone width every word of the drawings stands free: %o', async (entries) => {
  const visitor = await newVisitor(browser, { viewport: { width: 360, height: 740 } });
  const page = await visitor.newPage();
  await page.goto(`${inject('site')}calculators/expected-readings/`);
  await page.locator('astro-island:not([ssr])').waitFor({ state: 'attached' });
  for (const summary of await page.locator('.readings summary').all()) await summary.click();
  for (const [name, text] of Object.entries(entries)) {
    await page.locator(`input[name=${name}]`).fill(text);
    // What was typed stands in the address after the drawing shows it.
    await expect.poll(() => new URL(page.url()).hash).toContain(`${name}=`);
  }
  expect(await page.locator('.readings svg').count()).toBe(2);
  expect(await crowdedWords(page)).toEqual([]);
  const size = await page.locator('#circuit-drawing text').first().boundingBox();
  expect(size!.height, 'the words are large enough to read').toBeGreaterThan(11);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));

/** Every page with something to enter, to begin with or to choose from. */
const paths = readdirSync(built, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith('index.html'))
  .filter((path) =>
    /class="[^"]*\b(readings|start|gallery)\b/.test(readFileSync(join(built, path), 'utf8')),
  )
  .map((path) => path.slice(0, -'index.html'.length))
  .sort();

async function unfoldAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });
}

/** What a thumb hits, px. */
const target = 44;

test.each(paths)(
  '“%s” cuts nothing and scrolls nothing sideways at 360 px, and has nothing to press less than 44 px high at 390, with all unfolded',
  async (path) => {
    const { page } = await openPage(browser, path, { viewport: { width: 360, height: 740 } });
    await unfoldAll(page);
    const cut = await page.locator(':is(.readings, main table) *').evaluateAll((elements) =>
      elements
        .filter((element) => {
          // What is read out only is one pixel wide; letters may stand beside their box in a drawing.
          if (element.closest('svg, .sr-only, option') || !element.checkVisibility()) return false;
          // What is typed may be longer than its field.
          const scrolls =
            !(element instanceof HTMLInputElement) &&
            getComputedStyle(element).display !== 'inline' &&
            element.scrollWidth > element.clientWidth;
          return scrolls || element.getBoundingClientRect().right > innerWidth;
        })
        .map((element) => element.outerHTML.slice(0, 90)),
    );
    expect(cut).toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    const small = await page
      .locator(':is(.readings, .start, .gallery) :is(button, a.button, a, input, select, summary)')
      .evaluateAll((elements, least) => {
        // A link within a sentence is as high as its line.
        const isInSentence = (element: Element) =>
          element.matches('a:not(.button)') &&
          getComputedStyle(element).display === 'inline' &&
          element.closest('p, li, dd, td')?.textContent?.trim() !== element.textContent?.trim();
        return elements
          .filter((element) => element.checkVisibility() && !isInSentence(element))
          .map((element) => {
            // A tick is pressed by its words too.
            const words = element instanceof HTMLInputElement ? element.closest('label') : null;
            const { height } = (words ?? element).getBoundingClientRect();
            return { height, html: element.outerHTML.slice(0, 90) };
          })
          .filter(({ height }) => height > 0 && height < least - 0.01)
          .map(({ height, html }) => `${height.toFixed(1)} px: ${html}`);
      }, target);
    expect(small).toEqual([]);
    await page.context().close();
  },
);

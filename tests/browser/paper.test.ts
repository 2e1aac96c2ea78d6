import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openPage } from './openPage.js';

let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browser'));
});

afterAll(() => browser.close());

const built = fileURLToPath(new URL('../../site/dist/', import.meta.url));

/** Every calculator; what was judged has a report of its own. */
const calculators = readdirSync(join(built, 'calculators'), { withFileTypes: true })
  // What is judged or watched is no sheet.
  .filter((entry) => entry.isDirectory() && !/^(check|watch)-a-sweep$/.test(entry.name))
  .map(({ name }) => `calculators/${name}/`);

describe.each(calculators)('%s on paper', (path) => {
  test('takes one sheet, with nothing on it that only a screen has', async () => {
    const { page } = await openPage(browser, path);
    const sheets: Record<string, number> = {};
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
      sheets[format] = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    }
    await page.emulateMedia({ media: 'print' });
    const shown = await page
      .locator(
        'button, nav, header, footer, .hint, .bounds, .keep, input[type=range], input[type=checkbox]',
      )
      .evaluateAll((elements) =>
        elements
          .filter((element) => element.checkVisibility() && element.getClientRects().length > 0)
          .map((element) => element.outerHTML.slice(0, 80)),
      );
    // Where a link stands in a sentence its words stay.
    const asControls = await page
      .locator('main :is(a, .entry input, .entry select)')
      .evaluateAll((elements) =>
        elements
          .filter((element) => {
            const { appearance, borderWidth, textDecorationLine, color } =
              getComputedStyle(element);
            const isPlain = element.matches('a')
              ? textDecorationLine === 'none' &&
                color === getComputedStyle(element.parentElement!).color
              : appearance === 'none' && borderWidth === '0px';
            return element.checkVisibility() && !isPlain;
          })
          .map((element) => element.outerHTML.slice(0, 80)),
      );
    const kept = await page.evaluate(() => {
      const isShown = (selector: string) =>
        [...document.querySelectorAll(selector)].filter(
          (one) => one.checkVisibility({ contentVisibilityAuto: true }) && one.clientHeight > 0,
        ).length;
      return {
        entries: isShown('.readings .entry :is(input, select)'),
        answer: isShown('.readings .answer'),
        rows: isShown('.readings .bench-sheet tbody tr'),
      };
    });
    const entries = await page.locator('.readings .entry').count();
    expect(sheets).toEqual({ A4: 1, Letter: 1 });
    expect(shown).toEqual([]);
    expect(asControls).toEqual([]);
    expect(kept).toMatchObject({ entries, answer: 1 });
    expect(kept.rows).toBeGreaterThan(0);
    await page.context().close();
  });
});

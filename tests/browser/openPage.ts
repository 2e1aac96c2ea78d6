import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { inject } from 'vitest';

/** A page of the site with what it asked for and what its console complained of. */
export interface OpenPage {
  readonly page: Page;
  readonly asked: readonly string[];
  readonly complaints: readonly string[];
}

/** What the driver itself writes to a console when it holds a service worker off. */
const heldOff = 'Service Worker registration blocked by Playwright';

/**
 * A visitor of their own. No service worker unless it is asked for: at each first visit it fetches some ninety files to keep, which
 * takes longer than the visit; `offline.test.ts` and `pages.test.ts` have it.
 */
export async function newVisitor(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<BrowserContext> {
  return await browser.newContext({ serviceWorkers: 'block', ...options });
}

/** Opens a page of the site in a context of its own; with scripts on, once they run. */
export async function openPage(
  browser: Browser,
  path: string,
  options: BrowserContextOptions = {},
): Promise<OpenPage> {
  return await openPageOf(await newVisitor(browser, options), path, options);
}

/** Opens a page of the site for a visitor who may have seen others. */
export async function openPageOf(
  visitor: BrowserContext,
  path: string,
  { javaScriptEnabled = true }: BrowserContextOptions = {},
): Promise<OpenPage> {
  const page = await visitor.newPage();
  const asked: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type()) && message.text() !== heldOff)
      complaints.push(message.text());
  });
  await page.goto(inject('site') + path);
  if (javaScriptEnabled) await scriptsRun(page);
  return { page, asked, complaints };
}

/** Waits until every island of a page runs its script. */
export async function scriptsRun(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
}

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);

/** What an automatic check of accessibility finds in a page, by all of its rules or by some. */
export async function violationsOf(page: Page, rules?: string[]): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  return await page.evaluate(async (only) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      iframes: false,
      // Of what passes, and of what a person must look at, one place is enough.
      resultTypes: ['violations'],
      ...(only && { runOnly: only }),
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  }, rules);
}

/** The cells of a table's body, row by row, its heads included. */
export async function tableOf(page: Page, id: string): Promise<readonly (readonly string[])[]> {
  return await page
    .locator(`#${id} tbody tr`)
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('th, td')].map((cell) => cell.textContent ?? '')),
    );
}
